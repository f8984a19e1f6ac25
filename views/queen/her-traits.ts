import { type CollectedRecords, collectRecords } from '../../graph/merit/collect-records.ts';
import type { SetAside } from '../../graph/merit/trait-record.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import type { Trait, TraitId } from '../../graph/merit/traits/trait.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';
import { ordinal } from './merit-figures.ts';

/** What a queen's colonies did, each beside its neighbours of the same yard and season. */

export interface Neighbour {
  readonly queen: QueenId;
  readonly colony: ColonyId;
  readonly value: number;
  readonly hers: boolean;
}

export interface ComparisonGroup {
  readonly key: string;
  readonly yard: string;
  readonly season: number;
  /** What else is alike in the group: method, hours; empty when nothing. */
  readonly alike: string;
  readonly members: readonly Neighbour[];
  readonly queens: number;
  /** Too few queens to tell bees from luck. */
  readonly small: boolean;
  /** Her place among the queens, 1 the best; queens alike share the better place. */
  readonly place: number;
}

export interface HerTrait {
  readonly trait: TraitId;
  readonly better: Trait['better'];
  /** Latest season first. */
  readonly groups: readonly ComparisonGroup[];
  /** Records that would have been hers and do not count, latest first. */
  readonly aside: readonly SetAside[];
}

const collected = new WeakMap<Registry, readonly (readonly [Trait, CollectedRecords])[]>();

function collectAll(registry: Registry): readonly (readonly [Trait, CollectedRecords])[] {
  const known = collected.get(registry);
  if (known) return known;
  const observations = traitObservations(registry);
  const all = TRAITS.map((trait) => [trait, collectRecords(trait, observations)] as const);
  collected.set(registry, all);
  return all;
}

/** Every trait of which there is a record of hers, counted or set aside, in the order in which traits are shown. */
export function herTraits(registry: Registry, queen: QueenId): readonly HerTrait[] {
  return collectAll(registry).flatMap(([trait, { records, setAside, groups }]) => {
    const own = new Set(records.filter((record) => record.queen === queen).map(({ group }) => group));
    const aside = setAside.filter((each) => each.queen === queen).sort((a, b) => b.day - a.day);
    if (own.size === 0 && aside.length === 0) return [];
    const hers = groups
      .filter(({ group }) => own.has(group))
      .map(({ group, yard, season, queens, small }) => {
        const members = records
          .filter((record) => record.group === group)
          .map((record) => ({
            queen: record.queen as QueenId,
            colony: record.colony as ColonyId,
            value: record.value,
            hers: record.queen === queen,
          }));
        return {
          key: group,
          yard: registry.yards.get(yard as never)?.name ?? 'a yard without records',
          season,
          alike: group.split(' / ')[2] ?? '',
          members,
          queens,
          small,
          place: placeOf(members, trait.better),
        };
      })
      .sort((a, b) => b.season - a.season || (a.key < b.key ? -1 : 1));
    return [{ trait: trait.id, better: trait.better, groups: hers, aside }];
  });
}

/** By her mean and the means of the others. */
function placeOf(members: readonly Neighbour[], better: Trait['better']): number {
  const means = new Map<QueenId, { sum: number; count: number; hers: boolean }>();
  for (const { queen, value, hers } of members) {
    const mean = means.get(queen) ?? { sum: 0, count: 0, hers };
    mean.sum += value;
    mean.count += 1;
    means.set(queen, mean);
  }
  const mean = (of: { readonly sum: number; readonly count: number }) => of.sum / of.count;
  const own = [...means.values()].find(({ hers }) => hers);
  if (!own) return means.size;
  const sign = better === 'higher' ? 1 : -1;
  return 1 + [...means.values()].filter((other) => sign * (mean(other) - mean(own)) > 1e-9).length;
}

const ALIKE: Readonly<Record<string, string>> = {
  wash: 'wash',
  'sugar-shake': 'sugar shake',
  'natural-drop': 'natural drop',
};

/**
 * What tells each group from the others besides its season: the method, and the yard where she stood at several;
 * aligned to the groups of the trait.
 */
export function besides({ groups }: HerTrait): readonly string[] {
  const severalYards = new Set(groups.map(({ yard }) => yard)).size > 1;
  const severalWays = new Set(groups.map(({ alike }) => alike)).size > 1;
  return groups.map(({ yard, alike }) =>
    [severalWays ? (ALIKE[alike] ?? alike) : '', severalYards ? yard : '']
      .filter((part) => part !== '')
      .join(', '),
  );
}

/** The yard or method that all groups of a trait share, for its heading. */
export function shared({ groups }: HerTrait): string {
  const [yard, ...yards] = new Set(groups.map((group) => group.yard));
  const [alike, ...ways] = new Set(groups.map((group) => group.alike));
  const method = alike && ways.length === 0 ? (ALIKE[alike] ?? alike) : '';
  return [yards.length === 0 ? (yard ?? '') : '', method].filter((part) => part !== '').join(', ');
}

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "three", "12": numbers up to ten in letters. */
export function inLetters(count: number): string {
  return NUMBERS[count] ?? String(count);
}

/** What stands on the picture of a group: her place, or that the group is too small to say. */
export function groupWords(trait: TraitId, { small, queens, place, members }: ComparisonGroup): string {
  if (small) {
    const colonies = new Set(members.map(({ colony }) => colony)).size;
    return `${inLetters(colonies)} colonies: too few to tell the line from luck`;
  }
  if (trait === 'winter-survival') {
    const alive = members.filter(({ value }) => value >= 1).length;
    return `${alive} of ${members.length} came through`;
  }
  const alike = new Set(members.map(({ value }) => value)).size === 1;
  if (alike) return `all ${inLetters(queens)} alike`;
  if (place === 1) return `best of ${queens}`;
  return place === queens ? `last of ${queens}` : `${ordinal(place)} of ${queens}`;
}
