import { firstDay, type PlainDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { ColonyId, EntryId, QueenId } from '../../src/journal/ids.ts';
import type { Journal } from '../../src/journal/journal.ts';
import { orderOfEvents } from '../../src/journal/order.ts';
import type { Colony, Contradiction, Queen, Registry } from '../../src/registry/state.ts';

/** One thing that happened, with all that was said of it. */
export interface HistoryItem {
  readonly entry: Entry;
  /** Earlier versions, the last one first; `entry` corrects them. */
  readonly before: readonly Entry[];
  /** The withdrawal that hides it; absent while it counts. */
  readonly withdrawnBy?: Entry;
  readonly contradictions: readonly Contradiction[];
}

/** What happened to a colony or a queen up to a day, the last first: what counts, and what was taken back. */
export function historyOf(
  journal: Journal,
  registry: Registry,
  about: Pick<Colony, 'id' | 'entries'> | Pick<Queen, 'id' | 'entries'>,
  on: PlainDay,
): readonly HistoryItem[] {
  const live = new Set(registry.entries.map(({ id }) => id));
  const versions = new Set<EntryId>();
  const items: HistoryItem[] = [];
  const add = (entry: Entry, withdrawnBy?: Entry) => {
    const before = earlierVersions(journal, entry);
    for (const each of before) versions.add(each.id);
    const contradictions = registry.contradictions.filter((each) => each.entry === entry.id);
    items.push({ entry, before, contradictions, ...(withdrawnBy ? { withdrawnBy } : {}) });
  };
  for (const entry of about.entries) if (firstDay(entry.day) <= on) add(entry);
  const withdrawals = withdrawalsOf(journal);
  for (const entry of journal.values()) {
    const withdrawal = withdrawals.get(entry.id);
    if (live.has(entry.id) || versions.has(entry.id) || !withdrawal) continue;
    if (entry.kind !== 'withdrawal' && speaksOf(entry, about.id)) add(entry, withdrawal);
  }
  return lastFirst(items);
}

function lastFirst(items: readonly HistoryItem[]): readonly HistoryItem[] {
  const itemOf = new Map(items.map((item) => [item.entry.id, item]));
  const first = new Map(items.map(({ entry, before }) => [entry.id, before.at(-1)?.id ?? entry.id]));
  const { ordered } = orderOfEvents(
    [...itemOf.values()].map(({ entry }) => entry),
    first,
  );
  return ordered.flatMap(({ id }) => itemOf.get(id) ?? []).reverse();
}

/** The versions that an entry corrects, back to the first. */
export function earlierVersions(journal: Journal, entry: Entry): readonly Entry[] {
  const before: Entry[] = [];
  let at = entry.supersedes && journal.get(entry.supersedes);
  while (at && !before.includes(at)) {
    before.push(at);
    at = at.supersedes && journal.get(at.supersedes);
  }
  return before;
}

/** The withdrawal that names each withdrawn entry. */
export function withdrawalsOf(journal: Journal): ReadonlyMap<EntryId, Entry> {
  const by = new Map<EntryId, Entry>();
  for (const entry of journal.values()) {
    if (entry.kind === 'withdrawal') for (const id of entry.withdraws) by.set(id, entry);
  }
  return by;
}

function speaksOf(value: unknown, id: ColonyId | QueenId): boolean {
  if (value === id) return true;
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some((inner) => speaksOf(inner, id));
}
