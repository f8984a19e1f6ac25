import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { yardOn } from '../../src/registry/queries.ts';
import { useStore } from '../app/store-context.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { ColonySelect } from '../parts/ColonySelect.tsx';
import { DayInput } from '../parts/DayInput.tsx';
import { Form } from '../parts/Form.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import type { ActSheetProps } from './act-sheet.ts';

type Kept = EntryOf<'colonies-joined'>['queenKept'];

/** A colony given up into another. */
export function JoinSheet({ colony, onClose }: ActSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const [into, setInto] = useState<ColonyId>();
  const [kept, setKept] = useState<Kept>();
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const [asked, setAsked] = useState(false);
  const other = into && store.registry.value.colonies.get(into)?.label;
  const kepts: readonly { readonly value: Kept; readonly label: string }[] = [
    { value: 'of-the-receiving', label: other ? `That of ${other}` : 'That of the other' },
    { value: 'of-the-joined', label: `That of ${colony.label}` },
    { value: 'unknown', label: 'Not known' },
  ];
  const save = async () => {
    setAsked(true);
    if (!into || !kept) return;
    const written = await saving.save(
      [{ kind: 'colonies-joined', day, colony: colony.id, into, queenKept: kept }],
      `${colony.label} joined with ${other}`,
    );
    if (written) onClose();
  };
  return (
    <Sheet title={`Join ${colony.label} with another`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save the joining">
        <ColonySelect
          label={`${colony.label} went into`}
          value={into}
          onChange={setInto}
          without={[colony.id]}
          near={yardOn(colony, store.on.value)}
          problem={asked && !into ? 'Choose the colony it went into.' : undefined}
        />
        <ChoiceRow
          label="Which queen was kept"
          value={kept}
          onChange={setKept}
          options={kepts}
          problem={asked && !kept ? 'Say which, or that it is not known.' : undefined}
        />
        <DayInput label="When" value={day} onChange={setDay} rough />
        <Notice>Join healthy colonies only: disease and mites come along.</Notice>
      </Form>
    </Sheet>
  );
}
