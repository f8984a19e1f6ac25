/**
 * How surely one candidate's index is above another's.
 *
 *   E_ij = sum over traits  weight_t^2 e_t,ij / sigma_t^2         e_t: prediction error covariance of the trait
 *   a trait without a solution leaves all of its variance open:   e_t,ij / sigma_t^2 = A_ij
 *   chance that i is truly above j = Phi((I_i - I_j) / sqrt(E_ii + E_jj - 2 E_ij))
 *   chance to be among the best k: share of seeded draws I + L z, L L' = E, in which i is
 *
 * Given the records, true indexes are taken as normal around the estimates, variances known, traits uncorrelated.
 * Source: `solve/error-covariance.ts`; the posterior of the mixed model is normal where the variances are known
 * (Henderson 1984, from memory). Cost: n^2 a trait; n^3 + draws n^2 for the last.
 * Unknowns: a trait with reliabilities and no error covariance (too many candidates) has independent errors.
 */

import { randomGenerator } from '../numerics/random.ts';
import { normalBelow } from '../numerics/special.ts';
import { semiDefiniteInPlace } from './dense.ts';
import type { IndexTrait, TraitWeights } from './index-of-traits.ts';

export interface ErrorTrait extends IndexTrait {
  /** Of the candidates, row by row, in the squared unit of the trait. */
  readonly errorCovariance?: Float64Array;
}

/** Error covariance of the index of each pair of candidates, row by row. `relationship`: A of the candidates. */
export function indexErrors(
  traits: readonly ErrorTrait[],
  weights: TraitWeights,
  relationship: Float64Array,
): Float64Array {
  const size = Math.round(Math.sqrt(relationship.length));
  const errors = new Float64Array(relationship.length);
  for (const trait of traits) {
    const square = (weights[trait.trait] ?? 0) ** 2;
    if (square === 0) continue;
    const open = openPart(trait, relationship, size);
    for (let k = 0; k < errors.length; k++) errors[k]! += square * open(k);
  }
  return errors;
}

/** What is left open of a trait, in its own spread, for the pair at place k of the block. */
function openPart(
  { sigma, errorCovariance, reliability }: ErrorTrait,
  relationship: Float64Array,
  size: number,
): (k: number) => number {
  if (sigma > 0 && errorCovariance) return (k) => errorCovariance[k]! / sigma ** 2;
  if (!reliability) return (k) => relationship[k]!;
  return (k) => (k % (size + 1) === 0 ? relationship[k]! * (1 - reliability[k % size]!) : 0);
}

/** Standard error of the difference of two candidates. */
export function differenceError(errors: Float64Array, i: number, j: number): number {
  const size = Math.round(Math.sqrt(errors.length));
  const variance =
    errors[i * size + i]! + errors[j * size + j]! - errors[i * size + j]! - errors[j * size + i]!;
  return Math.sqrt(Math.max(0, variance));
}

/** Chance (0..1) that the true index of `i` is above that of `j`; 1/2 where nothing tells them apart. */
export function chanceAbove(index: ArrayLike<number>, errors: Float64Array, i: number, j: number): number {
  const difference = index[i]! - index[j]!;
  const error = differenceError(errors, i, j);
  if (error < 1e-12) return difference === 0 ? 0.5 : difference > 0 ? 1 : 0;
  return normalBelow(difference / error);
}

const BEST_DEFAULTS = { draws: 2000, seed: 1 };

/** Chance (0..1) of each candidate to be truly among the best `best` of all; they sum to `best`. */
export function chancesAmongBest(
  index: ArrayLike<number>,
  errors: Float64Array,
  best: number,
  options: Partial<typeof BEST_DEFAULTS> = {},
): Float64Array {
  const { draws, seed } = { ...BEST_DEFAULTS, ...options };
  const size = index.length;
  const root = errors.slice();
  semiDefiniteInPlace(root, size);
  const random = randomGenerator(seed);
  const counts = new Float64Array(size);
  const drawn = new Float64Array(size);
  const normals = new Float64Array(size);
  const order = Array.from({ length: size }, (_, k) => k);
  for (let draw = 0; draw < draws; draw++) {
    for (let k = 0; k < size; k++) normals[k] = random.normal();
    for (let k = 0; k < size; k++) {
      let value = index[k]!;
      for (let l = 0; l <= k; l++) value += root[k * size + l]! * normals[l]!;
      drawn[k] = value;
    }
    order.sort((a, b) => drawn[b]! - drawn[a]!);
    for (let place = 0; place < Math.min(best, size); place++) counts[order[place]!]! += 1;
  }
  return counts.map((count) => count / draws);
}
