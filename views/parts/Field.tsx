import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import styles from './Field.module.css';
import { FieldProblem } from './FieldProblem.tsx';

export interface FieldProps {
  readonly label: string;
  readonly hint?: ComponentChildren;
  /** What is wrong with the value, and what to do about it. */
  readonly problem?: string | undefined;
  /** Draws the control; it takes the id and the id of its description. */
  readonly children: (control: { readonly id: string; readonly describedBy: string }) => ComponentChildren;
}

/** A labelled control with its hint and, when there is one, its problem underneath. */
export function Field({ label, hint, problem, children }: FieldProps) {
  const id = useId();
  return (
    <div class={styles.field}>
      <label class={styles.label} for={id}>
        {label}
      </label>
      {children({ id, describedBy: `${id}-about` })}
      <div id={`${id}-about`} class={styles.about}>
        {hint && <p>{hint}</p>}
        {problem && <FieldProblem>{problem}</FieldProblem>}
      </div>
    </div>
  );
}

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: ComponentChildren;
  readonly problem?: string | undefined;
  readonly type?: 'text' | 'number' | 'search';
  readonly inputMode?: 'text' | 'numeric' | 'decimal' | 'search';
  readonly placeholder?: string;
  /** Values offered while typing. */
  readonly suggestions?: readonly string[];
}

/** One line of text. */
export function TextField({ value, onChange, type = 'text', suggestions, ...props }: TextFieldProps) {
  const list = useId();
  return (
    <Field label={props.label} hint={props.hint} problem={props.problem}>
      {({ id, describedBy }) => (
        <>
          <input
            id={id}
            type={type}
            step="any"
            inputMode={props.inputMode}
            value={value}
            placeholder={props.placeholder}
            autocomplete="off"
            list={suggestions ? list : undefined}
            aria-describedby={describedBy}
            aria-invalid={props.problem !== undefined}
            onInput={(event) => onChange(event.currentTarget.value)}
          />
          {suggestions && (
            <datalist id={list}>
              {suggestions.map((each) => (
                <option key={each} value={each} />
              ))}
            </datalist>
          )}
        </>
      )}
    </Field>
  );
}

/** Several lines, plain enough for the keyboard's own dictation. */
export function TextArea(props: Omit<TextFieldProps, 'type' | 'suggestions'> & { readonly rows?: number }) {
  return (
    <Field label={props.label} hint={props.hint} problem={props.problem}>
      {({ id, describedBy }) => (
        <textarea
          id={id}
          rows={props.rows ?? 3}
          value={props.value}
          aria-describedby={describedBy}
          aria-invalid={props.problem !== undefined}
          onInput={(event) => props.onChange(event.currentTarget.value)}
        />
      )}
    </Field>
  );
}
