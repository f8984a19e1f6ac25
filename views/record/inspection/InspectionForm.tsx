import type { RoughDay } from '../../../src/journal/day.ts';
import { headOn } from '../../../src/registry/queries.ts';
import { useStore } from '../../app/store-context.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { useKept } from '../../parts/use-kept.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { AnotherQueen } from './AnotherQueen.tsx';
import { Cells } from './Cells.tsx';
import { FollowUps } from './FollowUps.tsx';
import { More } from './More.tsx';
import { QueenAndBrood } from './QueenAndBrood.tsx';
import { Strength } from './Strength.tsx';
import { type Look, lookDrafts, NOTHING_SEEN } from './seen.ts';
import { Temper } from './Temper.tsx';

export interface LookProps extends RecordFormProps {
  readonly look: Look;
  readonly onSeen: (seen: Partial<Look['seen']>) => void;
}

/** One look into a hive. What is not tapped is not known; the last visit's values are shown and never saved. */
export function InspectionForm({ colony }: RecordFormProps) {
  const store = useStore();
  const on = store.on.value;
  const kept = useKept<Look>(`inspection ${colony.id}`, NOTHING_SEEN);
  const look = kept.value;
  const day = look.day ?? (on as string as RoughDay);
  const head = headOn(store.registry.value, colony, on);
  const onSeen = (seen: Partial<Look['seen']>) => kept.set({ ...look, seen: { ...look.seen, ...seen } });
  const onLook = (change: Partial<Look>) => kept.set({ ...look, ...change });
  const parts = { colony, look, onSeen };
  return (
    <RecordFrame
      colony={colony}
      kind="inspection"
      title={`Inspection of ${colony.label}`}
      drafts={lookDrafts(look, colony.id, day, head?.id)}
      missing="Tap what you saw; the rest stays unknown."
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <QueenAndBrood {...parts} />
      <AnotherQueen {...parts} head={head} onLook={onLook} />
      <Strength {...parts} />
      <Temper {...parts} />
      <Cells {...parts} />
      <FollowUps {...parts} head={head} onLook={onLook} />
      <More {...parts} />
      <DayInput label="Day" value={day} onChange={(next) => kept.set({ ...look, day: next })} rough />
    </RecordFrame>
  );
}
