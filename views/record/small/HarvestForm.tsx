import { useState } from 'preact/hooks';
import { addDays, dayNumber, lastDay, type PlainDay, type RoughDay } from '../../../src/journal/day.ts';
import type { Colony, Registry } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { treatmentsOf } from '../../mites/treatments.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { dayInYear } from '../../parts/days.ts';
import { Notice } from '../../parts/Notice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

/** Honey taken. A wait before honey that has not run out is said at once. */
export function HarvestForm({ colony }: RecordFormProps) {
  const store = useStore();
  const on = store.on.value;
  const [kilograms, setKilograms] = useState<number>();
  const [day, setDay] = useState(on as string as RoughDay);
  const wait = waitUntil(store.registry.value, colony, on);
  return (
    <RecordFrame
      colony={colony}
      kind="harvest"
      title={`Harvest from ${colony.label}`}
      drafts={kilograms === undefined ? undefined : [{ kind: 'harvest', day, colony: colony.id, kilograms }]}
      missing="Enter the kilograms."
    >
      {wait && (
        <Notice tone="warn" title={`The wait before honey runs until ${dayInYear(wait, on)}`}>
          By the wait that was entered from the label. Where the two differ, the label is right.
        </Notice>
      )}
      <NumberStepper
        label="Honey"
        unit="(kg)"
        size="hive"
        step={0.5}
        max={500}
        value={kilograms}
        onChange={setKilograms}
      />
      <DayInput label="Day" value={day} onChange={setDay} rough />
    </RecordFrame>
  );
}

/** The last day of the longest wait that still runs. */
function waitUntil(registry: Registry, colony: Colony, on: PlainDay): PlainDay | undefined {
  const ends = treatmentsOf(registry, colony).flatMap(({ entry, from, to }) =>
    entry.honeyWaitDays ? [addDays(lastDay(to ?? from), entry.honeyWaitDays)] : [],
  );
  return ends
    .filter((end) => dayNumber(end) >= dayNumber(on))
    .sort()
    .at(-1);
}
