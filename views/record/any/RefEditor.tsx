import { firstDay } from '../../../src/journal/day.ts';
import { dayText } from '../../../src/journal/day-words.ts';
import { kindTitle } from '../../../src/journal/entry.ts';
import type { RefTo } from '../../../src/journal/fields.ts';
import type { Registry } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { colonyOptions } from '../../parts/ColonySelect.tsx';
import { yardsInOrder } from '../../parts/colony-facts.ts';
import { queenOptions } from '../../parts/QueenSelect.tsx';
import { type Option, SelectField } from '../../parts/SelectField.tsx';

/** Entries offered to point to: the latest ones. */
const LATEST = 200;

export interface RefEditorProps {
  readonly label: string;
  readonly to: RefTo;
  readonly value: string | undefined;
  readonly onChange: (value: string | undefined) => void;
  readonly problem?: string | undefined;
}

/** Points to something on record. What is pointed to already stays choosable though it has ended. */
export function RefEditor({ label, to, value, onChange, problem }: RefEditorProps) {
  const store = useStore();
  const registry = store.registry.value;
  const options = optionsFor(to, registry, store.on.value);
  const known = value === undefined || options.some((option) => option.value === value);
  const shown = known ? options : [{ value, label: nameOf(to, value, registry) }, ...options];
  return (
    <SelectField
      label={label}
      options={shown}
      value={value}
      onChange={onChange}
      none="not said"
      problem={problem}
    />
  );
}

function optionsFor(
  to: RefTo,
  registry: Registry,
  on: Parameters<typeof colonyOptions>[1],
): readonly Option<string>[] {
  switch (to) {
    case 'colony':
      return colonyOptions(registry, on);
    case 'queen':
      return queenOptions(registry, on, false);
    case 'yard':
      return yardsInOrder(registry).map(({ id, name }) => ({ value: id, label: name }));
    case 'keeper':
      return [...registry.keepers].map(([id, name]) => ({ value: id, label: name }));
    case 'entry':
      return registry.entries
        .slice(-LATEST)
        .reverse()
        .map((entry) => ({
          value: entry.id,
          label: `${kindTitle(entry.kind)}, ${dayText(firstDay(entry.day))}`,
        }));
    default:
      return [];
  }
}

function nameOf(to: RefTo, id: string, registry: Registry): string {
  if (to === 'colony') return registry.colonies.get(id as never)?.label ?? 'a box not in these records';
  return 'as it stands';
}
