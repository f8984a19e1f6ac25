/**
 * What a mite count says of a colony: mites per bee (wash, sugar shake) or mites per day (natural drop), with its
 * interval.
 *
 *   found     = mites / bees   or   mites / days
 *   corrected = found / recovery
 *   limits    = corrected * exp(-+ sqrt(log(found / limit of found)^2 + (z * recovery sd / recovery)^2))
 * The interval of `found` is Clopper-Pearson while mites <= bees, else Poisson (one bee can carry several mites);
 * a drop is always Poisson. The correction adds the uncertainty of the recovery on the log scale, each side by
 * itself (method of variance estimates recovery: Zou & Donner 2008, Stat. Med. 27:1693, from memory, not re-read).
 *
 * Recovery: powdered sugar 0.929 +- 0.055 (Macedo, Wu & Ellis 2002, J. Apic. Res. 41:3, abstract read). No recovery is
 * assumed for a wash unless the caller gives one.
 * Cost: O(1). Unknowns: a count without bees or days gives no rate and is not accepted here.
 */
import { normalQuantile } from '../../numerics/special.ts';
import {
  clopperPearson,
  DEFAULT_LEVEL,
  exactUpperLimit,
  type Interval,
  poissonInterval,
} from './intervals.ts';

/** Share of the mites on the bees that a method brings to light, with its standard deviation; 0..1. */
export interface Recovery {
  readonly share: number;
  readonly standardDeviation: number;
}

/** Powdered sugar, Macedo, Wu & Ellis 2002, J. Apic. Res. 41:3 (abstract read). */
export const SUGAR_RECOVERY: Recovery = { share: 0.929, standardDeviation: 0.055 };

export type MiteCount =
  | { readonly method: 'wash' | 'sugar-shake'; readonly mites: number; readonly bees: number }
  | { readonly method: 'natural-drop'; readonly mites: number; readonly days: number };

export interface Infestation extends Interval {
  /** Mites per bee (wash, shake) or per day (drop). May exceed 1. */
  readonly rate: number;
  readonly unit: 'mites per bee' | 'mites per day';
  readonly intervalBy: 'clopper-pearson' | 'poisson';
  /** What the count rules out from above, one-sided at the same level. */
  readonly below: number;
  /** The same after correction for mites the method misses; absent when no recovery is known for it. */
  readonly corrected?: Interval & { readonly rate: number; readonly recovery: Recovery };
}

export interface InfestationOptions {
  /** Coverage of the interval, 0..1. */
  readonly level?: number;
  /** Overrides the method's own recovery. */
  readonly recovery?: Recovery;
}

/** The infestation that one count shows, with interval; throws on bees or days that are not above 0. */
export function infestation(count: MiteCount, options: InfestationOptions = {}): Infestation {
  const level = options.level ?? DEFAULT_LEVEL;
  const exposure = count.method === 'natural-drop' ? count.days : count.bees;
  if (!(exposure > 0)) throw new RangeError(`A mite count needs bees or days above 0, got ${exposure}`);
  const found = foundRate(count.mites, exposure, count.method !== 'natural-drop', level);
  const recovery = options.recovery ?? (count.method === 'sugar-shake' ? SUGAR_RECOVERY : undefined);
  const unit = count.method === 'natural-drop' ? 'mites per day' : 'mites per bee';
  return recovery ? { ...found, unit, corrected: correct(found, recovery, level) } : { ...found, unit };
}

function foundRate(mites: number, exposure: number, drawnFromBees: boolean, level: number) {
  const rate = mites / exposure;
  if (drawnFromBees && mites <= exposure) {
    const below = exactUpperLimit(mites, exposure, level);
    return { rate, ...clopperPearson(mites, exposure, level), below, intervalBy: 'clopper-pearson' as const };
  }
  const below = poissonInterval(mites, exposure, 2 * level - 1).high;
  return { rate, ...poissonInterval(mites, exposure, level), below, intervalBy: 'poisson' as const };
}

function correct(found: Interval & { readonly rate: number }, recovery: Recovery, level: number) {
  const z = normalQuantile((1 + level) / 2);
  const spread = (z * recovery.standardDeviation) / recovery.share;
  const rate = found.rate / recovery.share;
  if (found.rate === 0)
    return { rate: 0, low: 0, high: (found.high / recovery.share) * Math.exp(spread), recovery };
  return {
    rate,
    low: found.low === 0 ? 0 : rate * Math.exp(-Math.hypot(Math.log(found.rate / found.low), spread)),
    high: rate * Math.exp(Math.hypot(Math.log(found.high / found.rate), spread)),
    recovery,
  };
}
