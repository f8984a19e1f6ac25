/**
 * The compiled pedigree: every structural node (backgrounds, founders, drone pools, mates, drones, queens)
 * in birth order, parents in compressed rows. Built once per revision by `compilePedigree`; never changed.
 *
 * Relationship matrix A (twice the kinship) obeys, for node i and any older x,
 *   A[i][x] = sum over parents p of coefficient[p] * A[p][x]
 *   A = T D T',  T^-1 = I - C,  D = diag(mendelian)
 * Sources: Colleau 2002, Genet. Sel. Evol. 34:409 (indirect products); Legarra et al. 2015,
 * Genetics 200:455 (metafounders).
 */

/** Kinds of structural node, as stored in `Pedigree.kind`. */
export const NodeKind = {
  background: 0,
  founder: 1,
  queen: 2,
  pool: 3,
  mates: 4,
  drone: 5,
} as const;
export type NodeKind = (typeof NodeKind)[keyof typeof NodeKind];

export interface Pedigree {
  /** Number of structural nodes. */
  readonly size: number;
  /** `NodeKind` of each node. */
  readonly kind: Uint8Array;
  /** Parents of node i stand at parentStart[i] .. parentStart[i + 1] - 1 of `parent` and `coefficient`. */
  readonly parentStart: Int32Array;
  readonly parent: Int32Array;
  readonly coefficient: Float64Array;
  /** Mendelian variance of each node (0 for pools). */
  readonly mendelian: Float64Array;
  /** A[i][i] of each node. */
  readonly diagonal: Float64Array;
  /** Ids of the queens, in the order of the input; the index below is into this list. */
  readonly queenIds: readonly string[];
  readonly queenIndex: ReadonlyMap<string, number>;
  /** Structural node of each queen. */
  readonly queenNode: Int32Array;
  /** Structural node of each queen's mates; -1 where she has no mating. Inside `graph` only. */
  readonly matesNode: Int32Array;
  /** Inbreeding coefficient of each queen (0..1): her diagonal less 1, kept apart so that small ones keep their digits. */
  readonly inbreeding: Float64Array;
  /**
   * A[Q][mates of Q] of each queen: twice the inbreeding of her brood. NaN where she has no mating. Inside
   * `graph` only; `inbreeding` tells it with words.
   */
  readonly relationToMates: Float64Array;
  /** Structural node of each named pool, background and drone. */
  readonly poolNode: ReadonlyMap<string, number>;
  readonly backgroundNode: ReadonlyMap<string, number>;
  readonly droneNode: ReadonlyMap<string, number>;
}
