import { collectRecords, type TraitRecord } from '../../graph/merit/collect-records.ts';
import { type Lifetime, type SurvivalCurve, survivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { type LogRank, logRank } from '../../graph/merit/survival/log-rank.ts';
import { winterSurvival } from '../../graph/merit/traits/winter-survival.ts';
import type { YardId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';

/**
 * Lines and yards over winters. One queen with her colonies is one life; its time is counted in winters. A winter in which her
 * colony died is a death; a queen still heading a colony, superseded or given away is last seen alive after the winters
 * she came through.
 */
export interface GroupSurvival<Group extends string> {
  readonly group: Group;
  readonly curve: SurvivalCurve;
}

export interface Survival<Group extends string> {
  /** Groups with at least one winter on record, the most queens first. */
  readonly groups: readonly GroupSurvival<Group>[];
  readonly all: SurvivalCurve;
  /** Absent with fewer than two groups, or without a loss. */
  readonly test?: LogRank;
}

/** The records of winter survival, the same as those of its breeding value. */
export function winterRecords(registry: Registry): readonly TraitRecord[] {
  return collectRecords(winterSurvival, traitObservations(registry)).records;
}

/** Survival of all queens and of each group of them: by line, or by yard. */
export function survivalOf<Group extends string>(
  records: readonly TraitRecord[],
  groupOf: (queen: string) => Group | undefined,
): Survival<Group> {
  const groups = new Map<Group, Lifetime[]>();
  const all: Lifetime[] = [];
  for (const [queen, lifetime] of lifetimes(records)) {
    all.push(lifetime);
    const key = groupOf(queen);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(lifetime);
    else groups.set(key, [lifetime]);
  }
  const sorted = [...groups].sort((a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1));
  const test = logRank(sorted.map(([, group]) => group));
  return {
    groups: sorted.map(([group, lives]) => ({ group, curve: survivalCurve(lives) })),
    all: survivalCurve(all),
    ...(test ? { test } : {}),
  };
}

/** The yard at which each queen faced her first winter. */
export function firstYards(records: readonly TraitRecord[]): ReadonlyMap<string, YardId> {
  const yards = new Map<string, YardId>();
  for (const { queen, yard } of [...records].sort((a, b) => a.season - b.season)) {
    if (!yards.has(queen)) yards.set(queen, yard as YardId);
  }
  return yards;
}

/** One life a queen: how many winters her colonies faced under her, and whether the last was their end. */
export function lifetimes(records: readonly TraitRecord[]): ReadonlyMap<string, Lifetime> {
  const winters = new Map<string, { faced: number; died: boolean }>();
  for (const { queen, value } of [...records].sort((a, b) => a.season - b.season)) {
    const life = winters.get(queen) ?? { faced: 0, died: false };
    if (life.died) continue;
    winters.set(queen, { faced: life.faced + 1, died: value === 0 });
  }
  return new Map([...winters].map(([queen, { faced, died }]) => [queen, { time: faced, event: died }]));
}
