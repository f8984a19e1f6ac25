/**
 * Intervals for a count: mites on so many bees, colonies alive of so many, mites dropped in so many days.
 *
 *   Clopper-Pearson  low = Beta(a/2; x, n - x + 1),  high = Beta(1 - a/2; x + 1, n - x)      a = 1 - level
 *   Wilson           (p + z^2/2n -+ z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n)                p = x/n
 *   Poisson exact    low = Gamma(a/2; x) / t,  high = Gamma(1 - a/2; x + 1) / t               t = exposure
 * with Beta(p; .,.) and Gamma(p; .) the quantiles at p.
 *
 * Sources: Clopper & Pearson 1934, Biometrika 26:404; Wilson 1927, J. Am. Stat. Assoc. 22:209; Garwood 1936,
 * Biometrika 28:437 (all from memory, not re-read; values checked against R 4.2.2 in tests/outside).
 * Mites are clumped and one bee may carry several: read each interval as the narrowest that can be claimed.
 * Cost: O(1) quantiles. Unknowns: none enter; counts of bees or days must be known.
 */
import { betaQuantile, gammaQuantile, normalQuantile } from '../../numerics/special.ts';

/** A pair of bounds on one scale, low <= high. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The coverage used wherever the caller names none. */
export const DEFAULT_LEVEL = 0.95;

function requireCount(count: number, of: number): void {
  if (!(count >= 0 && count <= of)) {
    throw new RangeError(`A binomial interval needs 0 <= count <= trials, got ${count} of ${of}`);
  }
}

/** Exact two-sided interval of a share, 0..1, from `count` of `trials`. With no trials nothing is excluded: 0 to 1. */
export function clopperPearson(count: number, trials: number, level = DEFAULT_LEVEL): Interval {
  requireCount(count, trials);
  const outside = (1 - level) / 2;
  return {
    low: count === 0 ? 0 : betaQuantile(outside, count, trials - count + 1),
    high: count === trials ? 1 : betaQuantile(1 - outside, count + 1, trials - count),
  };
}

/** Wilson's score interval of a share, 0..1: shorter than the exact one, right on average, not always. */
export function wilson(count: number, trials: number, level = DEFAULT_LEVEL): Interval {
  requireCount(count, trials);
  if (trials === 0) return { low: 0, high: 1 };
  const z = normalQuantile((1 + level) / 2);
  const share = count / trials;
  const widening = (z * z) / trials;
  const centre = (share + widening / 2) / (1 + widening);
  const half =
    (z / (1 + widening)) * Math.sqrt((share * (1 - share)) / trials + (z * z) / (4 * trials * trials));
  return {
    low: count === 0 ? 0 : Math.max(0, centre - half),
    high: count === trials ? 1 : Math.min(1, centre + half),
  };
}

/** The share that `count` of `trials` rules out from above, one-sided: 0 of 300 is "below 0.99 %" at 95 %. */
export function exactUpperLimit(count: number, trials: number, level = DEFAULT_LEVEL): number {
  requireCount(count, trials);
  return count === trials ? 1 : betaQuantile(level, count + 1, trials - count);
}

/** Exact interval of a rate per unit of `exposure` (days, bees), 0 and up. */
export function poissonInterval(count: number, exposure: number, level = DEFAULT_LEVEL): Interval {
  if (!(count >= 0 && exposure > 0)) {
    throw new RangeError(
      `A Poisson interval needs a count >= 0 and an exposure > 0, got ${count} over ${exposure}`,
    );
  }
  const outside = (1 - level) / 2;
  return {
    low: count === 0 ? 0 : gammaQuantile(outside, count) / exposure,
    high: gammaQuantile(1 - outside, count + 1) / exposure,
  };
}
