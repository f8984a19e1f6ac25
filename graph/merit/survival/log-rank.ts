/**
 * Whether groups (lines, yards) die at different rates: the log-rank test.
 *
 *   at each death time:  E_g = d n_g / n        expected deaths of group g if all die alike
 *   V_gh = d (n - d) / (n - 1) * n_g / n * ((g = h) - n_h / n)
 *   chi2 = (O - E)' V^- (O - E) over all groups but one, groups - 1 degrees of freedom
 *
 * Sources: Mantel 1966, Cancer Chemother. Rep. 50:163; Peto & Peto 1972, J. R. Stat. Soc. A 135:185 (from memory;
 * value checked against R survival 3.5-3 in tests/outside).
 * The chi-square is an approximation; with fewer than five deaths expected in a group it is rough and warned of.
 * Cost: O(times * groups^2). Unknowns: those last seen alive count as at risk until then.
 */
import { chiSquareTail } from '../../numerics/special.ts';
import { choleskyInPlace, choleskySolveInPlace } from '../dense.ts';
import { type Lifetime, tally } from './kaplan-meier.ts';

/** Fewer expected deaths than this in a group make the chi-square rough; Cochran's rule of five (from memory). */
export const FEWEST_EXPECTED_DEATHS = 5;

export interface LogRank {
  /** Deaths seen and expected in each group, in the order given. */
  readonly observed: readonly number[];
  readonly expected: readonly number[];
  readonly chiSquare: number;
  readonly degrees: number;
  readonly pValue: number;
  /** True when a group expects fewer deaths than `FEWEST_EXPECTED_DEATHS`: read the p-value as rough. */
  readonly smallNumbers: boolean;
}

interface Sums {
  readonly observed: Float64Array;
  readonly expected: Float64Array;
  readonly covariance: Float64Array;
}

/** The test over two or more groups; `undefined` when fewer than two groups have anyone, or nobody died. */
export function logRank(groups: readonly (readonly Lifetime[])[]): LogRank | undefined {
  const filled = groups.filter((group) => group.length > 0);
  const { observed, expected, covariance } = sumsOverTimes(filled);
  const degrees = filled.length - 1;
  if (degrees < 1 || observed.every((deaths) => deaths === 0)) return undefined;
  const block = new Float64Array(degrees * degrees);
  const excess = new Float64Array(degrees);
  for (let g = 0; g < degrees; g++) {
    excess[g] = observed[g]! - expected[g]!;
    for (let h = 0; h < degrees; h++) block[g * degrees + h] = covariance[g * filled.length + h]!;
  }
  const right = excess.slice();
  if (!choleskyInPlace(block, degrees)) return undefined;
  choleskySolveInPlace(block, degrees, right);
  let chiSquare = 0;
  for (let g = 0; g < degrees; g++) chiSquare += excess[g]! * right[g]!;
  return {
    observed: [...observed],
    expected: [...expected],
    chiSquare,
    degrees,
    pValue: chiSquareTail(chiSquare, degrees),
    smallNumbers: expected.some((deaths) => deaths < FEWEST_EXPECTED_DEATHS),
  };
}

function sumsOverTimes(groups: readonly (readonly Lifetime[])[]): Sums {
  const count = groups.length;
  const tallies = groups.map((group) => new Map(tally(group).map((at) => [at.time, at])));
  const times = [...new Set(groups.flatMap((group) => group.map(({ time }) => time)))].sort((a, b) => a - b);
  const atRisk = Float64Array.from(groups, (group) => group.length);
  const sums = {
    observed: new Float64Array(count),
    expected: new Float64Array(count),
    covariance: new Float64Array(count * count),
  };
  for (const time of times) {
    const deaths = tallies.reduce((sum, at) => sum + (at.get(time)?.deaths ?? 0), 0);
    addTime(sums, atRisk, deaths);
    for (let g = 0; g < count; g++) {
      const at = tallies[g]!.get(time);
      sums.observed[g]! += at?.deaths ?? 0;
      atRisk[g]! -= (at?.deaths ?? 0) + (at?.lastSeen ?? 0);
    }
  }
  return sums;
}

function addTime(sums: Sums, atRisk: Float64Array, deaths: number): void {
  const count = atRisk.length;
  const all = atRisk.reduce((sum, n) => sum + n, 0);
  const scale = all > 1 ? (deaths * (all - deaths)) / (all - 1) : 0;
  for (let g = 0; g < count; g++) {
    const share = atRisk[g]! / all;
    sums.expected[g]! += deaths * share;
    for (let h = 0; h < count; h++) {
      sums.covariance[g * count + h]! += scale * share * ((g === h ? 1 : 0) - atRisk[h]! / all);
    }
  }
}
