import { Field } from './Field.tsx';
import { useTypedNumber } from './use-typed-number.ts';

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onChange: (value: number | undefined) => void;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
}

/** A number typed where tapping would take too long. */
export function NumberField({ label, value, onChange, hint, problem }: NumberFieldProps) {
  const typed = useTypedNumber(value, onChange);
  return (
    <Field label={label} hint={hint} problem={problem}>
      {({ id, describedBy }) => (
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={typed.text}
          aria-describedby={describedBy}
          aria-invalid={problem !== undefined}
          onInput={(event) => typed.onInput(event.currentTarget.value)}
          onBlur={typed.onBlur}
        />
      )}
    </Field>
  );
}
