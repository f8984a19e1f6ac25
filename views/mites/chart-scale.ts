import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { dayNumber, dayOfNumber, firstDay, type PlainDay } from '../../src/journal/day.ts';
import type { CountSaid, Threshold } from './counts.ts';
import { scaleEnd } from './scale.ts';

/** Pixels of the drawing: its right end, its top and base, and where the scale begins at the left. */
export interface ChartSize {
  readonly width: number;
  readonly top: number;
  readonly base: number;
  readonly left: number;
}

/** The chart of one colony's counts over time: percent or mites a day upward, days to the right. */
export interface ChartScale {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly from: number;
  readonly to: number;
  readonly most: number;
}

const AIR_DAYS = 20;
const SHORTEST_DAYS = 120;

export function chartScale(
  counts: readonly CountSaid[],
  on: PlainDay,
  size: ChartSize,
  unit: '%' | 'a day',
): ChartScale {
  const days = counts.map(({ entry }) => dayNumber(firstDay(entry.day)));
  const to = Math.max(dayNumber(on), ...days) + AIR_DAYS / 2;
  const from = Math.min(to - SHORTEST_DAYS, Math.min(...days) - AIR_DAYS);
  const most = scaleEnd(counts, unit);
  return {
    x: scaleLinear([from, to], [size.left, size.width]),
    y: scaleLinear([0, most], [size.base, size.top]).clamp(true),
    from,
    to,
    most,
  };
}

/** A stretch of days in which one threshold holds. */
export interface Stretch {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** The thresholds of a method as stretches of the months they hold for, between two days. */
export function thresholdStretches(
  thresholds: readonly Threshold[],
  method: Threshold['method'],
  from: number,
  to: number,
): readonly Stretch[] {
  return thresholds
    .filter((threshold) => threshold.method === method)
    .flatMap((threshold) => stretchesOf(threshold, from, to));
}

function stretchesOf({ months, value }: Threshold, from: number, to: number): Stretch[] {
  const stretches: Stretch[] = [];
  for (let month = dayOfNumber(from).slice(0, 7); month <= dayOfNumber(to).slice(0, 7); month = next(month)) {
    if (!months.includes(Number(month.slice(5)))) continue;
    const start = Math.max(from, dayNumber(`${month}-01` as PlainDay));
    const end = Math.min(to, dayNumber(`${next(month)}-01` as PlainDay));
    const before = stretches.at(-1);
    if (before?.to === start) stretches[stretches.length - 1] = { ...before, to: end };
    else stretches.push({ value, from: start, to: end });
  }
  return stretches;
}

/** "2026-12" to "2027-01". */
function next(month: string): string {
  const [year = 0, inYear = 1] = month.split('-').map(Number);
  return inYear === 12 ? `${year + 1}-01` : `${year}-${String(inYear + 1).padStart(2, '0')}`;
}
