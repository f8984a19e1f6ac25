import type { Shape } from '../../../src/journal/fields.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { choiceWords } from './choice-words.ts';
import styles from './editors.module.css';
import { Fields } from './GroupEditor.tsx';
import type { Values } from './values.ts';

export interface VariantsEditorProps {
  readonly label: string;
  readonly shape: Extract<Shape, { type: 'variants' }>;
  readonly value: unknown;
  readonly onChange: (value: Values | undefined) => void;
  readonly problem?: string | undefined;
}

/** One of several ways, each with fields of its own. */
export function VariantsEditor({ label, shape, value, onChange, problem }: VariantsEditorProps) {
  const values = (value ?? {}) as Values;
  const chosen = shape.variants.find((variant) => variant.value === values[shape.key]);
  return (
    <div class={styles.group}>
      <ChoiceRow
        label={label}
        problem={problem}
        options={shape.variants.map((variant) => ({
          value: variant.value,
          label: choiceWords(variant.value),
        }))}
        value={chosen?.value}
        onChange={(next) => onChange(next === undefined ? undefined : { ...values, [shape.key]: next })}
      />
      {chosen && (
        <Fields
          fields={chosen.fields}
          value={values}
          onChange={(next) => onChange({ ...next, [shape.key]: chosen.value })}
        />
      )}
    </div>
  );
}
