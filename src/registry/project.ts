import { firstDay, type PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { EntryId } from '../journal/ids.ts';
import { compareEntries, type Disagreement, type Journal, liveEntries, unite } from '../journal/journal.ts';
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
  { live, firstVersion }: ReturnType<typeof liveEntries>,
  { until }: ProjectOptions,
): Registry {
  const draft = new RegistryDraft(EMPTY_REGISTRY, firstVersion);
  for (const entry of live) {
    if (until !== undefined && firstDay(entry.day) > until) break;
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
  /** Entries not here yet that one here withdraws or corrects: files may come in any order. */
  readonly awaited: ReadonlySet<EntryId>;
}

export function startProjection(journal: Journal, revision = 0): Projection {
  const live = liveEntries(journal);
  const registry = { ...projectLive(live, {}), revision: revision + 1 };
  const { disagreements, firstVersion } = live;
  return { journal, registry, disagreements, firstVersion, awaited: awaitedBy(journal) };
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
  const draft = united.altered.length === 0 ? tryEntries(projection, united.added) : undefined;
  if (!draft) return startProjection(united.journal, projection.registry.revision);
  return { ...projection, journal: united.journal, registry: draft.registry() };
}

/** The contradictions that entries would bring, on top of those that stand. Nothing is changed. */
export function contradictionsOf(
  projection: Projection,
  entries: readonly Entry[],
): readonly Contradiction[] {
  const draft = tryEntries(projection, entries);
  if (draft) return draft.contradictions;
  const known = new Set(projection.registry.contradictions.map(contradictionKey));
  const after = project(unite(projection.journal, entries).journal);
  return after.contradictions.filter((contradiction) => !known.has(contradictionKey(contradiction)));
}

function contradictionKey({ code, entry, colony, queen, overruled }: Contradiction): string {
  return [code, entry, colony, queen, overruled === undefined].join(' ');
}

/** A draft with the entries applied on top, or nothing when they do not simply follow what stands. */
function tryEntries(projection: Projection, entries: readonly Entry[]): RegistryDraft | undefined {
  const last = projection.registry.entries.at(-1);
  const ordered = [...entries].sort((a, b) => compareEntries(a, b));
  for (const entry of ordered) {
    if (entry.kind === 'withdrawal' || entry.supersedes || projection.awaited.has(entry.id)) return undefined;
    if (last && compareEntries(last, entry, projection.firstVersion) > 0) return undefined;
  }
  const draft = new RegistryDraft(projection.registry, projection.firstVersion);
  for (const entry of ordered) apply(draft, entry);
  return draft;
}
