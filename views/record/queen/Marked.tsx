import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { MarkFields } from '../../parts/MarkFields.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { type QueenEventProps, queenMeant } from './told.ts';
import { WhichQueen } from './WhichQueen.tsx';

const CLIPPED = [
  { value: 'yes', label: 'Clipped' },
  { value: 'no', label: 'Not clipped' },
] as const;

/** A queen marked; the colour of her year is pointed out. */
export function Marked({ colony, queens, told, tell, onSaved }: QueenEventProps) {
  const on = useStore().on.value;
  const { colour, number = '', clipped, day = on as string as RoughDay } = told;
  const her = queenMeant(queens, told);
  const mark = number.trim() ? { mark: number.trim() } : {};
  const wing = clipped ? { clipped: clipped === 'yes' } : {};
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} of ${colony.label} marked`}
      drafts={her && colour && [{ kind: 'queen-marked', day, queen: her.id, colour, ...mark, ...wing }]}
      onSaved={onSaved}
      missing={her ? 'Choose the colour.' : 'Choose the queen.'}
    >
      {queens.length > 1 && (
        <WhichQueen queens={queens} value={her?.id} onChange={(next) => tell({ queen: next })} />
      )}
      <MarkFields
        colour={colour}
        number={number}
        year={yearOfBirth(her?.born)}
        onColour={(next) => tell({ colour: next })}
        onNumber={(next) => tell({ number: next })}
      />
      <ChoiceRow
        label="Wing"
        options={CLIPPED}
        value={clipped}
        onChange={(next) => tell({ clipped: next })}
      />
      <DayInput label="Day" value={day} onChange={(next) => tell({ day: next })} />
    </RecordFrame>
  );
}

/** The year she emerged in, where both ends of what is known agree on it. */
function yearOfBirth(born: { readonly first: string; readonly last: string } | undefined): string {
  return born && born.first.slice(0, 4) === born.last.slice(0, 4) ? born.first.slice(0, 4) : '';
}
