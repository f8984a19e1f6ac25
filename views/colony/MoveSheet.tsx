import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { Place } from '../../src/journal/entry-parts.ts';
import type { YardId } from '../../src/journal/ids.ts';
import { yardOn } from '../../src/registry/queries.ts';
import { useStore } from '../app/store-context.ts';
import { placeOf, yardsInOrder } from '../parts/colony-facts.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { Form } from '../parts/Form.tsx';
import { Notice } from '../parts/Notice.tsx';
import { PlaceFields } from '../parts/PlaceFields.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { ActSheetProps } from './act-sheet.ts';

/** A colony carried to another yard, or to another stand of the same. */
export function MoveSheet({ colony, onClose }: ActSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const on = store.on.value;
  const [yard, setYard] = useState<YardId | undefined>(yardOn(colony, on));
  const [place, setPlace] = useState<Place>(placeOf(colony, on) ?? {});
  const [day, setDay] = useState(on as string as RoughDay);
  const save = async () => {
    if (!yard) return;
    const where = Object.keys(place).length > 0 ? { place } : {};
    const written = await saving.save(
      [{ kind: 'colony-moved', day, colony: colony.id, yard, ...where }],
      `${colony.label} moved`,
    );
    if (written) onClose();
  };
  return (
    <Sheet title={`Move ${colony.label}`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save the move">
        <SelectField
          label="To yard"
          value={yard}
          onChange={setYard}
          options={yardsInOrder(store.registry.value).map(({ id, name }) => ({ value: id, label: name }))}
          problem={yard ? undefined : 'Choose the yard.'}
        />
        <PlaceFields yard={yard} value={place} onChange={setPlace} self={colony.id} />
        <DayInput label="When" value={day} onChange={setDay} rough />
        <Notice>
          Strap the hive, close the entrance for the drive and give air. Moving bees over a border or out of a
          restricted district may need a permit: ask the bee inspector.
        </Notice>
      </Form>
    </Sheet>
  );
}
