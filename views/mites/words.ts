import { dayNumber, type PlainDay } from '../../src/journal/day.ts';
import { dayInYear, shortDay } from '../parts/days.ts';
import type { MiteFigure } from '../parts/entries/mite-words.ts';
import { count, list, number, sentence } from '../parts/words.ts';
import {
  type Count,
  type CountSaid,
  type SetAside,
  type Side,
  sideOf,
  type Threshold,
  type TwoCounts,
} from './counts.ts';

/** What counts say, in sentences. A count is never a verdict: each says how far it can tell. */

/** "300 bees", "5 days on the board": what a count rests on. */
export function basisWords(sample: Count['sample']): string {
  return sample.method === 'natural-drop'
    ? `${count(sample.days, 'day')} on the board`
    : `${number(sample.bees)} bees`;
}

/** "3 %" or "10 a day". */
export function thresholdWords({ value, method }: Pick<Threshold, 'value' | 'method'>): string {
  return method === 'natural-drop' ? `${number(value)} a day` : `${number(value)} %`;
}

/**
 * A count beside the thresholds that apply to it, as far as it can tell: what is certain first, then what was found
 * without being certain. Empty where no threshold applies.
 */
export function besideWords({
  entry,
  figure,
  thresholds,
}: Pick<CountSaid, 'entry' | 'figure' | 'thresholds'>): string {
  const on = (side: Side) => {
    const values = thresholds.filter(({ value }) => sideOf(figure, value) === side).map(thresholdWords);
    return values.length === 0 ? undefined : `your ${list([...new Set(values)])}`;
  };
  const [above, below, foundAbove, foundBelow] = [
    on('above'),
    on('below'),
    on('found-above'),
    on('found-below'),
  ];
  const basis = basisWords(entry.sample);
  const certain = list([above && `above ${above}`, below && `below ${below}`].filter(isText));
  const found = list(
    [foundAbove && `above ${foundAbove}`, foundBelow && `below ${foundBelow}`].filter(isText),
  );
  if (certain && found)
    return sentence(`${certain} as far as ${basis} can tell; found ${found}, not for certain.`);
  if (certain) return sentence(`${certain} as far as ${basis} can tell.`);
  if (found) return `Found ${found}; ${basis} cannot tell that for certain.`;
  return '';
}

const isText = (text: string | undefined): text is string => text !== undefined;

/** Why a count is set aside for breeding, and until when: it shows what a treatment did, and nothing of the bees. */
export function asideWords({ state, until }: SetAside, on: PlainDay): string {
  const when = state.acting
    ? `Counted under ${state.active}`
    : `Counted ${count(state.daysSinceEnd, 'day')} after ${state.active} ended`;
  const again = until ? `until ${dayInYear(until, on)}` : 'until six weeks after it is out';
  return `${when}: it shows the treatment, not the bees. Set aside for breeding ${again}.`;
}

const percent = (share: number) => `${Math.round(100 * share)}\u00a0%`;

/** What the counts around a treatment show: fewer mites or more, and not what made it so. Nothing of the bees. */
export function effectWords({ rate, rateInterval, days, shows, earlier }: TwoCounts, on: PlainDay): string {
  const since = `Against the count of ${dayInYear(earlier.day, on)} before it`;
  const left = (perDay: number) => Math.exp(perDay * days);
  if (shows === 'decline') {
    const least = 1 - left(rateInterval.high);
    const most = rateInterval.low === Number.NEGATIVE_INFINITY ? 1 : 1 - left(rateInterval.low);
    const found =
      rate === undefined
        ? `by at least ${percent(least)}`
        : `by ${percent(1 - left(rate))} (${percent(least)} to ${percent(most)})`;
    return `${since}, mites are down ${found}. How much of that the treatment did, two counts cannot tell.`;
  }
  if (shows === 'growth')
    return `${since}, there are more mites. Whether it did too little or others came in, two counts cannot tell.`;
  return `${since}, too few mites were counted to tell whether there are fewer.`;
}

/** Growth between two counts with its limits, and the doubling time. */
export function growthWords({
  rate,
  rateInterval,
  days,
  shows,
  doublingDays,
  doublingInterval,
}: TwoCounts): string {
  const over = `in ${count(days, 'day')}`;
  const times = (perDay: number) => `×\u00a0${factor(Math.exp(perDay * days))}`;
  if (rate === undefined) {
    if (rateInterval.low === Number.NEGATIVE_INFINITY && rateInterval.high === Number.POSITIVE_INFINITY)
      return `No mite found either time, ${count(days, 'day')} apart: growth cannot be told.`;
    if (rateInterval.high === Number.POSITIVE_INFINITY)
      return `None found at first: growth ${over} was anything from ${times(rateInterval.low)} up.`;
    return `None found the second time: growth ${over} was anything up to ${times(rateInterval.high)}.`;
  }
  const limits = `${times(rateInterval.low)} to ${times(rateInterval.high)}`;
  const grew = `${times(rate)} ${over} (${limits}).`;
  if (shows === 'decline') return `${grew} Fewer mites than before, without a treatment.`;
  if (doublingDays === undefined) return `${grew} The counts do not tell growth from standing still.`;
  const most = doublingInterval?.high ?? Number.POSITIVE_INFINITY;
  const least = Math.round(doublingInterval?.low ?? doublingDays);
  const middle = `Doubling in ${Math.round(doublingDays)} days`;
  const doubling =
    most > SLOWEST_DOUBLING
      ? `${middle}; the counts allow ${least} days as well as hardly any growth.`
      : `${middle} (${least} to ${Math.round(most)}).`;
  return `${grew} ${doubling}`;
}

/** A doubling slower than this, in days, is no growth within a season. */
const SLOWEST_DOUBLING = 365;

function factor(value: number): string {
  return value >= 10 ? String(Math.round(value)) : value.toFixed(1);
}

/** "due since 8 June", "due from 1 July", "12 days overdue". */
export function dueWords(
  due: { readonly from: PlainDay; readonly to: PlainDay } | undefined,
  on: PlainDay,
): string {
  if (!due) return '';
  if (due.from > on) return `next from ${shortDay(due.from, on)}`;
  const late = dayNumber(on) - dayNumber(due.to);
  return late > 0 ? `due since ${shortDay(due.from, on)}` : 'due now';
}

/** Figures to one decimal, with their unit once: "2.0 % (0.7 to 4.3)"; none found as a bound. */
export function figureText({ value, low, high, unit }: MiteFigure): string {
  if (value === 0) return `below ${high.toFixed(1)} ${unit}`;
  return `${value.toFixed(1)} ${unit} (${low.toFixed(1)} to ${high.toFixed(1)})`;
}
