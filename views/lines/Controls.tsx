import type { Signal } from '@preact/signals';
import type { QueenId, YardId } from '../../src/journal/ids.ts';
import type { Yard } from '../../src/registry/state.ts';
import styles from './Controls.module.css';
import { FindQueen } from './FindQueen.tsx';
import type { LinesFilter } from './filter.ts';

export interface ControlsProps {
  readonly filter: Signal<LinesFilter>;
  readonly yards: readonly Yard[];
  /** Chooses a queen found by name; absent where there are so few that nobody needs to be looked for. */
  readonly onFind?: ((queen: QueenId) => void) | undefined;
}

/** Whom to look for, and which queens the drawing shows: all or the living with their dams, of every yard or of one. */
export function Controls({ filter, yards, onFind }: ControlsProps) {
  const { living, yard } = filter.value;
  return (
    <div class={styles.controls}>
      {onFind && <FindQueen onChoose={onFind} />}
      <label class={styles.check}>
        <input
          type="checkbox"
          checked={living}
          onChange={(event) => {
            filter.value = { ...filter.value, living: event.currentTarget.checked };
          }}
        />
        Only the living and their dams
      </label>
      {yards.length > 1 && (
        <label class={styles.yard}>
          Yard
          <select
            value={yard ?? ''}
            onChange={(event) => {
              const chosen = event.currentTarget.value;
              filter.value = { ...filter.value, yard: chosen ? (chosen as YardId) : undefined };
            }}
          >
            <option value="">every yard</option>
            {yards.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
    </div>
  );
}
