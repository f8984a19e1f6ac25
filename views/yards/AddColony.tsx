import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { Draft, EntryOf } from '../../src/journal/entry.ts';
import { newColonyId } from '../../src/journal/new-ids.ts';
import type { Yard } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { dayText } from '../parts/days.ts';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { PlaceFields } from '../parts/PlaceFields.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import { BEGINNINGS, sentence } from '../parts/words.ts';
import { FirstQueen, NO_QUEEN, queenDrafts } from './FirstQueen.tsx';
import { isBeforeYard, openedBy } from './opened-by.ts';

type How = EntryOf<'colony-started'>['how'];
const HOW: readonly How[] = ['already-here', 'swarm-taken', 'nucleus', 'package', 'bought', 'split'];

/** A colony that begins at a yard, with the queen who heads it where she is known. */
export function AddColony({ yard, onClose }: { readonly yard: Yard; readonly onClose: () => void }) {
  const store = useStore();
  const saving = useSaving();
  const [label, setLabel] = useState('');
  const [how, setHow] = useState<How | undefined>();
  const [from, setFrom] = useState('');
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const [place, setPlace] = useState<NonNullable<EntryOf<'colony-started'>['place']>>({});
  const [queen, setQueen] = useState(NO_QUEEN);
  const [asked, setAsked] = useState(false);

  const save = async () => {
    setAsked(true);
    if (label.trim() === '' || !how) return;
    const colony = newColonyId();
    const start: Draft = {
      kind: 'colony-started',
      day,
      colony,
      yard: yard.id,
      label: label.trim(),
      how,
      ...(from.trim() ? { from: from.trim() } : {}),
      ...(Object.keys(place).length > 0 ? { place } : {}),
    };
    const written = await saving.save(
      [...openedBy(store.registry.value, yard, day), start, ...queenDrafts(queen, colony, day)],
      `Colony ${label.trim()}`,
    );
    if (written) onClose();
  };

  return (
    <Sheet title={`Add a colony at ${yard.name}`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Add the colony">
        <TextField
          label="Label on the box"
          value={label}
          onChange={setLabel}
          hint="The label stays with the box; the queen has a name of her own."
          problem={asked && label.trim() === '' ? 'Write what stands on the box, such as 7.' : undefined}
        />
        <SelectField
          label="How it began"
          value={how}
          onChange={setHow}
          options={HOW.map((value) => ({ value, label: sentence(BEGINNINGS[value]) }))}
          problem={asked && !how ? 'Say how it began.' : undefined}
          hint={how === 'split' ? 'A split made now is recorded from the colony it is taken off.' : undefined}
        />
        <TextField label="Where it came from" value={from} onChange={setFrom} hint="May stay empty." />
        <DayInput label="Since" value={day} onChange={setDay} rough {...earlierHint(yard, day)} />
        <PlaceFields yard={yard.id} value={place} onChange={setPlace} />
        <FirstQueen value={queen} onChange={setQueen} />
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
