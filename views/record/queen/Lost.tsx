import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { QueenLossCause } from '../../../src/journal/entries/queen.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextField } from '../../parts/Field.tsx';
import { QUEEN_LOSSES, sentence } from '../../parts/words.ts';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './QueenForm.tsx';
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
export function Lost({ colony, queens }: QueenEventProps) {
  const on = useStore().on.value;
  const [queen, setQueen] = useState(queens.length === 1 ? queens[0]?.id : undefined);
  const [cause, setCause] = useState<QueenLossCause>();
  const [to, setTo] = useState('');
  const [day, setDay] = useState(on as string as RoughDay);
  const her = queens.find(({ id }) => id === queen);
  const causes = queen && colony.expected.includes(queen) ? EXPECTED : LAYING;
  const receiver = cause === 'given-away' && to.trim() ? { to: to.trim() } : {};
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${her?.name ?? 'Queen'} of ${colony.label}: ${cause ? QUEEN_LOSSES[cause] : 'lost'}`}
      drafts={queen && cause && [{ kind: 'queen-lost', day, queen, cause, ...receiver }]}
      missing={queen ? 'Choose what became of her.' : 'Choose the queen.'}
    >
      {queens.length > 1 && <WhichQueen queens={queens} value={queen} onChange={setQueen} />}
      <ChoiceRow
        label="What became of her"
        size="hive"
        options={causes.map((value) => ({ value, label: sentence(QUEEN_LOSSES[value]) }))}
        value={cause}
        onChange={setCause}
      />
      {cause === 'given-away' && (
        <TextField
          label="To whom"
          value={to}
          onChange={setTo}
          hint="Queens and bees over a border or out of a restricted district may need papers."
        />
      )}
      <DayInput label="When, as far as it is known" value={day} onChange={setDay} rough />
    </RecordFrame>
  );
}
