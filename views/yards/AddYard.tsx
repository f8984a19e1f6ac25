import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { newYardId } from '../../src/journal/new-ids.ts';
import { useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';

/** A new yard: its name, where it is, and its place in the order of driving. */
export function AddYard({ onClose }: { readonly onClose: () => void }) {
  const store = useStore();
  const saving = useSaving();
  const [name, setName] = useState('');
  const [where, setWhere] = useState('');
  const [order, setOrder] = useState('');
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const [asked, setAsked] = useState(false);
  const roundOrder = Number.parseInt(order, 10);

  const save = async () => {
    setAsked(true);
    if (name.trim() === '') return;
    const written = await saving.save(
      [
        {
          kind: 'yard-opened',
          day,
          yard: newYardId(),
          name: name.trim(),
          ...(where.trim() ? { where: where.trim() } : {}),
          ...(Number.isNaN(roundOrder) ? {} : { roundOrder }),
        },
      ],
      `Yard ${name.trim()}`,
    );
    if (written) onClose();
  };

  return (
    <Sheet title="Add a yard" onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Add the yard">
        <TextField
          label="Name"
          value={name}
          onChange={setName}
          problem={asked && name.trim() === '' ? 'Give the yard a name.' : undefined}
        />
        <TextField
          label="Where it is"
          value={where}
          onChange={setWhere}
          hint="In your own words. May stay empty."
        />
        <TextField
          label="Place in the order of driving"
          value={order}
          onChange={setOrder}
          inputMode="numeric"
          hint="1 is first. May stay empty."
        />
        <DayInput
          label="Opened"
          value={day}
          onChange={setDay}
          rough
          hint="Before the first thing you record there."
        />
      </Form>
    </Sheet>
  );
}
