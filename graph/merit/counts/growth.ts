/**
 * How fast mites grew between two counts of one colony.
 *
 *   rate r = log(later / earlier) / days            doubling = log 2 / r
 *   limits   r -+ sqrt(log(later / its limit)^2 + log(the other limit / earlier)^2) / days
 * Each count keeps its own exact interval; the two combine on the log scale, each side by itself (method of variance
 * estimates recovery: Zou & Donner 2008, Stat. Med. 27:1693, from memory, not re-read).
 *
 * A count of 0 has no logarithm: the rate is then unknown and only the side that its upper limit bounds is given.
 * Growth of about 0.021 to 0.025 a day while there is brood is usual (Martin 1998, Ecol. Model. 109:267, from memory).
 * Cost: O(1).
 */
import { type InfestationOptions, infestation, type MiteCount } from './infestation.ts';
import type { Interval } from './intervals.ts';

export interface MiteGrowth {
  /** Growth a day on the log scale; absent when either count found no mite. */
  readonly rate?: number;
  /** Limits of the rate; -Infinity or Infinity where a count of 0 leaves a side open. */
  readonly rateInterval: Interval;
  /** Days to double; absent unless the rate is above 0. */
  readonly doublingDays?: number;
  /** Limits of the doubling time; `high` is Infinity when the counts do not exclude that mites stood still. */
  readonly doublingInterval?: Interval;
  /** What the two counts show at the level asked for. */
  readonly shows: 'growth' | 'decline' | 'neither';
}

function stepDown(value: number, limit: number): number {
  return limit === 0 ? Number.POSITIVE_INFINITY : Math.log(value / limit);
}

/**
 * Growth a day from an earlier to a later count `days` (> 0) apart. Both counts must be of one method; throws if not,
 * or if the days are not above 0.
 */
export function miteGrowth(
  earlier: MiteCount,
  later: MiteCount,
  days: number,
  options: InfestationOptions = {},
): MiteGrowth {
  if (!(days > 0)) throw new RangeError(`Growth needs days above 0 between the counts, got ${days}`);
  if (earlier.method !== later.method)
    throw new RangeError(`Growth needs one method, got ${earlier.method}, ${later.method}`);
  const first = infestation(earlier, options);
  const second = infestation(later, options);
  if (first.rate === 0 || second.rate === 0) return openGrowth(first, second, days);
  const rate = Math.log(second.rate / first.rate) / days;
  const down = Math.hypot(stepDown(second.rate, second.low), Math.log(first.high / first.rate)) / days;
  const up = Math.hypot(Math.log(second.high / second.rate), stepDown(first.rate, first.low)) / days;
  const rateInterval = { low: rate - down, high: rate + up };
  return { rate, rateInterval, ...doubling(rate, rateInterval), shows: verdict(rateInterval) };
}

/** With a 0 among the counts: the outermost rates that the two intervals allow. */
function openGrowth(first: Interval, second: Interval, days: number): MiteGrowth {
  const rateInterval = {
    low: second.low === 0 ? Number.NEGATIVE_INFINITY : Math.log(second.low / first.high) / days,
    high: first.low === 0 ? Number.POSITIVE_INFINITY : Math.log(second.high / first.low) / days,
  };
  return { rateInterval, shows: verdict(rateInterval) };
}

function verdict({ low, high }: Interval): MiteGrowth['shows'] {
  if (low > 0) return 'growth';
  return high < 0 ? 'decline' : 'neither';
}

function doubling(rate: number, { low, high }: Interval) {
  if (rate <= 0) return {};
  const longest = low > 0 ? Math.LN2 / low : Number.POSITIVE_INFINITY;
  return { doublingDays: Math.LN2 / rate, doublingInterval: { low: Math.LN2 / high, high: longest } };
}
