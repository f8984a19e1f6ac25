/**
 * One step of a quadratic program within the rows in force, over the free variables alone.
 *
 *   N' = Q [R; 0]  (n free variables, m rows in force);  Q = [Y Z]:  p = Z v keeps N p = 0
 *   Z'G Z v = -Z'g,   multipliers y: R y = Y'g, so that g - N'y = Z Z'g vanishes where the slope Z'g does
 * Z'G Z may be singular; a ridge far below its size keeps the step finite, long where there is no curvature. It moves no
 * minimum, since a step is taken again until Z'g vanishes.
 *
 * Sources, from memory, not re-read: Nocedal & Wright 2006, Numerical Optimization, section 16.2 (null-space method);
 * Golub & Van Loan, Matrix Computations, section 5.1 (Householder reflections). Cost O(n^3).
 * The rows have to be independent over the free variables.
 */
import { choleskyInPlace, choleskySolveInPlace } from '../merit/dense.ts';

export interface Reduced {
  /** Step in all variables; 0 outside the free ones. */
  readonly step: Float64Array;
  /** Largest part of Z'g. */
  readonly slope: number;
  /** y of each row in force. */
  readonly multipliers: readonly number[];
}

const RIDGE = 1e-11;

/** The step p over the free variables with N p = 0, the slope that is left, and the multiplier of each row. */
export function reduceToFree(
  { size, curvature }: { readonly size: number; readonly curvature: Float64Array },
  gradient: Float64Array,
  free: readonly number[],
  rows: readonly Float64Array[],
): Reduced {
  const turned = Float64Array.from(free, (k) => gradient[k]!);
  const { reflections, triangle } = triangular(rows.map((row) => Float64Array.from(free, (k) => row[k]!)));
  for (const v of reflections) reflect(v, turned);
  const left = free.length - rows.length;
  const direction = new Float64Array(free.length);
  const slopes = turned.subarray(rows.length);
  const slope = slopes.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  if (slope > 0) {
    const v = slopes.map((each) => -each);
    solve(reducedCurvature(curvature, size, free, reflections), left, v, slope);
    direction.set(v, rows.length);
    for (const each of reflections.toReversed()) reflect(each, direction);
  }
  const step = new Float64Array(size);
  free.forEach((k, place) => {
    step[k] = direction[place]!;
  });
  return { step, slope, multipliers: backSolved(triangle, turned) };
}

/** Householder vectors that turn the rows, one after the other, into R; R by columns. */
function triangular(rows: readonly Float64Array[]) {
  const reflections: Float64Array[] = [];
  const triangle = rows.map((row, place) => {
    for (const v of reflections) reflect(v, row);
    const v = row.slice().fill(0, 0, place);
    const length = Math.hypot(...v) * (v[place]! > 0 ? -1 : 1);
    v[place]! -= length;
    reflections.push(v);
    reflect(v, row);
    return row;
  });
  return { reflections, triangle };
}

/** x - 2 v (v'x)/(v'v), in place. */
function reflect(v: Float64Array, x: Float64Array): void {
  let square = 0;
  let product = 0;
  for (let k = 0; k < v.length; k += 1) {
    square += v[k]! * v[k]!;
    product += v[k]! * x[k]!;
  }
  if (square === 0) return;
  for (let k = 0; k < v.length; k += 1) x[k]! -= (2 * product * v[k]!) / square;
}

/** Z'G Z, row by row. */
function reducedCurvature(
  curvature: Float64Array,
  size: number,
  free: readonly number[],
  reflections: readonly Float64Array[],
): Float64Array {
  const rows = free.map((i) => Float64Array.from(free, (j) => curvature[i * size + j]!));
  const turned = transposed(rows.map((row) => turn(row, reflections)));
  const both = turned.map((row) => turn(row, reflections));
  const skipped = reflections.length;
  return Float64Array.from(both.slice(skipped).flatMap((row) => [...row.subarray(skipped)]));
}

function turn(row: Float64Array, reflections: readonly Float64Array[]): Float64Array {
  for (const v of reflections) reflect(v, row);
  return row;
}

const transposed = (rows: readonly Float64Array[]): Float64Array[] =>
  rows.map((_, j) => Float64Array.from(rows, (row) => row[j]!));

/** Overwrites v with (M + ridge)^-1 v; the ridge is a share of M, or of the slope where M is nothing. */
function solve(matrix: Float64Array, n: number, v: Float64Array, slope: number): void {
  let top = 0;
  for (let k = 0; k < n; k += 1) top = Math.max(top, matrix[k * (n + 1)]!);
  for (let ridge = RIDGE * (top || slope); ; ridge *= 100) {
    const factor = matrix.slice();
    for (let k = 0; k < n; k += 1) factor[k * (n + 1)]! += ridge;
    if (!choleskyInPlace(factor, n)) continue;
    choleskySolveInPlace(factor, n, v);
    return;
  }
}

function backSolved(triangle: readonly Float64Array[], turned: Float64Array): number[] {
  const y = triangle.map(() => 0);
  for (let row = y.length - 1; row >= 0; row -= 1) {
    let value = turned[row]!;
    for (let column = row + 1; column < y.length; column += 1) value -= triangle[column]![row]! * y[column]!;
    y[row] = value / triangle[row]![row]!;
  }
  return y;
}
