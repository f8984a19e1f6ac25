import type { Evidence } from '../../src/journal/entry-parts.ts';
import { useStore } from '../app/store-context.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { QueenSelect } from '../parts/QueenSelect.tsx';
import { EVIDENCE, sentence } from '../parts/words.ts';
import { SURENESS } from '../queen/parentage-choice.ts';
import { damProblem, type FirstQueenFacts } from './first-queen.ts';

/** How the dam of a queen who came from elsewhere, or was there before the records, may be known. */
const HOW_KNOWN: readonly Evidence[] = ['eggs-named', 'old-record', 'told', 'marker-test'];

/** Her dam where she is on record, how sure, and how that is known. Nothing to ask while no queen is on record. */
export function DamFields(props: {
  readonly value: FirstQueenFacts;
  readonly onChange: (value: FirstQueenFacts) => void;
  readonly asked: boolean;
}) {
  const { value, onChange, asked } = props;
  if (useStore().registry.value.queens.size === 0) return null;
  const problem = asked ? damProblem(value) : undefined;
  return (
    <>
      <QueenSelect
        label="Her dam"
        value={value.dam}
        onChange={(dam) => onChange({ ...value, dam })}
        none="Not known, or not on record"
        hint="May stay open, and be said on her own page later."
      />
      {value.dam && (
        <>
          <ChoiceRow
            label="How sure"
            options={SURENESS}
            value={value.damSure}
            onChange={(damSure) => onChange({ ...value, damSure })}
            problem={value.damSure ? undefined : problem}
          />
          <ChoiceRow
            label="How it is known"
            options={HOW_KNOWN.map((known) => ({ value: known, label: sentence(EVIDENCE[known]) }))}
            value={value.damKnown}
            onChange={(damKnown) => onChange({ ...value, damKnown })}
            problem={value.damSure ? problem : undefined}
          />
        </>
      )}
    </>
  );
}
