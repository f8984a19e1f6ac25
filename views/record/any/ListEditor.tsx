import type { Shape } from '../../../src/journal/fields.ts';
import type { ColonyId } from '../../../src/journal/ids.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { CheckList } from '../../parts/CheckList.tsx';
import { colonyOptions } from '../../parts/ColonySelect.tsx';
import styles from './editors.module.css';
import { FieldEditor } from './FieldEditor.tsx';
import { Fields } from './GroupEditor.tsx';

export interface ListEditorProps {
  readonly label: string;
  readonly of: Shape;
  readonly value: readonly unknown[];
  readonly onChange: (value: readonly unknown[]) => void;
  readonly problem?: string | undefined;
}

/** Any number of the same: colonies as ticks, everything else one under the other. */
export function ListEditor({ label, of, value, onChange, problem }: ListEditorProps) {
  const { registry, on } = useStore();
  if (of.type === 'ref' && of.to === 'colony') {
    return (
      <CheckList
        label={label}
        options={colonyOptions(registry.value, on.value)}
        value={value as readonly ColonyId[]}
        onChange={onChange}
        problem={problem}
      />
    );
  }
  const set = (at: number, item: unknown) =>
    onChange(value.map((each, index) => (index === at ? item : each)));
  return (
    <fieldset class={styles.group}>
      <legend>{label}</legend>
      {value.length === 0 && <p class={problem ? styles.problem : styles.none}>{problem ?? 'None said.'}</p>}
      {value.map((item, at) => (
        <div key={at} class={styles.item}>
          {of.type === 'group' ? (
            <Fields fields={of.fields} value={item} onChange={(next) => set(at, next)} />
          ) : (
            <FieldEditor
              field={{ name: 'item', label: `${label} ${at + 1}`, optional: false, shape: of }}
              value={item}
              onChange={(next) => set(at, next)}
            />
          )}
          <Button look="quiet" onPress={() => onChange(value.filter((_, index) => index !== at))}>
            Leave out
          </Button>
        </div>
      ))}
      <Button onPress={() => onChange([...value, of.type === 'group' ? {} : undefined])}>
        {value.length === 0 ? 'Add one' : 'Add another'}
      </Button>
    </fieldset>
  );
}
