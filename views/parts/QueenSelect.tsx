import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { colonyOfQueen, labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Queen, Registry } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { comingText } from './queen-words.ts';
import { type Option, SelectField, type SelectFieldProps } from './SelectField.tsx';
import { lowerFirst } from './words.ts';

export type QueenSelectProps = Omit<SelectFieldProps<QueenId>, 'options'> & {
  /** Only queens alive now. */
  readonly living?: boolean;
  readonly without?: readonly QueenId[];
};

/** A queen on record, each with her year and the box she is or was in. */
export function QueenSelect({ living = false, without = [], ...props }: QueenSelectProps) {
  const { registry, on } = useStore();
  const options = queenOptions(registry.value, on.value, living).filter(
    ({ value }) => !without.includes(value),
  );
  return <SelectField {...props} options={options} />;
}

export function queenOptions(registry: Registry, on: PlainDay, living: boolean): readonly Option<QueenId>[] {
  return [...registry.queens.values()]
    .filter((queen) => !living || isLiving(queen))
    .map((queen) => ({ value: queen.id, label: nameAndPlace(queen, registry, on) }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }) || (a.value < b.value ? -1 : 1));
}

function isLiving({ state }: Queen): boolean {
  return state.is === 'laying' || state.is === 'expected' || state.is === 'unknown';
}

function nameAndPlace(queen: Queen, registry: Registry, on: PlainDay): string {
  const here =
    colonyOfQueen(registry, queen, on) ?? (queen.expectedIn && registry.colonies.get(queen.expectedIn));
  const place = here
    ? `in ${labelOn(here, on)}`
    : isLiving(queen)
      ? 'place not known'
      : 'no longer alive here';
  const year = queen.name && queen.born ? ` (${queen.born.first.slice(0, 4)})` : '';
  const coming = comingText(queen, registry, on);
  return `${queenTitle(queen)}${year}, ${place}${coming ? `: ${lowerFirst(coming)}` : ''}`;
}
