import type { RoughDay } from '../../../src/journal/day.ts';
import { routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { winterInQuestion } from '../../parts/colony-facts.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { useKept } from '../../parts/use-kept.ts';
import { sentence, winterText } from '../../parts/words.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
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
  const written = colony.entries.findLast(
    (entry) => entry.kind === 'winter-outcome' && entry.winter === winter,
  );
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
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      {written && (
        <Notice title={`${sentence(winterText(winter))} is written down already`}>
          <p>
            <EntrySentence entry={written} /> <a href={routes.entry(written.id)}>Correct it</a> rather than
            write it twice.
          </p>
        </Notice>
      )}
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
