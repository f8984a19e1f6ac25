import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { ActSheetProps } from './act-sheet.ts';

/** Another label on the box. What was written under the old one stays with the colony. */
export function RelabelSheet({ colony, onClose }: ActSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const [label, setLabel] = useState('');
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const [asked, setAsked] = useState(false);
  const save = async () => {
    setAsked(true);
    if (label.trim() === '') return;
    const written = await saving.save(
      [{ kind: 'colony-relabelled', day, colony: colony.id, label: label.trim() }],
      `${colony.label} is now ${label.trim()}`,
    );
    if (written) onClose();
  };
  return (
    <Sheet title={`New label for ${colony.label}`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save the label">
        <TextField
          label="New label on the box"
          value={label}
          onChange={setLabel}
          hint="The colony and its history stay the same; the queen's name is not touched."
          problem={asked && label.trim() === '' ? 'Write the new label.' : undefined}
        />
        <DayInput label="Since" value={day} onChange={setDay} rough />
      </Form>
    </Sheet>
  );
}
