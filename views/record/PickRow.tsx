import { useId } from 'preact/hooks';
import { number } from '../parts/words.ts';
import styles from './PickRow.module.css';

export interface PickRowProps {
  readonly label: string;
  /** Whole numbers to pick from, all in sight. */
  readonly values: readonly number[];
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  /** The value of the last visit: marked by dots, never picked by itself. */
  readonly last?: { readonly value: number; readonly when: string } | undefined;
  /** What the ends mean, or what the picked value means. */
  readonly hint?: string | undefined;
  /** Lets the whole numbers shown move down and up. */
  readonly onShift?: (by: number) => void;
}

/** A number by one tap, large enough for a glove. A half is added by another tap; tapping the pick again clears it. */
export function PickRow({ label, values, value, onChange, last, hint, onShift }: PickRowProps) {
  const name = useId();
  const whole = value === undefined ? undefined : Math.floor(value);
  const half = value !== undefined && value !== whole;
  const top = values.at(-1) ?? 0;
  return (
    <div class={styles.row} role="radiogroup" aria-labelledby={name}>
      <div class={styles.head}>
        <span id={name} class={styles.label}>
          {label}
        </span>
        <span class={styles.hint}>{hint ?? (last ? `last ${number(last.value)}, ${last.when}` : '')}</span>
        {whole !== undefined && (onShift || whole < top) && (
          <button
            type="button"
            class={styles.half}
            aria-pressed={half}
            aria-label={`${label}: and a half`}
            onClick={() => onChange(half ? whole : whole + 0.5)}
          >
            + ½
          </button>
        )}
      </div>
      <div class={styles.picks}>
        {onShift && (
          <button
            type="button"
            class={styles.shift}
            aria-label={`${label}: fewer`}
            onClick={() => onShift(-values.length)}
          >
            ‹
          </button>
        )}
        {values.map((each) => (
          <label key={each} class={last && Math.floor(last.value) === each ? styles.last : undefined}>
            <input
              type="radio"
              name={name}
              checked={whole === each}
              aria-label={`${label}: ${each}`}
              onChange={() => onChange(each)}
              onClick={() => whole === each && onChange(undefined)}
            />
            <span>{whole === each && half ? number(value ?? each) : each}</span>
          </label>
        ))}
        {onShift && (
          <button
            type="button"
            class={styles.shift}
            aria-label={`${label}: more`}
            onClick={() => onShift(values.length)}
          >
            ›
          </button>
        )}
      </div>
    </div>
  );
}
