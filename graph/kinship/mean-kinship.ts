/**
 * Mean kinship of a set of queens: how alike two genes are that are drawn at random from the set, with
 * replacement, and which queens are related to the set the most.
 *   v = 1/N on each of the N queens;  mean kinship of queen i with the set = (A v)[i]/2;
 *   mean kinship of the set = v' A v / 2 (pairs of a queen with herself included)
 * Source: Ballou & Lacy 1995, in Population Management for Survival and Recovery, p. 76 (from memory, not
 * re-read). Cost: O(nodes + parents) for a set of any size.
 * Unknowns: bees without records enter through their backgrounds' kinship.
 */
import type { Pedigree } from './pedigree.ts';
import { multiplyA } from './sweeps.ts';

export interface MeanKinship {
  /** Mean over the set, 0..1. */
  readonly ofSet: number;
  /** Mean kinship of each queen with the set, 0..1, aligned to the queens given. */
  readonly ofEach: Float64Array;
}

/** `queens`: indices into `queenIds`, at least one. Throws on an empty set. */
export function meanKinship(pedigree: Pedigree, queens: ArrayLike<number>): MeanKinship {
  if (queens.length === 0) throw new Error('Bug: the mean kinship of no queens.');
  const v = new Float64Array(pedigree.size);
  for (let k = 0; k < queens.length; k++) v[pedigree.queenNode[queens[k]!]!]! += 1 / queens.length;
  multiplyA(pedigree, v, v);
  const ofEach = new Float64Array(queens.length);
  let sum = 0;
  for (let k = 0; k < queens.length; k++) {
    ofEach[k] = v[pedigree.queenNode[queens[k]!]!]! / 2;
    sum += ofEach[k]!;
  }
  return { ofSet: sum / queens.length, ofEach };
}
