import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { colonyOfQueen } from '../../../src/registry/queries.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { QueenSelect } from '../../parts/QueenSelect.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './told.ts';

type How = NonNullable<EntryOf<'queen-moved'>['how']>;

const HOW: readonly { readonly value: How; readonly label: string }[] = [
  { value: 'caged', label: 'Caged' },
  { value: 'direct', label: 'Directly' },
  { value: 'with-her-frame', label: 'With her frame' },
];

/** A queen on record put into this colony, virgin or laying. */
export function Introduced({ colony, queens, told, tell, onSaved }: QueenEventProps) {
  const { registry, on } = useStore();
  const { queen, how, day = on.value as string as RoughDay } = told;
  const her = queen && registry.value.queens.get(queen);
  const leaves = her && colonyOfQueen(registry.value, her, on.value);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} put into ${colony.label}`}
      drafts={queen && [{ kind: 'queen-moved', day, queen, to: colony.id, ...(how ? { how } : {}) }]}
      onSaved={onSaved}
      missing="Choose the queen."
    >
      <QueenSelect
        label="Which queen"
        value={queen}
        onChange={(next) => tell({ queen: next })}
        living
        without={queens.map(({ id }) => id)}
        hint="Every queen alive on record, with the box she is in."
      />
      {leaves && <p>By the records she heads {leaves.label}, which is then without a queen.</p>}
      <ChoiceRow label="How" size="hive" options={HOW} value={how} onChange={(next) => tell({ how: next })} />
      <DayInput label="Day" value={day} onChange={(next) => tell({ day: next })} />
    </RecordFrame>
  );
}
