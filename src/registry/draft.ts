import type { Entry, EntryOf } from '../journal/entry.ts';
import type { ColonyId, EntryId, KeeperId, QueenId, YardId } from '../journal/ids.ts';
import type { ContradictionCode } from '../journal/problems.ts';
import { queenTitle } from './queries.ts';
import type { Colony, Contradiction, Making, Queen, Registry, TreatmentSpan, Yard } from './state.ts';

export const EMPTY_REGISTRY: Registry = {
  revision: 0,
  yards: new Map(),
  colonies: new Map(),
  queens: new Map(),
  keepers: new Map(),
  makings: new Map(),
  treatments: new Map(),
  droneBackgrounds: new Map(),
  entries: [],
  contradictions: [],
};

/** A map with changes laid over it; the map beneath is never touched. */
class Overlay<K, V> {
  readonly #beneath: ReadonlyMap<K, V>;
  readonly #changes = new Map<K, V>();

  constructor(beneath: ReadonlyMap<K, V>) {
    this.#beneath = beneath;
  }

  get(key: K): V | undefined {
    return this.#changes.get(key) ?? this.#beneath.get(key);
  }

  set(key: K, value: V): void {
    this.#changes.set(key, value);
  }

  *values(): IterableIterator<V> {
    for (const [key, value] of this.#beneath) yield this.#changes.get(key) ?? value;
    for (const [key, value] of this.#changes) if (!this.#beneath.has(key)) yield value;
  }

  /** The map with the changes in it; the very same map when there are none. */
  merged(): ReadonlyMap<K, V> {
    if (this.#changes.size === 0) return this.#beneath;
    if (this.#beneath.size === 0) return this.#changes;
    const merged = new Map(this.#beneath);
    for (const [key, value] of this.#changes) merged.set(key, value);
    return merged;
  }
}

/** What a contradiction says beyond its code and the entry that brings it. */
export interface ContradictionText {
  readonly colony?: ColonyId | undefined;
  readonly queen?: QueenId | undefined;
  readonly found: string;
  readonly because: string;
  readonly remedies: readonly string[];
}

/**
 * A registry in the making: entries are applied to it one by one, in order. The registry it began from stays as it
 * was, so that a draft also serves to try entries before they are written.
 */
export class RegistryDraft {
  readonly yards: Overlay<YardId, Yard>;
  readonly colonies: Overlay<ColonyId, Colony>;
  readonly queens: Overlay<QueenId, Queen>;
  readonly keepers: Overlay<KeeperId, string>;
  readonly makings: Overlay<EntryId, Making>;
  readonly treatments: Overlay<EntryId, TreatmentSpan>;
  readonly droneBackgrounds: Overlay<string, EntryOf<'drone-background'>>;
  readonly entries: Entry[] = [];
  readonly contradictions: Contradiction[] = [];
  /** Queens whom an entry named before anything was known of them. */
  readonly namedUnknown: Set<QueenId>;
  readonly #base: Registry;
  readonly #firstVersion: ReadonlyMap<EntryId, EntryId>;
  /** Histories begun in this draft. No registry holds them yet, so they may grow in place. */
  readonly #own = new WeakSet<readonly Entry[]>();

  constructor(base: Registry, firstVersion: ReadonlyMap<EntryId, EntryId>) {
    this.#base = base;
    this.#firstVersion = firstVersion;
    this.namedUnknown = new Set(base.contradictions.flatMap(unknownQueen));
    this.yards = new Overlay(base.yards);
    this.colonies = new Overlay(base.colonies);
    this.queens = new Overlay(base.queens);
    this.keepers = new Overlay(base.keepers);
    this.makings = new Overlay(base.makings);
    this.treatments = new Overlay(base.treatments);
    this.droneBackgrounds = new Overlay(base.droneBackgrounds);
  }

  /** The id under which other entries know this one: that of its first version. */
  firstVersion(id: EntryId): EntryId {
    return this.#firstVersion.get(id) ?? id;
  }

  registry(): Registry {
    const base = this.#base;
    return {
      revision: base.revision + 1,
      yards: this.yards.merged(),
      colonies: this.colonies.merged(),
      queens: this.queens.merged(),
      keepers: this.keepers.merged(),
      makings: this.makings.merged(),
      treatments: this.treatments.merged(),
      droneBackgrounds: this.droneBackgrounds.merged(),
      entries: base.entries.length === 0 ? this.entries : [...base.entries, ...this.entries],
      contradictions: [...base.contradictions, ...this.contradictions],
    };
  }

  contradict(entry: Entry, code: ContradictionCode, text: ContradictionText): void {
    const overruled = entry.overruled?.find(({ rule }) => rule === code)?.reason;
    const contradiction: Contradiction = {
      code,
      entry: entry.id,
      day: entry.day,
      found: text.found,
      because: text.because,
      remedies: text.remedies,
      ...(text.colony ? { colony: text.colony } : {}),
      ...(text.queen ? { queen: text.queen } : {}),
      ...(overruled ? { overruled } : {}),
    };
    this.contradictions.push(contradiction);
    for (const queen of unknownQueen(contradiction)) this.namedUnknown.add(queen);
  }

  labelOf(id: ColonyId): string {
    return this.colonies.get(id)?.label ?? 'a colony without records';
  }

  titleOf(id: QueenId): string {
    const queen = this.queens.get(id);
    return queen ? queenTitle(queen) : 'a queen without records';
  }

  changeColony(id: ColonyId, change: (colony: Colony) => Colony): void {
    const colony = this.colonies.get(id);
    if (colony) this.colonies.set(id, change(colony));
  }

  changeQueen(id: QueenId, change: (queen: Queen) => Queen): void {
    const queen = this.queens.get(id);
    if (queen) this.queens.set(id, change(queen));
  }

  /** Writes the entry into the histories of the colonies and queens that it speaks of. */
  file(
    entry: Entry,
    about: { readonly colonies?: readonly ColonyId[]; readonly queens?: readonly QueenId[] },
  ): void {
    for (const id of unique(about.colonies)) {
      const colony = this.colonies.get(id);
      if (!colony) continue;
      const entries = this.#grown(colony.entries, entry);
      if (entries !== colony.entries) this.colonies.set(id, { ...colony, entries });
    }
    for (const id of unique(about.queens)) {
      const queen = this.queens.get(id);
      if (!queen) continue;
      const entries = this.#grown(queen.entries, entry);
      if (entries !== queen.entries) this.queens.set(id, { ...queen, entries });
    }
  }

  /** The history with one more entry: copied once a draft, so that filing costs the same however long it is. */
  #grown(history: readonly Entry[], entry: Entry): readonly Entry[] {
    if (this.#own.has(history)) {
      (history as Entry[]).push(entry);
      return history;
    }
    const copy = [...history, entry];
    this.#own.add(copy);
    return copy;
  }
}

function unknownQueen({ code, queen }: Contradiction): readonly QueenId[] {
  return code === 'queen-unknown' && queen ? [queen] : [];
}

function unique<T>(list: readonly T[] = []): Iterable<T> {
  return list.length < 2 ? list : new Set(list);
}
