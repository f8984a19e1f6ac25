import type { Random } from '../../graph/numerics/random.ts';
import { daysBetween, type PlainDay, type RoughDay } from '../../src/journal/day.ts';
import type { Draft, Entry, EntryKind } from '../../src/journal/entry.ts';
import type { EntryId, KeeperId } from '../../src/journal/ids.ts';
import { problemText } from '../../src/journal/problems.ts';
import { writeEntries } from '../../src/journal/write.ts';

/** What the story says of one entry: the day is that of the book unless it says another. */
export type Said = { [K in EntryKind]: Omit<Draft<K>, 'day'> & { readonly day?: RoughDay } }[EntryKind];

/**
 * The book that the invented keepers write: days only go forward, ids are seeded UUIDv7s that rise with the time of
 * writing, and every entry passes the schemas of the journal.
 */
export interface Book {
  readonly entries: Entry[];
  /** Turns to a later day; the keeper writes in the late afternoon. */
  readonly on: (day: string) => void;
  readonly today: () => PlainDay;
  readonly newId: () => string;
  /** Writes entries of one action, in order. */
  readonly write: (...said: readonly Said[]) => readonly Entry[];
  /** Who holds the pen from here on. */
  readonly handTo: (keeper: KeeperId) => void;
}

const AFTERNOON_MS = 15 * 3_600_000;

export function openBook(firstDay: PlainDay, random: Random): Book {
  const entries: Entry[] = [];
  let today = firstDay;
  let clock = startOfWriting(today, random);
  let keeper: KeeperId | undefined;
  const newId = idMaker(() => clock, random);
  return {
    entries,
    newId,
    today: () => today,
    handTo: (next) => {
      keeper = next;
    },
    on: (day) => {
      const next = day as PlainDay;
      if (daysBetween(today, next) < 0) throw new Error(`The story goes back from ${today} to ${next}.`);
      if (next !== today) clock = startOfWriting(next, random);
      today = next;
    },
    write: (...said) => {
      if (!keeper) throw new Error('Nobody holds the pen.');
      clock += 1000 * (25 + random.integer(120));
      const now = new Date(clock);
      const drafts = said.map((each) => ({ ...each, day: each.day ?? today }) as Draft);
      const written = writeEntries(drafts, { keeper, now: () => now, newId });
      if (!written.ok) throw new Error(written.problems.map(problemText).join('\n'));
      entries.push(...written.value);
      return written.value;
    },
  };
}

function startOfWriting(day: PlainDay, random: Random): number {
  return Date.parse(`${day}T00:00:00Z`) + AFTERNOON_MS + 1000 * random.integer(2 * 3600);
}

/** UUIDv7 (RFC 9562): 48 bits of milliseconds, then a counter in 12 bits so that ids of one millisecond still rise. */
function idMaker(clock: () => number, random: Random): () => string {
  let last = -1;
  let counter = 0;
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, '0');
  return () => {
    counter = clock() === last ? counter + 1 : 0;
    last = clock();
    if (counter > 0xfff) throw new Error('More than 4096 ids in one millisecond.');
    const time = hex(last, 12);
    const variant = hex(0x8000 | (random.bits() & 0x3fff), 4);
    const tail = hex(random.bits() & 0xffff, 4) + hex(random.bits(), 8);
    return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(counter, 3)}-${variant}-${tail}`;
  };
}

/** The first entry of what was just written, when the story wants to speak of it again. */
export function idOf(written: readonly Entry[]): EntryId {
  const first = written[0];
  if (!first) throw new Error('Nothing was written.');
  return first.id;
}
