import { useState } from 'preact/hooks';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { TextArea } from '../../parts/Field.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { PhotoField } from '../PhotoField.tsx';
import { SeenChips } from '../SeenChips.tsx';
import type { LookProps } from './InspectionForm.tsx';
import styles from './More.module.css';

type Drones = NonNullable<EntryOf<'inspection'>['drones']>;

const DRONES: readonly { readonly value: Drones; readonly label: string }[] = [
  { value: 'none', label: 'None' },
  { value: 'brood', label: 'Brood' },
  { value: 'flying', label: 'Flying' },
];

const TROUBLE = [
  { key: 'droneBroodOnly', there: 'Drone brood only', missing: 'Not drone brood only' },
  { key: 'severalEggsInCells', there: 'Several eggs a cell', missing: 'One egg a cell' },
] as const;

/** A note and a picture; and, opened on demand, what is seldom looked at. */
export function More({ look, onSeen }: LookProps) {
  const { seen } = look;
  const used = [seen.drones, seen.broodPattern, seen.droneBroodOnly, seen.severalEggsInCells].some(
    (value) => value !== undefined,
  );
  const [open, setOpen] = useState(used);
  return (
    <div class={styles.more}>
      <TextArea
        label="Note"
        value={seen.note ?? ''}
        onChange={(note) => onSeen({ note })}
        hint="The microphone of the keyboard writes here too."
        rows={2}
      />
      <PhotoField value={seen.photos ?? []} onChange={(photos) => onSeen({ photos })} />
      {!open && (
        <Button look="quiet" onPress={() => setOpen(true)}>
          Drones, brood pattern, signs of trouble
        </Button>
      )}
      {open && (
        <>
          <ChoiceRow
            label="Drones"
            size="hive"
            options={DRONES}
            value={seen.drones}
            onChange={(drones) => onSeen({ drones })}
          />
          <NumberStepper
            label="Brood cells filled in a full patch"
            unit="(percent)"
            size="hive"
            step={5}
            max={100}
            value={seen.broodPattern}
            onChange={(broodPattern) => onSeen({ broodPattern })}
          />
          <SeenChips
            label="Signs of trouble"
            chips={TROUBLE}
            value={seen}
            onChange={(key, value) => onSeen({ [key]: value })}
          />
        </>
      )}
    </div>
  );
}
