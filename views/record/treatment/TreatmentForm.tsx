import { PlainDay, type RoughDay } from '../../../src/journal/day.ts';
import { ActiveIngredient } from '../../../src/journal/entries/observation.ts';
import type { Draft } from '../../../src/journal/entry.ts';
import type { ColonyId } from '../../../src/journal/ids.ts';
import { useStore } from '../../app/store-context.ts';
import { CheckList } from '../../parts/CheckList.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { Field, TextField } from '../../parts/Field.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { SelectField } from '../../parts/SelectField.tsx';
import { useKept } from '../../parts/use-kept.ts';
import { sentence } from '../../parts/words.ts';
import type { RecordFormProps } from '../index.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { walkOf } from '../walk.ts';
import { RunningTreatments } from './RunningTreatments.tsx';
import { TreatmentCaution } from './TreatmentCaution.tsx';

interface Given {
  readonly colonies: readonly ColonyId[];
  readonly active?: ActiveIngredient | undefined;
  readonly manner: string;
  readonly end: string;
  readonly wait?: number | undefined;
  readonly against: string;
  readonly day?: RoughDay;
}

/** A treatment by active ingredient, in one or several colonies of the yard, with what its label says. */
export function TreatmentForm({ colony }: RecordFormProps) {
  const store = useStore();
  const on = store.on.value;
  const empty: Given = { colonies: [colony.id], manner: '', end: '', against: '' };
  const kept = useKept<Given>(`treatment ${colony.id}`, empty);
  const given = kept.value;
  const set = (change: Partial<Given>) => kept.set({ ...given, ...change });
  const day = given.day ?? (on as string as RoughDay);
  const neighbours = walkOf(store.registry.value, colony, on);
  return (
    <RecordFrame
      colony={colony}
      kind="treatment"
      title={`Treatment of ${colony.label}`}
      drafts={draftsOf(given, day)}
      missing={given.colonies.length === 0 ? 'Choose a colony.' : 'Choose the active ingredient or measure.'}
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <RunningTreatments colony={colony} />
      <SelectField
        label="Active ingredient or measure"
        value={given.active}
        onChange={(active) => set({ active })}
        options={ActiveIngredient.options.map((value) => ({ value, label: sentence(value) }))}
      />
      <TextField
        label="How it was given"
        value={given.manner}
        onChange={(manner) => set({ manner })}
        hint="Such as two pads under the lid, or trickled. May stay empty."
      />
      <CheckList
        label="In which colonies"
        options={neighbours.map(({ id, label }) => ({ value: id, label }))}
        value={given.colonies}
        onChange={(colonies) => set({ colonies })}
      />
      <DayInput label="Begun" value={day} onChange={(next) => set({ day: next })} rough />
      <Field
        label="Last day it acted"
        hint="Where it is known already; else say later that it was taken out."
      >
        {({ id, describedBy }) => (
          <input
            id={id}
            type="date"
            value={given.end}
            aria-describedby={describedBy}
            onChange={(event) => set({ end: event.currentTarget.value })}
          />
        )}
      </Field>
      <NumberStepper
        label="Wait before honey, from the label"
        unit="(days)"
        max={400}
        value={given.wait}
        onChange={(wait) => set({ wait })}
      />
      <TextField
        label="Against what, if not mites"
        value={given.against}
        onChange={(against) => set({ against })}
      />
      <TreatmentCaution active={given.active} />
    </RecordFrame>
  );
}

function draftsOf(given: Given, day: RoughDay): readonly Draft[] | undefined {
  if (!given.active || given.colonies.length === 0) return undefined;
  const end = PlainDay.safeParse(given.end);
  return [
    {
      kind: 'treatment',
      day,
      colonies: [...given.colonies],
      active: given.active,
      ...(given.manner.trim() ? { manner: given.manner.trim() } : {}),
      ...(end.success ? { end: end.data } : {}),
      ...(given.wait === undefined ? {} : { honeyWaitDays: given.wait }),
      ...(given.against.trim() ? { against: given.against.trim() } : {}),
    },
  ];
}
