import type { ComponentChildren } from 'preact';
import { Field } from './Field.tsx';

export interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
  readonly hint?: string;
}

export interface SelectFieldProps<T extends string> {
  readonly label: string;
  readonly value: T | undefined;
  readonly onChange: (value: T | undefined) => void;
  readonly options: readonly Option<T>[];
  /** Words for no choice; without them a choice must be made. */
  readonly none?: string;
  readonly hint?: ComponentChildren;
  readonly problem?: string | undefined;
}

/** One of many; for a handful use `ChoiceRow`. */
export function SelectField<T extends string>({ value, onChange, options, ...props }: SelectFieldProps<T>) {
  const choose = (text: string) => onChange(options.find((option) => option.value === text)?.value);
  return (
    <Field label={props.label} hint={props.hint} problem={props.problem}>
      {({ id, describedBy }) => (
        <select
          id={id}
          aria-describedby={describedBy}
          aria-invalid={props.problem !== undefined}
          value={value ?? ''}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {(props.none !== undefined || value === undefined) && (
            <option value="">{props.none ?? 'Choose'}</option>
          )}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
