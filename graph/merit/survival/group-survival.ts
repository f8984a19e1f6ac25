/**
 * How lines and yards fare over winters: a survival curve a group, the test between them, and each group's share of
 * winters survived, drawn towards that of all.
 *
 *   one life a queen;  time = winters on record that her bees faced under her, up to a loss;  event = lost in the last
 *   curve: Kaplan-Meier (`kaplan-meier.ts`);  between groups: log-rank (`log-rank.ts`)
 *   share: beta-binomial with the prior of all groups (`shrinkage.ts`)
 * A queen still heading a colony, superseded or given away is "last seen alive" after the winters she came through; so
 * is one whose colony was lost to an animal, the weather, a sale or a gift, and that winter does not count. Yard and
 * year are not taken out here, as they are in `line-scores.ts`: the curve shows what happened, the score compares.
 *
 * Source: as in those files. Cost: O(winters log winters). Unknowns: winters of an unknown queen belong to nobody; queens
 * of no known group are in the curve of all alone.
 */
import { pushTo } from '../../grouping.ts';
import type { WinterObservation } from '../observations.ts';
import { saysNothingOfBees } from '../traits/winter-survival.ts';
import { type Lifetime, type SurvivalCurve, survivalCurve } from './kaplan-meier.ts';
import { type LogRank, logRank } from './log-rank.ts';
import { betaBinomial, empiricalPrior, type Posterior, type Tally } from './shrinkage.ts';

export interface SurvivalByGroup<Group extends string> {
  /** Groups with at least one winter on record, the most queens first, ties by name. */
  readonly groups: readonly { readonly group: Group; readonly curve: SurvivalCurve }[];
  readonly all: SurvivalCurve;
  /** Absent with fewer than two groups or without a loss; `smallNumbers` warns where it is rough. */
  readonly test?: LogRank;
}

type GroupOf<Group> = (queen: string) => Group | undefined;

/** The curves of all queens and of each group of them, by line or by yard, and the test between the groups. */
export function survivalByGroup<Group extends string>(
  winters: readonly WinterObservation[],
  groupOf: GroupOf<Group>,
): SurvivalByGroup<Group> {
  const lives = winterLifetimes(winters);
  const sorted = [...grouped(lives, groupOf)].sort(
    (a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1),
  );
  const test = logRank(sorted.map(([, group]) => group));
  return {
    groups: sorted.map(([group, members]) => ({ group, curve: survivalCurve(members) })),
    all: survivalCurve(lives),
    ...(test ? { test } : {}),
  };
}

/** One life a queen: how many winters her bees faced under her, and whether the last was their end. By her first winter. */
export function winterLifetimes(
  winters: readonly WinterObservation[],
): readonly (Lifetime & { readonly queen: string })[] {
  const lives = new Map<string, { faced: number; died: boolean }>();
  for (const { queen, alive } of counted(winters)) {
    const life = lives.get(queen) ?? { faced: 0, died: false };
    if (!life.died) lives.set(queen, { faced: life.faced + 1, died: !alive });
  }
  return [...lives].map(([queen, { faced, died }]) => ({ queen, time: faced, event: died }));
}

export interface GroupShare<Group extends string> extends Tally {
  readonly group: Group;
  /** Share of its colony-winters survived, drawn towards the share of all, with credible interval. */
  readonly drawn: Posterior;
}

/** Colony-winters survived in each group, by the number of them; and the share (0..1) that all are drawn towards. */
export function winterShares<Group extends string>(
  winters: readonly WinterObservation[],
  groupOf: GroupOf<Group>,
): { readonly shares: readonly GroupShare<Group>[]; readonly towards: number } {
  const tallies = [...grouped(counted(winters), groupOf)]
    .map(([group, members]) => ({
      group,
      started: members.length,
      survived: members.filter(({ alive }) => alive).length,
    }))
    .sort((a, b) => b.started - a.started || (a.group < b.group ? -1 : 1));
  const prior = empiricalPrior(tallies);
  return {
    shares: tallies.map((tally) => ({ ...tally, drawn: betaBinomial(prior, tally) })),
    towards: prior.a / (prior.a + prior.b),
  };
}

/** Winters that say something of the bees of a known queen, the earliest first. */
function counted(
  winters: readonly WinterObservation[],
): readonly { readonly queen: string; readonly alive: boolean }[] {
  return [...winters]
    .sort((a, b) => a.season - b.season)
    .flatMap((winter) =>
      winter.workers.known && !saysNothingOfBees(winter)
        ? [{ queen: winter.workers.queen, alive: winter.alive }]
        : [],
    );
}

function grouped<Group extends string, Member extends { readonly queen: string }>(
  members: readonly Member[],
  groupOf: GroupOf<Group>,
): ReadonlyMap<Group, readonly Member[]> {
  const groups = new Map<Group, Member[]>();
  for (const member of members) {
    const group = groupOf(member.queen);
    if (group !== undefined) pushTo(groups, group, member);
  }
  return groups;
}
