/**
 * How many daughters from whom: the shares that gain most for the kinship they cost.
 *
 *   maximise c'I - lambda c'Ac   subject to  sum c = 1, 0 <= c <= cap, c'k <= limit
 *
 * c: share of the daughters of each candidate; I: index; A: twice the kinship of the candidates; k: kinship of the
 * daughters of each with the drones they will meet; lambda >= 0: index given up for a unit of c'Ac.
 * Karush-Kuhn-Tucker, checked on every answer with g = I - 2 lambda A c:
 *   g_i = nu + mu k_i inside, <= at 0, >= at the cap;  mu >= 0, mu (limit - c'k) = 0
 *
 * Method: a primal active set (quadratic-program.ts), which minds neither twins nor lambda = 0, where the index alone
 * decides. It starts from the caps filled in order of kinship with the drones, so that the limit holds from the first.
 * Source: Meuwissen 1997, J. Anim. Sci. 75:934 (optimal contributions; from memory, not re-read). Cost O(n^3) a step;
 * for a few dozen candidates.
 * Unknown: a candidate without index is left out by the caller. Not converged is told in the result.
 */
import {
  type ContributionProblem,
  type ContributionResult,
  type Contributions,
  capsOf,
  impossible,
  leastRelatedShares,
  type NoContributions,
} from './contribution-problem.ts';
import { type QuadraticSolution, solveQuadratic } from './quadratic-program.ts';

/** A residual above this is called not converged. */
const CONVERGED = 1e-8;
/** Shares below this are rounding. */
const NO_SHARE = 1e-11;

/** The best shares for one lambda (>= 0), or what makes every choice impossible. */
export function optimalContributions(problem: ContributionProblem, lambda: number): ContributionResult {
  if (!(lambda >= 0)) throw new RangeError(`The weight on kinship is 0 or more, not ${lambda}.`);
  const blocked = impossible(problem);
  if (blocked) return blocked;
  const solution = solve(problem, lambda, Float64Array.from(problem.merit));
  return solution.ok ? described(problem, lambda, solution) : notSolved(solution.reason);
}

/** The shares of least group kinship, whatever they gain: the end of the curve where lambda grows for ever. */
export function leastKinContributions(problem: ContributionProblem): ContributionResult {
  const blocked = impossible(problem);
  if (blocked) return blocked;
  const solution = solve(problem, 1, new Float64Array(problem.merit.length));
  if (!solution.ok) return notSolved(solution.reason);
  const withoutMerit = described({ ...problem, merit: new Float64Array(problem.merit.length) }, 1, solution);
  return { ...described(problem, Infinity, solution), ...checkOf(withoutMerit), lambda: Infinity };
}

function checkOf({ residual, converged, steps }: Contributions) {
  return { residual, converged, steps };
}

function notSolved(reason: string): NoContributions {
  return {
    ok: false,
    code: 'not-solved',
    found: `The best shares could not be computed (${reason}).`,
    remedy:
      'Leave out candidates that are listed twice; if it stays, send the file to whoever keeps this app.',
  };
}

function solve(
  problem: ContributionProblem,
  lambda: number,
  merit: Float64Array<ArrayBuffer>,
): QuadraticSolution {
  const size = merit.length;
  const { poolKinship, poolKinshipLimit } = problem;
  // Shares sum to 1, so a constant taken off the index changes no choice; it keeps the numbers small.
  const middle = merit.reduce((sum, each) => sum + each, 0) / size;
  const found = solveQuadratic({
    size,
    curvature: Float64Array.from({ length: size * size }, (_, k) => 4 * lambda * problem.kinship[k]!),
    slope: merit.map((each) => each - middle),
    low: new Float64Array(size),
    high: capsOf(problem),
    equality: { normal: new Float64Array(size).fill(1), bound: 1 },
    ...(poolKinship === undefined || poolKinshipLimit === undefined
      ? {}
      : { limit: { normal: Float64Array.from(poolKinship), bound: poolKinshipLimit } }),
    start: leastRelatedShares(problem),
  });
  return found.ok ? { ...found, equalityMultiplier: found.equalityMultiplier - middle } : found;
}

function described(
  problem: ContributionProblem,
  lambda: number,
  { x, equalityMultiplier, limitMultiplier, steps }: QuadraticSolution & { ok: true },
): Contributions {
  const shares = x.map((share) => (Math.abs(share) < NO_SHARE ? 0 : share));
  const dot = (values: ArrayLike<number>): number =>
    shares.reduce((sum, share, k) => sum + share * values[k]!, 0);
  const withGroup = kinshipWithGroup(problem, shares);
  // The program minimises, so its multipliers are minus nu and minus mu.
  const prices = { sum: -equalityMultiplier, limit: limitMultiplier === 0 ? 0 : -limitMultiplier };
  const gradient = shares.map(
    (_, k) => problem.merit[k]! - (lambda === Infinity ? 0 : 4 * lambda * withGroup[k]!),
  );
  const residual = breach(problem, shares, gradient, prices);
  return {
    ok: true,
    shares,
    gain: dot(problem.merit),
    groupKinship: dot(withGroup),
    ...(problem.poolKinship ? { poolKinship: dot(problem.poolKinship) } : {}),
    limitPrice: prices.limit,
    lambda,
    residual,
    converged: residual < CONVERGED,
    steps,
  };
}

/** Kinship of each candidate with the group that the shares make. */
function kinshipWithGroup({ kinship }: ContributionProblem, shares: Float64Array): Float64Array {
  const size = shares.length;
  return shares.map((_, row) => {
    let sum = 0;
    for (let k = 0; k < size; k += 1) sum += kinship[row * size + k]! * shares[k]!;
    return sum;
  });
}

/**
 * Largest breach of the Karush-Kuhn-Tucker conditions: what is left of a slope counts as far as the share could still
 * follow it.
 */
function breach(
  problem: ContributionProblem,
  shares: Float64Array,
  gradient: Float64Array,
  prices: { readonly sum: number; readonly limit: number },
): number {
  const caps = capsOf(problem);
  const priceOf = (k: number): number => prices.limit * (problem.poolKinship?.[k] ?? 0);
  const scale = gradient.reduce((most, each, k) => Math.max(most, Math.abs(each), priceOf(k)), 0) || 1;
  let worst = Math.abs(shares.reduce((sum, share) => sum + share, -1));
  gradient.forEach((slope, k) => {
    const rest = (slope - prices.sum - priceOf(k)) / scale;
    const way = rest > 0 ? caps[k]! - shares[k]! : shares[k]!;
    worst = Math.max(worst, Math.min(Math.abs(rest), way), -shares[k]!, shares[k]! - caps[k]!);
  });
  if (problem.poolKinship === undefined || problem.poolKinshipLimit === undefined) return worst;
  const reached = shares.reduce((sum, share, k) => sum + share * problem.poolKinship![k]!, 0);
  const room = problem.poolKinshipLimit - reached;
  return Math.max(worst, -room, -prices.limit / scale, Math.min(Math.abs(room), prices.limit / scale));
}
