/**
 * Whether two groups of colonies differ in mites, allowing that mites are clumped.
 *
 *   p_g    = mites in group g / bees in group g
 *   phi    = max(1, sum over colonies (x - n p_g)^2 / (n p_g (1 - p_g)) / (colonies - 2))          dispersion
 *   ratio  = p_2 / p_1,   se(log ratio) = sqrt(phi ((1 - p_1)/x_1 + (1 - p_2)/x_2)),   x_g = mites in group g
 *   t      = log ratio / se with colonies - 2 degrees of freedom
 * A plain binomial test takes phi = 1 and finds differences that are not there.
 *
 * Source: McCullagh & Nelder 1989, Generalized Linear Models, 2nd ed., sections 4.5 and 9.2 (quasi-likelihood; from
 * memory, not re-read). A half mite is added to a group without mites, so that the ratio exists (Haldane 1956, from
 * memory). The approximation is poor for few colonies or few mites: the warnings say so.
 * Cost: O(colonies). Unknowns: counts without bees cannot be compared and are not accepted.
 */
import { studentLimit, studentTail } from '../../numerics/special.ts';
import { DEFAULT_LEVEL, type Interval } from './intervals.ts';

export interface WashedColony {
  readonly mites: number;
  /** Above 0. */
  readonly bees: number;
}

export type ComparisonWarning =
  /** Fewer colonies in a group than the spread between colonies can be told from. */
  | 'few-colonies'
  /** So few mites in a group that the normal approximation is rough. */
  | 'few-mites'
  /** More mites than bees in a wash: no binomial draw; the spread stands in for it. */
  | 'mites-exceed-bees';

export interface GroupComparison {
  /** Mites per bee in each group. */
  readonly rates: readonly [number, number];
  /** Second over first. */
  readonly ratio: number;
  readonly ratioInterval: Interval;
  /** Spread between colonies over that of a plain draw, >= 1. */
  readonly dispersion: number;
  /** Two-sided chance of such a difference with no true one. */
  readonly pValue: number;
  readonly warnings: readonly ComparisonWarning[];
}

/** Below these the comparison is warned of; common practice, no source. */
export const COMPARISON_LIMITS = { coloniesInGroup: 5, mitesInGroup: 10 } as const;

interface GroupSum {
  readonly mites: number;
  readonly bees: number;
  readonly rate: number;
}

function sumOf(group: readonly WashedColony[]): GroupSum {
  let mites = 0;
  let bees = 0;
  for (const colony of group) {
    mites += colony.mites;
    bees += colony.bees;
  }
  return { mites, bees, rate: mites / bees };
}

function pearson(group: readonly WashedColony[], rate: number): number {
  if (rate <= 0 || rate >= 1) return 0;
  let sum = 0;
  for (const { mites, bees } of group) sum += (mites - bees * rate) ** 2 / (bees * rate * (1 - rate));
  return sum;
}

/** Compares two groups of washes; `undefined` when there are fewer than three colonies in all or a group is empty. */
export function compareMiteGroups(
  first: readonly WashedColony[],
  second: readonly WashedColony[],
  level = DEFAULT_LEVEL,
): GroupComparison | undefined {
  const degrees = first.length + second.length - 2;
  if (degrees < 1 || first.length === 0 || second.length === 0) return undefined;
  const one = sumOf(first);
  const two = sumOf(second);
  const dispersion = Math.max(1, (pearson(first, one.rate) + pearson(second, two.rate)) / degrees);
  const adjust = one.mites === 0 || two.mites === 0 ? 0.5 : 0;
  const logRatio = Math.log(
    ((two.mites + adjust) / (two.bees + adjust)) * ((one.bees + adjust) / (one.mites + adjust)),
  );
  const variance = [one, two].reduce(
    (sum, { mites, rate }) => sum + Math.max(1 - rate, 0.5) / (mites + adjust),
    0,
  );
  const error = Math.sqrt(dispersion * variance);
  const reach = studentLimit(1 - level, degrees) * error;
  return {
    rates: [one.rate, two.rate],
    ratio: Math.exp(logRatio),
    ratioInterval: { low: Math.exp(logRatio - reach), high: Math.exp(logRatio + reach) },
    dispersion,
    pValue: studentTail(logRatio / error, degrees),
    warnings: warningsOf(first, second, [one, two]),
  };
}

function warningsOf(
  first: readonly WashedColony[],
  second: readonly WashedColony[],
  sums: readonly GroupSum[],
) {
  const warnings: ComparisonWarning[] = [];
  if (Math.min(first.length, second.length) < COMPARISON_LIMITS.coloniesInGroup)
    warnings.push('few-colonies');
  if (sums.some(({ mites }) => mites < COMPARISON_LIMITS.mitesInGroup)) warnings.push('few-mites');
  if ([...first, ...second].some(({ mites, bees }) => mites > bees)) warnings.push('mites-exceed-bees');
  return warnings;
}
