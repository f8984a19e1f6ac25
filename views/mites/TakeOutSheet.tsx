import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { TreatmentSpan } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { Form } from '../parts/Form.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import { count, sentence } from '../parts/words.ts';

export interface TreatmentSheetProps {
  readonly span: TreatmentSpan;
  readonly onClose: () => void;
}

/** The day a treatment was taken out; from it the wait before honey and the six weeks of the counts begin. */
export function TakeOutSheet({ span, onClose }: TreatmentSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const active = sentence(span.entry.active);
  const save = async () => {
    const written = await saving.save(
      [{ kind: 'treatment-ended', day, treatment: span.id }],
      `${active} taken out`,
    );
    if (written) onClose();
  };
  return (
    <Sheet title={`${active} taken out`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <p>
          In since {dayText(span.from)}, in {count(span.colonies.length, 'colony', 'colonies')}. All of it
          counts as out from this day.
        </p>
        <DayInput label="Taken out" value={day} onChange={setDay} />
        <Notice>Gloves on; used strips and pads go back or away as the label says, never near honey.</Notice>
      </Form>
    </Sheet>
  );
}
