import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { MarkColour } from '../../src/journal/entries/queen.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import { useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { Form } from '../parts/Form.tsx';
import { MarkFields } from '../parts/MarkFields.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { QueenSheetProps } from './queen-sheet.ts';

/** A mark given to a queen; the colour of her year is pointed out. */
export function MarkSheet({ queen, onClose }: QueenSheetProps) {
  const on = useStore().on.value;
  const saving = useSaving();
  const [colour, setColour] = useState<MarkColour>();
  const [number, setNumber] = useState('');
  const [day, setDay] = useState(on as string as RoughDay);
  const save = async () => {
    if (!colour) return;
    const mark = number.trim() ? { mark: number.trim() } : {};
    const draft = { kind: 'queen-marked' as const, day, queen: queen.id, colour, ...mark };
    if (await saving.save([draft], `${queenTitle(queen)} marked`)) onClose();
  };
  const sameYear = queen.born && queen.born.first.slice(0, 4) === queen.born.last.slice(0, 4);
  return (
    <Sheet title="Her mark" onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <MarkFields
          colour={colour}
          number={number}
          year={sameYear ? (queen.born?.first ?? '') : ''}
          onColour={setColour}
          onNumber={setNumber}
        />
        <DayInput label="Marked on" value={day} onChange={setDay} />
      </Form>
    </Sheet>
  );
}
