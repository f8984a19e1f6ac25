import type { ComponentChildren } from 'preact';
import styles from './CheckList.module.css';
import { FieldProblem } from './FieldProblem.tsx';
import type { Option } from './SelectField.tsx';

export interface CheckListProps<T extends string> {
  readonly label: string;
  readonly options: readonly Option<T>[];
  readonly value: readonly T[];
  readonly onChange: (value: readonly T[]) => void;
  readonly hint?: ComponentChildren;
  readonly problem?: string | undefined;
}

/** Any number of choices, each a tick of its own. */
export function CheckList<T extends string>({
  label,
  options,
  value,
  onChange,
  hint,
  problem,
}: CheckListProps<T>) {
  const toggle = (each: T) =>
    onChange(value.includes(each) ? value.filter((other) => other !== each) : [...value, each]);
  return (
    <fieldset class={styles.list}>
      <legend class={styles.label}>{label}</legend>
      <div class={styles.options}>
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="checkbox"
              checked={value.includes(option.value)}
              onChange={() => toggle(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      {hint && <p class={styles.hint}>{hint}</p>}
      {problem && <FieldProblem>{problem}</FieldProblem>}
    </fieldset>
  );
}
