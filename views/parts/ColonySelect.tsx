import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyId, YardId } from '../../src/journal/ids.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { yardsInOrder } from './colony-facts.ts';
import { type Option, SelectField, type SelectFieldProps } from './SelectField.tsx';

export type ColonySelectProps = Omit<SelectFieldProps<ColonyId>, 'options'> & {
  readonly without?: readonly ColonyId[];
  /** The yard whose colonies come first. */
  readonly near?: YardId | undefined;
};

/** One of the living colonies, yard by yard: the one near by first, the others in the order of driving. */
export function ColonySelect({ without = [], near, ...props }: ColonySelectProps) {
  const { registry, on } = useStore();
  const options = colonyOptions(registry.value, on.value, near).filter(
    ({ value }) => !without.includes(value),
  );
  return <SelectField {...props} options={options} />;
}

export function colonyOptions(registry: Registry, on: PlainDay, near?: YardId): readonly Option<ColonyId>[] {
  const yards = [...yardsInOrder(registry)].sort((a, b) => Number(b.id === near) - Number(a.id === near));
  return yards.flatMap((yard) =>
    coloniesAt(registry, yard.id, on).map(({ id, label }) => ({
      value: id,
      label: yards.length > 1 ? `${label}, ${yard.name}` : label,
    })),
  );
}
