import { dayNumber, firstDay, isExactDay, lastDay, type RoughDay } from '../journal/day.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import type { Colony, Registry, Tenure } from './state.ts';

/**
 * Whose daughters the workers of a colony are on a day. A worker emerges 21 days after the egg was laid; until then
 * all workers are the old queen's. About 40 days after a new queen began to lay they are all hers (standard methods
 * for rearing and selection of queens, section 3.1.4: Buchler et al. 2013, J. Apic. Res. 52(1)); in between they are
 * mixed. For a part of a split the days before it began are those of the colony it was taken from.
 */
const EGG_TO_WORKER_DAYS = 21;
export const ALL_HERS_DAYS = 40;

export type WorkersOf =
  | { readonly known: true; readonly queen: QueenId }
  | { readonly known: false; readonly because: 'changing-over' | 'nobody-known' | 'day-not-exact' };

/** The queen whose daughters the workers of this colony were on that day, or why that cannot be said. */
export function workersOf(registry: Pick<Registry, 'colonies'>, colony: ColonyId, day: RoughDay): WorkersOf {
  const layers = layersOf(registry.colonies, colony);
  const answer = workersAt(layers, dayNumber(lastDay(day)));
  if (isExactDay(day)) return answer;
  const before = workersAt(layers, dayNumber(firstDay(day)));
  const same = answer.known && before.known && answer.queen === before.queen;
  return same ? answer : { known: false, because: 'day-not-exact' };
}

/** A span of days, by number, in which one queen laid the eggs that fed a colony with bees. */
interface Layer {
  /** Absent where nobody knows who laid: the bees a colony began with, and the time of a change that nobody saw. */
  readonly queen?: QueenId;
  readonly from: number;
  /** Infinite: still. */
  readonly to: number;
  /** The day on which the bees came here, where they came with another colony. */
  readonly joined?: number;
}

/**
 * All workers are hers if nobody else laid in the days in which the eggs of today's workers were laid. In a colony
 * without eggs the bees grow old: then the last days count in which somebody laid.
 */
function workersAt(all: readonly Layer[], on: number): WorkersOf {
  const layers = all.filter(({ joined }) => joined === undefined || joined <= on);
  const newest = lastLaid(layers, on - EGG_TO_WORKER_DAYS);
  const oldest = newest + EGG_TO_WORKER_DAYS - ALL_HERS_DAYS;
  const laid = layers.filter(({ from, to }) => from <= newest && to > oldest);
  const [layer, ...others] = laid;
  if (!layer) return { known: false, because: 'nobody-known' };
  if (others.some(({ queen }) => queen !== layer.queen)) return { known: false, because: 'changing-over' };
  if (!layer.queen) return { known: false, because: 'nobody-known' };
  const settled = layer === layers[0] || layer.from <= oldest;
  return settled ? { known: true, queen: layer.queen } : { known: false, because: 'changing-over' };
}

/** The last day up to this one on which somebody laid; before all days where nobody did. */
function lastLaid(layers: readonly Layer[], until: number): number {
  let last = Number.NEGATIVE_INFINITY;
  for (const { from, to } of layers) if (from <= until) last = Math.max(last, Math.min(to, until));
  return last;
}

type Colonies = Registry['colonies'];

/** A registry never changes, so the layers of its colonies are worked out once. */
const WORKED_OUT = new WeakMap<Colonies, Map<ColonyId, readonly Layer[]>>();

function layersOf(colonies: Colonies, id: ColonyId): readonly Layer[] {
  const known = WORKED_OUT.get(colonies) ?? new Map<ColonyId, readonly Layer[]>();
  WORKED_OUT.set(colonies, known);
  const layers = known.get(id) ?? [...joinedUp(ancestralLayers(colonies, id)), ...joinedLayers(colonies, id)];
  known.set(id, layers);
  return layers;
}

/**
 * Who laid the eggs that fed a colony with bees, and when: its own queens, and before them those of the colony it was
 * split from, until it was.
 */
function ancestralLayers(colonies: Colonies, id: ColonyId): Layer[] {
  const layers: Layer[] = [];
  const seen = new Set<ColonyId>();
  let until = Number.POSITIVE_INFINITY;
  for (let colony = colonies.get(id); colony && !seen.has(colony.id); ) {
    seen.add(colony.id);
    for (const layer of ownLayers(colony).reverse()) {
      if (layer.from <= until) layers.unshift({ ...layer, to: Math.min(layer.to, until) });
    }
    until = dayNumber(firstDay(colony.started));
    const first = layers[0];
    const began = colony.how === 'package' || first === undefined || first.from > until;
    if (colony.splitFrom === undefined && began) layers.unshift({ from: until, to: until });
    colony = colony.splitFrom && colonies.get(colony.splitFrom);
  }
  return layers;
}

/** Who laid for the bees that came with other colonies when those were joined with this one. */
function joinedLayers(colonies: Colonies, id: ColonyId): Layer[] {
  return (colonies.get(id)?.entries ?? []).flatMap((entry) => {
    if (entry.kind !== 'colonies-joined' || entry.into !== id || entry.colony === id) return [];
    const joined = dayNumber(lastDay(entry.day));
    return ancestralLayers(colonies, entry.colony)
      .filter(({ from }) => from <= joined)
      .map((layer) => ({ ...layer, to: Math.min(layer.to, joined), joined }));
  });
}

function ownLayers({ tenures }: Colony): Layer[] {
  return tenures.flatMap((tenure, index): Layer[] => {
    const { queen } = tenure;
    const from = dayNumber(firstDay(tenure.layingFrom ?? tenure.from));
    const to = endOf(tenure, tenures[index + 1]);
    const surely = tenure.surelyUntil === undefined ? to : dayNumber(tenure.surelyUntil);
    if (surely >= to) return [{ queen, from, to }];
    if (surely <= from) return [{ from, to }];
    return [
      { queen, from, to: surely },
      { from: surely + 1, to },
    ];
  });
}

/** The day of an end; one known to the month or year is taken to be the day on which the next queen began, if it may. */
function endOf({ to }: Tenure, next: Tenure | undefined): number {
  if (to === undefined) return Number.POSITIVE_INFINITY;
  const last = dayNumber(lastDay(to));
  if (isExactDay(to) || !next) return last;
  const began = dayNumber(firstDay(next.layingFrom ?? next.from));
  return Math.min(last, Math.max(began, dayNumber(firstDay(to))));
}

/** A queen who moved with her bees, or was away for a while, is one layer. */
function joinedUp(layers: readonly Layer[]): readonly Layer[] {
  const joined: Layer[] = [];
  for (const layer of layers) {
    const last = joined.at(-1);
    if (last?.queen && last.queen === layer.queen) joined[joined.length - 1] = { ...layer, from: last.from };
    else joined.push(layer);
  }
  return joined;
}
