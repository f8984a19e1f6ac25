import { useContext } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { Field } from '../../../src/journal/fields.ts';
import type { PhotoId } from '../../../src/journal/ids.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextArea, TextField } from '../../parts/Field.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { SelectField } from '../../parts/SelectField.tsx';
import { PhotoField } from '../PhotoField.tsx';
import { Asked } from './asked.ts';
import { choiceWords } from './choice-words.ts';
import { GroupEditor } from './GroupEditor.tsx';
import { ListEditor } from './ListEditor.tsx';
import { isMissing } from './missing.ts';
import { RefEditor } from './RefEditor.tsx';
import { VariantsEditor } from './VariantsEditor.tsx';

export interface EditorProps {
  readonly field: Field;
  readonly value: unknown;
  readonly onChange: (value: unknown) => void;
}

const LONG_TEXTS: ReadonlySet<string> = new Set(['text', 'note', 'remark']);
/** Up to so many choices stand side by side. */
const SIDE_BY_SIDE = 6;
const YES_NO = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const;

/** The control for one field, by its shape. */
export function FieldEditor({ field, value, onChange }: EditorProps) {
  const on = useStore().on.value;
  const { shape, name } = field;
  const { label } = field;
  const asked = useContext(Asked);
  const problem = asked && isMissing(field, value) ? 'Fill this in.' : undefined;
  const text = value === undefined ? '' : String(value);
  switch (shape.type) {
    case 'text': {
      const Text = LONG_TEXTS.has(name) ? TextArea : TextField;
      return <Text label={label} value={text} onChange={onChange} problem={problem} />;
    }
    case 'number':
      return (
        <NumberField
          label={label}
          value={value as number | undefined}
          onChange={onChange}
          hint={limits(shape)}
          problem={problem}
        />
      );
    case 'yes-no':
      return (
        <ChoiceRow
          label={label}
          options={YES_NO}
          problem={problem}
          value={value === undefined ? undefined : value ? 'yes' : 'no'}
          onChange={(answer) => onChange(answer === undefined ? undefined : answer === 'yes')}
        />
      );
    case 'choice': {
      const options = shape.options.map((option) => ({ value: option, label: choiceWords(option) }));
      const Choice = options.length > SIDE_BY_SIDE ? SelectField : ChoiceRow;
      return (
        <Choice
          label={label}
          options={options}
          value={value as string | undefined}
          onChange={onChange}
          none="not said"
          problem={problem}
        />
      );
    }
    case 'day':
    case 'rough-day':
      if (!field.optional) {
        return (
          <DayInput
            label={label}
            value={(value ?? on) as RoughDay}
            onChange={onChange}
            rough={shape.type === 'rough-day'}
          />
        );
      }
      return (
        <TextField
          label={label}
          value={text}
          onChange={onChange}
          placeholder="2026-05-14"
          hint={
            shape.type === 'day'
              ? 'A day, such as 2026-05-14.'
              : 'A day, a month or a year: 2026-05-14, 2026-05 or 2026.'
          }
        />
      );
    case 'ref':
      return (
        <RefEditor
          problem={problem}
          label={label}
          to={shape.to}
          value={value as string | undefined}
          onChange={onChange}
        />
      );
    case 'list':
      if (shape.of.type === 'ref' && shape.of.to === 'photo') {
        return <PhotoField value={(value ?? []) as PhotoId[]} onChange={onChange} />;
      }
      return (
        <ListEditor
          problem={problem}
          label={label}
          of={shape.of}
          value={(value ?? []) as readonly unknown[]}
          onChange={onChange}
        />
      );
    case 'group':
      return <GroupEditor label={label} fields={shape.fields} value={value} onChange={onChange} />;
    case 'variants':
      return (
        <VariantsEditor problem={problem} label={label} shape={shape} value={value} onChange={onChange} />
      );
    case 'fixed':
      return null;
  }
}

function limits({ min, max }: { readonly min?: number; readonly max?: number }): string | undefined {
  if (min !== undefined && max !== undefined) return `${min} to ${max}`;
  return min === undefined ? undefined : `${min} or more`;
}
