/**
 * The worker group of a colony: the mean of very many daughters of its queen Q.
 *   value W = (value of Q + value of her mates)/2
 *   A[W][W] = q = (A[Q][Q] + A[mates][mates] + 2 A[Q][mates])/4, also the mean relationship of two sisters in
 *   the colony; a group has no Mendelian term of its own.
 * Source: Laidlaw & Page 1984, Polyandry in honey bees, Genetics 108:985 (mean relationship of sisters
 * 0.25 + 0.5/n with n unrelated mates; form from memory, not re-read).
 * Cost: O(1). Unknowns: a queen without a mating has no worker group (undefined).
 */
import type { Pedigree } from './pedigree.ts';

/** A[W][W] of the colony headed by a queen (index in `queenIds`); undefined without a mating. */
export function workerGroupDiagonal(pedigree: Pedigree, queen: number): number | undefined {
  const mates = pedigree.matesNode[queen]!;
  if (mates < 0) return undefined;
  const own = pedigree.diagonal[pedigree.queenNode[queen]!]!;
  return (own + pedigree.diagonal[mates]! + 2 * pedigree.relationToMates[queen]!) / 4;
}

/** Value of her worker group, from values of all nodes (a product with A, breeding values); undefined unmated. */
export function workerGroupValue(
  pedigree: Pedigree,
  queen: number,
  nodeValues: Float64Array,
): number | undefined {
  const mates = pedigree.matesNode[queen]!;
  if (mates < 0) return undefined;
  return (nodeValues[pedigree.queenNode[queen]!]! + nodeValues[mates]!) / 2;
}

/** Adds `weight` on her worker group to a vector over all nodes. Throws for a queen without a mating. */
export function addWorkerGroup(
  pedigree: Pedigree,
  queen: number,
  weight: number,
  nodeWeights: Float64Array,
): void {
  const mates = pedigree.matesNode[queen]!;
  if (mates < 0) throw new Error(`Bug: queen ${pedigree.queenIds[queen]} has no mating, hence no workers.`);
  nodeWeights[pedigree.queenNode[queen]!]! += weight / 2;
  nodeWeights[mates]! += weight / 2;
}
