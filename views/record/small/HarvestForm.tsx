import { firstDay, type RoughDay } from '../../../src/journal/day.ts';
import type { TreatmentSpan } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { honeyWait, isIn, treatmentsOf } from '../../mites/treatments.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { dayInYear } from '../../parts/days.ts';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { useKept } from '../../parts/use-kept.ts';
import { count, sentence } from '../../parts/words.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

interface Taken {
  readonly kilograms?: number | undefined;
  readonly day?: RoughDay;
}

const NOTHING: Taken = {};

/** Honey taken. A wait before honey that has not run out is said at once. */
export function HarvestForm({ colony }: RecordFormProps) {
  const store = useStore();
  const on = store.on.value;
  const kept = useKept<Taken>(`harvest ${colony.id}`, NOTHING);
  const { kilograms, day = on as string as RoughDay } = kept.value;
  const set = (change: Taken) => kept.set({ ...kept.value, ...change });
  const warnings = treatmentsOf(store.registry.value, colony).flatMap((span) => honeyWarning(span, day));
  return (
    <RecordFrame
      colony={colony}
      kind="harvest"
      title={`Harvest from ${colony.label}`}
      drafts={kilograms === undefined ? undefined : [{ kind: 'harvest', day, colony: colony.id, kilograms }]}
      missing="Enter the kilograms."
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      {warnings.map((text) => (
        <Notice key={text} tone="warn" title={text}>
          By what was entered from the label. Where the two differ, the label is right.
        </Notice>
      ))}
      <NumberStepper
        label="Honey"
        unit="(kg)"
        size="hive"
        step={0.5}
        max={500}
        value={kilograms}
        onChange={(kilograms) => set({ kilograms })}
      />
      <DayInput label="Day" value={day} onChange={(next) => set({ day: next })} rough />
    </RecordFrame>
  );
}

/** Why honey of this day may not be fit to eat, for one treatment; nothing where its wait is over. */
function honeyWarning(span: TreatmentSpan, taken: RoughDay): readonly string[] {
  const day = firstDay(taken);
  const name = sentence(span.entry.active);
  const wait = honeyWait(span);
  if (wait.is === 'until')
    return wait.day > day ? [`${name}: no honey before ${dayInYear(wait.day, day)}.`] : [];
  if (!isIn(span, day)) return [];
  return [
    wait.is === 'after-end'
      ? `${name} is still in; its wait of ${count(wait.days, 'day')} begins when it is out.`
      : `${name} is still in; its wait before honey was not written down.`,
  ];
}
