import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { winterInQuestion } from '../../parts/colony-facts.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { useKept } from '../use-kept.ts';
import { OutcomeFields } from './OutcomeFields.tsx';
import { NO_OUTCOME, type Outcome, outcomeDraft } from './outcome.ts';

interface KeptOutcome {
  readonly outcome: Outcome;
  readonly day?: RoughDay;
}

const EMPTY: KeptOutcome = { outcome: NO_OUTCOME };

/** How one colony came through winter. */
export function WinterForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const kept = useKept(`winter ${colony.id}`, EMPTY);
  const { outcome } = kept.value;
  const winter = winterInQuestion(on);
  const day = kept.value.day ?? (on as string as RoughDay);
  const draft = outcomeDraft(outcome, colony.id, winter, day);
  return (
    <RecordFrame
      colony={colony}
      kind="winter"
      title={`Winter outcome of ${colony.label}`}
      drafts={draft && [draft]}
      missing="Say whether it is alive."
      onSaved={kept.forget}
    >
      <OutcomeFields
        colony={colony}
        winter={winter}
        value={outcome}
        onChange={(next) => kept.set({ ...kept.value, outcome: next })}
      />
      <DayInput label="Seen on" value={day} onChange={(next) => kept.set({ ...kept.value, day: next })} />
    </RecordFrame>
  );
}
