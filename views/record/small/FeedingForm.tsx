import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { useKept } from '../../parts/use-kept.ts';
import { FEEDS, sentence } from '../../parts/words.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

type Feed = EntryOf<'feeding'>['feed'];
const KINDS: readonly Feed[] = ['syrup', 'fondant', 'sugar', 'honey-frames', 'pollen'];

interface Given {
  readonly feed?: Feed | undefined;
  readonly kilograms?: number | undefined;
  readonly day?: RoughDay;
}

const NOTHING: Given = {};

/** Feed given, and how much. */
export function FeedingForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const kept = useKept<Given>(`feeding ${colony.id}`, NOTHING);
  const { feed, kilograms, day = on as string as RoughDay } = kept.value;
  const set = (change: Given) => kept.set({ ...kept.value, ...change });
  const last = colony.entries.findLast((entry) => entry.kind === 'feeding');
  return (
    <RecordFrame
      colony={colony}
      kind="feeding"
      title={`Feeding of ${colony.label}`}
      drafts={
        feed && [{ kind: 'feeding', day, colony: colony.id, feed, ...(kilograms ? { kilograms } : {}) }]
      }
      missing="Choose the feed."
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <ChoiceRow
        label="Feed"
        size="hive"
        options={KINDS.map((value) => ({ value, label: sentence(FEEDS[value]) }))}
        value={feed}
        last={last?.kind === 'feeding' ? last.feed : undefined}
        onChange={(feed) => set({ feed })}
        hint={
          feed === 'honey-frames'
            ? 'Honey and combs carry disease: only from healthy colonies of your own.'
            : undefined
        }
      />
      <NumberStepper
        label="Amount"
        unit="(kg)"
        size="hive"
        step={0.5}
        max={100}
        value={kilograms}
        last={last?.kind === 'feeding' ? last.kilograms : undefined}
        onChange={(kilograms) => set({ kilograms })}
      />
      <DayInput label="Day" value={day} onChange={(next) => set({ day: next })} rough />
    </RecordFrame>
  );
}
