import type { Entry } from './entry.ts';
import type { EntryId } from './ids.ts';
import { withEntries } from './layered-map.ts';
import { type EventOrder, orderOfEvents } from './order.ts';

/**
 * The journal is a set of immutable entries. Putting two journals together is set union by id; which entries
 * count (are live) and in which order they happened follows from the set alone, never from the way it was made.
 */
export type Journal = ReadonlyMap<EntryId, Entry>;

/** One id under which two journals hold different contents: a damaged or altered file, never an honest merge. */
export interface Altered {
  readonly id: EntryId;
  readonly kept: Entry;
  readonly setAside: Entry;
}

export interface Union {
  readonly journal: Journal;
  readonly added: readonly Entry[];
  readonly altered: readonly Altered[];
}

/**
 * Set union of two journals: commutative, associative, idempotent. Where one id has two contents, the one whose
 * canonical text sorts last is kept on either side, so both keepers end with the same journal, and the other is
 * reported.
 */
export function unite(mine: Journal, theirs: Iterable<Entry>): Union {
  const changes = new Map<EntryId, Entry>();
  const added: Entry[] = [];
  const altered: Altered[] = [];
  for (const entry of theirs) {
    const known = changes.get(entry.id) ?? mine.get(entry.id);
    if (!known) {
      changes.set(entry.id, entry);
      added.push(entry);
      continue;
    }
    if (known === entry) continue;
    const knownText = canonicalText(known);
    const newText = canonicalText(entry);
    if (knownText === newText) continue;
    const kept = newText > knownText ? entry : known;
    changes.set(entry.id, kept);
    altered.push({ id: entry.id, kept, setAside: kept === entry ? known : entry });
  }
  return { journal: withEntries(mine, changes), added, altered };
}

/** JSON with sorted keys: equal contents give equal text, byte for byte. */
export function canonicalText(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  const fields = Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([key, inner]) => `${JSON.stringify(key)}:${canonicalText(inner)}`);
  return `{${fields.join(',')}}`;
}

/** Two corrections of the same entry by different hands; the later one counts, both are shown. */
export interface Disagreement {
  readonly about: EntryId;
  readonly counts: Entry;
  readonly against: readonly Entry[];
}

export interface LiveEntries {
  /** The entries that count, in the order in which they happened. */
  readonly live: readonly Entry[];
  readonly disagreements: readonly Disagreement[];
  /** The first version behind each correction; entries refer to one another by first versions. */
  readonly firstVersion: ReadonlyMap<EntryId, EntryId>;
  readonly order: EventOrder;
}

/**
 * Which entries count. An entry and its corrections are versions of one thing: of those that no standing
 * withdrawal names, the latest recorded counts. Versions by different hands of which neither corrects the
 * other are a disagreement.
 */
export function liveEntries(journal: Journal): LiveEntries {
  const standing = standingRule(journal);
  const first = firstVersions(journal);
  const versions = new Map<EntryId, Entry[]>();
  const live: Entry[] = [];
  const disagreements: Disagreement[] = [];
  for (const entry of journal.values()) {
    const root = first.get(entry.id);
    if (root !== undefined) push(versions, root, entry);
  }
  for (const entry of journal.values()) {
    if (entry.kind === 'withdrawal' || first.has(entry.id)) continue;
    const corrections = versions.get(entry.id);
    if (!corrections) {
      if (standing(entry.id)) live.push(entry);
      continue;
    }
    const valid = [entry, ...byRecording(journal, corrections)].filter((version) => standing(version.id));
    const counts = valid.at(-1);
    if (!counts) continue;
    live.push(counts);
    const against = valid.filter((version) => version !== entry && !corrects(journal, counts, version.id));
    if (against.length > 0) disagreements.push({ about: entry.id, counts, against });
  }
  const order = orderOfEvents(live, first);
  return { live: order.ordered, disagreements, firstVersion: first, order };
}

/** True when `later` is, or corrects through any number of steps, the entry with this id. */
function corrects(journal: Journal, later: Entry, id: EntryId): boolean {
  return versionsBehind(journal, later).some((version) => version.id === id);
}

/** An entry and what it corrects, back to the first version that is here. */
function versionsBehind(journal: Journal, entry: Entry): readonly Entry[] {
  const versions = new Set<Entry>();
  let at: Entry | undefined = entry;
  while (at && !versions.has(at)) {
    versions.add(at);
    at = at.supersedes && journal.get(at.supersedes);
  }
  return [...versions];
}

/** An entry stands unless a standing withdrawal names it. A ring of withdrawals (a damaged file) stands nowhere. */
function standingRule(journal: Journal): (id: EntryId) => boolean {
  const withdrawnBy = new Map<EntryId, EntryId[]>();
  for (const entry of journal.values()) {
    if (entry.kind === 'withdrawal') for (const id of entry.withdraws) push(withdrawnBy, id, entry.id);
  }
  const known = new Map<EntryId, boolean>();
  const standing = (id: EntryId): boolean => {
    const answer = known.get(id);
    if (answer !== undefined) return answer;
    const withdrawals = withdrawnBy.get(id);
    if (!withdrawals) return true;
    known.set(id, false);
    const stands = !withdrawals.some(standing);
    known.set(id, stands);
    return stands;
  };
  return standing;
}

/**
 * The first version behind each correction: a correction keeps its place among the entries of its day. A correction
 * of an entry that is not here is a first version itself.
 */
function firstVersions(journal: Journal): ReadonlyMap<EntryId, EntryId> {
  const first = new Map<EntryId, EntryId>();
  for (const entry of journal.values()) {
    if (!entry.supersedes) continue;
    let root = entry;
    const seen = new Set<EntryId>([entry.id]);
    for (;;) {
      const before: Entry | undefined = root.supersedes && journal.get(root.supersedes);
      if (!before || seen.has(before.id)) break;
      seen.add(before.id);
      root = before;
    }
    if (root !== entry) first.set(entry.id, root.id);
  }
  return first;
}

/** Corrections as they were recorded; one made with a clock set back still stands after what it corrects. */
function byRecording(journal: Journal, corrections: readonly Entry[]): readonly Entry[] {
  const keyed = corrections.map((entry) => {
    const behind = versionsBehind(journal, entry);
    const recorded = behind
      .map((version) => version.recordedAt)
      .sort()
      .at(-1);
    return { entry, key: [recorded, String(behind.length).padStart(6, '0'), entry.id].join(' ') };
  });
  return keyed.sort((a, b) => (a.key < b.key ? -1 : 1)).map(({ entry }) => entry);
}

/** All entries of one action, for its undo. */
export function entriesOfAction(journal: Journal, action: Entry['action']): readonly Entry[] {
  return [...journal.values()].filter((entry) => entry.action === action);
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
