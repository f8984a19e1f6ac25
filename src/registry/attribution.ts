import { addDays, firstDay, isExactDay, lastDay, type PlainDay, type RoughDay } from '../journal/day.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import type { Registry, Tenure } from './state.ts';

/**
 * Whose daughters the workers of a colony are on a day. A worker emerges 21 days after the egg was laid, and about 40
 * days after a new queen began to lay all workers are hers (standard methods for rearing and selection of queens,
 * section 3.1.4: Buchler et al. 2013, J. Apic. Res. 52(1)). So the workers of a day come from the eggs laid 21 to 40
 * days before it: one layer in that window, and they are hers; two, and they are mixed; none, and they are those of
 * the last who laid. For a part of a split the days before it began are those of the colony it was taken from.
 */
export const EGG_TO_WORKER_DAYS = 21;
export const ALL_HERS_DAYS = 40;

export type WorkersOf =
  | { readonly known: true; readonly queen: QueenId }
  | { readonly known: false; readonly because: 'changing-over' | 'nobody-known' | 'day-not-exact' };

/** The queen whose daughters the workers of this colony were on that day, or why that cannot be said. */
export function workersOf(registry: Registry, colony: ColonyId, day: RoughDay): WorkersOf {
  const tenures = layersOf(registry, colony);
  const from = addDays(firstDay(day), -ALL_HERS_DAYS);
  const to = addDays(lastDay(day), -EGG_TO_WORKER_DAYS);
  const layers = new Set(tenures.filter((tenure) => laidWithin(tenure, from, to)).map(({ queen }) => queen));
  const [only] = layers;
  if (layers.size === 1 && only) return { known: true, queen: only };
  if (!isExactDay(day)) return { known: false, because: 'day-not-exact' };
  if (layers.size > 1) return { known: false, because: 'changing-over' };
  const last = tenures.findLast((tenure) => firstDay(tenure.layingFrom ?? tenure.from) <= to);
  return last ? { known: true, queen: last.queen } : { known: false, because: 'nobody-known' };
}

/** Spans of laying that fed a colony with bees: its own, and before them those of the colony it was split from. */
function layersOf(registry: Registry, id: ColonyId): readonly Tenure[] {
  const chain: Tenure[] = [];
  let until: PlainDay | undefined;
  const seen = new Set<ColonyId>();
  let colony = registry.colonies.get(id);
  while (colony && !seen.has(colony.id)) {
    seen.add(colony.id);
    const limit = until;
    const own = colony.tenures.filter((tenure) => limit === undefined || firstDay(tenure.from) <= limit);
    chain.unshift(...own.map((tenure) => (limit === undefined ? tenure : cutAt(tenure, limit))));
    until = firstDay(colony.started);
    colony = colony.splitFrom && registry.colonies.get(colony.splitFrom);
  }
  return chain;
}

function cutAt(tenure: Tenure, day: PlainDay): Tenure {
  return tenure.to === undefined || firstDay(tenure.to) > day ? { ...tenure, to: day } : tenure;
}

/** Whether eggs of this tenure were laid in the span; on its last day a tenure lays no more. */
function laidWithin(tenure: Tenure, from: PlainDay, to: PlainDay): boolean {
  if (firstDay(tenure.layingFrom ?? tenure.from) > to) return false;
  return tenure.to === undefined || lastDay(tenure.to) > from;
}
