import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './QueenForm.tsx';
import { WhichQueen } from './WhichQueen.tsx';

type Seen = EntryOf<'queen-confirmed'>['seen'];

const SEEN: readonly { readonly value: Seen; readonly label: string }[] = [
  { value: 'eggs', label: 'Eggs' },
  { value: 'worker-brood', label: 'Worker brood' },
  { value: 'queen-laying', label: 'Herself, laying' },
];

/** An expected queen seen to lay: she is confirmed, and heads the colony from this day. */
export function Lays({ colony, queens }: QueenEventProps) {
  const on = useStore().on.value;
  const coming = queens.filter(({ id }) => colony.expected.includes(id));
  const [queen, setQueen] = useState(coming.length === 1 ? coming[0]?.id : undefined);
  const [seen, setSeen] = useState<Seen>();
  const [day, setDay] = useState(on as string as RoughDay);
  const her = coming.find(({ id }) => id === queen);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} lays in ${colony.label}`}
      drafts={queen && seen && [{ kind: 'queen-confirmed', day, queen, colony: colony.id, seen }]}
      missing={queen ? 'Tap what was seen.' : 'Choose the queen.'}
    >
      {coming.length > 1 && (
        <WhichQueen
          queens={coming}
          value={queen}
          onChange={setQueen}
          hint="Where you cannot tell, choose Another queen found above: her dam then stays open."
        />
      )}
      <ChoiceRow
        label="What was seen"
        size="hive"
        options={SEEN}
        value={seen}
        onChange={setSeen}
        hint="Single eggs on the bottom of the cells. Several in a cell, or drone brood only, is no proof."
      />
      <DayInput label="Day" value={day} onChange={setDay} />
    </RecordFrame>
  );
}
