import { dayNumber, dayOfNumber, firstDay, isExactDay, lastDay, type PlainDay } from './day.ts';
import type { Entry, EntryKind } from './entry.ts';
import type { ActionId, EntryId } from './ids.ts';

/** What entries wait for before they can stand in the order of events. See `orderOfEvents`. */

/** The first version behind each correction. */
export type FirstVersions = ReadonlyMap<EntryId, EntryId>;

/** Where an entry stands: on a day, beside the entry `after`, and how many must stand between the two. */
export interface Moment {
  readonly day: PlainDay;
  readonly after: EntryId;
  readonly step: number;
}

/** Where an entry stands if it waits for nothing. A correction keeps the place of what it corrects. */
export function ownMoment(entry: Entry, first: FirstVersions): Moment {
  return { day: ownDay(entry), after: first.get(entry.id) ?? entry.id, step: 0 };
}

function isLater(a: Moment, b: Moment): boolean {
  if (a.day !== b.day) return a.day > b.day;
  return a.after === b.after ? a.step > b.step : a.after > b.after;
}

function later(a: Moment, b: Moment | undefined): Moment {
  return b && isLater(b, a) ? b : a;
}

const MILLISECONDS_A_DAY = 86_400_000;
const ENDS: ReadonlySet<EntryKind> = new Set<EntryKind>(['queen-lost', 'colony-ended', 'treatment-ended']);

function ownDay(entry: Entry): PlainDay {
  if (!ENDS.has(entry.kind) || isExactDay(entry.day)) return firstDay(entry.day);
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

/** The ids that an entry speaks of and does not begin itself, among its other texts. */
export function spokenIn(entry: Entry, first: FirstVersions): readonly string[] {
  const { id: _, action: __, recordedBy: ___, supersedes: ____, ...said } = entry;
  const own = begunBy(entry, first);
  const texts: string[] = [];
  eachText(said, (text) => {
    if (!own.includes(text)) texts.push(text);
  });
  return texts;
}

function eachText(value: unknown, see: (text: string) => void): void {
  if (typeof value === 'string') see(value);
  else if (typeof value === 'object' && value !== null) {
    for (const key in value) eachText(value[key as keyof typeof value], see);
  }
}

/** Entries may wait for one another; a longer chain, or a ring, is cut here. One digit of the sort key. */
const LONGEST_CHAIN = 9;

/** Where each entry stands: by itself, unless what it speaks of would then begin after it. */
export function momentsOf(entries: readonly Entry[], first: FirstVersions): readonly Moment[] {
  let moments: readonly Moment[] = entries.map((entry) => ownMoment(entry, first));
  for (let round = 0; round < LONGEST_CHAIN; round += 1) {
    const before = moments;
    const beginnings = beginningsOf(entries, before, first);
    const after = before.map((moment, index) => {
      const entry = entries[index];
      return entry && mayWait(entry, moment, beginnings)
        ? momentAfter(entry, moment, beginnings, first)
        : moment;
    });
    if (after.every((moment, index) => moment === before[index])) break;
    moments = after;
  }
  return moments;
}

/** What began when and by which action, and where the entries of that action end on each day. */
interface Beginnings {
  readonly began: ReadonlyMap<string, Beginning>;
  readonly ends: ReadonlyMap<ActionId, ReadonlyMap<PlainDay, Moment>>;
  /** The last of these ends on each day: what stands after it waits for nothing of that day. */
  readonly latest: ReadonlyMap<PlainDay, Moment>;
}

interface Beginning {
  readonly moment: Moment;
  readonly action: ActionId;
}

function beginningsOf(
  entries: readonly Entry[],
  moments: readonly Moment[],
  first: FirstVersions,
): Beginnings {
  const began = new Map<string, Beginning>();
  const ends = new Map<ActionId, Map<PlainDay, Moment>>();
  const latest = new Map<PlainDay, Moment>();
  const each = (see: (entry: Entry, moment: Moment) => void) =>
    entries.forEach((entry, index) => {
      const moment = moments[index];
      if (moment) see(entry, moment);
    });
  each((entry, moment) => {
    for (const id of begunBy(entry, first)) {
      const known = began.get(id);
      if (!known || isLater(known.moment, moment)) began.set(id, { moment, action: entry.action });
      if (!ends.has(entry.action)) ends.set(entry.action, new Map());
    }
  });
  each((entry, moment) => {
    const days = ends.get(entry.action);
    if (!days) return;
    days.set(moment.day, later(moment, days.get(moment.day)));
    latest.set(moment.day, later(moment, latest.get(moment.day)));
  });
  return { began, ends, latest };
}

/** A quick look that spares most entries the reading of all they say. */
function mayWait(entry: Entry, now: Moment, { latest }: Beginnings): boolean {
  if (!isExactDay(entry.day)) return true;
  const end = latest.get(now.day);
  return end !== undefined && isLater(end, now);
}

/** Where an entry stands after all that it speaks of, and the actions that began it, as far as its own day reaches. */
function momentAfter(entry: Entry, now: Moment, { began, ends }: Beginnings, first: FirstVersions): Moment {
  const own = begunBy(entry, first);
  const reach = lastDay(entry.day);
  let moment = now;
  eachText(entry, (id) => {
    const beginning = began.get(id);
    if (!beginning || beginning.moment.day > reach || own.includes(id)) return;
    const { day } = beginning.moment;
    const end = beginning.action === entry.action ? undefined : ends.get(beginning.action)?.get(day);
    const awaited = later(beginning.moment, end);
    const there = { ...ownMoment(entry, first), day };
    moment = later(moment, later(there, { ...awaited, step: awaited.step + 1 }));
  });
  return moment;
}
