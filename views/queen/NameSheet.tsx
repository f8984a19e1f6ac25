import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { useStore } from '../app/store-context.ts';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { QueenSheetProps } from './queen-sheet.ts';

/** A name for a queen, or another one; the earlier stays readable in what is written of her. */
export function NameSheet({ queen, onClose }: QueenSheetProps) {
  const on = useStore().on.value;
  const saving = useSaving();
  const [name, setName] = useState(queen.name ?? '');
  const [asked, setAsked] = useState(false);
  const given = name.trim();
  const save = async () => {
    setAsked(true);
    if (!given || given === queen.name) return;
    const day = on as string as RoughDay;
    if (await saving.save([{ kind: 'queen-named', day, queen: queen.id, name: given }], `${given} named`))
      onClose();
  };
  return (
    <Sheet title={queen.name ? `Another name for ${queen.name}` : 'Her name'} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <TextField
          label="Name"
          value={name}
          onChange={setName}
          hint="A name is hers for life. It comes from no box and no dam."
          problem={asked && !given ? 'Write a name, or close this.' : undefined}
        />
      </Form>
    </Sheet>
  );
}
