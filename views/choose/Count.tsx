import { useId } from 'preact/hooks';
import styles from './Count.module.css';

export interface CountProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly min: number;
  readonly max: number;
  readonly step?: number;
  readonly unit?: string;
  /** Words for no number; with them the number can be cleared. */
  readonly none?: string;
}

/** A number that a plan is made with: one line, the label before it, changed by taps or typed. */
export function Count({ label, value, onChange, min, max, step = 1, unit, none }: CountProps) {
  const id = useId();
  const clamp = (next: number) => Math.min(max, Math.max(min, Math.round(next / step) * step));
  const move = (by: number) => onChange(clamp(value === undefined ? (by > 0 ? min : max) : value + by));
  const typed = (text: string) => {
    if (text.trim() === '') return onChange(none === undefined ? value : undefined);
    const next = Number(text);
    if (!Number.isNaN(next)) onChange(clamp(next));
  };
  return (
    <div class={styles.count}>
      <span class={styles.words}>
        <label for={id}>
          {label}
          {unit && <span class={styles.unit}>{`\u00a0${unit}`}</span>}
        </label>
        {none !== undefined &&
          (value === undefined ? (
            <span class={styles.none}>{none}</span>
          ) : (
            <button type="button" class={styles.clear} onClick={() => onChange(undefined)}>
              {none}
            </button>
          ))}
      </span>
      <span class={styles.control}>
        <button type="button" aria-label={`${label}: less`} onClick={() => move(-step)}>
          −
        </button>
        <input
          id={id}
          type="number"
          inputMode="decimal"
          min={min}
          max={max}
          step="any"
          value={value ?? ''}
          placeholder="–"
          onChange={(event) => typed(event.currentTarget.value)}
        />
        <button type="button" aria-label={`${label}: more`} onClick={() => move(step)}>
          +
        </button>
      </span>
    </div>
  );
}
