import { useState } from 'preact/hooks';
import { type EntryKind, kindTitle } from '../../../src/journal/entry.ts';
import { fieldsOf } from '../../../src/journal/fields.ts';
import type { EntryId } from '../../../src/journal/ids.ts';
import { Form } from '../../parts/Form.tsx';
import { useSaving } from '../../parts/use-saving.ts';
import { Asked } from './asked.ts';
import styles from './editors.module.css';
import { FieldEditor } from './FieldEditor.tsx';
import { anyMissing, labelAt } from './missing.ts';
import { draftOf, isMade, type Values } from './values.ts';

export interface AnyFormProps {
  readonly kind: EntryKind;
  readonly initial: Values;
  /** The entry that this one corrects. */
  readonly supersedes?: EntryId;
  readonly onSaved: () => void;
}

/** A form made from the schema of a kind of entry. What the schema or the journal refuses is said when saving. */
export function AnyForm({ kind, initial, supersedes, onSaved }: AnyFormProps) {
  const saving = useSaving();
  const [values, setValues] = useState(initial);
  const [asked, setAsked] = useState(false);
  const fields = fieldsOf(kind).filter(({ name }) => !isMade(kind, name));
  const save = async () => {
    setAsked(true);
    if (anyMissing(fields, values)) return;
    const draft = draftOf(kind, values);
    const title = supersedes ? `Correction: ${kindTitle(kind)}` : kindTitle(kind);
    const whole = supersedes ? { ...draft, supersedes } : draft;
    if (await saving.save([whole], title)) onSaved();
  };
  return (
    <Asked.Provider value={asked}>
      <Form
        saving={saving}
        onSubmit={save}
        submit={supersedes ? 'Save the correction' : 'Save'}
        nameField={(path) => labelAt(fields, path)}
      >
        <p class={styles.none}>What is left empty stays unknown.</p>
        {fields.map((field) => (
          <FieldEditor
            key={field.name}
            field={field}
            value={values[field.name]}
            onChange={(value) => setValues({ ...values, [field.name]: value })}
          />
        ))}
      </Form>
    </Asked.Provider>
  );
}
