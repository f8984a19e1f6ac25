import { scaleLinear } from 'd3-scale';
import { addDays, dayNumber, dayOfNumber, type PlainDay, yearOf } from '../../src/journal/day.ts';

/**
 * Days to places along the drawing. A bee year runs from 1 March to the end of February; spring and early summer,
 * when queens are made, get most of its width, and the winter is a narrow band that a life crosses or does not.
 */
const SHARES: readonly { readonly from: string; readonly share: number }[] = [
  { from: '03-01', share: 0.07 },
  { from: '04-15', share: 0.56 },
  { from: '08-01', share: 0.13 },
  { from: '10-01', share: 0.08 },
  { from: '12-01', share: 0.16 },
];

export interface BeeYear {
  readonly year: number;
  readonly from: number;
  readonly to: number;
  /** The winter that ends the bee year: named by the year of its spring. Absent when it has not begun. */
  readonly winter?: {
    readonly spring: number;
    readonly from: number;
    readonly to: number;
    readonly over: boolean;
  };
}

export interface TimeScale {
  /** Place of a day number, 0 at the left edge. */
  readonly x: (day: number) => number;
  /** Day number at a place. */
  readonly day: (x: number) => number;
  readonly years: readonly BeeYear[];
  readonly width: number;
}

/** The first bee year in which a day falls. */
export function beeYearOf(day: number): number {
  const plain = dayOfNumber(day);
  return plain.slice(5) < '03-01' ? yearOf(plain) - 1 : yearOf(plain);
}

/** Width of the drawing from the first day up to `on`, in years: the year not yet over counts as far as it is drawn. */
export function drawnYears(firstDay: number, on: PlainDay): number {
  return timeScale(firstDay, on, 1).width;
}

/** A scale from the bee year of the first day up to `on`, whole years `yearWidth` wide. */
export function timeScale(firstDay: number, on: PlainDay, yearWidth: number): TimeScale {
  const today = dayNumber(on);
  const first = Math.min(beeYearOf(firstDay), beeYearOf(today));
  const last = beeYearOf(today);
  const days: number[] = [];
  const places: number[] = [];
  for (let year = first; year <= last; year += 1) {
    let place = (year - first) * yearWidth;
    for (const { from, share } of SHARES) {
      days.push(dayNumber(`${year}-${from}` as PlainDay));
      places.push(place);
      place += share * yearWidth;
    }
  }
  days.push(dayNumber(`${last + 1}-03-01` as PlainDay));
  places.push((last - first + 1) * yearWidth);
  const scale = scaleLinear(days, places).clamp(true);
  const width = scale(today);
  const years: BeeYear[] = [];
  for (let year = first; year <= last; year += 1) years.push(beeYear(year, scale, today));
  return { x: (day) => scale(Math.min(day, today)), day: (x) => scale.invert(x), years, width };
}

function beeYear(year: number, scale: (day: number) => number, today: number): BeeYear {
  const start = dayNumber(`${year}-03-01` as PlainDay);
  const winter = dayNumber(`${year}-12-01` as PlainDay);
  const end = dayNumber(addDays(`${year + 1}-03-01` as PlainDay, 0));
  const spring = year + 1;
  const to = scale(Math.min(end, today));
  if (today < winter) return { year, from: scale(start), to };
  return { year, from: scale(start), to, winter: { spring, from: scale(winter), to, over: today >= end } };
}

const MONTHS = ['Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep'] as const;
const MONTH_ROOM = 44;

/** Middles of the months of the season that have room for their names at this stretch. */
export function monthTicks(
  year: number,
  scale: TimeScale,
  stretch: number,
): readonly { readonly name: string; readonly x: number }[] {
  return MONTHS.flatMap((name, index) => {
    const start = (month: number) =>
      scale.x(dayNumber(`${year}-${String(month).padStart(2, '0')}-01` as PlainDay));
    const [from, to] = [start(index + 4), start(index + 5)];
    return (to - from) * stretch < MONTH_ROOM ? [] : [{ name, x: (from + to) / 2 }];
  });
}
