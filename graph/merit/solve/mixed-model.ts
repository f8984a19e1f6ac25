/**
 * The mixed model behind every breeding value, in plain arrays: records, fixed columns, two correlated effects over
 * the nodes of a pedigree, and noise shared by the records of one level.
 *
 *   y_r = sum over columns b_c + s_p + noise_l + e_r
 *   s_p = sum over entries of predictor p (first * u1[node] + second * u2[node])
 *   (u1, u2) ~ N(0, G0 (x) A),  A = T D T';   noise_l ~ N(0, v_l);   e_r ~ N(0, R_r)
 * p, l and c are the predictor, the level and the columns of record r. In a bee colony u1 is the worker effect,
 * u2 the queen effect, a predictor is a colony's queen and a level her permanent effect; in a textbook animal model
 * a predictor is one animal with first = 1, and the maternal model adds its dam with second = 1.
 *
 * Sources: Henderson 1984, Applications of Linear Models in Animal Breeding (from memory); worker and queen effects:
 * Bienefeld, Ehrhardt & Reinhardt 2007, Apidologie 38:77 (abstract read).
 * Cost: no computing here. Unknowns: a record without a value or predictor is left out before.
 */

/** The part of a pedigree that the solver reads; `Pedigree` fits. */
export interface Descent {
  readonly size: number;
  readonly parentStart: Int32Array;
  readonly parent: Int32Array;
  readonly coefficient: Float64Array;
  readonly mendelian: Float64Array;
}

/** G0: variances of the first and second effect and their covariance; positive semi-definite. */
export interface EffectCovariance {
  readonly first: number;
  readonly second: number;
  readonly both: number;
}

/** Rows of (node, coefficient on the first effect, coefficient on the second). */
export interface Predictors {
  /** Entries of predictor p stand at start[p] .. start[p + 1] - 1; start[0] is 0. */
  readonly start: Int32Array;
  readonly node: Int32Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
}

export interface MixedModel {
  readonly descent: Descent;
  readonly effects: EffectCovariance;
  readonly predictors: Predictors;
  /** Variance of the noise shared by the records of each level, >= 0. */
  readonly levelVariance: Float64Array;
  /** Number of fixed columns; they must be independent (hold one level of every further factor at zero). */
  readonly columns: number;
  /** Fixed factors a record has; its columns stand at r * factors and on; -1 is a level held at zero. */
  readonly factors: number;
  readonly column: Int32Array;
  readonly predictor: Int32Array;
  readonly level: Int32Array;
  readonly value: Float64Array;
  /** 1 / R_r, > 0. */
  readonly weight: Float64Array;
}

/**
 * Lower factor C of G0 = C C' as [c11, c21, c22]; `undefined` if G0 is not positive semi-definite. Rank one (a
 * correlation of -1 or 1, or a variance of 0) is allowed.
 */
export function effectFactor({
  first,
  second,
  both,
}: EffectCovariance): readonly [number, number, number] | undefined {
  const slack = 1e-12 * Math.max(first * second, both * both);
  if (!(first >= 0 && second >= 0 && first * second - both * both >= -slack)) return undefined;
  if (first === 0) return both === 0 ? [0, 0, Math.sqrt(second)] : undefined;
  const c21 = both / Math.sqrt(first);
  return [Math.sqrt(first), c21, Math.sqrt(Math.max(0, second - c21 * c21))];
}
