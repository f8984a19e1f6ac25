/**
 * The whole curve of gain against kinship, and the point on it that keeps group kinship under a limit.
 *
 *   for each lambda from 0 to infinity: the shares of contributions.ts, their gain c'I and group kinship c'fc
 *
 * Both fall as lambda grows; between the corners of the curve the shares are straight lines in 1/lambda (critical
 * line: Markowitz 1956, Nav. Res. Logist. Q. 3:111, from memory, not re-read). Points are set by halving the widest
 * step in kinship, in the logarithm of lambda; the point under a limit by bisection.
 * Cost: one solve, O(n^3), for each point or halving.
 */
import type {
  ContributionProblem,
  ContributionResult,
  Contributions,
  NoContributions,
} from './contribution-problem.ts';
import { percent } from './contribution-problem.ts';
import { leastKinContributions, optimalContributions } from './contributions.ts';

export interface TradeOffOptions {
  /** How many points the curve has at most, that under the limit apart. */
  readonly points: number;
  /** Limit (0..1) of group kinship; absent: no limit. */
  readonly kinshipLimit?: number;
}

export interface TradeOffCurve {
  readonly ok: true;
  /** From most gain to least kinship, no two alike. */
  readonly points: readonly Contributions[];
  /** Place of the first point that keeps the limit: the most gain that may be had. 0 without a limit. */
  readonly within: number;
}

const TRADE_OFF_DEFAULTS: TradeOffOptions = { points: 25 };

/**
 * The whole curve, also beyond a limit of kinship, on which the best point under the limit is one; or what makes every
 * choice impossible.
 */
export function tradeOffCurve(
  problem: ContributionProblem,
  options: Partial<TradeOffOptions> = {},
): TradeOffCurve | NoContributions {
  const { points, kinshipLimit } = { ...TRADE_OFF_DEFAULTS, ...options };
  const least = leastKinContributions(problem);
  if (!least.ok) return least;
  const most = optimalContributions(problem, 0);
  if (!most.ok) return most;
  const scale = lambdaScale(problem);
  const curve: Contributions[] = [];
  for (const lambda of [scale * 1e-4, scale * 1e4]) {
    const point = optimalContributions(problem, lambda);
    if (!point.ok) return point;
    curve.push(point);
  }
  while (curve.length < points - 2) {
    const at = widestStep(curve);
    if (at === undefined) break;
    const middle = Math.sqrt(curve[at]!.lambda * curve[at + 1]!.lambda);
    const point = optimalContributions(problem, middle);
    if (!point.ok) return point;
    curve.splice(at + 1, 0, point);
  }
  const whole = distinct([most, ...curve, least]);
  if (kinshipLimit === undefined) return { ok: true, points: whole, within: 0 };
  const best = contributionsWithinKinship(problem, kinshipLimit);
  return best.ok ? withPoint(whole, best) : best;
}

/** The curve with one more point on it, and its place; where it is there already, the place alone. */
function withPoint(curve: readonly Contributions[], point: Contributions): TradeOffCurve {
  const within = curve.findIndex(({ groupKinship }) => groupKinship <= point.groupKinship + 1e-9);
  const at = within < 0 ? curve.length : within;
  const points = distinct([...curve.slice(0, at), point, ...curve.slice(at)]);
  return { ok: true, points, within: at };
}

/**
 * The most gain with group kinship c'fc at or below the limit; the whole gain when even that keeps it.
 */
export function contributionsWithinKinship(problem: ContributionProblem, limit: number): ContributionResult {
  const least = leastKinContributions(problem);
  if (!least.ok) return least;
  if (least.groupKinship > limit + 1e-12) {
    return {
      ok: false,
      code: 'kinship-limit-too-low',
      found:
        `The limit of ${percent(limit)} kinship between the dams cannot be met: the least these candidates can ` +
        `reach is ${percent(least.groupKinship)}.`,
      remedy: 'Raise the limit, or take queens of other lines into the choice.',
      least: least.groupKinship,
    };
  }
  const most = optimalContributions(problem, 0);
  if (!most.ok || most.groupKinship <= limit) return most;
  return bisect(problem, limit, least);
}

function bisect(problem: ContributionProblem, limit: number, least: Contributions): ContributionResult {
  let low = Math.log(lambdaScale(problem)) - 40;
  let high = low + 80;
  let best: Contributions = least;
  for (let halving = 0; halving < 100 && high - low > 1e-15 * Math.abs(high); halving += 1) {
    const middle = (low + high) / 2;
    const point = optimalContributions(problem, Math.exp(middle));
    if (!point.ok) return point;
    if (point.groupKinship <= limit) {
      best = point;
      high = middle;
    } else low = middle;
  }
  return best;
}

/** A lambda at which gain and kinship weigh about alike: the spread of the index over the largest A[i][i]. */
function lambdaScale({ merit, kinship }: ContributionProblem): number {
  let low = Infinity;
  let high = -Infinity;
  let largest = 0;
  for (let k = 0; k < merit.length; k += 1) {
    low = Math.min(low, merit[k]!);
    high = Math.max(high, merit[k]!);
    largest = Math.max(largest, 2 * kinship[k * merit.length + k]!);
  }
  return (high - low || 1) / (largest || 1);
}

/** Place of the widest step in kinship; undefined when no step is wider than rounding. */
function widestStep(curve: readonly Contributions[]): number | undefined {
  let widest = 1e-7;
  let at: number | undefined;
  for (let k = 0; k + 1 < curve.length; k += 1) {
    if (curve[k + 1]!.lambda / curve[k]!.lambda < 1.001) continue;
    const step = Math.abs(curve[k]!.groupKinship - curve[k + 1]!.groupKinship);
    if (step > widest) {
      widest = step;
      at = k;
    }
  }
  return at;
}

function distinct(points: readonly Contributions[]): Contributions[] {
  return points.filter((point, k) => {
    const before = points[k - 1];
    return !before || before.shares.some((share, i) => Math.abs(share - point.shares[i]!) > 1e-7);
  });
}
