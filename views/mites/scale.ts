import { scaleLinear } from 'd3-scale';
import type { CountSaid } from './counts.ts';

/** Ends of the common scale, in percent or mites a day: enough for small counts, not stretched by one bad colony. */
const LEAST = { '%': 4, 'a day': 12 } as const;
const MOST = { '%': 12, 'a day': 60 } as const;

/** The end of the scale for counts of one unit; higher ones run out of it and are marked so. */
export function scaleEnd(counts: readonly CountSaid[], unit: '%' | 'a day'): number {
  const highs = counts.flatMap(({ figure, thresholds }) => [
    figure.high,
    ...thresholds.map(({ value }) => value * 1.1),
  ]);
  return Math.min(MOST[unit], Math.max(LEAST[unit], Math.ceil(Math.max(0, ...highs))));
}

/** A few round figures along a scale that begins at 0. */
export function scaleTicks(most: number, about = 5): readonly number[] {
  return scaleLinear([0, most], [0, 1]).ticks(about);
}
