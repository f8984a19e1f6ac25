import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { yardsInOrder } from './colony-facts.ts';
import { type Option, SelectField, type SelectFieldProps } from './SelectField.tsx';

export type ColonySelectProps = Omit<SelectFieldProps<ColonyId>, 'options'> & {
  readonly without?: readonly ColonyId[];
};

/** One of the living colonies, yard by yard in the order of driving. */
export function ColonySelect({ without = [], ...props }: ColonySelectProps) {
  const { registry, on } = useStore();
  const options = colonyOptions(registry.value, on.value).filter(({ value }) => !without.includes(value));
  return <SelectField {...props} options={options} />;
}

export function colonyOptions(registry: Registry, on: PlainDay): readonly Option<ColonyId>[] {
  const yards = yardsInOrder(registry);
  return yards.flatMap((yard) =>
    coloniesAt(registry, yard.id, on).map(({ id, label }) => ({
      value: id,
      label: yards.length > 1 ? `${label}, ${yard.name}` : label,
    })),
  );
}
