import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { useKept } from '../../parts/use-kept.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

type Method = EntryOf<'hygienic-test'>['method'];

const METHODS: readonly { readonly value: Method; readonly label: string }[] = [
  { value: 'pin', label: 'Pin' },
  { value: 'freeze', label: 'Frozen brood' },
];

interface Reading {
  readonly method?: Method | undefined;
  readonly cells?: number | undefined;
  readonly left?: number | undefined;
  readonly hours?: number | undefined;
  readonly day?: RoughDay;
}

const NOTHING: Reading = {};

/** Killed brood and how much of it the bees had cleared after so many hours. */
export function HygienicForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const kept = useKept<Reading>(`hygienic ${colony.id}`, NOTHING);
  const { method, cells, left, hours, day = on as string as RoughDay } = kept.value;
  const set = (change: Reading) => kept.set({ ...kept.value, ...change });
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
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <ChoiceRow
        label="Method"
        size="hive"
        options={METHODS}
        value={method}
        onChange={(method) => set({ method })}
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
        onChange={(cells) => set({ cells })}
      />
      <NumberStepper
        label="Cells not cleared"
        size="hive"
        max={500}
        value={left}
        onChange={(left) => set({ left })}
        problem={tooMany ? `At most the ${cells} cells tested.` : undefined}
      />
      <NumberStepper
        label="Hours until the reading"
        size="hive"
        min={1}
        max={72}
        value={hours}
        onChange={(hours) => set({ hours })}
      />
      <DayInput label="Day of the reading" value={day} onChange={(next) => set({ day: next })} />
    </RecordFrame>
  );
}
