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

/** The weak points of one part by its likely days; the estimates carry the range. */
export function weaknessesOf(
  parts: readonly SplitPart[],
  index: number,
  likelyDays: readonly DayState[],
  { limits, own }: WeaknessOptions = {},
): readonly Weakness[] {
  const { beesToRaise, beesWithQueen, coverBrood, lowest, storesDays } = { ...WEAKNESS_DEFAULTS, ...limits };
  const part = parts[index]!;
  const settled = estimate((one) => {
    const { house, foragers } = settledBees(parts, index, one, own);
    return house + foragers;
  });
  const found: Weakness[] = [...missing(part, index)];
  const least = part.queen === 'raises' ? beesToRaise : beesWithQueen;
  if (settled.likely < least) found.push({ part: index, code: 'too-few-bees', found: settled, asked: least });
  const { broodDm2 } = contentOfPart(part, 'likely', own);
  const cover = Math.round(broodDm2 * valueIn('beesPerDm2', 'likely', own) * coverBrood);
  if (settled.likely < cover) {
    found.push({ part: index, code: 'too-few-bees-for-brood', found: settled, asked: cover });
  }
  const least42 = Math.min(...likelyDays.map(({ bees }) => bees));
  if (settled.likely >= least && least42 < lowest) {
    found.push({ part: index, code: 'falls-too-low', found: same(least42), asked: lowest });
  }
  const empty = likelyDays.find(({ storesKg }) => storesKg <= 0);
  if (empty && empty.day < storesDays) {
    found.push({ part: index, code: 'too-little-stores', found: same(empty.day), asked: storesDays });
  }
  return found;
}

function same(value: number): Estimate {
  return { low: value, likely: value, high: value };
}

/** The weak points of all parts, in order of part. Empty: none that these assumptions show. */
export function weakParts(parts: readonly SplitPart[], options: WeaknessOptions = {}): readonly Weakness[] {
  const days = options.limits?.days ?? WEAKNESS_DEFAULTS.days;
  return parts.flatMap((_, index) =>
    weaknessesOf(parts, index, daysOfPart(parts, index, 'likely', days, options.own), options),
  );
}
