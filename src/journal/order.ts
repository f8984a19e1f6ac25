import { isExactDay, type PlainDay } from './day.ts';
import type { Entry } from './entry.ts';
import { begunBy, type FirstVersions, type Moment, momentsOf, ownMoment, spokenIn } from './waiting.ts';

/**
 * The order in which entries happened. An exact day stands where it is. A day known to the month or year stands at the
 * first day it may mean, with two exceptions: an end stands at the last one, since what is on record of a queen or a
 * colony happened before it was lost; and nothing stands before what it speaks of had begun, as far as its month or
 * year reaches. So "heads this colony since 2025" follows the start of the colony in April of that year.
 *
 * Entries of one day stand by their ids, which rise with the clock of the device. A clock that was set back in between,
 * or two devices whose clocks differ, give an id too small: so within a day, too, nothing stands before what it speaks
 * of had begun, nor before the rest of the step that began it (a split starts a colony and then gives it a queen).
 */
export interface EventOrder {
  readonly ordered: readonly Entry[];
  /** The day at which each of them stands. */
  readonly days: readonly PlainDay[];
  readonly end: EndOfOrder;
}

/** What tells whether new entries simply follow those that stand. */
export interface EndOfOrder {
  /** Sort key of the last entry; that of a later one is greater. */
  readonly key: string;
  /** Ids that entries without an exact day speak of: what begins one of them may move those entries. */
  readonly roughlySpokenOf: ReadonlySet<string>;
  /** The same of the last day, with the actions that began something on it and may not be complete. */
  readonly lastDay: { readonly day: PlainDay | undefined; readonly ids: ReadonlySet<string> };
}

/** Puts entries in order. O(entries log entries). */
export function orderOfEvents(entries: readonly Entry[], first: FirstVersions): EventOrder {
  const moments = momentsOf(entries, first);
  const standing = entries.map((entry, index) => {
    const moment = moments[index] ?? ownMoment(entry, first);
    return { entry, day: moment.day, key: orderKey(moment, entry) };
  });
  standing.sort((a, b) => (a.key < b.key ? -1 : 1));
  const last = standing.at(-1);
  const start = standing.findLastIndex(({ day }) => day !== last?.day) + 1;
  const rough = entries.filter((entry) => !isExactDay(entry.day));
  return {
    ordered: standing.map(({ entry }) => entry),
    days: standing.map(({ day }) => day),
    end: {
      key: last?.key ?? '',
      roughlySpokenOf: new Set(rough.flatMap((entry) => spokenIn(entry, first))),
      lastDay: {
        day: last?.day,
        ids: new Set(standing.slice(start).flatMap(({ entry }) => openIds(entry, first))),
      },
    },
  };
}

/** New entries in order, and where the order ends with them. */
export interface Following {
  readonly ordered: readonly Entry[];
  readonly end: EndOfOrder;
}

/** The new entries in order where they stand after all others and move none of them; otherwise nothing. */
export function followingOrder(
  end: EndOfOrder,
  entries: readonly Entry[],
  first: FirstVersions,
): Following | undefined {
  const key = (entry: Entry) => orderKey(ownMoment(entry, first), entry);
  const moves = (id: string) => end.roughlySpokenOf.has(id) || end.lastDay.ids.has(id);
  const follows = (entry: Entry) =>
    isExactDay(entry.day) && key(entry) > end.key && ![entry.action, ...begunBy(entry, first)].some(moves);
  if (!entries.every(follows) || momentsOf(entries, first).some(({ step }) => step > 0)) return undefined;
  const ordered = entries.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
  const last = ordered.at(-1);
  if (!last) return { ordered, end };
  const { day } = ownMoment(last, first);
  const ids = new Set(day === end.lastDay.day ? end.lastDay.ids : []);
  for (const entry of ordered) {
    if (ownMoment(entry, first).day === day) for (const id of openIds(entry, first)) ids.add(id);
  }
  return { ordered, end: { ...end, key: key(last), lastDay: { day, ids } } };
}

function openIds(entry: Entry, first: FirstVersions): readonly string[] {
  const spoken = spokenIn(entry, first);
  return begunBy(entry, first).length > 0 ? [...spoken, entry.action] : spoken;
}

function orderKey({ day, after, step }: Moment, { id }: Entry): string {
  return `${day} ${after} ${step} ${id}`;
}
