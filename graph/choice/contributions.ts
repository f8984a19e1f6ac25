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
 * Method: a dual active set (quadratic-program.ts). Where 2 lambda A is not positive definite (lambda = 0, twins),
 * proximal steps, each of them such a program with rho/2 |c - c before|^2 taken off, until c stands still.
 * Sources: Meuwissen 1997, J. Anim. Sci. 75:934 (optimal contributions); Rockafellar 1976, SIAM J. Control Optim.
 * 14:877 (proximal point); both from memory, not re-read. Cost O(n^3); for a few dozen candidates.
 * Unknown: a candidate without index is left out by the caller. Not converged is told in the result.
 */
import {
  type ContributionProblem,
  type ContributionResult,
  type Contributions,
  capsOf,
  impossible,
  type NoContributions,
} from './contribution-problem.ts';
import { type QuadraticProgram, type QuadraticSolution, solveQuadratic } from './quadratic-program.ts';

/** A residual above this is called not converged. */
export const CONVERGED = 1e-8;
/** Shares below this are rounding. */
const NO_SHARE = 1e-11;
/** Weight of the proximal term: small beside the slopes, to go far each time, yet enough for a Cholesky factor. */
const SLOPE_SHARE = 1e-4;
const CURVATURE_SHARE = 1e-8;
const MOST_PROXIMAL_STEPS = 200;
const STANDS_STILL = 1e-10;

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
  const curvature = Float64Array.from({ length: size * size }, (_, k) => 4 * lambda * problem.kinship[k]!);
  // Shares sum to 1, so a constant taken off the index changes no choice; it keeps the numbers small.
  const middle = merit.reduce((sum, each) => sum + each, 0) / size;
  const program = { size, curvature, slope: merit.map((each) => each - middle), ...constraintsOf(problem) };
  const direct = solveQuadratic(program);
  const found = direct.ok || direct.reason !== 'not-positive-definite' ? direct : proximal(program);
  if (!found.ok) return found;
  const multipliers = found.multipliers.slice();
  multipliers[0]! -= middle;
  return { ...found, multipliers };
}

function constraintsOf(
  problem: ContributionProblem,
): Pick<QuadraticProgram, 'normals' | 'bounds' | 'equalities'> {
  const size = problem.merit.length;
  const unit = (k: number, value: number): Float64Array => {
    const normal = new Float64Array(size);
    normal[k] = value;
    return normal;
  };
  const normals: Float64Array[] = [new Float64Array(size).fill(1)];
  const bounds = [1];
  for (let k = 0; k < size; k += 1) {
    normals.push(unit(k, 1));
    bounds.push(0);
  }
  capsOf(problem).forEach((cap, k) => {
    normals.push(unit(k, -1));
    bounds.push(-cap);
  });
  if (problem.poolKinship && problem.poolKinshipLimit !== undefined) {
    normals.push(Float64Array.from(problem.poolKinship, (each) => -each));
    bounds.push(-problem.poolKinshipLimit);
  }
  return { normals, bounds, equalities: 1 };
}

/** Proximal steps until c stands still; when it never does, the last c, whose residual tells. */
function proximal(program: QuadraticProgram): QuadraticSolution {
  const { size, curvature, slope } = program;
  const largest = (values: Float64Array): number =>
    values.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  const rho = Math.max(SLOPE_SHARE * largest(slope), CURVATURE_SHARE * largest(curvature)) || 1;
  const raised = curvature.map((each, k) => (k % (size + 1) === 0 ? each + rho : each));
  let last: QuadraticSolution & { readonly ok: true } = {
    ok: true,
    x: new Float64Array(size).fill(1 / size),
    multipliers: new Float64Array(0),
    steps: 0,
  };
  for (let round = 0; round < MOST_PROXIMAL_STEPS; round += 1) {
    const solution = solveQuadratic({
      ...program,
      curvature: raised,
      slope: slope.map((each, k) => each + rho * last.x[k]!),
    });
    if (!solution.ok) return solution;
    const moved = largest(solution.x.map((each, k) => each - last.x[k]!));
    last = { ...solution, steps: last.steps + solution.steps };
    if (moved < STANDS_STILL) break;
  }
  return last;
}

function described(
  problem: ContributionProblem,
  lambda: number,
  { x, multipliers, steps }: QuadraticSolution & { ok: true },
): Contributions {
  const shares = x.map((share) => (Math.abs(share) < NO_SHARE ? 0 : share));
  const size = shares.length;
  const dot = (values: ArrayLike<number>): number =>
    shares.reduce((sum, share, k) => sum + share * values[k]!, 0);
  const withGroup = kinshipWithGroup(problem, shares);
  const limitPrice = multipliers[2 * size + 1] ?? 0;
  const gradient = shares.map(
    (_, k) => problem.merit[k]! - (lambda === Infinity ? 0 : 4 * lambda * withGroup[k]!),
  );
  const residual = breach(problem, shares, gradient, multipliers);
  return {
    ok: true,
    shares,
    gain: dot(problem.merit),
    groupKinship: dot(withGroup),
    ...(problem.poolKinship ? { poolKinship: dot(problem.poolKinship) } : {}),
    limitPrice,
    lambda,
    residual,
    converged: residual < CONVERGED,
    steps,
  };
}

/** Kinship of each candidate with the group that the shares make. */
export function kinshipWithGroup({ kinship }: ContributionProblem, shares: Float64Array): Float64Array {
  const size = shares.length;
  return shares.map((_, row) => {
    let sum = 0;
    for (let k = 0; k < size; k += 1) sum += kinship[row * size + k]! * shares[k]!;
    return sum;
  });
}

/** Largest breach of the Karush-Kuhn-Tucker conditions. */
function breach(
  problem: ContributionProblem,
  shares: Float64Array,
  gradient: Float64Array,
  multipliers: Float64Array,
): number {
  const size = shares.length;
  const caps = capsOf(problem);
  // The program minimises, so the multiplier of its sum is minus nu.
  const sumPrice = -multipliers[0]!;
  const limitPrice = multipliers[2 * size + 1] ?? 0;
  const scale = gradient.reduce((most, each) => Math.max(most, Math.abs(each)), 0) || 1;
  let worst = Math.abs(shares.reduce((sum, share) => sum + share, -1));
  gradient.forEach((slope, k) => {
    const rest = (slope - sumPrice - limitPrice * (problem.poolKinship?.[k] ?? 0)) / scale;
    const up = shares[k]! < caps[k]! - NO_SHARE ? rest : 0;
    const down = shares[k]! > NO_SHARE ? -rest : 0;
    worst = Math.max(worst, up, down, -shares[k]!, shares[k]! - caps[k]!);
  });
  if (problem.poolKinship === undefined || problem.poolKinshipLimit === undefined) return worst;
  const reached = shares.reduce((sum, share, k) => sum + share * problem.poolKinship![k]!, 0);
  const room = problem.poolKinshipLimit - reached;
  return Math.max(worst, -room, -limitPrice / scale, (Math.abs(room) * limitPrice) / scale);
}
