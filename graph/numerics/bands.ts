/**
 * A simulated figure told as bands: mean, 5 %, 50 % and 95 % points.
 *
 *   quantile p of n sorted values: x[h] + (h - floor h)(x[h + 1] - x[h]), h = (n - 1) p   (linear between values)
 *
 * Source: definition 7 of Hyndman & Fan 1996, Am. Stat. 50:361 (from memory, not re-read).
 * Cost O(n log n) for the sort. No unknowns; an empty list throws.
 */

export interface Bands {
  readonly mean: number;
  /** 5 % point. */
  readonly low: number;
  readonly median: number;
  /** 95 % point. */
  readonly high: number;
}

/** Quantile `probability` (0..1) of values that are sorted already. */
export function sortedQuantile(sorted: ArrayLike<number>, probability: number): number {
  if (sorted.length === 0) throw new RangeError('A quantile of no values is undefined.');
  const place = (sorted.length - 1) * probability;
  const below = Math.floor(place);
  const value = sorted[below]!;
  return below + 1 < sorted.length ? value + (place - below) * (sorted[below + 1]! - value) : value;
}

/** Mean and bands of the values, which are left as they are. */
export function bandsOf(values: Float64Array): Bands {
  const sorted = values.slice().sort();
  return {
    mean: sorted.reduce((sum, value) => sum + value, 0) / sorted.length,
    low: sortedQuantile(sorted, 0.05),
    median: sortedQuantile(sorted, 0.5),
    high: sortedQuantile(sorted, 0.95),
  };
}
