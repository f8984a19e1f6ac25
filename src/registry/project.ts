import type { PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { EntryId } from '../journal/ids.ts';
import { type Disagreement, type Journal, liveEntries, unite } from '../journal/journal.ts';
import { type EndOfOrder, type Following, followingOrder } from '../journal/order.ts';
import { apply } from './apply/index.ts';
import { EMPTY_REGISTRY, RegistryDraft } from './draft.ts';
import type { Contradiction, Registry } from './state.ts';

export interface ProjectOptions {
  /** Leave out what happened after this day: the state as it was. */
  readonly until?: PlainDay;
}

/** The registry that a journal tells of. Pure: the same set of entries gives the same registry. O(entries log entries). */
export function project(journal: Journal, options: ProjectOptions = {}): Registry {
  return projectLive(liveEntries(journal), options);
}

function projectLive(
  { live, firstVersion, order }: ReturnType<typeof liveEntries>,
  { until }: ProjectOptions,
): Registry {
  const draft = new RegistryDraft(EMPTY_REGISTRY, firstVersion);
  for (const [index, entry] of live.entries()) {
    const day = order.days[index];
    if (until !== undefined && day !== undefined && day > until) break;
    apply(draft, entry);
  }
  return draft.registry();
}

/** A journal with the registry that it tells of, kept in step. */
export interface Projection {
  readonly journal: Journal;
  readonly registry: Registry;
  readonly disagreements: readonly Disagreement[];
  readonly firstVersion: ReadonlyMap<EntryId, EntryId>;
  /** Where the order of the entries ends. */
  readonly end: EndOfOrder;
  /** Entries not here yet that one here withdraws or corrects: files may come in any order. */
  readonly awaited: ReadonlySet<EntryId>;
}

/** Projects a journal from nothing; later entries are applied to what it gives. */
export function startProjection(journal: Journal, revision = 0): Projection {
  const live = liveEntries(journal);
  const registry = { ...projectLive(live, {}), revision: revision + 1 };
  const { disagreements, firstVersion, order } = live;
  return { journal, registry, disagreements, firstVersion, end: order.end, awaited: awaitedBy(journal) };
}

function awaitedBy(journal: Journal): ReadonlySet<EntryId> {
  const awaited = new Set<EntryId>();
  for (const entry of journal.values()) {
    if (entry.supersedes && !journal.has(entry.supersedes)) awaited.add(entry.supersedes);
    if (entry.kind !== 'withdrawal') continue;
    for (const id of entry.withdraws) if (!journal.has(id)) awaited.add(id);
  }
  return awaited;
}

/**
 * The projection with more entries. New entries that come after all others and correct or withdraw nothing are applied
 * to what stands; anything else is projected anew. Either way the result equals a projection from nothing.
 */
export function extendProjection(projection: Projection, entries: readonly Entry[]): Projection {
  const united = unite(projection.journal, entries);
  if (united.added.length === 0 && united.altered.length === 0) return projection;
  const following = united.altered.length === 0 ? followingEntries(projection, united.added) : undefined;
  if (!following) return startProjection(united.journal, projection.registry.revision);
  const registry = draftWith(projection, following.ordered).registry();
  return { ...projection, journal: united.journal, registry, end: following.end };
}

/** The contradictions that entries would bring, on top of those that stand. Nothing is changed. */
export function contradictionsOf(
  projection: Projection,
  entries: readonly Entry[],
): readonly Contradiction[] {
  const following = followingEntries(projection, entries);
  if (following) return draftWith(projection, following.ordered).contradictions;
  const known = new Set(projection.registry.contradictions.map(contradictionKey));
  const after = project(unite(projection.journal, entries).journal);
  return after.contradictions.filter((contradiction) => !known.has(contradictionKey(contradiction)));
}

function contradictionKey({ code, entry, colony, queen, overruled }: Contradiction): string {
  return [code, entry, colony, queen, overruled === undefined].join(' ');
}

function draftWith(projection: Projection, following: readonly Entry[]): RegistryDraft {
  const draft = new RegistryDraft(projection.registry, projection.firstVersion);
  for (const entry of following) apply(draft, entry);
  return draft;
}

/** The entries in order, or nothing when they do not simply follow what stands. */
function followingEntries(projection: Projection, entries: readonly Entry[]): Following | undefined {
  const { end, awaited, firstVersion } = projection;
  const isNew = (entry: Entry) => entry.kind !== 'withdrawal' && !entry.supersedes && !awaited.has(entry.id);
  return entries.every(isNew) ? followingOrder(end, entries, firstVersion) : undefined;
}
