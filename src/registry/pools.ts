import { pushTo } from '../../graph/grouping.ts';
import { dayNumber, firstDay, lastDay, type PlainDay, yearOf } from '../journal/day.ts';
import type { EntryOf } from '../journal/entry.ts';
import type { QueenId, YardId } from '../journal/ids.ts';
import { yardOn } from './queries.ts';
import { type Colony, droneKey, type Queen, type Registry, type Tenure } from './state.ts';

/**
 * Which drones a queen met. Open mating is a draw from the drones of a yard and season: sons of the queens who
 * headed its colonies and of a background without records. A drone flies some 38 days after his egg was laid, so the
 * drone mothers of a season are queens who had come through the winter before it.
 */

/** Name given to the population behind everything unrecorded. */
export const UNRECORDED = 'unrecorded';

/** Share of own drones where the keeper has said nothing for a yard. An assumption, shown as such. */
const ASSUMED_OWN_SHARE = 0.3;

/**
 * Effective number of mates of an openly mated queen. About 12: Tarpy & Nielsen 2002, Ann. Entomol. Soc. Am. 95:513,
 * from memory; Jensen et al. 2005, Conserv. Genet. 6:527 found 17 at a few yards (abstract read).
 */
export const EFFECTIVE_MATES = 12;

/** How a pool's own share is known: said for this season, for another season of this yard, or not at all. */
export type PoolBasis = 'recorded' | 'from-another-season' | 'assumed';

export interface DronePool {
  readonly key: string;
  readonly yard: YardId;
  readonly season: number;
  readonly ownShare: number;
  readonly basis: PoolBasis;
  readonly background: string;
  /** Shares of all drones; they come to `ownShare`, or to 0 when no own colony flew drones. */
  readonly droneMothers: readonly { readonly queen: QueenId; readonly share: number }[];
}

/** Who a queen mated with, and whether that is recorded or deduced. */
export type MatingFacts =
  | { readonly kind: 'pool'; readonly yard: YardId; readonly season: number; readonly stated: boolean }
  | { readonly kind: 'named'; readonly entry: EntryOf<'mating'> }
  | { readonly kind: 'unrecorded'; readonly background: string };

/** The mating of a queen: as recorded, else open mating where and when she came into lay, else unrecorded. */
export function matingOf(registry: Registry, queen: Queen): MatingFacts {
  const season = seasonMated(registry, queen);
  const way = queen.mating?.way;
  if (queen.mating && way) {
    if (way.manner !== 'open') return { kind: 'named', entry: queen.mating };
    return { kind: 'pool', yard: way.yard, season: season ?? yearOf(queen.mating.day), stated: true };
  }
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  const bredHere =
    making?.how !== 'brought-in' || (queen.parentage !== undefined && queen.from === undefined);
  const tenure = queen.tenures[0];
  const colony = registry.colonies.get(tenure?.colony ?? queen.expectedIn ?? ('' as never));
  if (bredHere && colony && season !== undefined) {
    const flew = tenure ? firstDay(tenure.from) : (`${season}-07-01` as PlainDay);
    const yard = yardOn(colony, flew);
    if (yard) return { kind: 'pool', yard, season, stated: false };
  }
  return { kind: 'unrecorded', background: queen.background ?? UNRECORDED };
}

/** The year in which she flew: that of her birth, or else of her first laying; never after a daughter was born. */
function seasonMated(registry: Registry, queen: Queen): number | undefined {
  const day = queen.born?.last ?? queen.tenures[0]?.layingFrom;
  const years = queen.daughters.flatMap((id) => {
    const born = registry.queens.get(id)?.born?.last;
    return born ? [yearOf(born)] : [];
  });
  if (day !== undefined) years.push(yearOf(day));
  return years.length === 0 ? undefined : Math.min(...years);
}

/** The drone pools that queens of the registry met, by key. O(queens + colonies x seasons at their yard). */
export function dronePools(registry: Registry): ReadonlyMap<string, DronePool> {
  const pools = new Map<string, DronePool>();
  const byYard = coloniesByYard(registry);
  for (const queen of registry.queens.values()) {
    const mating = matingOf(registry, queen);
    if (mating.kind !== 'pool') continue;
    const key = droneKey(mating.yard, mating.season);
    if (!pools.has(key)) pools.set(key, dronePool(registry, mating.yard, mating.season, byYard));
  }
  return pools;
}

/** The drones flying at a yard in a season. */
export function dronePool(
  registry: Registry,
  yard: YardId,
  season: number,
  byYard: ReadonlyMap<YardId, readonly Colony[]> = coloniesByYard(registry),
): DronePool {
  const said = registry.droneBackgrounds.get(droneKey(yard, season));
  const other = said ?? nearestSeason(registry, yard, season);
  const weights = droneMotherWeights(registry, byYard.get(yard) ?? [], yard, season, said);
  const sum = [...weights.values()].reduce((total, weight) => total + weight, 0);
  const ownShare = sum === 0 ? 0 : (other?.ownShare ?? ASSUMED_OWN_SHARE);
  return {
    key: droneKey(yard, season),
    yard,
    season,
    ownShare,
    basis: said ? 'recorded' : other ? 'from-another-season' : 'assumed',
    background: other?.background ?? UNRECORDED,
    droneMothers:
      ownShare === 0
        ? []
        : [...weights].map(([queen, weight]) => ({ queen, share: (ownShare * weight) / sum })),
  };
}

function coloniesByYard(registry: Registry): ReadonlyMap<YardId, readonly Colony[]> {
  const byYard = new Map<YardId, Colony[]>();
  for (const colony of registry.colonies.values()) {
    for (const yard of new Set(colony.stays.map((stay) => stay.yard))) pushTo(byYard, yard, colony);
  }
  return byYard;
}

function nearestSeason(
  registry: Registry,
  yard: YardId,
  season: number,
): EntryOf<'drone-background'> | undefined {
  let best: EntryOf<'drone-background'> | undefined;
  for (const said of registry.droneBackgrounds.values()) {
    if (said.yard !== yard) continue;
    const nearer = best === undefined || Math.abs(said.season - season) < Math.abs(best.season - season);
    if (nearer) best = said;
  }
  return best;
}

/** Days of the season in which eggs become drones that meet its virgins: 1 April to 15 July. */
const DRONE_EGGS = { from: '04-01', to: '07-15' };

function droneMotherWeights(
  registry: Registry,
  colonies: readonly Colony[],
  yard: YardId,
  season: number,
  said: EntryOf<'drone-background'> | undefined,
): ReadonlyMap<QueenId, number> {
  const from = dayNumber(`${season}-${DRONE_EGGS.from}` as PlainDay);
  const to = dayNumber(`${season}-${DRONE_EGGS.to}` as PlainDay);
  const listed = said?.droneColonies && new Map(said.droneColonies.map((each) => [each.colony, each.weight]));
  const flown = listed ? [...listed.keys()].flatMap((id) => registry.colonies.get(id) ?? []) : colonies;
  const weights = new Map<QueenId, number>();
  for (const colony of flown) {
    const weight = listed?.get(colony.id) ?? 1;
    for (const tenure of colony.tenures) {
      const days = daysWithin(tenure, from, to);
      if (days === 0 || !overwintered(registry, tenure, season)) continue;
      if (!listed && yardOn(colony, firstDay(tenure.to ?? (`${season}-06-01` as PlainDay))) !== yard)
        continue;
      weights.set(tenure.queen, (weights.get(tenure.queen) ?? 0) + (weight * days) / (to - from + 1));
    }
  }
  return weights;
}

function daysWithin(tenure: Tenure, from: number, to: number): number {
  const start = dayNumber(firstDay(tenure.from));
  const end = tenure.to === undefined ? Number.POSITIVE_INFINITY : dayNumber(lastDay(tenure.to)) - 1;
  return Math.max(0, Math.min(end, to) - Math.max(start, from) + 1);
}

function overwintered(registry: Registry, tenure: Tenure, season: number): boolean {
  const born = registry.queens.get(tenure.queen)?.born?.last;
  return yearOf(born ?? tenure.from) < season;
}
