import { addDays, type PlainDay } from '../../src/journal/day.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Colony, Registry, Yard } from '../../src/registry/state.ts';
import type { Settings } from '../../src/store/settings.ts';
import { byRoof, yardsInOrder } from '../parts/colony-facts.ts';
import { type CountSaid, countsOf, effectOf, growthOf, type TwoCounts } from './counts.ts';
import { type Due, nextCount } from './due.ts';
import { againstMites } from './treatments.ts';

/** One living colony on the page of mites. */
export interface Surveyed {
  readonly colony: Colony;
  readonly yard: Yard;
  readonly counts: readonly CountSaid[];
  /** The last count; absent where it was never counted. */
  readonly last?: CountSaid;
  readonly effect?: TwoCounts;
  readonly growth?: TwoCounts;
  readonly due?: Due;
}

/** All living colonies with their last count and what follows from it, yard by yard along the stands. */
export function survey(registry: Registry, on: PlainDay, settings: Settings): readonly Surveyed[] {
  return yardsInOrder(registry).flatMap((yard) =>
    byRoof(coloniesAt(registry, yard.id, on), on)
      .flat()
      .map((colony) => surveyed(registry, colony, yard, on, settings)),
  );
}

function surveyed(
  registry: Registry,
  colony: Colony,
  yard: Yard,
  on: PlainDay,
  settings: Settings,
): Surveyed {
  const counts = countsOf(registry, colony, on, settings.miteThresholds);
  const last = counts.at(-1);
  const effect = last && effectOf(counts, last);
  const growth = growthOf(counts, againstMites(registry, colony));
  const due = nextCount(registry, colony, on, settings);
  return {
    colony,
    yard,
    counts,
    ...(last ? { last } : {}),
    ...(effect ? { effect } : {}),
    ...(growth ? { growth } : {}),
    ...(due ? { due } : {}),
  };
}

/** Days after which a last count says little of a colony's mites now: as for growth, a season is over. */
export const STALE_DAYS = 200;

/** Those counted within the last season, and those not. */
export function recentlyCounted(
  colonies: readonly Surveyed[],
  on: PlainDay,
): {
  readonly counted: readonly (Surveyed & { readonly last: CountSaid })[];
  readonly others: readonly Surveyed[];
} {
  const oldest = addDays(on, -STALE_DAYS) as string;
  const counted: (Surveyed & { readonly last: CountSaid })[] = [];
  const others: Surveyed[] = [];
  for (const each of colonies) {
    if (each.last && each.last.entry.day >= oldest) counted.push({ ...each, last: each.last });
    else others.push(each);
  }
  return { counted, others };
}

/** The highest found first; ties by the upper limit, then by label. */
export function highestFirst<T extends { readonly last: CountSaid; readonly colony: Colony }>(
  colonies: readonly T[],
): readonly T[] {
  return [...colonies].sort(
    (a, b) =>
      b.last.figure.value - a.last.figure.value ||
      b.last.figure.high - a.last.figure.high ||
      a.colony.label.localeCompare(b.colony.label, 'en', { numeric: true }) ||
      (a.colony.id < b.colony.id ? -1 : 1),
  );
}
