import { addDays, firstDay, isExactDay, lastDay, type PlainDay, type RoughDay } from '../journal/day.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import type { Colony, Registry, Tenure } from './state.ts';

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
export function workersOf(registry: Pick<Registry, 'colonies'>, colony: ColonyId, day: RoughDay): WorkersOf {
  const layers = layersOf(registry.colonies, colony);
  const answer = workersAt(layers, lastDay(day));
  if (isExactDay(day)) return answer;
  const before = workersAt(layers, firstDay(day));
  const same = answer.known && before.known && answer.queen === before.queen;
  return same ? answer : { known: false, because: 'day-not-exact' };
}

/** A span in which one queen laid the eggs that fed a colony with bees. */
interface Layer {
  /** Absent where nobody knows who laid: the bees a colony began with, and the time of a change that nobody saw. */
  readonly queen?: QueenId;
  readonly from: PlainDay;
  /** Absent: still. */
  readonly to?: PlainDay;
}

/**
 * All workers are hers if nobody else laid in the days in which the eggs of today's workers were laid. In a colony
 * without eggs the bees grow old: then the last days count in which somebody laid.
 */
function workersAt(layers: readonly Layer[], on: PlainDay): WorkersOf {
  const newest = lastLaid(layers, addDays(on, -EGG_TO_WORKER_DAYS));
  if (newest === undefined) return { known: false, because: 'nobody-known' };
  const oldest = addDays(newest, EGG_TO_WORKER_DAYS - ALL_HERS_DAYS);
  const laid = layers.filter(({ from, to }) => from <= newest && (to === undefined || to > oldest));
  const [layer, ...others] = laid;
  if (!layer || others.some(({ queen }) => queen !== layer.queen)) {
    return { known: false, because: 'changing-over' };
  }
  if (!layer.queen) return { known: false, because: 'nobody-known' };
  const settled = layer === layers[0] || layer.from <= oldest;
  return settled ? { known: true, queen: layer.queen } : { known: false, because: 'changing-over' };
}

/** The last day up to this one on which somebody laid. */
function lastLaid(layers: readonly Layer[], until: PlainDay): PlainDay | undefined {
  let last: PlainDay | undefined;
  for (const { from, to } of layers) {
    if (from > until) continue;
    const end = to === undefined || to > until ? until : to;
    if (last === undefined || end > last) last = end;
  }
  return last;
}

type Colonies = Registry['colonies'];

/** A registry never changes, so the layers of its colonies are worked out once. */
const WORKED_OUT = new WeakMap<Colonies, Map<ColonyId, readonly Layer[]>>();

function layersOf(colonies: Colonies, id: ColonyId): readonly Layer[] {
  const known = WORKED_OUT.get(colonies) ?? new Map<ColonyId, readonly Layer[]>();
  WORKED_OUT.set(colonies, known);
  const layers = known.get(id) ?? joinedUp(ancestralLayers(colonies, id));
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
  let until: PlainDay | undefined;
  for (let colony = colonies.get(id); colony && !seen.has(colony.id); ) {
    seen.add(colony.id);
    const own = ownLayers(colony).filter(({ from }) => until === undefined || from <= until);
    layers.unshift(...own.map((layer) => cutAt(layer, until)));
    until = firstDay(colony.started);
    const first = layers[0];
    const began = colony.how === 'package' || first === undefined || first.from > until;
    if (colony.splitFrom === undefined && began) layers.unshift({ from: until, to: until });
    colony = colony.splitFrom && colonies.get(colony.splitFrom);
  }
  return layers;
}

function ownLayers({ tenures }: Colony): Layer[] {
  return tenures.flatMap((tenure, index): Layer[] => {
    const { queen, surelyUntil } = tenure;
    const from = firstDay(tenure.layingFrom ?? tenure.from);
    const to = endOf(tenure, tenures[index + 1]);
    if (to === undefined) return [{ queen, from }];
    if (surelyUntil === undefined || surelyUntil >= to) return [{ queen, from, to }];
    if (surelyUntil <= from) return [{ from, to }];
    return [
      { queen, from, to: surelyUntil },
      { from: addDays(surelyUntil, 1), to },
    ];
  });
}

/** The day of an end; one known to the month or year is taken to be the day on which the next queen began, if it may. */
function endOf({ to }: Tenure, next: Tenure | undefined): PlainDay | undefined {
  if (to === undefined || isExactDay(to) || !next) return to && lastDay(to);
  const began = firstDay(next.layingFrom ?? next.from);
  if (began < firstDay(to)) return firstDay(to);
  if (began > lastDay(to)) return lastDay(to);
  return began;
}

function cutAt(layer: Layer, until: PlainDay | undefined): Layer {
  return until !== undefined && (layer.to === undefined || layer.to > until)
    ? { ...layer, to: until }
    : layer;
}

/** A queen who moved with her bees, or was away for a while, is one layer. */
function joinedUp(layers: readonly Layer[]): readonly Layer[] {
  const joined: Layer[] = [];
  for (const layer of layers) {
    const last = joined.at(-1);
    if (!last || !layer.queen || last.queen !== layer.queen) joined.push(layer);
    else
      joined[joined.length - 1] = {
        queen: layer.queen,
        from: last.from,
        ...(layer.to ? { to: layer.to } : {}),
      };
  }
  return joined;
}
