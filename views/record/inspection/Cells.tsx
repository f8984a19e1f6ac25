import { useState } from 'preact/hooks';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import styles from './Cells.module.css';
import type { LookProps } from './InspectionForm.tsx';

const KINDS = [
  { field: 'openCells', label: 'Open' },
  { field: 'cappedCells', label: 'Capped' },
  { field: 'emergedCells', label: 'Emerged' },
  { field: 'tornCells', label: 'Torn down' },
] as const;

const ANY = [
  { value: 'none', label: 'None' },
  { value: 'some', label: 'Some' },
] as const;

/** Queen cells: none by one tap; some, with how many of which kind. */
export function Cells({ look, onSeen }: LookProps) {
  const { openCells, cappedCells, emergedCells, tornCells } = look.seen;
  const counts = [openCells, cappedCells, emergedCells, tornCells];
  const said = counts.some((count) => count !== undefined);
  const none = said && counts.every((count) => count === undefined || count === 0);
  const [some, setSome] = useState(said && !none);
  const choose = (value: 'none' | 'some' | undefined) => {
    setSome(value === 'some');
    const zero = value === 'none' ? 0 : undefined;
    onSeen({ openCells: zero, cappedCells: zero, emergedCells: undefined, tornCells: undefined });
  };
  return (
    <div class={styles.cells}>
      <ChoiceRow
        label="Queen cells"
        size="hive"
        options={ANY}
        value={some ? 'some' : none ? 'none' : undefined}
        onChange={choose}
      />
      {some && (
        <div class={styles.kinds}>
          {KINDS.map(({ field, label }) => (
            <NumberStepper
              key={field}
              label={label}
              size="hive"
              max={200}
              value={look.seen[field]}
              onChange={(value) => onSeen({ [field]: value })}
            />
          ))}
        </div>
      )}
    </div>
  );
}
