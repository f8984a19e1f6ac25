import { firstDay, type PlainDay, yearOf } from '../../src/journal/day.ts';
import type { Entry, EntryOf } from '../../src/journal/entry.ts';
import type { Compass, Place } from '../../src/journal/entry-parts.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { isAlive, stayOn, yardOn } from '../../src/registry/queries.ts';
import type { Colony, Registry, Yard } from '../../src/registry/state.ts';

/** Facts of a colony that several screens show, read out of its entries. */

export interface Strength {
  readonly frames: number;
  readonly day: Entry['day'];
  /** The colony has been split or joined since. */
  readonly divided?: boolean;
}

function inspections(colony: Colony, on: PlainDay): readonly EntryOf<'inspection'>[] {
  return colony.entries.filter(
    (entry): entry is EntryOf<'inspection'> => entry.kind === 'inspection' && firstDay(entry.day) <= on,
  );
}

/** The last inspection up to that day. */
export function lastInspection(colony: Colony, on: PlainDay): EntryOf<'inspection'> | undefined {
  return inspections(colony, on).at(-1);
}

/** The value that was last observed for a field of the inspection, with its day. */
export function lastObserved<K extends keyof EntryOf<'inspection'>>(
  colony: Colony,
  on: PlainDay,
  field: K,
): { readonly value: NonNullable<EntryOf<'inspection'>[K]>; readonly day: Entry['day'] } | undefined {
  const entry = inspections(colony, on).findLast((each) => each[field] !== undefined);
  const value = entry?.[field];
  return entry && value !== undefined && value !== null ? { value, day: entry.day } : undefined;
}

/** Frames of bees as last seen, by an inspection or the winter outcome; said to be older than a split where it is. */
export function lastStrength(colony: Colony, on: PlainDay): Strength | undefined {
  let divided = false;
  for (const entry of [...colony.entries].reverse()) {
    if (firstDay(entry.day) > on) continue;
    const frames = strengthIn(entry);
    if (frames !== undefined) return { frames, day: entry.day, ...(divided ? { divided } : {}) };
    if (entry.kind === 'split' || entry.kind === 'colonies-joined') divided = true;
  }
  return undefined;
}

/** The frames of bees that an entry tells of. */
export function strengthIn(entry: Entry): number | undefined {
  if (entry.kind === 'inspection') return entry.framesOfBees;
  return entry.kind === 'winter-outcome' ? entry.springFramesOfBees : undefined;
}

/** The last entry up to that day, of any kind. */
export function lastEntry(colony: Colony, on: PlainDay): Entry | undefined {
  return colony.entries.findLast((entry) => firstDay(entry.day) <= on);
}

/** The winter of which this day asks: the one that ended this spring, or the last one. */
export function winterInQuestion(on: PlainDay): number {
  return yearOf(on);
}

/** Colonies that stood at the yard in that winter and whose outcome is not written down. */
export function awaitingOutcome(
  registry: Registry,
  yard: Yard,
  winter: number,
  on: PlainDay,
): readonly Colony[] {
  const midwinter = `${winter}-01-15` as PlainDay;
  return [...registry.colonies.values()].filter(
    (colony) =>
      on >= `${winter}-02-01` &&
      isAlive(colony, midwinter) &&
      yardOn(colony, midwinter) === yard.id &&
      !colony.entries.some((entry) => entry.kind === 'winter-outcome' && entry.winter === winter),
  );
}

export function placeOf(colony: Colony, on: PlainDay): Place | undefined {
  return stayOn(colony, on)?.place;
}

/** Colonies of a yard in the order of the stands, those under one roof together. */
export function byRoof(colonies: readonly Colony[], on: PlainDay): readonly (readonly Colony[])[] {
  const roofs = new Map<ColonyId, Colony[]>();
  const known = new Set(colonies.map(({ id }) => id));
  const ordered = [...colonies].sort((a, b) => byStand(a, b, on));
  for (const colony of ordered) {
    const neighbour = roofNeighbour(colony, on, colonies);
    const roof = neighbour && known.has(neighbour) ? roofs.get(neighbour) : undefined;
    if (roof) {
      roof.push(colony);
      roofs.set(colony.id, roof);
    } else {
      roofs.set(colony.id, [colony]);
    }
  }
  return [...new Set(roofs.values())].map((roof) => roof.sort((a, b) => northFirst(a, b, on)));
}

const FROM_NORTH: readonly (Compass | undefined)[] = ['N', 'NW', 'NE', 'W', undefined, 'E', 'SW', 'SE', 'S'];

/** Neighbours under a roof as on a map: the one whose entrance looks north stands first. */
function northFirst(a: Colony, b: Colony, on: PlainDay): number {
  const rank = (colony: Colony) => FROM_NORTH.indexOf(placeOf(colony, on)?.entrance);
  return rank(a) - rank(b) || byStand(a, b, on);
}

/** The neighbour under the same roof, whichever of the two named the other. */
export function roofNeighbour(colony: Colony, on: PlainDay, others: readonly Colony[]): ColonyId | undefined {
  const named = placeOf(colony, on)?.underRoofWith;
  if (named) return named;
  return others.find((other) => placeOf(other, on)?.underRoofWith === colony.id)?.id;
}

function byStand(a: Colony, b: Colony, on: PlainDay): number {
  const stand = (colony: Colony) => placeOf(colony, on)?.stand ?? colony.label;
  const numeric = { numeric: true };
  return (
    stand(a).localeCompare(stand(b), 'en', numeric) ||
    a.label.localeCompare(b.label, 'en', numeric) ||
    (a.id < b.id ? -1 : 1)
  );
}

/** Yards in the order of driving. */
export function yardsInOrder(registry: Registry): readonly Yard[] {
  return [...registry.yards.values()].sort(
    (a, b) =>
      (a.roundOrder ?? Number.POSITIVE_INFINITY) - (b.roundOrder ?? Number.POSITIVE_INFINITY) ||
      a.name.localeCompare(b.name, 'en', { numeric: true }) ||
      (a.id < b.id ? -1 : 1),
  );
}
