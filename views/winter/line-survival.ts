import { collectRecords, type TraitRecord } from '../../graph/merit/collect-records.ts';
import { type Lifetime, type SurvivalCurve, survivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { type LogRank, logRank } from '../../graph/merit/survival/log-rank.ts';
import { winterSurvival } from '../../graph/merit/traits/winter-survival.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';

/**
 * Lines over winters. One queen with her colonies is one life; its time is counted in winters. A winter in which her
 * colony died is a death; a queen still heading a colony, superseded or given away is last seen alive after the winters
 * she came through.
 */
export interface LineSurvival {
  readonly line: QueenId;
  readonly curve: SurvivalCurve;
}

export interface Survival {
  /** Lines with at least one winter on record, the most queens first. */
  readonly lines: readonly LineSurvival[];
  readonly all: SurvivalCurve;
  /** Absent with fewer than two lines, or without a loss. */
  readonly test?: LogRank;
}

/** Survival of all lines, from the same records as the breeding value of winter survival. */
export function lineSurvival(registry: Registry, lineOf: (queen: string) => QueenId | undefined): Survival {
  const { records } = collectRecords(winterSurvival, traitObservations(registry));
  return survivalOf(records, lineOf);
}

export function survivalOf(
  records: readonly TraitRecord[],
  lineOf: (queen: string) => QueenId | undefined,
): Survival {
  const groups = new Map<QueenId, Lifetime[]>();
  const all: Lifetime[] = [];
  for (const [queen, lifetime] of lifetimes(records)) {
    all.push(lifetime);
    const line = lineOf(queen);
    if (line === undefined) continue;
    const group = groups.get(line);
    if (group) group.push(lifetime);
    else groups.set(line, [lifetime]);
  }
  const lines = [...groups].sort((a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1));
  const test = logRank(lines.map(([, group]) => group));
  return {
    lines: lines.map(([line, group]) => ({ line, curve: survivalCurve(group) })),
    all: survivalCurve(all),
    ...(test ? { test } : {}),
  };
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
