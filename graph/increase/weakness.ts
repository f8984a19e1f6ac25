/**
 * Which parts of a split are at risk, and why.
 *
 *   too-few-bees            settled bees below the least for its task (raising a queen asks more than keeping one)
 *   too-few-bees-for-brood  settled bees below `coverBrood` x bees that cover the brood combs
 *   falls-too-low           fewest bees within the weeks below `lowest`, before her own bees make up for it
 *   too-little-stores       stores gone within `storesDays` days if nothing is brought in
 *   nothing-to-raise-from   no eggs, just hatched larvae or cells in a part that is to raise a queen
 *   no-queen-found          the part that is to have the old queen has not the frame she was found on
 *
 * The thresholds are common practice (no source) turned into bees at 130 a dm2: three frames of bees to raise a queen,
 * two for a laying one. A keeper sets them as the place and season ask. Cost that of one forecast a part.
 */
import { type Estimate, estimate, type OwnAssumptions, valueIn } from './assumptions.ts';
import { daysOfPart } from './forecast.ts';
import { contentOfPart, type SplitPart, settledBees } from './parts.ts';
import type { DayState } from './population.ts';

export type WeaknessCode =
  | 'too-few-bees'
  | 'too-few-bees-for-brood'
  | 'falls-too-low'
  | 'too-little-stores'
  | 'nothing-to-raise-from'
  | 'no-queen-found';

export interface Weakness {
  readonly part: number;
  readonly code: WeaknessCode;
  /** What was reckoned, and the least that is asked: bees, or days for stores; absent where it is not a number. */
  readonly found?: Estimate;
  readonly asked?: number;
}

export interface WeaknessLimits {
  /** Least settled bees of a part that raises a queen, and of one that has a laying queen. */
  readonly beesToRaise: number;
  readonly beesWithQueen: number;
  /** Share of the brood combs that the settled bees must be able to cover. */
  readonly coverBrood: number;
  /** Least bees at any time within the weeks. */
  readonly lowest: number;
  readonly storesDays: number;
  /** Days over which bees are followed. */
  readonly days: number;
}

export const WEAKNESS_DEFAULTS: WeaknessLimits = Object.freeze({
  beesToRaise: 6800,
  beesWithQueen: 4500,
  coverBrood: 0.7,
  lowest: 2500,
  storesDays: 10,
  days: 42,
});

export interface WeaknessOptions {
  readonly limits?: Partial<WeaknessLimits>;
  readonly own?: OwnAssumptions;
}

function canRaise({ frames }: SplitPart): boolean {
  return frames.some(({ eggs, cells }) => eggs === true || cells === true);
}

function missing(part: SplitPart, index: number): readonly Weakness[] {
  if (part.queen === 'raises' && !canRaise(part)) return [{ part: index, code: 'nothing-to-raise-from' }];
  const queenless = part.queen === 'old-queen' && !part.frames.some(({ queen }) => queen === true);
  return queenless ? [{ part: index, code: 'no-queen-found' }] : [];
}

/** The likely figures of one part, from which its weak points follow. */
export interface PartFigures {
  /** Settled bees. */
  readonly bees: number;
  readonly broodDm2: number;
  readonly days: readonly DayState[];
}

/** The weak points of one part by its likely figures. */
export function weaknessesOf(
  part: SplitPart,
  index: number,
  { bees, broodDm2, days }: PartFigures,
  { limits, own }: WeaknessOptions = {},
): readonly Weakness[] {
  const { beesToRaise, beesWithQueen, coverBrood, lowest, storesDays } = { ...WEAKNESS_DEFAULTS, ...limits };
  const found: Weakness[] = [...missing(part, index)];
  const add = (code: WeaknessCode, value: number, asked: number): void => {
    if (value < asked)
      found.push({ part: index, code, found: { low: value, likely: value, high: value }, asked });
  };
  const least = part.queen === 'raises' ? beesToRaise : beesWithQueen;
  add('too-few-bees', bees, least);
  const cover = broodDm2 * valueIn('beesPerDm2', 'likely', own) * coverBrood;
  add('too-few-bees-for-brood', bees, Math.round(cover));
  const fewest = days.reduce((low, state) => Math.min(low, state.bees), Number.POSITIVE_INFINITY);
  if (bees >= least) add('falls-too-low', fewest, lowest);
  add(
    'too-little-stores',
    days.find(({ storesKg }) => storesKg <= 0)?.day ?? Number.POSITIVE_INFINITY,
    storesDays,
  );
  return found;
}

const OF_SETTLED: readonly WeaknessCode[] = ['too-few-bees', 'too-few-bees-for-brood'];

/** The weak points of all parts, in order of part. Empty: none that these assumptions show. */
export function weakParts(parts: readonly SplitPart[], options: WeaknessOptions = {}): readonly Weakness[] {
  const { own, limits } = options;
  const lastDay = limits?.days ?? WEAKNESS_DEFAULTS.days;
  return parts.flatMap((part, index) => {
    const settled = estimate((one) => {
      const { house, foragers } = settledBees(parts, index, one, own);
      return house + foragers;
    });
    const { broodDm2 } = contentOfPart(part, 'likely', own);
    const days = daysOfPart(parts, index, 'likely', lastDay, own);
    const weak = weaknessesOf(part, index, { bees: settled.likely, broodDm2, days }, options);
    return weak.map((one) => (OF_SETTLED.includes(one.code) ? { ...one, found: settled } : one));
  });
}
