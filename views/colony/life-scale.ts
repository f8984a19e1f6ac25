import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { dayNumber, firstDay, lastDay, type PlainDay, type RoughDay } from '../../src/journal/day.ts';
import type { Colony } from '../../src/registry/state.ts';
import { shortMonth } from '../parts/days.ts';

/** The time axis that all lanes of a colony's life share: day numbers to pixels. */
export interface LifeScale {
  readonly x: (day: RoughDay | PlainDay) => number;
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

/** Days shown when the keeper looks at the season, and days of air after the last one. */
const SEASON_DAYS = 400;
const AIR_DAYS = 14;

export type LifeSpan = 'season' | 'all';

/** Days of a colony’s life to pixels: the whole of it, or its last season. */
export function lifeScale(colony: Colony, on: PlainDay, width: number, span: LifeSpan): LifeScale {
  const begun = dayNumber(firstDay(colony.started));
  const end = colony.ended ? Math.min(dayNumber(lastDay(colony.ended.day)), dayNumber(on)) : dayNumber(on);
  const to = end + AIR_DAYS;
  const from = span === 'season' ? Math.max(begun - AIR_DAYS, end - SEASON_DAYS) : begun - AIR_DAYS;
  const scale: ScaleLinear<number, number> = scaleLinear([from, Math.max(to, from + 60)], [0, width]);
  return { x: (day) => scale(dayNumber(firstDay(day as RoughDay))), from, to, width };
}

export interface Tick {
  readonly at: number;
  readonly label: string;
  readonly year: boolean;
}

/** A tick for each year, and for the months where there is room. */
export function ticks(scale: LifeScale): readonly Tick[] {
  const daysAPixel = (scale.to - scale.from) / Math.max(1, scale.width);
  const every = daysAPixel < 0.55 ? 1 : daysAPixel < 1.1 ? 2 : daysAPixel < 2.2 ? 3 : daysAPixel < 4 ? 6 : 12;
  const found: Tick[] = [];
  const first = new Date(scale.from * 86_400_000);
  for (let month = 0; ; month += 1) {
    const time = Date.UTC(first.getUTCFullYear(), month, 1);
    const day = new Date(time).toISOString().slice(0, 10) as PlainDay;
    const number = dayNumber(day);
    if (number > scale.to) return found;
    const inYear = Number(day.slice(5, 7));
    if (number < scale.from || (inYear - 1) % every !== 0) continue;
    found.push({
      at: scale.x(day),
      label: inYear === 1 ? day.slice(0, 4) : shortMonth(inYear),
      year: inYear === 1,
    });
  }
}

/** Winters on the axis, 1 December to 1 March. */
export function winters(scale: LifeScale): readonly { readonly from: number; readonly to: number }[] {
  const first = new Date(scale.from * 86_400_000).getUTCFullYear();
  const last = new Date(scale.to * 86_400_000).getUTCFullYear();
  const bands: { from: number; to: number }[] = [];
  for (let year = first; year <= last + 1; year += 1) {
    const from = Math.max(0, scale.x(`${year - 1}-12-01` as PlainDay));
    const to = Math.min(scale.width, scale.x(`${year}-03-01` as PlainDay));
    if (to > from) bands.push({ from, to });
  }
  return bands;
}
