/**
 * A small strictly convex quadratic program, solved exactly by a dual active set.
 *
 *   minimise 1/2 x'G x - a'x  subject to  c_i'x = b_i (i < equalities),  c_i'x >= b_i (the others)
 *
 * G (n x n, row-major): symmetric and positive definite. Starts at the free minimum x = G^-1 a and takes in the
 * most violated constraint until none is left; each step keeps
 *   J = L^-T Q,  R upper triangular,  with N = the normals in force:  J'N = [R; 0],  G = L L'
 * so that z = J2 J2'n is the step in x and r = R^-1 J1'n the change of the multipliers.
 * Source: Goldfarb & Idnani 1983, A numerically stable dual method for solving strictly convex quadratic programs,
 * Math. Program. 27:1 (from memory, not re-read). Cost O(n^3) at first and O(n (n + constraints)) a step; for a
 * few dozen candidates. Not positive definite, no feasible point and too many steps are results, not throws.
 */
import { choleskyInPlace, choleskySolveInPlace, lowerSolveInPlace } from '../merit/dense.ts';

export interface QuadraticProgram {
  readonly size: number;
  /** G, size x size, row by row. */
  readonly curvature: Float64Array;
  /** a, of length size. */
  readonly slope: Float64Array;
  /** Normals c_i and bounds b_i; the first `equalities` of them hold as equalities. */
  readonly normals: readonly Float64Array[];
  readonly bounds: readonly number[];
  readonly equalities: number;
}

export type QuadraticSolution =
  | {
      readonly ok: true;
      readonly x: Float64Array;
      /** Multiplier of each constraint; 0 where it is not in force, not negative for inequalities. */
      readonly multipliers: Float64Array;
      readonly steps: number;
    }
  | { readonly ok: false; readonly reason: 'not-positive-definite' | 'infeasible' | 'too-many-steps' };

/** A constraint is violated when c'x falls short of b by more than this times the size of its terms. */
const FEASIBLE = 1e-12;
/** A constraint that those in force fix, and that falls short by no more than this, counts as met. */
const ROUNDING = 1e-9;
/** A step direction shorter than this share of the normal is no direction: the normal depends on those in force. */
const DEPENDENT = 1e-13;

/** The minimum, or why there is none. */
export function solveQuadratic(program: QuadraticProgram): QuadraticSolution {
  const state = start(program);
  if (!state) return { ok: false, reason: 'not-positive-definite' };
  const most = 50 * (program.size + program.normals.length);
  for (let steps = 0; steps < most; steps += 1) {
    const worst = mostViolated(program, state);
    if (worst === undefined) return { ok: true, x: state.x, multipliers: multipliers(program, state), steps };
    if (takeIn(program, state, worst)) continue;
    const { index } = worst;
    const bound = program.bounds[index]!;
    const short = Math.abs(shortfall(program.normals[index]!, bound, state.x));
    if (short > ROUNDING * (1 + Math.abs(bound))) return { ok: false, reason: 'infeasible' };
    state.met.add(index);
  }
  return { ok: false, reason: 'too-many-steps' };
}

/** One constraint in force: which, and whether its normal is turned round (an equality met from above). */
interface InForce {
  readonly index: number;
  readonly sign: 1 | -1;
}

interface State {
  readonly x: Float64Array;
  /** J, n x n, row by row. */
  readonly j: Float64Array;
  /** R, n x n, row by row; the leading square of the number in force counts. */
  readonly r: Float64Array;
  readonly force: InForce[];
  readonly u: number[];
  /** Constraints that those in force meet but for rounding. */
  readonly met: Set<number>;
}

function start({ size, curvature, slope }: QuadraticProgram): State | undefined {
  const factor = curvature.slice();
  if (!choleskyInPlace(factor, size)) return undefined;
  const j = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    // Row k of L^-T is column k of L^-1.
    const column = j.subarray(row * size, (row + 1) * size);
    column[row] = 1;
    lowerSolveInPlace(factor, size, column);
  }
  const x = slope.slice();
  choleskySolveInPlace(factor, size, x);
  return { x, j, r: new Float64Array(size * size), force: [], u: [], met: new Set() };
}

function transposeTimes(j: Float64Array, v: Float64Array, size: number): Float64Array {
  const out = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    const value = v[row]!;
    if (value === 0) continue;
    for (let k = 0; k < size; k += 1) out[k]! += j[row * size + k]! * value;
  }
  return out;
}

function mostViolated({ normals, bounds, equalities }: QuadraticProgram, state: State): InForce | undefined {
  let worst: InForce | undefined;
  let by = 0;
  const settled = new Set(state.met);
  for (const { index } of state.force) settled.add(index);
  for (let index = 0; index < normals.length; index += 1) {
    if (settled.has(index)) continue;
    const short = shortfall(normals[index]!, bounds[index]!, state.x);
    const violation = index < equalities ? Math.abs(short) : short;
    const counts = violation > Math.max(by, FEASIBLE * (1 + Math.abs(bounds[index]!)));
    if (counts) by = violation;
    if (counts || (index < equalities && !worst)) worst = { index, sign: short >= 0 ? 1 : -1 };
  }
  return worst;
}

function shortfall(normal: Float64Array, bound: number, x: Float64Array): number {
  let short = bound;
  for (let k = 0; k < x.length; k += 1) {
    const each = normal[k]!;
    if (each !== 0) short -= each * x[k]!;
  }
  return short;
}

/** Takes one constraint in, letting go of others on the way; false when no point meets it with them. */
function takeIn(program: QuadraticProgram, state: State, taken: InForce): boolean {
  const { size } = program;
  const normal = program.normals[taken.index]!.map((each) => taken.sign * each);
  const bound = taken.sign * program.bounds[taken.index]!;
  let own = 0;
  for (;;) {
    const d = transposeTimes(state.j, normal, size);
    const z = direction(state, d, size);
    const r = multiplierChange(state, d, size);
    const blocking = firstToVanish(program, state, r);
    const along = z.reduce((sum, each, k) => sum + each * normal[k]!, 0);
    const depends = along <= DEPENDENT * d.reduce((sum, each) => sum + each * each, 0);
    const whole = depends ? Infinity : Math.max(0, shortfall(normal, bound, state.x)) / along;
    const step = Math.min(whole, blocking.step);
    if (step === Infinity) return false;
    if (!depends)
      z.forEach((each, k) => {
        state.x[k]! += step * each;
      });
    r.forEach((each, k) => {
      state.u[k]! -= step * each;
    });
    own += step;
    if (step === whole) {
      add(state, d, size);
      state.force.push(taken);
      state.u.push(own);
      return true;
    }
    letGo(state, blocking.place, size);
  }
}

function direction({ j, force }: State, d: Float64Array, size: number): Float64Array {
  const z = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    for (let k = force.length; k < size; k += 1) z[row]! += j[row * size + k]! * d[k]!;
  }
  return z;
}

function multiplierChange({ r, force }: State, d: Float64Array, size: number): Float64Array {
  const change = new Float64Array(force.length);
  for (let row = force.length - 1; row >= 0; row -= 1) {
    let value = d[row]!;
    for (let k = row + 1; k < force.length; k += 1) value -= r[row * size + k]! * change[k]!;
    change[row] = value / r[row * size + row]!;
  }
  return change;
}

/** The inequality in force whose multiplier reaches 0 first. */
function firstToVanish({ equalities }: QuadraticProgram, { force, u }: State, r: Float64Array) {
  let step = Infinity;
  let place = -1;
  force.forEach(({ index }, k) => {
    if (index < equalities || !(r[k]! > 0)) return;
    const ratio = Math.max(0, u[k]!) / r[k]!;
    if (ratio < step) {
      step = ratio;
      place = k;
    }
  });
  return { step, place };
}

/** Adds a column to R: rotates J so that d has nothing below its place. */
function add({ j, r, force }: State, d: Float64Array, size: number): void {
  const place = force.length;
  for (let k = size - 1; k > place; k -= 1) {
    const length = Math.hypot(d[k - 1]!, d[k]!);
    if (length === 0) continue;
    rotate(j, size, k - 1, d[k - 1]! / length, d[k]! / length);
    d[k - 1] = length;
    d[k] = 0;
  }
  for (let row = 0; row <= place; row += 1) r[row * size + place] = d[row]!;
}

/** Takes a column out of R and makes it upper triangular again. */
function letGo({ j, r, force, u }: State, place: number, size: number): void {
  force.splice(place, 1);
  u.splice(place, 1);
  for (let column = place; column < force.length; column += 1) {
    for (let row = 0; row <= column + 1; row += 1) r[row * size + column] = r[row * size + column + 1]!;
  }
  for (let k = place; k < force.length; k += 1) {
    const length = Math.hypot(r[k * size + k]!, r[(k + 1) * size + k]!);
    if (length === 0) continue;
    const cosine = r[k * size + k]! / length;
    const sine = r[(k + 1) * size + k]! / length;
    for (let column = k; column < force.length; column += 1) {
      const upper = r[k * size + column]!;
      const below = r[(k + 1) * size + column]!;
      r[k * size + column] = cosine * upper + sine * below;
      r[(k + 1) * size + column] = cosine * below - sine * upper;
    }
    rotate(j, size, k, cosine, sine);
  }
}

/** Rotates columns `column` and `column + 1` of J. */
function rotate(j: Float64Array, size: number, column: number, cosine: number, sine: number): void {
  for (let row = 0; row < size; row += 1) {
    const left = j[row * size + column]!;
    const right = j[row * size + column + 1]!;
    j[row * size + column] = cosine * left + sine * right;
    j[row * size + column + 1] = cosine * right - sine * left;
  }
}

function multipliers({ normals }: QuadraticProgram, { force, u }: State): Float64Array {
  const all = new Float64Array(normals.length);
  force.forEach(({ index, sign }, k) => {
    all[index] = sign * u[k]!;
  });
  return all;
}
