/**
 * How long the colonies of each line last, in winters: a survival curve a line and the test between them.
 *
 *   one subject a queen and colony;  time = winters on record that she headed it into;  event = it died in the last
 *   curve: Kaplan-Meier (`kaplan-meier.ts`);  between lines: log-rank (`log-rank.ts`)
 * A colony seen alive after its last recorded winter, or parted with, is "last seen alive" then. Yard and year are not
 * taken out here, as they are in `line-scores.ts`: the curve shows what happened, the score compares.
 *
 * Source: as in those files. Cost: O(winters log winters). Unknowns: winters of an unknown queen belong to no line; losses
 * to animals, weather, sale or gift end the watch without an event.
 */
import type { WinterObservation } from '../observations.ts';
import { saysNothingOfBees } from '../traits/winter-survival.ts';
import { type Lifetime, type SurvivalCurve, type SurvivalOptions, survivalCurve } from './kaplan-meier.ts';
import { type LogRank, logRank } from './log-rank.ts';

export interface LineSurvival {
  readonly lines: readonly { readonly line: string; readonly curve: SurvivalCurve }[];
  /** Absent with fewer than two lines or without a loss; `smallNumbers` warns where it is rough. */
  readonly test?: LogRank;
}

/** Winters each queen headed a colony into, by queen and colony in the order of first appearance. */
export function winterLifetimes(
  winters: readonly WinterObservation[],
): readonly (Lifetime & { readonly queen: string })[] {
  const subjects = new Map<string, { queen: string; seasons: Set<number>; last: WinterObservation }>();
  for (const winter of winters) {
    if (!winter.workers.known) continue;
    const { queen } = winter.workers;
    const key = `${queen} / ${winter.colony}`;
    const subject = subjects.get(key) ?? { queen, seasons: new Set(), last: winter };
    subject.seasons.add(winter.season);
    if (winter.season >= subject.last.season) subject.last = winter;
    subjects.set(key, subject);
  }
  return [...subjects.values()].map(({ queen, seasons, last }) => ({
    queen,
    time: seasons.size,
    event: !last.alive && !saysNothingOfBees(last),
  }));
}

/** Curves of all lines by name, and the test between them. `lineOf`: line of a queen, `undefined` where unknown. */
export function lineSurvival(
  winters: readonly WinterObservation[],
  lineOf: (queen: string) => string | undefined,
  options: SurvivalOptions = {},
): LineSurvival {
  const byLine = new Map<string, Lifetime[]>();
  for (const { queen, time, event } of winterLifetimes(winters)) {
    const line = lineOf(queen);
    if (line === undefined) continue;
    const known = byLine.get(line);
    if (known) known.push({ time, event });
    else byLine.set(line, [{ time, event }]);
  }
  const sorted = [...byLine].sort(([a], [b]) => (a < b ? -1 : 1));
  const test = logRank(sorted.map(([, lifetimes]) => lifetimes));
  const lines = sorted.map(([line, lifetimes]) => ({ line, curve: survivalCurve(lifetimes, options) }));
  return test ? { lines, test } : { lines };
}
