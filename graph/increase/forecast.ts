/**
 * What each part of a split has now, in three and in six weeks, with the range that the assumptions allow.
 *
 *   three runs of population.ts: with the assumptions that leave fewest bees, the likely ones, and most bees
 *
 * Sources: assumptions.ts, population.ts. Cost O(days) a part. Weather, flow, robbing and disease are not in it;
 * stores are reckoned as if nothing were brought in.
 */
import {
  ASSUMPTIONS,
  type AssumptionName,
  type Case,
  type Estimate,
  estimate,
  type OwnAssumptions,
  valueIn,
} from './assumptions.ts';
import type { CombContent } from './comb.ts';
import { contentOfPart, type SplitPart, settledBees } from './parts.ts';
import { type Bees, type DayState, followColony } from './population.ts';

export const FORECAST_DEFAULTS = Object.freeze({ weeks: [0, 3, 6] as readonly number[] });

export interface PartOnDay {
  readonly week: number;
  readonly bees: Estimate;
  /** Cells of brood, open and capped. */
  readonly brood: Estimate;
  /** Stores left if nothing is brought in; 0 when they are gone. */
  readonly storesKg: Estimate;
}

export interface PartForecast {
  readonly weeks: readonly PartOnDay[];
  /** Fewest bees in the likely case within the weeks, and on which day after the split. */
  readonly lowest: { readonly day: number; readonly bees: number };
  /** Days that the stores last if nothing is brought in, likely case; absent when they outlast the weeks. */
  readonly storesLast?: number;
  /** The assumptions that stand behind these figures. */
  readonly assumptions: readonly AssumptionName[];
}

export interface ForecastOptions {
  readonly weeks?: readonly number[];
  readonly own?: OwnAssumptions;
}

/** All the days of a part with this content and these settled bees, in one case. */
export function daysFrom(
  { content, bees, layingFrom }: { content: CombContent; bees: Bees; layingFrom: number | undefined },
  one: Case,
  lastDay: number,
  own?: OwnAssumptions,
): readonly DayState[] {
  const value = (name: AssumptionName): number => valueIn(name, one, own);
  const rates = {
    firstForaging: value('firstForaging'),
    foragingHeldBack: value('foragingHeldBack'),
    foragerLoss: value('foragerLoss'),
    adultFood: value('adultFood'),
    broodFood: value('broodFood'),
    mostEggs: value('mostEggs'),
    halfStrength: value('halfStrength'),
  };
  const { openBrood, cappedBrood, storesKg } = content;
  const brood = { openBrood, cappedBrood, survival: value('broodSurvival') };
  const start = { bees, brood, storesKg, ...(layingFrom !== undefined && { layingFrom }) };
  return followColony(start, rates, lastDay);
}

/** All the days of one part in one case, from the split to the last day. */
export function daysOfPart(
  parts: readonly SplitPart[],
  index: number,
  one: Case,
  lastDay: number,
  own?: OwnAssumptions,
): readonly DayState[] {
  const part = parts[index]!;
  const content = contentOfPart(part, one, own);
  const bees = settledBees(parts, index, one, own);
  return daysFrom({ content, bees, layingFrom: part.layingFrom }, one, lastDay, own);
}

/** The forecast of one part among all the parts of a split. Bees, cells, kg; weeks from the split. */
export function forecastPart(
  parts: readonly SplitPart[],
  index: number,
  { weeks = FORECAST_DEFAULTS.weeks, own }: ForecastOptions = {},
): PartForecast {
  const lastDay = Math.max(...weeks) * 7;
  const runs: Record<Case, readonly DayState[]> = {
    low: daysOfPart(parts, index, 'low', lastDay, own),
    likely: daysOfPart(parts, index, 'likely', lastDay, own),
    high: daysOfPart(parts, index, 'high', lastDay, own),
  };
  const on = (day: number, of: (state: DayState) => number): Estimate =>
    estimate((one) => of(runs[one][day]!));
  const lowest = runs.likely.reduce((least, state) => (state.bees < least.bees ? state : least));
  const empty = runs.likely.find(({ storesKg }) => storesKg <= 0);
  return {
    weeks: weeks.map((week) => ({
      week,
      bees: on(week * 7, ({ bees }) => bees),
      brood: on(week * 7, ({ openBrood, cappedBrood }) => openBrood + cappedBrood),
      storesKg: on(week * 7, ({ storesKg }) => Math.max(0, storesKg)),
    })),
    lowest: { day: lowest.day, bees: lowest.bees },
    ...(empty && { storesLast: empty.day }),
    assumptions: Object.keys(ASSUMPTIONS) as AssumptionName[],
  };
}
