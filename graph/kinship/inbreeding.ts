/**
 * Inbreeding of queens and of their brood: the probability that both genes of a female at one place are copies
 * of one gene of the base.
 *   F_i = A[i][i] - 1, which for a queen out of dam D is A[D][mates of D]/2, and for a founder the kinship of
 *   her background.   Brood of Q: A[Q][mates of Q]/2, the F of a daughter of hers.
 * Source: Crow & Roberts 1950, Inbreeding and homozygosis in bees, Genetics 35:612 (from memory, not re-read).
 * Cost: O(1) a queen; the compiled pedigree holds both. Unknowns: a queen without a mating has no brood figure.
 */
import type { Pedigree } from './pedigree.ts';

/** Inbreeding coefficient (0..1) of a queen; `queen` is her index in `queenIds`. */
export function inbreedingOf(pedigree: Pedigree, queen: number): number {
  return pedigree.inbreeding[queen]!;
}

/** Expected inbreeding coefficient (0..1) of her brood; undefined where nothing is known of her mating. */
export function broodInbreedingOf(pedigree: Pedigree, queen: number): number | undefined {
  return pedigree.matesNode[queen]! < 0 ? undefined : pedigree.relationToMates[queen]! / 2;
}

/** Inbreeding coefficients (0..1) of all queens, aligned to `queenIds`. Not a copy. */
export function inbreeding(pedigree: Pedigree): Float64Array {
  return pedigree.inbreeding;
}
