import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { newColonyId } from '../../src/journal/new-ids.ts';
import type { Yard } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { DayInput } from '../parts/DayInput.tsx';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { KeptNotice } from '../parts/KeptNotice.tsx';
import { MoreFields } from '../parts/MoreFields.tsx';
import { PlaceFields } from '../parts/PlaceFields.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useKept } from '../parts/use-kept.ts';
import { useSaving } from '../parts/use-saving.ts';
import { BEGINNINGS, sentence } from '../parts/words.ts';
import { nextLabel } from '../split/plan.ts';
import { type Beginning, EMPTY, HOW, startOf } from './beginning.ts';
import { FirstQueen } from './FirstQueen.tsx';
import { queenDrafts, queenProblem } from './first-queen.ts';
import { isBeforeYard, openedBy } from './opened-by.ts';

/** A colony that begins at a yard, with the queen who heads it where she is known; and the next one after it. */
export function AddColony({ yard, onClose }: { readonly yard: Yard; readonly onClose: () => void }) {
  const store = useStore();
  const saving = useSaving();
  const kept = useKept(`colony at ${yard.id}`, EMPTY);
  const [asked, setAsked] = useState(false);
  const begun = kept.value;
  const set = (change: Partial<Beginning>) => kept.set({ ...begun, ...change });
  const today = store.on.value as string as RoughDay;
  const day = begun.day ?? today;
  const label = (begun.label ?? nextLabel(store.registry.value, store.on.value, [])).trim();

  /** Written, and whether it was; what one row of hives has in common stays for the next. */
  const save = async () => {
    setAsked(true);
    if (label === '' || !begun.how || queenProblem(begun.queen)) return false;
    const colony = newColonyId();
    const drafts = [
      ...openedBy(store.registry.value, yard, day),
      startOf(begun, begun.how, { label, day, colony, yard }),
      ...queenDrafts(begun.queen, colony, day),
    ];
    if (!(await saving.save(drafts, `Colony ${label}`))) return false;
    kept.forget();
    return true;
  };
  const saveAndNext = async () => {
    if (!(await save())) return;
    setAsked(false);
    kept.set({ ...EMPTY, how: begun.how, ...(begun.day ? { day: begun.day } : {}) });
  };

  return (
    <Sheet title={`Add a colony at ${yard.name}`} onClose={onClose}>
      <Form
        saving={saving}
        onSubmit={async () => (await save()) && onClose()}
        submit="Add the colony"
        beside={
          <Button size="hive" wide disabled={saving.busy} onPress={saveAndNext}>
            Add, then the next
          </Button>
        }
      >
        {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
        <TextField
          label="Label on the box"
          value={begun.label ?? label}
          onChange={(text) => set({ label: text })}
          hint="The label stays with the box; the queen has a name of her own."
          problem={asked && label === '' ? 'Write what stands on the box, such as 7.' : undefined}
        />
        <SelectField
          label="How it began"
          value={begun.how}
          onChange={(how) => set({ how })}
          options={HOW.map((value) => ({ value, label: sentence(BEGINNINGS[value]) }))}
          problem={asked && !begun.how ? 'Say how it began.' : undefined}
          hint={
            begun.how === 'split'
              ? 'A split made now is recorded from the colony it is taken off.'
              : undefined
          }
        />
        <DayInput
          label="Since"
          value={day}
          onChange={(next) => set({ day: next })}
          rough
          {...earlierHint(yard, day)}
        />
        <FirstQueen value={begun.queen} onChange={(queen) => set({ queen })} asked={asked} />
        <MoreFields label="Where it came from, where it stands">
          <TextField
            label="Where it came from"
            value={begun.from}
            onChange={(from) => set({ from })}
            hint="May stay empty."
          />
          <PlaceFields yard={yard.id} value={begun.place} onChange={(place) => set({ place })} />
        </MoreFields>
      </Form>
    </Sheet>
  );
}

function earlierHint(yard: Yard, day: RoughDay): { readonly hint?: string } {
  if (!isBeforeYard(yard, day)) return {};
  return {
    hint: `${yard.name} stands in the records since ${dayText(yard.opened)}; it is then open since ${dayText(day)}`,
  };
}
