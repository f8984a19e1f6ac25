import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { FirstQueen, NO_QUEEN, queenDrafts, queenProblem } from '../../yards/FirstQueen.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './QueenForm.tsx';

/** A queen who is not on record yet: got from elsewhere, or simply found heading this colony. */
export function BroughtIn({ colony }: QueenEventProps) {
  const on = useStore().on.value;
  const [facts, setFacts] = useState(NO_QUEEN);
  const [day, setDay] = useState(on as string as RoughDay);
  const problem = queenProblem(facts);
  const drafts = queenDrafts(facts, colony.id, day);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${facts.name.trim() || 'A queen'} entered at ${colony.label}`}
      drafts={drafts.length > 0 && !problem ? drafts : undefined}
      missing={problem ?? 'Say whether she lays.'}
    >
      <FirstQueen value={facts} onChange={setFacts} asked={false} />
      <DayInput label="Heads this colony since" value={day} onChange={setDay} rough />
    </RecordFrame>
  );
}
