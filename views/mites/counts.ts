import { type MiteGrowth, miteGrowth } from '../../graph/merit/counts/growth.ts';
import type { TreatmentState } from '../../graph/merit/observations.ts';
import { spoiltByTreatment, WEARING_OFF_DAYS } from '../../graph/merit/traits/after-treatment.ts';
import { miteGrowth as growthTrait } from '../../graph/merit/traits/mite-growth.ts';
import {
  addDays,
  daysBetween,
  firstDay,
  isExactDay,
  lastDay,
  type PlainDay,
  type RoughDay,
} from '../../src/journal/day.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import type { Colony, Registry, TreatmentSpan } from '../../src/registry/state.ts';
import type { Settings } from '../../src/store/settings.ts';
import { type MiteFigure, miteFigure } from '../parts/entries/mite-words.ts';
import { againstMites, behindCount } from './treatments.ts';

/** What can be said of the mite counts of a colony: each beside the keeper's thresholds, and two together. */

export type Count = EntryOf<'mite-count'>;
export type Threshold = Settings['miteThresholds'][number];

export interface CountSaid {
  readonly entry: Count;
  readonly figure: MiteFigure;
  /** Those that the keeper goes by for this method and month, the lowest first. */
  readonly thresholds: readonly Threshold[];
  /** Why it cannot speak for the bees; absent when it can. */
  readonly setAside?: SetAside;
}

export interface SetAside {
  readonly treatment: TreatmentSpan;
  readonly state: TreatmentState;
  /** First day on which a count would speak for the bees again; absent while the treatment is in. */
  readonly until?: PlainDay;
}

/** All counts of a colony up to a day, in order. */
export function countsOf(
  registry: Registry,
  colony: Colony,
  on: PlainDay,
  thresholds: readonly Threshold[],
): readonly CountSaid[] {
  const spans = againstMites(registry, colony);
  return colony.entries
    .filter((entry): entry is Count => entry.kind === 'mite-count' && firstDay(entry.day) <= on)
    .map((entry) => {
      const setAside = setAsideBy(spans, entry.day);
      return {
        entry,
        figure: miteFigure(entry.sample),
        thresholds: thresholdsFor(thresholds, entry),
        ...(setAside ? { setAside } : {}),
      };
    });
}

/** The thresholds that the keeper goes by for a count of this method in this month, the lowest first. */
export function thresholdsFor(
  thresholds: readonly Threshold[],
  { day, sample }: Pick<Count, 'day' | 'sample'>,
): readonly Threshold[] {
  const month = Number(day.slice(5, 7));
  return thresholds
    .filter(({ method, months }) => method === sample.method && months.includes(month))
    .sort((a, b) => a.value - b.value || (a.id < b.id ? -1 : 1));
}

/** The one met first as mites rise; none where the keeper set none for this method and month. */
export function lowestThreshold(
  thresholds: readonly Threshold[],
  count: Pick<Count, 'day' | 'sample'>,
): Threshold | undefined {
  return thresholdsFor(thresholds, count)[0];
}

/** The treatment that spoils a count on a day; nothing when none is near. */
export function setAsideBy(spans: readonly TreatmentSpan[], day: RoughDay): SetAside | undefined {
  const behind = behindCount(spans, day);
  if (!behind || !spoiltByTreatment({ treatment: behind.state })) return undefined;
  const { to } = behind.span;
  return {
    treatment: behind.span,
    state: behind.state,
    ...(to ? { until: addDays(lastDay(to), WEARING_OFF_DAYS) } : {}),
  };
}

/** On which side of a threshold a count lies, as far as its interval can tell. */
export type Side = 'above' | 'below' | 'found-above' | 'found-below';

export function sideOf({ value, low, high }: MiteFigure, threshold: number): Side {
  if (low > threshold) return 'above';
  if (high < threshold) return 'below';
  return value >= threshold ? 'found-above' : 'found-below';
}

export interface TwoCounts extends MiteGrowth {
  readonly earlier: Count;
  readonly later: Count;
  readonly days: number;
}

/** Days apart that the growth of a colony is told from, as for its breeding value. */
const [FEWEST_DAYS, MOST_DAYS] = growthTrait.daysApart;

/**
 * Growth between the last two counts that speak for the bees: one method, four weeks to a season apart, and no
 * treatment between them. Nothing when there are no such two.
 */
export function growthOf(
  counts: readonly CountSaid[],
  treatments: readonly TreatmentSpan[],
): TwoCounts | undefined {
  const usable = counts.filter(({ entry, setAside }) => !setAside && isExactDay(entry.day));
  for (const later of usable.toReversed()) {
    const earlier = usable.findLast(({ entry }) => {
      const days = daysOf(entry, later.entry);
      return entry.sample.method === later.entry.sample.method && days >= FEWEST_DAYS && days <= MOST_DAYS;
    });
    if (earlier && !treatedBetween(treatments, earlier.entry, later.entry))
      return twoCounts(earlier.entry, later.entry);
  }
  return undefined;
}

function daysOf(earlier: Count, later: Count): number {
  return daysBetween(firstDay(earlier.day), firstDay(later.day));
}

function treatedBetween(treatments: readonly TreatmentSpan[], earlier: Count, later: Count): boolean {
  return treatments.some(
    ({ from }) => lastDay(from) >= firstDay(earlier.day) && firstDay(from) < firstDay(later.day),
  );
}

function twoCounts(earlier: Count, later: Count): TwoCounts {
  const days = daysOf(earlier, later);
  return { ...miteGrowth(earlier.sample, later.sample, days), earlier, later, days };
}

/** A count so many days before a treatment still tells what the treatment found. */
const BEFORE_TREATMENT_DAYS = 60;

/**
 * What a treatment did by the counts around it: the last before it began, by the same method, against one that is set
 * aside because of it. Nothing where there was no count before.
 */
export function effectOf(counts: readonly CountSaid[], after: CountSaid): TwoCounts | undefined {
  const began = after.setAside && firstDay(after.setAside.treatment.from);
  if (!began || !isExactDay(after.entry.day)) return undefined;
  const before = counts.findLast(
    ({ entry, setAside }) =>
      !setAside &&
      isExactDay(entry.day) &&
      firstDay(entry.day) <= began &&
      daysBetween(firstDay(entry.day), began) <= BEFORE_TREATMENT_DAYS &&
      entry.sample.method === after.entry.sample.method,
  );
  return before && daysOf(before.entry, after.entry) > 0 ? twoCounts(before.entry, after.entry) : undefined;
}
