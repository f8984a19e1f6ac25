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

export const EMPIRICAL_PRIOR_DEFAULTS: EmpiricalPriorOptions = {
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
  const { fallbackStrength, logSpread, fewestGroups } = { ...EMPIRICAL_PRIOR_DEFAULTS, ...options };
  const filled = groups.filter(({ started }) => started > 0);
  const started = filled.reduce((sum, group) => sum + group.started, 0);
  const survived = filled.reduce((sum, group) => sum + group.survived, 0);
  // One half of each outcome keeps the mean off 0 and 1, where a beta prior does not exist.
  const mean = (survived + 0.5) / (started + 1);
  const prior = (strength: number) => ({ a: mean * strength, b: (1 - mean) * strength });
  if (filled.length < fewestGroups) return { ...prior(fallbackStrength), strengthFrom: 'fallback' };
  const score = (logStrength: number) => {
    const off = (logStrength - Math.log(fallbackStrength)) / logSpread;
    return marginalLogLikelihood(filled, prior(Math.exp(logStrength))) - 0.5 * off * off;
  };
  const middle = Math.log(fallbackStrength);
  const best = highestPoint(score, middle - 4 * logSpread, middle + 4 * logSpread);
  return { ...prior(Math.exp(best)), strengthFrom: 'groups' };
}

/** Log chance of the groups' outcomes (less constants) when each group's own share is drawn from the prior. */
export function marginalLogLikelihood(groups: readonly Tally[], { a, b }: BetaPrior): number {
  const before = logBeta(a, b);
  return groups.reduce(
    (sum, { survived, started }) => sum + logBeta(a + survived, b + started - survived) - before,
    0,
  );
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
