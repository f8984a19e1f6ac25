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
import { contentOfPart, type SplitPart, settledBees } from './parts.ts';
import { type DayState, followColony } from './population.ts';

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
  const start = {
    bees: settledBees(parts, index, one, own),
    brood: {
      openBrood: content.openBrood,
      cappedBrood: content.cappedBrood,
      survival: value('broodSurvival'),
    },
    storesKg: content.storesKg,
    ...(part.layingFrom !== undefined && { layingFrom: part.layingFrom }),
  };
  return followColony(start, rates, lastDay);
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
