/**
 * The numbers that the split planner assumes, each with its range and where it comes from. They stand beside every
 * estimate; a keeper who knows better replaces them.
 *
 *   a forecast is made three times: with the values that leave fewest bees, the likely ones, those that leave most
 *
 * Basis as in the calendar's table: read, from memory, common practice, derived, assumption. Cost O(1).
 */
import type { Basis } from '../calendar/biology.ts';

/** Which of the three forecasts: fewest bees, likely, most bees. */
export type Case = 'low' | 'likely' | 'high';

/** A number with its range: not a confidence interval, but what the assumptions allow. */
export interface Estimate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface Assumption extends Estimate {
  readonly about: string;
  readonly unit: string;
  readonly source: string;
  readonly basis: Basis;
  /** True where a higher value leaves fewer bees or less stores. */
  readonly costs: boolean;
}

function assumption(
  about: string,
  unit: string,
  [low, likely, high]: readonly [number, number, number],
  basis: Basis,
  source: string,
  costs = false,
): Assumption {
  return Object.freeze({ about, unit, low, likely, high, basis, source, costs });
}

const KHOURY =
  'Khoury, Myerscough & Barron 2011, PLoS ONE 6:e18491 (form read in the abstract, value from memory)';
const FOOD = 'Khoury, Barron & Myerscough 2013, PLoS ONE 8:e59084 (from memory)';

export const ASSUMPTIONS = Object.freeze({
  beesPerDm2: assumption(
    'bees on one dm2 of comb side that is fully covered',
    'bees',
    [115, 130, 140],
    'from memory',
    'Liebefeld method (Imdorf & Gerig) and Delaplane et al. 2013, J. Apic. Res. 52(1): 125 to 140',
  ),
  cellsPerDm2: assumption(
    'worker cells on one dm2 of comb side',
    'cells',
    [375, 400, 420],
    'read',
    'Betts 1938, Bee World 19(9):106: 2.309 x (cells in 10 cm)^2 for both sides; 18.5 cells give 395 a side',
  ),
  broodSurvival: assumption(
    'share of open and capped brood that comes to emerge',
    'share',
    [0.75, 0.85, 0.95],
    'assumption',
    'brood of a split is chilled and eaten more than that of a whole colony; Punnett & Winston 1983 saw it high',
  ),
  foragerShare: assumption(
    'share of the bees on the combs of a whole colony that fly and go back to the old stand',
    'share',
    [0.2, 0.33, 0.45],
    'derived',
    'foragers among all bees in the model below at rest, 0.26 to 0.33; more on a day with a flow',
  ),
  firstForaging: assumption(
    'house bees that would begin to forage a day if there were no foragers',
    'share a day',
    [0.25, 0.25, 0.25],
    'from memory',
    KHOURY,
  ),
  foragingHeldBack: assumption(
    'how strongly foragers hold house bees back from foraging',
    'share a day',
    [0.75, 0.75, 0.75],
    'from memory',
    KHOURY,
  ),
  foragerLoss: assumption(
    'foragers lost a day',
    'share a day',
    [0.1, 0.154, 0.2],
    'from memory',
    'Dukas 2008, as used in Khoury et al. 2011: 0.154; range ours',
    true,
  ),
  mostEggs: assumption(
    'bees that a queen can give a day in a colony of any strength',
    'bees a day',
    [1500, 2000, 2500],
    'from memory',
    KHOURY,
  ),
  halfStrength: assumption(
    'bees at which a queen gives half of that',
    'bees',
    [27000, 27000, 27000],
    'from memory',
    KHOURY,
  ),
  storesPerDm2: assumption(
    'honey in one dm2 of comb side that is full and capped',
    'kg',
    [0.12, 0.15, 0.18],
    'common practice',
    'no source: a full deep frame holds about 2.7 kg on 17.6 dm2 of both sides',
  ),
  adultFood: assumption('food of an adult bee a day', 'g', [0.005, 0.007, 0.009], 'from memory', FOOD, true),
  broodFood: assumption(
    'food of an open brood cell a day',
    'g',
    [0.014, 0.018, 0.022],
    'from memory',
    FOOD,
    true,
  ),
});

export type AssumptionName = keyof typeof ASSUMPTIONS;

/** The keeper's own values in place of some of the table's. */
export type OwnAssumptions = Readonly<Partial<Record<AssumptionName, Estimate>>>;

/** Value of an assumption in the case that leaves fewest, likely or most bees. */
export function valueIn(name: AssumptionName, one: Case, own: OwnAssumptions = {}): number {
  const { costs } = ASSUMPTIONS[name];
  const range = own[name] ?? ASSUMPTIONS[name];
  if (one === 'likely') return range.likely;
  return (one === 'low') === costs ? range.high : range.low;
}

/** The three cases of a figure, put in order: for some figures the fewest bees are not the least. */
export function estimate(of: (one: Case) => number): Estimate {
  const likely = of('likely');
  const [first, second] = [of('low'), of('high')];
  return { low: Math.min(first, second, likely), likely, high: Math.max(first, second, likely) };
}
