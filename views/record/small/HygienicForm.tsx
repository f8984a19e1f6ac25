import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

type Method = EntryOf<'hygienic-test'>['method'];

const METHODS: readonly { readonly value: Method; readonly label: string }[] = [
  { value: 'pin', label: 'Pin' },
  { value: 'freeze', label: 'Frozen brood' },
];

/** Killed brood and how much of it the bees had cleared after so many hours. */
export function HygienicForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const [method, setMethod] = useState<Method>();
  const [cells, setCells] = useState<number>();
  const [left, setLeft] = useState<number>();
  const [hours, setHours] = useState<number>();
  const [day, setDay] = useState(on as string as RoughDay);
  const whole = method && cells && left !== undefined && hours;
  const tooMany = cells !== undefined && left !== undefined && left > cells;
  return (
    <RecordFrame
      colony={colony}
      kind="hygienic"
      title={`Hygienic test at ${colony.label}`}
      drafts={
        whole && !tooMany
          ? [{ kind: 'hygienic-test', day, colony: colony.id, method, cells, notCleared: left, hours }]
          : undefined
      }
      missing="Method, cells tested, cells not cleared and hours."
    >
      <ChoiceRow
        label="Method"
        size="hive"
        options={METHODS}
        value={method}
        onChange={setMethod}
        hint={
          method === 'freeze'
            ? 'Liquid nitrogen burns and displaces air: gloves, goggles, outdoors.'
            : undefined
        }
      />
      <NumberStepper
        label="Cells of capped brood tested"
        size="hive"
        step={10}
        min={1}
        max={500}
        value={cells}
        onChange={setCells}
      />
      <NumberStepper
        label="Cells not cleared"
        size="hive"
        max={500}
        value={left}
        onChange={setLeft}
        problem={tooMany ? `At most the ${cells} cells tested.` : undefined}
      />
      <NumberStepper
        label="Hours until the reading"
        size="hive"
        min={1}
        max={72}
        value={hours}
        onChange={setHours}
      />
      <DayInput label="Day of the reading" value={day} onChange={setDay} />
    </RecordFrame>
  );
}
