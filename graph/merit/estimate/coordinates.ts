/**
 * Coordinates of the variances in which every point is possible, so that a search needs no fences.
 *
 *   all:   worker = a^2, covariance = a b, queen = b^2 + c^2, permanent = d^2, residual = e^2, over (a, b, c, d, e)
 *   ratio: worker, covariance, queen = g^2 times their starting values (their ratio held), permanent = d^2, residual = e^2
 *
 * Source: Cholesky coordinates of a covariance matrix: Pinheiro & Bates 1996, Stat. Comput. 6:289 (from memory).
 * Cost: O(1). Unknowns: none. A variance of exactly 0 has slope 0 and would never move: a start lies a little inside.
 */
import type { ColonyVariances } from '../solve/colony-model.ts';

/** Coordinates of which no point is impossible, and what they mean. */
export interface Coordinates {
  readonly start: Float64Array;
  readonly variances: (at: Float64Array) => ColonyVariances;
  /** d variance / d coordinate, components x coordinates row-major. */
  readonly slopes: (at: Float64Array) => Float64Array;
  /** Sum over variances of slope_i * second derivative of variance i, coordinates x coordinates row-major. */
  readonly bend: (slope: Float64Array) => Float64Array;
  /** Coordinates that stand still at 0 though their variance may want to grow: [coordinate, component] pairs. */
  readonly edges: readonly (readonly [coordinate: number, component: number])[];
}

/**
 * The coordinates of a search from these variances: of all of them, or of a common scale of the genetic ones
 * (`ratio`).
 */
export function coordinatesOf(kind: 'all' | 'ratio', from: ColonyVariances): Coordinates {
  const { worker, covariance, queen, permanent, residual } = from;
  const inside = Math.sqrt(Math.max(permanent, 0.02 * residual));
  if (kind === 'ratio') {
    return {
      edges: [[1, 3]],
      bend: ([w, c, q, p, r]) =>
        Float64Array.from([
          ...[2 * (w! * worker + c! * covariance + q! * queen), 0, 0],
          ...[0, 2 * p!, 0],
          ...[0, 0, 2 * r!],
        ]),
      start: Float64Array.from([1, inside, Math.sqrt(residual)]),
      variances: ([g, d, e]) => ({
        worker: g! * g! * worker,
        covariance: g! * g! * covariance,
        queen: g! * g! * queen,
        permanent: d! * d!,
        residual: e! * e!,
      }),
      slopes: ([g, d, e]) =>
        Float64Array.from([
          ...[2 * g! * worker, 0, 0],
          ...[2 * g! * covariance, 0, 0],
          ...[2 * g! * queen, 0, 0],
          ...[0, 2 * d!, 0],
          ...[0, 0, 2 * e!],
        ]),
    };
  }
  const a0 = Math.sqrt(Math.max(worker, 0.02 * residual));
  const b0 = covariance / a0;
  const c0 = Math.sqrt(Math.max(queen - b0 * b0, 0.02 * residual));
  return {
    bend: ([w, c, q, p, r]) =>
      Float64Array.from([
        ...[2 * w!, c!, 0, 0, 0],
        ...[c!, 2 * q!, 0, 0, 0],
        ...[0, 0, 2 * q!, 0, 0],
        ...[0, 0, 0, 2 * p!, 0],
        ...[0, 0, 0, 0, 2 * r!],
      ]),
    edges: [
      [2, 2],
      [3, 3],
    ],
    start: Float64Array.from([a0, b0, c0, inside, Math.sqrt(residual)]),
    variances: ([a, b, c, d, e]) => ({
      worker: a! * a!,
      covariance: a! * b!,
      queen: b! * b! + c! * c!,
      permanent: d! * d!,
      residual: e! * e!,
    }),
    slopes: ([a, b, c, d, e]) =>
      Float64Array.from([
        ...[2 * a!, 0, 0, 0, 0],
        ...[b!, a!, 0, 0, 0],
        ...[0, 2 * b!, 2 * c!, 0, 0],
        ...[0, 0, 0, 2 * d!, 0],
        ...[0, 0, 0, 0, 2 * e!],
      ]),
  };
}

/** J' slope and J'A J. */
export function onCoordinates(slopes: Float64Array, slope: Float64Array, information: Float64Array) {
  const count = slopes.length / 5;
  const out = { slope: new Float64Array(count), information: new Float64Array(count * count) };
  for (let k = 0; k < count; k++) {
    for (let i = 0; i < 5; i++) {
      out.slope[k]! += slopes[i * count + k]! * slope[i]!;
      for (let j = 0; j < 5; j++) {
        const value = slopes[i * count + k]! * information[5 * i + j]!;
        for (let l = 0; l < count; l++) out.information[k * count + l]! += value * slopes[j * count + l]!;
      }
    }
  }
  return out;
}
