import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { colonyOfQueen, queenTitle } from '../../src/registry/queries.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { DayInput } from '../parts/DayInput.tsx';
import { TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { QueenSheetProps } from './queen-sheet.ts';

/** A queen given to another keeper. Her record stays, so that what her daughters do there can come back to it. */
export function GiveAwaySheet({ queen, onClose }: QueenSheetProps) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const saving = useSaving();
  const [to, setTo] = useState('');
  const [day, setDay] = useState(on as string as RoughDay);
  const colony = colonyOfQueen(registry, queen, on);
  const save = async () => {
    const receiver = to.trim() ? { to: to.trim() } : {};
    const draft = {
      kind: 'queen-lost' as const,
      day,
      queen: queen.id,
      cause: 'given-away' as const,
      ...receiver,
    };
    if (await saving.save([draft], `${queenTitle(queen)} given away`)) onClose();
  };
  return (
    <Sheet title={`${queenTitle(queen)} given away`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <TextField label="To whom" value={to} onChange={setTo} hint="May stay empty." />
        <DayInput label="Given on" value={day} onChange={setDay} />
        <p>
          {colony && `${colony.label} has no queen known from then on. `}
          Moving queens and bees over a border, or out of a district with brood disease, may need papers: ask
          the bee inspector. Send her pedigree along, and what her daughters do can come back to these
          records.
        </p>
      </Form>
    </Sheet>
  );
}
