import type { RoughDay } from '../../../src/journal/day.ts';
import type { QueenLossCause } from '../../../src/journal/entries/queen.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextField } from '../../parts/Field.tsx';
import { QUEEN_LOSSES, sentence } from '../../parts/words.ts';
import { RecordFrame } from '../RecordFrame.tsx';
import { type QueenEventProps, queenMeant } from './told.ts';
import { WhichQueen } from './WhichQueen.tsx';

const LAYING: readonly QueenLossCause[] = [
  'superseded',
  'swarmed',
  'not-found',
  'drone-layer',
  'killed',
  'given-away',
  'unknown',
];
const EXPECTED: readonly QueenLossCause[] = [
  'failed-to-emerge',
  'failed-to-mate',
  'drone-layer',
  'killed',
  'not-found',
  'given-away',
  'unknown',
];

/** What became of a queen who is no longer here. */
export function Lost({ colony, queens, told, tell, onSaved }: QueenEventProps) {
  const on = useStore().on.value;
  const { cause, to = '', day = on as string as RoughDay } = told;
  const her = queenMeant(queens, told);
  const causes = her && colony.expected.includes(her.id) ? EXPECTED : LAYING;
  const receiver = cause === 'given-away' && to.trim() ? { to: to.trim() } : {};
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} of ${colony.label}: ${cause ? QUEEN_LOSSES[cause] : 'lost'}`}
      drafts={her && cause && [{ kind: 'queen-lost', day, queen: her.id, cause, ...receiver }]}
      onSaved={onSaved}
      missing={her ? 'Choose what became of her.' : 'Choose the queen.'}
    >
      {queens.length > 1 && (
        <WhichQueen queens={queens} value={her?.id} onChange={(next) => tell({ queen: next })} />
      )}
      <ChoiceRow
        label="What became of her"
        size="hive"
        options={causes.map((value) => ({ value, label: sentence(QUEEN_LOSSES[value]) }))}
        value={cause}
        onChange={(next) => tell({ cause: next })}
      />
      {cause === 'given-away' && (
        <TextField
          label="To whom"
          value={to}
          onChange={(next) => tell({ to: next })}
          hint="Queens and bees over a border or out of a restricted district may need papers."
        />
      )}
      <DayInput
        label="When, as far as it is known"
        value={day}
        onChange={(next) => tell({ day: next })}
        rough
      />
    </RecordFrame>
  );
}
