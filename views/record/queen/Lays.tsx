import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { type QueenEventProps, queenMeant } from './told.ts';
import { WhichQueen } from './WhichQueen.tsx';

type Seen = EntryOf<'queen-confirmed'>['seen'];

const SEEN: readonly { readonly value: Seen; readonly label: string }[] = [
  { value: 'eggs', label: 'Eggs' },
  { value: 'worker-brood', label: 'Worker brood' },
  { value: 'queen-laying', label: 'Herself, laying' },
];

/** An expected queen seen to lay: she is confirmed, and heads the colony from this day. */
export function Lays({ colony, queens, told, tell, onSaved }: QueenEventProps) {
  const on = useStore().on.value;
  const { seen, day = on as string as RoughDay } = told;
  const coming = queens.filter(({ id }) => colony.expected.includes(id));
  const her = queenMeant(coming, told);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} lays in ${colony.label}`}
      drafts={her && seen && [{ kind: 'queen-confirmed', day, queen: her.id, colony: colony.id, seen }]}
      onSaved={onSaved}
      missing={her ? 'Tap what was seen.' : 'Choose the queen.'}
    >
      {coming.length > 1 && (
        <WhichQueen
          queens={coming}
          value={her?.id}
          onChange={(next) => tell({ queen: next })}
          hint="Where you cannot tell, choose Another queen found above: her dam then stays open."
        />
      )}
      <ChoiceRow
        label="What was seen"
        size="hive"
        options={SEEN}
        value={seen}
        onChange={(next) => tell({ seen: next })}
        hint="Single eggs on the bottom of the cells. Several in a cell, or drone brood only, is no proof."
      />
      <DayInput label="Day" value={day} onChange={(next) => tell({ day: next })} />
    </RecordFrame>
  );
}
