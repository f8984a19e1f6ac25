import { addDays, firstDay, isExactDay, lastDay, type PlainDay, type RoughDay } from '../journal/day.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import type { Registry } from './state.ts';

/**
 * Whose daughters the workers of a colony are on a day. A worker emerges 21 days after the egg was laid; until then
 * all workers are the old queen's. About 40 days after a new queen began to lay they are all hers (standard methods
 * for rearing and selection of queens, section 3.1.4: Buchler et al. 2013, J. Apic. Res. 52(1)); in between they are
 * mixed. For a part of a split the days before it began are those of the colony it was taken from.
 */
export const EGG_TO_WORKER_DAYS = 21;
export const ALL_HERS_DAYS = 40;

export type WorkersOf =
  | { readonly known: true; readonly queen: QueenId }
  | { readonly known: false; readonly because: 'changing-over' | 'nobody-known' | 'day-not-exact' };

/** The queen whose daughters the workers of this colony were on that day, or why that cannot be said. */
export function workersOf(registry: Registry, colony: ColonyId, day: RoughDay): WorkersOf {
  const layers = layersOf(registry, colony);
  const answer = workersAt(layers, lastDay(day));
  if (isExactDay(day)) return answer;
  const before = workersAt(layers, firstDay(day));
  const same = answer.known && before.known && answer.queen === before.queen;
  return same ? answer : { known: false, because: 'day-not-exact' };
}

function workersAt(layers: readonly Layer[], on: PlainDay): WorkersOf {
  const index = layers.findLastIndex(({ from }) => from <= addDays(on, -EGG_TO_WORKER_DAYS));
  const layer = layers[index];
  if (!layer?.queen) return { known: false, because: 'nobody-known' };
  const settled = index === 0 || layer.from <= addDays(on, -ALL_HERS_DAYS);
  return settled ? { known: true, queen: layer.queen } : { known: false, because: 'changing-over' };
}

interface Layer {
  /** Absent for the bees that a colony began with, where nobody knows whose daughters they were. */
  readonly queen?: QueenId;
  readonly from: PlainDay;
}

/**
 * Who laid the eggs that fed a colony with bees, and since when: its own queens, and before them those of the colony
 * it was split from. A queen who moved with her bees is one layer.
 */
function layersOf(registry: Registry, id: ColonyId): readonly Layer[] {
  const layers: Layer[] = [];
  const seen = new Set<ColonyId>();
  let colony = registry.colonies.get(id);
  let until: PlainDay | undefined;
  while (colony && !seen.has(colony.id)) {
    seen.add(colony.id);
    for (const { queen, from, layingFrom } of colony.tenures.toReversed()) {
      const start = firstDay(layingFrom ?? from);
      if (until !== undefined && start > until) continue;
      if (layers[0]?.queen === queen) layers[0] = { queen, from: start };
      else layers.unshift({ queen, from: start });
    }
    until = firstDay(colony.started);
    const root = colony.splitFrom === undefined;
    const first = layers[0];
    if (root && (first === undefined || first.from > until || colony.how === 'package'))
      layers.unshift({ from: until });
    colony = colony.splitFrom && registry.colonies.get(colony.splitFrom);
  }
  return layers;
}
