import { Notice } from '../parts/Notice.tsx';

/** The cautions that belong to counting and treating. The label and the law decide; the app keeps the record. */
export function Cautions() {
  return (
    <Notice title="Before you count or treat">
      <p>
        Treat by the label, and only with what is licensed where you are: dose, temperature, season and the
        wait before honey stand there, and the label goes before this record. Gloves and eye protection;
        against acid vapour a mask made for it. Alcohol for a wash burns easily: no smoker and no flame beside
        it. It kills the bees of the sample, so make sure the queen is not among them. Many places ask you to
        keep this log.
      </p>
    </Notice>
  );
}
