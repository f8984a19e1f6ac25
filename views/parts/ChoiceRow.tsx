import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import spoken from '../style/spoken.module.css';
import styles from './ChoiceRow.module.css';
import { FieldProblem } from './FieldProblem.tsx';
import type { Option } from './SelectField.tsx';

export interface ChoiceRowProps<T extends string> {
  readonly label: string;
  readonly value: T | undefined;
  readonly onChange: (value: T | undefined) => void;
  readonly options: readonly Option<T>[];
  /** A choice that must stand cannot be tapped away. */
  readonly required?: boolean;
  /** The value of the last visit: ringed with dots, never chosen by itself. */
  readonly last?: T | undefined;
  readonly hint?: ComponentChildren;
  readonly problem?: string | undefined;
  /** `hive` for gloved hands; `quiet` for switching a view, words without boxes. */
  readonly size?: 'normal' | 'hive' | 'quiet';
  readonly hideLabel?: boolean;
}

/** A few choices side by side, all in sight. Tapping the chosen one again clears it. */
export function ChoiceRow<T extends string>({
  value,
  onChange,
  size = 'normal',
  ...props
}: ChoiceRowProps<T>) {
  const name = useId();
  return (
    <fieldset class={styles.row} aria-describedby={`${name}-about`}>
      <legend class={props.hideLabel ? spoken.only : styles.label}>{props.label}</legend>
      <div class={`${styles.options} ${styles[size]}`}>
        {props.options.map((option) => (
          <label key={option.value} class={option.value === props.last ? styles.last : undefined}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
              onClick={() => option.value === value && !props.required && onChange(undefined)}
            />
            <span>
              {option.label}
              {option.hint && <small>{option.hint}</small>}
            </span>
          </label>
        ))}
      </div>
      <div id={`${name}-about`} class={styles.about}>
        {props.hint && <p>{props.hint}</p>}
        {props.problem && <FieldProblem>{props.problem}</FieldProblem>}
      </div>
    </fieldset>
  );
}
