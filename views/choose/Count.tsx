import { useId, useState } from 'preact/hooks';
import { readNumber } from '../parts/use-typed-number.ts';
import styles from './Count.module.css';

export interface CountProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly min: number;
  readonly max: number;
  /** What a tap adds or takes away; any whole number can be typed. */
  readonly step?: number;
  readonly unit?: string;
  /** Words for no number; with them the number can be cleared. */
  readonly none?: string;
}

/** A whole number that a plan is made with: one line, the label before it, changed by taps or typed. */
export function Count({ label, value, onChange, min, max, step = 1, unit, none }: CountProps) {
  const id = useId();
  // What is being typed stays as it is while the page is drawn anew around it.
  const [typing, setTyping] = useState<string>();
  const within = (next: number) => Math.min(max, Math.max(min, Math.round(next)));
  const move = (by: number) => {
    const from = value ?? (by > 0 ? min - by : max - by);
    onChange(within(Math.round((from + by) / step) * step));
  };
  const take = (text: string) => {
    setTyping(undefined);
    const next = readNumber(text);
    if (next !== undefined) onChange(within(next));
    else if (text.trim() === '' && none !== undefined) onChange(undefined);
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
          inputMode="numeric"
          min={min}
          max={max}
          step="any"
          value={typing ?? value ?? ''}
          placeholder="–"
          onInput={(event) => setTyping(event.currentTarget.value)}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <button type="button" aria-label={`${label}: more`} onClick={() => move(step)}>
          +
        </button>
      </span>
    </div>
  );
}
