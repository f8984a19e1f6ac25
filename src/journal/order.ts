import { dayNumber, dayOfNumber, firstDay, isExactDay, lastDay, type PlainDay } from './day.ts';
import type { Entry, EntryKind } from './entry.ts';
import type { EntryId } from './ids.ts';

/**
 * The order in which entries happened. An exact day stands where it is. A day known to the month or year stands at the
 * first day it may mean, with two exceptions: an end stands at the last one, since what is on record of a queen or a
 * colony happened before it was lost; and nothing stands before what it speaks of had begun, as far as its month or
 * year reaches. So "heads this colony since 2025" follows the start of the colony in April of that year.
 */
export interface EventOrder {
  readonly ordered: readonly Entry[];
  /** The day at which an entry stands. */
  readonly dayOf: (entry: Entry) => PlainDay;
  /** Sort key of the last entry; that of a later one is greater. */
  readonly last: string;
  /** Ids that entries without an exact day speak of: what begins one of them may move those entries. */
  readonly spokenOf: ReadonlySet<string>;
}

type FirstVersions = ReadonlyMap<EntryId, EntryId>;

/** Puts entries in order. O(entries log entries). */
export function orderOfEvents(entries: readonly Entry[], first: FirstVersions): EventOrder {
  const rough = entries.filter((entry) => !isExactDay(entry.day)).map((entry) => spokenIn(entry, first));
  const moments = rough.length === 0 ? new Map<EntryId, Moment>() : waitingMoments(entries, rough, first);
  const momentOf = (entry: Entry) => moments.get(entry.id) ?? ownMoment(entry);
  const keyed = entries.map((entry) => ({
    entry,
    key: orderKey(momentOf(entry), first.get(entry.id) ?? entry.id),
  }));
  keyed.sort((a, b) => (a.key < b.key ? -1 : 1));
  return {
    ordered: keyed.map(({ entry }) => entry),
    dayOf: (entry) => momentOf(entry).day,
    last: keyed.at(-1)?.key ?? '',
    spokenOf: new Set(rough.flatMap(({ ids }) => ids)),
  };
}

/** Sort key of an entry with an exact day, which depends on no other entry. */
export function exactOrderKey(entry: Entry): string {
  return orderKey(ownMoment(entry), entry.id);
}

/** A day, and how many entries of that day must stand before one that waits for them. */
interface Moment {
  readonly day: PlainDay;
  readonly step: number;
}

function ownMoment(entry: Entry): Moment {
  return { day: ownDay(entry), step: 0 };
}

function orderKey({ day, step }: Moment, id: EntryId): string {
  return `${day} ${step} ${id}`;
}

function isLater(a: Moment, b: Moment): boolean {
  return a.day === b.day ? a.step > b.step : a.day > b.day;
}

const MILLISECONDS_A_DAY = 86_400_000;
const ENDS: ReadonlySet<EntryKind> = new Set<EntryKind>(['queen-lost', 'colony-ended', 'treatment-ended']);
/** The day at which an entry stands if it waits for nothing. */
export function ownDay(entry: Entry): PlainDay {
  if (isExactDay(entry.day) || !ENDS.has(entry.kind)) return firstDay(entry.day);
  // Half a day before the UTC time it is nowhere on earth a later day than that on the keeper's own clock.
  const written = Math.floor(Date.parse(entry.recordedAt) / MILLISECONDS_A_DAY - 0.5);
  const notAfter = Math.min(dayNumber(lastDay(entry.day)), written);
  return dayOfNumber(Math.max(dayNumber(firstDay(entry.day)), notAfter));
}

/** What an entry brings into being: a yard, a colony, queens, a treatment. */
export function begunBy(entry: Entry, first: FirstVersions): readonly string[] {
  switch (entry.kind) {
    case 'yard-opened':
      return [entry.yard];
    case 'colony-started':
      return [entry.colony];
    case 'queen-entered':
    case 'queen-expected':
    case 'queen-found':
      return [entry.queen];
    case 'cells-given':
    case 'eggs-given':
      return [entry.expected];
    case 'split':
      return entry.parts.flatMap(({ queen }) => ('expected' in queen ? [queen.expected] : []));
    case 'treatment':
      return [first.get(entry.id) ?? entry.id];
    default:
      return [];
  }
}

interface RoughEntry {
  readonly entry: Entry;
  /** What it speaks of and does not begin itself. */
  readonly ids: readonly string[];
}

function spokenIn(entry: Entry, first: FirstVersions): RoughEntry {
  const { id: _, action: __, recordedBy: ___, supersedes: ____, ...said } = entry;
  const own = new Set(begunBy(entry, first));
  return { entry, ids: textsIn(said).filter((id) => !own.has(id)) };
}

function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Entries may wait for one another; a longer chain, or a ring, is cut here. One digit of the sort key. */
const LONGEST_CHAIN = 9;

/** Where entries without an exact day stand because what they speak of began no earlier. */
function waitingMoments(
  entries: readonly Entry[],
  rough: readonly RoughEntry[],
  first: FirstVersions,
): ReadonlyMap<EntryId, Moment> {
  const moments = new Map<EntryId, Moment>();
  for (let round = 0; round < LONGEST_CHAIN; round += 1) {
    const begun = beginnings(entries, moments, first);
    let moved = false;
    for (const { entry, ids } of rough) {
      const latest = lastDay(entry.day);
      for (const id of ids) {
        const began = begun.get(id);
        if (!began || began.day > latest) continue;
        const after = { day: began.day, step: began.step + 1 };
        if (!isLater(after, moments.get(entry.id) ?? ownMoment(entry))) continue;
        moments.set(entry.id, after);
        moved = true;
      }
    }
    if (!moved) break;
  }
  return moments;
}

function beginnings(
  entries: readonly Entry[],
  moments: ReadonlyMap<EntryId, Moment>,
  first: FirstVersions,
): ReadonlyMap<string, Moment> {
  const begun = new Map<string, Moment>();
  for (const entry of entries) {
    for (const id of begunBy(entry, first)) {
      const moment = moments.get(entry.id) ?? ownMoment(entry);
      const known = begun.get(id);
      if (!known || isLater(known, moment)) begun.set(id, moment);
    }
  }
  return begun;
}
