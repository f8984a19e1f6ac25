import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { lastObserved } from '../../parts/colony-facts.ts';
import { SeenChips } from '../SeenChips.tsx';
import type { LookProps } from './InspectionForm.tsx';
import styles from './QueenAndBrood.module.css';

type QueenSeen = NonNullable<EntryOf<'inspection'>['queenSeen']>;

const QUEEN: readonly { readonly value: QueenSeen; readonly label: string }[] = [
  { value: 'seen-marked', label: 'Marked' },
  { value: 'seen-unmarked', label: 'Unmarked' },
  { value: 'virgin', label: 'Virgin' },
  { value: 'not-seen', label: 'Not seen' },
];

const BROOD = [
  { key: 'eggs', there: 'Eggs', missing: 'No eggs' },
  { key: 'youngBrood', there: 'Young brood', missing: 'No young' },
  { key: 'cappedWorkerBrood', there: 'Capped', missing: 'No capped' },
] as const;

/** The queen if she was seen, and the brood by its stages; all three stages by one tap. */
export function QueenAndBrood({ colony, look, onSeen }: LookProps) {
  const on = useStore().on.value;
  const { seen } = look;
  const all = seen.eggs === true && seen.youngBrood === true && seen.cappedWorkerBrood === true;
  const setAll = (value: true | undefined) =>
    onSeen({ eggs: value, youngBrood: value, cappedWorkerBrood: value });
  return (
    <>
      <ChoiceRow
        label="Queen"
        size="hive"
        options={QUEEN}
        value={seen.queenSeen}
        last={lastObserved(colony, on, 'queenSeen')?.value}
        onChange={(queenSeen) => onSeen({ queenSeen })}
      />
      <div class={styles.brood}>
        <SeenChips
          label="Brood"
          chips={BROOD}
          value={seen}
          onChange={(key, value) => onSeen({ [key]: value })}
        />
        <button
          type="button"
          class={styles.all}
          aria-pressed={all}
          onClick={() => setAll(all ? undefined : true)}
        >
          All three
        </button>
      </div>
    </>
  );
}
