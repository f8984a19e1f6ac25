import { firstDay, lastDay, type RoughDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { ColonyId, PhotoId, QueenId, YardId } from '../../src/journal/ids.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';

/** What a heap of entries holds, said to the keeper before it leaves or comes in. */
export interface Manifest {
  readonly entries: number;
  /** The days they speak of; absent when none of them tells of a day at the hives. */
  readonly from?: RoughDay;
  readonly to?: RoughDay;
  readonly queens: readonly string[];
  readonly boxes: readonly string[];
  readonly yards: readonly { readonly name: string; readonly where?: string }[];
  /** Who wrote them. */
  readonly keepers: readonly string[];
  /** People and places that entries name as the giver or taker of a queen or colony. */
  readonly others: readonly string[];
  /** Notes, remarks and reasons: the keeper's own words. */
  readonly words: number;
  readonly photos: ReadonlySet<PhotoId>;
}

interface Found {
  readonly queens: Set<QueenId>;
  readonly colonies: Set<ColonyId>;
  readonly yards: Set<YardId>;
}

/** Reads entries for what they name. `registry` must know them: names are looked up in it. O(size of the entries). */
export function manifestOf(entries: readonly Entry[], registry: Registry): Manifest {
  const found: Found = { queens: new Set(), colonies: new Set(), yards: new Set() };
  const keepers = new Set<string>();
  const others = new Set<string>();
  const photos = new Set<PhotoId>();
  let words = 0;
  let from: RoughDay | undefined;
  let to: RoughDay | undefined;
  for (const entry of entries) {
    collect(entry, registry, found);
    keepers.add(registry.keepers.get(entry.recordedBy) ?? 'a keeper without a name');
    for (const other of othersIn(entry)) others.add(other);
    if ('photos' in entry) for (const id of entry.photos ?? []) photos.add(id);
    words += wordsIn(entry);
    if (entry.kind === 'keeper-named' || entry.kind === 'withdrawal') continue;
    if (!from || firstDay(entry.day) < firstDay(from)) from = entry.day;
    if (!to || lastDay(entry.day) > lastDay(to)) to = entry.day;
  }
  return {
    entries: entries.length,
    ...(from && to ? { from, to } : {}),
    queens: named([...found.queens].flatMap((id) => registry.queens.get(id) ?? []).map(queenTitle)),
    boxes: named([...found.colonies].flatMap((id) => registry.colonies.get(id)?.label ?? [])),
    yards: [...found.yards].flatMap((id) => {
      const yard = registry.yards.get(id);
      return yard ? [{ name: yard.name, ...(yard.where ? { where: yard.where } : {}) }] : [];
    }),
    keepers: [...keepers],
    others: [...others].filter((other) => !keepers.has(other)),
    words,
    photos,
  };
}

function collect(value: unknown, registry: Registry, found: Found): void {
  if (typeof value === 'string') {
    if (registry.queens.has(value as QueenId)) found.queens.add(value as QueenId);
    else if (registry.colonies.has(value as ColonyId)) found.colonies.add(value as ColonyId);
    else if (registry.yards.has(value as YardId)) found.yards.add(value as YardId);
    return;
  }
  if (typeof value !== 'object' || value === null) return;
  for (const inner of Object.values(value)) collect(inner, registry, found);
}

function othersIn(entry: Entry): readonly string[] {
  if (entry.kind === 'queen-entered' || entry.kind === 'colony-started')
    return entry.from ? [entry.from] : [];
  return entry.kind === 'queen-lost' && entry.to ? [entry.to] : [];
}

function wordsIn(entry: Entry): number {
  const note = entry.kind === 'note' || (entry.kind === 'inspection' && entry.note !== undefined);
  return Number(note) + Number(entry.remark !== undefined) + (entry.overruled?.length ?? 0);
}

/** Yards whose names stand in remarks and in matings at stations: a pedigree tells of them in words. */
export function yardsToldIn(entries: readonly Entry[], registry: Registry): readonly string[] {
  const text = entries.map((entry) => JSON.stringify(entry)).join('\n');
  return [...registry.yards.values()].map(({ name }) => name).filter((name) => text.includes(`at ${name}`));
}

/** Named ones first, in order of name; queens without a name after them. */
function named(titles: readonly string[]): readonly string[] {
  const unnamed = (title: string) => Number(/^(un|ex)\w+ queen/.test(title));
  return [...titles].sort(
    (a, b) => unnamed(a) - unnamed(b) || a.localeCompare(b, 'en', { numeric: true }) || (a < b ? -1 : 1),
  );
}

/** "380 kB", "1.2 MB": the size of a file as devices say it, in thousands. */
export function sizeText(bytes: number): string {
  if (bytes < 1000) return `${Math.round(bytes)} bytes`;
  if (bytes < 999_500) return `${Math.round(bytes / 1000)} kB`;
  return `${(bytes / 1_000_000).toFixed(bytes < 9_950_000 ? 1 : 0)} MB`;
}
