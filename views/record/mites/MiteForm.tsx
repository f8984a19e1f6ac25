import type { RoughDay } from '../../../src/journal/day.ts';
import type { Draft } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextArea } from '../../parts/Field.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { useKept } from '../../parts/use-kept.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { MiteResult } from './MiteResult.tsx';
import { type Method, type MiteLook, missing, sampleOf } from './sample.ts';

const EMPTY: MiteLook = {};
const METHODS: readonly { readonly value: Method; readonly label: string }[] = [
  { value: 'wash', label: 'Wash' },
  { value: 'sugar-shake', label: 'Sugar shake' },
  { value: 'natural-drop', label: 'Drop on a board' },
];
const COUNTED = [
  { value: 'counted', label: 'Counted or weighed' },
  { value: 'judged', label: 'Judged by volume' },
] as const;

/** A mite count: what was counted on how many bees or days, and at once what that can and cannot say. */
export function MiteForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const kept = useKept<MiteLook>(`mites ${colony.id}`, EMPTY);
  const look = kept.value;
  const set = (change: Partial<MiteLook>) => kept.set({ ...look, ...change });
  const day = look.day ?? (on as string as RoughDay);
  const sample = sampleOf(look);
  const drop = look.method === 'natural-drop';
  const drafts: readonly Draft[] | undefined = sample && [
    {
      kind: 'mite-count',
      day,
      colony: colony.id,
      sample,
      ...(look.remark?.trim() ? { remark: look.remark.trim() } : {}),
    },
  ];
  return (
    <RecordFrame
      colony={colony}
      kind="mites"
      title={`Mite count at ${colony.label}`}
      drafts={drafts}
      missing={missing(look)}
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <ChoiceRow
        label="How"
        size="hive"
        options={METHODS}
        value={look.method}
        onChange={(method) => set({ method })}
      />
      {look.method && !drop && (
        <NumberStepper
          label="Bees in the sample"
          size="hive"
          step={10}
          min={1}
          max={2000}
          last={lastBees(colony)}
          usual={USUAL_BEES}
          value={look.bees}
          onChange={(bees) => set({ bees })}
        />
      )}
      {drop && (
        <NumberStepper
          label="Days on the board"
          size="hive"
          min={1}
          max={60}
          value={look.days}
          onChange={(days) => set({ days })}
        />
      )}
      {look.method && (
        <NumberStepper
          label="Mites counted"
          size="hive"
          max={5000}
          value={look.mites}
          onChange={(mites) => set({ mites })}
        />
      )}
      {look.method && !drop && (
        <ChoiceRow
          label="The bees were"
          options={COUNTED}
          value={look.counted}
          onChange={(counted) => set({ counted })}
        />
      )}
      {sample && <MiteResult colony={colony} day={day} sample={sample} />}
      {look.method && <Caution method={look.method} />}
      <TextArea label="Remark" rows={2} value={look.remark ?? ''} onChange={(remark) => set({ remark })} />
      <DayInput label="Day" value={day} onChange={(next) => set({ day: next })} rough />
    </RecordFrame>
  );
}

/** Half a cup of bees, about 300, is the usual sample (common practice, from memory). */
const USUAL_BEES = 300;

/** The size of the last sample, offered and not taken by itself. */
function lastBees(colony: RecordFormProps['colony']): number | undefined {
  const last = colony.entries.findLast(
    (entry) => entry.kind === 'mite-count' && entry.sample.method !== 'natural-drop',
  );
  return last?.kind === 'mite-count' && last.sample.method !== 'natural-drop' ? last.sample.bees : undefined;
}

function Caution({ method }: { readonly method: Method }) {
  if (method === 'natural-drop') return null;
  return (
    <Notice>
      Make sure the queen is not in the sample.{' '}
      {method === 'wash'
        ? 'Alcohol burns easily: no smoker, no flame beside it; it kills the bees of the sample. Wear gloves and eye protection.'
        : 'Shaken bees sting: close the jar well and let them go away from your face.'}
    </Notice>
  );
}
