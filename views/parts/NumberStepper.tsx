import { useId } from 'preact/hooks';
import { FieldProblem } from './FieldProblem.tsx';
import styles from './NumberStepper.module.css';
import { useTypedNumber } from './use-typed-number.ts';

export interface NumberStepperProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
  readonly unit?: string;
  /** The value of the last visit. Shown as such; a tap takes it over, the steps count from it. */
  readonly last?: number | undefined;
  /** A value in common use, offered the same way where there is none of a last visit. */
  readonly usual?: number;
  readonly size?: 'normal' | 'hive';
  readonly problem?: string | undefined;
}

/** A number by taps. Empty means not looked at, which is not nought. */
export function NumberStepper({
  value,
  onChange,
  min = 0,
  max = 999,
  step = 1,
  ...props
}: NumberStepperProps) {
  const id = useId();
  const clamp = (number: number) => Math.min(max, Math.max(min, Math.round(number / step) * step));
  const offered = props.last ?? props.usual;
  const move = (by: number) => {
    if (value !== undefined) onChange(clamp(value + by));
    else onChange(clamp(offered === undefined ? (by < 0 ? min : Math.max(min, step)) : offered + by));
  };
  const typed = useTypedNumber(value, onChange);
  return (
    <div class={`${styles.stepper} ${props.size === 'hive' ? styles.hive : ''}`}>
      <label class={styles.label} for={id}>
        {props.label}
        {props.unit && <span class={styles.unit}> {props.unit}</span>}
      </label>
      <div class={styles.control}>
        <button type="button" aria-label={`${props.label}: less`} onClick={() => move(-step)}>
          −
        </button>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={typed.text}
          placeholder="–"
          aria-invalid={props.problem !== undefined}
          onInput={(event) => typed.onInput(event.currentTarget.value)}
          onBlur={typed.onBlur}
        />
        <button type="button" aria-label={`${props.label}: more`} onClick={() => move(step)}>
          +
        </button>
        {value !== undefined ? (
          <button type="button" class={styles.aside} onClick={() => onChange(undefined)}>
            clear
          </button>
        ) : (
          offered !== undefined && (
            <button type="button" class={styles.aside} onClick={() => onChange(offered)}>
              {props.last === undefined ? 'usual' : 'as last'}: {offered}
            </button>
          )
        )}
      </div>
      {props.problem && <FieldProblem>{props.problem}</FieldProblem>}
    </div>
  );
}
