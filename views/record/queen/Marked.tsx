import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { MarkColour } from '../../../src/journal/entries/queen.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { MarkFields } from '../../parts/MarkFields.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './QueenForm.tsx';
import { WhichQueen } from './WhichQueen.tsx';

const CLIPPED = [
  { value: 'yes', label: 'Clipped' },
  { value: 'no', label: 'Not clipped' },
] as const;

/** A queen marked; the colour of her year is pointed out. */
export function Marked({ colony, queens }: QueenEventProps) {
  const on = useStore().on.value;
  const [queen, setQueen] = useState(queens.length === 1 ? queens[0]?.id : undefined);
  const [colour, setColour] = useState<MarkColour>();
  const [number, setNumber] = useState('');
  const [clipped, setClipped] = useState<'yes' | 'no'>();
  const [day, setDay] = useState(on as string as RoughDay);
  const her = queens.find(({ id }) => id === queen);
  const mark = number.trim() ? { mark: number.trim() } : {};
  const wing = clipped ? { clipped: clipped === 'yes' } : {};
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} of ${colony.label} marked`}
      drafts={queen && colour && [{ kind: 'queen-marked', day, queen, colour, ...mark, ...wing }]}
      missing={queen ? 'Choose the colour.' : 'Choose the queen.'}
    >
      {queens.length > 1 && <WhichQueen queens={queens} value={queen} onChange={setQueen} />}
      <MarkFields
        colour={colour}
        number={number}
        year={yearOfBirth(her?.born)}
        onColour={setColour}
        onNumber={setNumber}
      />
      <ChoiceRow label="Wing" options={CLIPPED} value={clipped} onChange={setClipped} />
      <DayInput label="Day" value={day} onChange={setDay} />
    </RecordFrame>
  );
}

/** The year she emerged in, where both ends of what is known agree on it. */
function yearOfBirth(born: { readonly first: string; readonly last: string } | undefined): string {
  return born && born.first.slice(0, 4) === born.last.slice(0, 4) ? born.first.slice(0, 4) : '';
}
