import type { Field } from '../../../src/journal/fields.ts';
import styles from './editors.module.css';
import { FieldEditor } from './FieldEditor.tsx';
import { newIdFor, type Values } from './values.ts';

export interface GroupEditorProps {
  readonly label: string;
  readonly fields: readonly Field[];
  readonly value: unknown;
  readonly onChange: (value: Values) => void;
}

/** Fields that belong together. */
export function GroupEditor({ label, fields, value, onChange }: GroupEditorProps) {
  return (
    <fieldset class={styles.group}>
      <legend>{label}</legend>
      <Fields fields={fields} value={value} onChange={onChange} />
    </fieldset>
  );
}

export function Fields({ fields, value, onChange }: Omit<GroupEditorProps, 'label'>) {
  const values = withMade(fields, (value ?? {}) as Values);
  return (
    <>
      {fields
        .filter(({ name }) => name !== 'expected')
        .map((field) => (
          <FieldEditor
            key={field.name}
            field={field}
            value={values[field.name]}
            onChange={(next) => onChange({ ...values, [field.name]: next })}
          />
        ))}
    </>
  );
}

/** An expected queen gets her id with the first thing said of her. */
function withMade(fields: readonly Field[], values: Values): Values {
  const made = fields.find(({ name }) => name === 'expected');
  return made && values.expected === undefined ? { ...values, expected: newIdFor(made.shape) } : values;
}
