/**
 * A small convex quadratic program over shares, solved by a primal active set.
 *
 *   minimise 1/2 x'G x - a'x  subject to  e'x = b,  c'x <= l,  low <= x <= high
 *
 * Some bounds, and perhaps the limit, are in force; the others are left alone. With g = G x - a, F the variables that
 * are free and N the rows in force (e, perhaps c):
 *   step     N p = 0,  least 1/2 p'G p + g'p on F  (null-space.ts), as far as the next bound or the limit, which
 *            then comes into force
 *   stands   where p = 0: g = N'y + z, z = 0 on F; the bound or limit whose multiplier has the wrong sign is let go;
 *            when there is none, x is a minimum
 * G may be singular or zero (twins, kinship without weight): a direction without curvature is followed until it meets
 * a bound. A normal comes into force only across a step, so those in force stay independent whatever the ties.
 * Where steps of length 0 follow one another, the first that may go and the first that blocks are taken, which ends
 * every circle (Bland).
 *
 * Sources, from memory, not re-read: Nocedal & Wright 2006, Numerical Optimization, algorithm 16.3; Bland 1977, Math.
 * Oper. Res. 2:103. Cost: O(n^3) a step, about as many steps as bounds change; for a few dozen candidates.
 * Too many steps is a result, not a throw.
 */
import { type Reduced, reduceToFree } from './null-space.ts';

export interface Row {
  readonly normal: Float64Array;
  readonly bound: number;
}

export interface QuadraticProgram {
  readonly size: number;
  /** G, size x size, row by row; positive semi-definite. */
  readonly curvature: Float64Array;
  /** a, of length size. */
  readonly slope: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** e'x = b. */
  readonly equality: Row;
  /** c'x <= l. */
  readonly limit?: Row;
  /** A point that keeps all of it, with at most one variable between its bounds. */
  readonly start: Float64Array;
}

export type QuadraticSolution =
  | {
      readonly ok: true;
      readonly x: Float64Array;
      /** y of e'x = b, and of the limit (not above 0; 0 where it is not in force): g = y e + w c + z. */
      readonly equalityMultiplier: number;
      readonly limitMultiplier: number;
      readonly steps: number;
    }
  | { readonly ok: false; readonly reason: 'too-many-steps' };

/** A gradient or multiplier below this share of the largest term counts as 0. */
const FLAT = 1e-13;
/** Parts of a step below this share of its largest are rounding and meet no bound. */
const NO_STEP = 1e-12;
/** A step that ends inside is taken again, against rounding, at most so often. */
const REFINEMENTS = 3;

interface State {
  readonly x: Float64Array;
  /** -1: held at its low bound, 1: at its high one, 0: free. */
  readonly side: Int8Array;
  limited: boolean;
  /** Steps of length 0 in a row. */
  stalls: number;
}

/** The minimum, or that it was not found. */
export function solveQuadratic(program: QuadraticProgram): QuadraticSolution {
  const state = stateAt(program);
  const most = 100 * (program.size + 2);
  let refinements = 0;
  for (let steps = 0; steps < most; steps += 1) {
    const gradient = gradientAt(program, state.x);
    const size = largest(gradient, program.slope);
    const reduced = reduceToFree(program, gradient, freeOf(state), rowsInForce(program, state));
    if (reduced.slope > FLAT * size && refinements < REFINEMENTS) {
      refinements = walk(program, state, reduced.step) ? 0 : refinements + 1;
      continue;
    }
    refinements = 0;
    if (letGo(program, state, gradient, reduced, FLAT * size)) continue;
    const [equalityMultiplier = 0, limitMultiplier = 0] = reduced.multipliers;
    return { ok: true, x: state.x, equalityMultiplier, limitMultiplier, steps };
  }
  return { ok: false, reason: 'too-many-steps' };
}

/** The start: every variable at a bound but one, which makes the equality independent of the bounds. */
function stateAt({ low, high, start }: QuadraticProgram): State {
  const side = Int8Array.from(start, (value, k) => (value <= low[k]! ? -1 : value >= high[k]! ? 1 : 0));
  if (!side.includes(0)) side[Math.max(0, side.lastIndexOf(1))] = 0;
  return { x: start.slice(), side, limited: false, stalls: 0 };
}

const freeOf = ({ side }: State): number[] => [...side.keys()].filter((k) => side[k] === 0);

const rowsInForce = ({ equality, limit }: QuadraticProgram, { limited }: State): Float64Array[] =>
  limited && limit ? [equality.normal, limit.normal] : [equality.normal];

function gradientAt({ size, curvature, slope }: QuadraticProgram, x: Float64Array): Float64Array {
  return slope.map((each, row) => {
    let sum = -each;
    for (let k = 0; k < size; k += 1) sum += curvature[row * size + k]! * x[k]!;
    return sum;
  });
}

function largest(...lists: readonly Float64Array[]): number {
  let most = 0;
  for (const list of lists) for (const each of list) most = Math.max(most, Math.abs(each));
  return most;
}

/** Goes along a step to its end or to the first obstacle, which comes into force; true if there was one. */
function walk(program: QuadraticProgram, state: State, step: Float64Array): boolean {
  const { x, side } = state;
  const obstacle = firstObstacle(program, state, step);
  const length = Math.min(1, obstacle.at);
  for (let k = 0; k < x.length; k += 1) {
    const moved = x[k]! + length * step[k]!;
    if (side[k] === 0) x[k] = Math.min(program.high[k]!, Math.max(program.low[k]!, moved));
  }
  state.stalls = length === 0 ? state.stalls + 1 : 0;
  if (obstacle.at >= 1) return false;
  const { index } = obstacle;
  if (index === program.size) state.limited = true;
  else {
    const isUp = step[index]! > 0;
    side[index] = isUp ? 1 : -1;
    x[index] = isUp ? program.high[index]! : program.low[index]!;
  }
  return true;
}

/** The bound met first along a step, or the limit (index `size`), and how far along; ties go to the first. */
function firstObstacle({ size, low, high, limit }: QuadraticProgram, state: State, step: Float64Array) {
  const { x, side } = state;
  const least = NO_STEP * largest(step);
  let at = Infinity;
  let index = -1;
  const meet = (room: number, pace: number, which: number): void => {
    const distance = Math.max(0, room) / pace;
    if (distance < at) {
      at = distance;
      index = which;
    }
  };
  for (let k = 0; k < size; k += 1) {
    if (side[k] !== 0 || Math.abs(step[k]!) <= least) continue;
    if (step[k]! > 0) meet(high[k]! - x[k]!, step[k]!, k);
    else meet(x[k]! - low[k]!, -step[k]!, k);
  }
  if (!limit || state.limited) return { at, index };
  const pace = product(limit.normal, step);
  if (pace > least * largest(limit.normal)) meet(limit.bound - product(limit.normal, x), pace, size);
  return { at, index };
}

function product(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, each, k) => sum + each * b[k]!, 0);
}

/** Lets the bound or limit go whose multiplier has the wrong sign by most; false where none has. */
function letGo(
  { size, equality, limit }: QuadraticProgram,
  state: State,
  gradient: Float64Array,
  { multipliers: [onEquality = 0, onLimit = 0] }: Reduced,
  flat: number,
): boolean {
  const { side } = state;
  const isFirstTaken = state.stalls > size;
  let worst = flat;
  let index = -1;
  const offer = (wrong: number, which: number): void => {
    if (!(wrong > worst) || (isFirstTaken && index >= 0)) return;
    worst = wrong;
    index = which;
  };
  for (let k = 0; k < size; k += 1) {
    if (side[k] === 0) continue;
    const z = gradient[k]! - onEquality * equality.normal[k]! - onLimit * (limit?.normal[k] ?? 0);
    offer(side[k]! * z, k);
  }
  if (limit && state.limited) offer(onLimit * largest(limit.normal), size);
  if (index < 0) return false;
  if (index === size) state.limited = false;
  else side[index] = 0;
  return true;
}
