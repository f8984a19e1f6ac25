import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { newQueenId } from '../../../src/journal/new-ids.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './told.ts';

type Reason = EntryOf<'queen-expected'>['reason'];

const REASONS: readonly { readonly value: Reason; readonly label: string; readonly hint: string }[] = [
  { value: 'swarm', label: 'Swarm', hint: 'many, along the edges' },
  { value: 'supersedure', label: 'Supersedure', hint: 'few, on the face' },
  { value: 'emergency', label: 'Emergency', hint: 'out of worker cells' },
];

/** Cells that nobody made on purpose: a queen is on her way in a colony left whole. */
export function CellsFound({ colony, told, tell, onSaved }: QueenEventProps) {
  const on = useStore().on.value;
  const { reason, day = on as string as RoughDay } = told;
  const [id] = useState(newQueenId);
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`Cells found in ${colony.label}`}
      drafts={reason && [{ kind: 'queen-expected', day, queen: id, colony: colony.id, reason }]}
      onSaved={onSaved}
      missing="Choose the kind of cells."
    >
      <ChoiceRow
        label="Kind of cells"
        size="hive"
        options={REASONS}
        value={reason}
        onChange={(next) => tell({ reason: next })}
        hint="The queen who headed the colony is taken for the dam, and keeps heading it until another lays."
      />
      <DayInput label="Day" value={day} onChange={(next) => tell({ day: next })} />
    </RecordFrame>
  );
}
