/**
 * A share from few trials, drawn towards what such trials usually give (beta-binomial).
 *
 *   prior Beta(a, b), x of n  ->  posterior Beta(a + x, b + n - x)
 *   mean = (a + x) / (a + b + n);  sd = sqrt(mean (1 - mean) / (a + b + n + 1));  interval by the beta quantile
 *   empirical prior from groups (x_i, n_i): mean m = (sum x + 1/2) / (sum n + 1), a = m k, b = (1 - m) k, and the
 *   strength k that maximises
 *     sum_i log [ B(a + x_i, b + n_i - x_i) / B(a, b) ] - (log k - log fallback)^2 / (2 spread^2)
 *
 * Sources: Gelman et al., Bayesian Data Analysis, chapter 5 (beta-binomial and its marginal likelihood; from memory).
 * The last term is ours: few groups say next to nothing of k, which then stays near the fallback of eight
 * colony-winters (a project assumption), and many groups overrule it.
 * Cost: O(groups) times some fifty steps. Unknowns: colonies with unknown outcome are in neither x nor n.
 */
import { betaQuantile, logBeta } from '../../numerics/special.ts';
import { DEFAULT_LEVEL, type Interval } from '../counts/intervals.ts';

/** Beta(a, b): worth a + b trials of which a succeeded. */
export interface BetaPrior {
  readonly a: number;
  readonly b: number;
}

export interface Posterior extends Interval {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly a: number;
  readonly b: number;
}

export interface Tally {
  /** How many came through. */
  readonly survived: number;
  /** Out of how many, >= survived. */
  readonly started: number;
}

/** The share given a prior and `survived` of `started`, with its credible interval. */
export function betaBinomial(
  prior: BetaPrior,
  { survived, started }: Tally,
  level = DEFAULT_LEVEL,
): Posterior {
  const a = prior.a + survived;
  const b = prior.b + started - survived;
  const mean = a / (a + b);
  const outside = (1 - level) / 2;
  return {
    a,
    b,
    mean,
    standardDeviation: Math.sqrt((mean * (1 - mean)) / (a + b + 1)),
    low: betaQuantile(outside, a, b),
    high: betaQuantile(1 - outside, a, b),
  };
}

/** The beta distribution with this mean and standard deviation; `undefined` if none has (too wide, or mean 0 or 1). */
export function betaWithMoments(mean: number, standardDeviation: number): BetaPrior | undefined {
  const strength = (mean * (1 - mean)) / standardDeviation ** 2 - 1;
  return mean > 0 && mean < 1 && strength > 0 ? { a: mean * strength, b: (1 - mean) * strength } : undefined;
}

export interface EmpiricalPriorOptions {
  /** Trials the prior is worth while the groups say nothing of it. A project assumption. */
  readonly fallbackStrength: number;
  /** How far, on the log scale, the strength may lie from the fallback (standard deviation). A project assumption. */
  readonly logSpread: number;
  /** Groups with trials needed before their spread is asked at all. */
  readonly fewestGroups: number;
}

const EMPIRICAL_PRIOR_DEFAULTS: EmpiricalPriorOptions = {
  fallbackStrength: 8,
  logSpread: 1,
  fewestGroups: 4,
};

export interface EmpiricalPrior extends BetaPrior {
  /** Whether the strength was read from how far the groups differ, or is the fallback. */
  readonly strengthFrom: 'groups' | 'fallback';
}

/** The prior that the groups themselves suggest; that of the fallback strength where they are too few. */
export function empiricalPrior(
  groups: readonly Tally[],
  options: Partial<EmpiricalPriorOptions> = {},
): EmpiricalPrior {
  const started = groups.reduce((sum, group) => sum + group.started, 0);
  const survived = groups.reduce((sum, group) => sum + group.survived, 0);
  // One half of each outcome keeps the mean off 0 and 1, where a beta prior does not exist.
  const mean = (survived + 0.5) / (started + 1);
  const { strength, strengthFrom } = priorStrength(
    groups.map((group) => ({ ...group, mean })),
    options,
  );
  return { a: mean * strength, b: (1 - mean) * strength, strengthFrom };
}

/** How many trials a prior is worth, from groups that each have an expected share (`mean`, 0..1) of their own. */
export function priorStrength(
  groups: readonly (Tally & { readonly mean: number })[],
  options: Partial<EmpiricalPriorOptions> = {},
): { readonly strength: number; readonly strengthFrom: EmpiricalPrior['strengthFrom'] } {
  const { fallbackStrength, logSpread, fewestGroups } = { ...EMPIRICAL_PRIOR_DEFAULTS, ...options };
  const filled = groups.filter(({ started }) => started > 0);
  if (filled.length < fewestGroups) return { strength: fallbackStrength, strengthFrom: 'fallback' };
  const middle = Math.log(fallbackStrength);
  const height = (logStrength: number) => {
    const strength = Math.exp(logStrength);
    const off = (logStrength - middle) / logSpread;
    return filled.reduce((sum, group) => sum + logChance(group, group.mean, strength), -0.5 * off * off);
  };
  const best = highestPoint(height, middle - 4 * logSpread, middle + 4 * logSpread);
  return { strength: Math.exp(best), strengthFrom: 'groups' };
}

/** Log chance of a group's outcome (less a constant) when its share is drawn from the prior around `mean`. */
function logChance({ survived, started }: Tally, mean: number, strength: number): number {
  const a = mean * strength;
  const b = (1 - mean) * strength;
  return logBeta(a + survived, b + started - survived) - logBeta(a, b);
}

/** Log chance of all groups' outcomes (less constants) under one prior. */
export function marginalLogLikelihood(groups: readonly Tally[], { a, b }: BetaPrior): number {
  return groups.reduce((sum, group) => sum + logChance(group, a / (a + b), a + b), 0);
}

/** Golden-section search for the top of a one-peaked function, to 1e-6 of the argument. */
function highestPoint(height: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [leftHeight, rightHeight] = [height(left), height(right)];
  while (high - low > 1e-6) {
    if (leftHeight < rightHeight) {
      [low, left, leftHeight] = [left, right, rightHeight];
      right = low + golden * (high - low);
      rightHeight = height(right);
    } else {
      [high, right, rightHeight] = [right, left, leftHeight];
      left = high - golden * (high - low);
      leftHeight = height(left);
    }
  }
  return (low + high) / 2;
}
