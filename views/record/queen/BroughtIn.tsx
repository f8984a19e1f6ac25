import { useMemo } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { FirstQueen } from '../../yards/FirstQueen.tsx';
import { NO_QUEEN, queenDrafts, queenProblem } from '../../yards/first-queen.ts';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './told.ts';

/** A queen who is not on record yet: got from elsewhere, or simply found heading this colony. */
export function BroughtIn({ colony, told, tell, onSaved }: QueenEventProps) {
  const on = useStore().on.value;
  const { facts = NO_QUEEN, day = on as string as RoughDay } = told;
  const problem = queenProblem(facts);
  const drafts = useMemo(() => queenDrafts(facts, colony.id, day), [facts, colony.id, day]);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`${facts.name.trim() || 'A queen'} entered at ${colony.label}`}
      drafts={drafts.length > 0 && !problem ? drafts : undefined}
      onSaved={onSaved}
      missing={problem ?? 'Say whether she lays.'}
    >
      <FirstQueen value={facts} onChange={(next) => tell({ facts: next })} asked={false} />
      <DayInput label="Heads this colony since" value={day} onChange={(next) => tell({ day: next })} rough />
    </RecordFrame>
  );
}
