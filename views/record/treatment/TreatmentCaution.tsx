import type { ActiveIngredient } from '../../../src/journal/entries/observation.ts';
import { Notice } from '../../parts/Notice.tsx';

const ACIDS: ReadonlySet<ActiveIngredient> = new Set(['oxalic acid', 'formic acid', 'lactic acid']);
const MEASURES: ReadonlySet<ActiveIngredient> = new Set(['brood removal', 'queen caged']);

/** The cautions that belong to a treatment. The label and the law decide; the app only keeps the record. */
export function TreatmentCaution({ active }: { readonly active: ActiveIngredient | undefined }) {
  if (active && MEASURES.has(active)) {
    return (
      <Notice>
        Combs taken out carry mites and perhaps disease: melt them or give them to no healthy colony.
      </Notice>
    );
  }
  return (
    <Notice title="By the label, and only what is licensed where you are">
      <p>
        Dose, temperature, season and the wait before honey stand on the label of the product; where the label
        and this record differ, the label is right. Many places ask you to keep this log.
      </p>
      {active && ACIDS.has(active) && (
        <p>
          Acids burn skin, eyes and lungs: gloves against acids, goggles, a mask for acid vapour where it
          evaporates, and water at hand.
        </p>
      )}
    </Notice>
  );
}
