/**
 * One figure out of many traits, by the keeper's own weights, with its reasons and its doubt.
 *
 *   I_q = sum over traits  weight_t * direction_t * EBV_qt / sigma_t        direction +1 higher is better, -1 lower
 *   sigma_t = sqrt(w + q + 2 wq) of the trait: what a point of each trait is worth is a point of its own spread
 *   error variance = sum weight_t^2 PEV_qt / sigma_t^2;   reliability = 1 - error variance / (A[q][q] sum weight_t^2)
 * The traits are taken as genetically uncorrelated, since each is evaluated by itself; the doubt is told under that.
 *
 * Source: Hazel 1943, Genetics 28:476 (selection index; from memory), with the keeper's weights on standardised values.
 * Cost: O(queens * traits). Unknowns: a trait without a solution adds nothing to the index and its whole variance to
 * the doubt.
 */
import type { TraitId } from './traits/trait.ts';

export interface IndexTrait {
  readonly trait: TraitId;
  readonly better: 'higher' | 'lower';
  /** Genetic standard deviation of a breeding value, in the trait's unit. */
  readonly sigma: number;
  /** Breeding values, aligned to the candidates; absent where the trait could not be evaluated. */
  readonly breedingValue?: Float64Array;
  /** Reliabilities, 0..1, aligned to the candidates. */
  readonly reliability?: Float64Array;
}

export type TraitWeights = Partial<Record<TraitId, number>>;

export interface Contribution {
  readonly trait: TraitId;
  /** Part of the index that comes of this trait. */
  readonly points: number;
  /** Better than average (positive) or worse, in genetic standard deviations, before the weight. */
  readonly standardised: number;
  readonly reliability: number;
}

export interface IndexValue {
  readonly index: number;
  /** Standard error of the index. */
  readonly standardError: number;
  readonly reliability: number;
  /** Largest part first (by size; ties in trait order). Traits of weight 0 are left out. */
  readonly contributions: readonly Contribution[];
}

/** Index of each candidate; `diagonal` is A[q][q] = 1 + F of each. Negative weights turn a trait round. */
export function weightedIndex(
  traits: readonly IndexTrait[],
  weights: TraitWeights,
  diagonal: Float64Array,
): readonly IndexValue[] {
  const weighed = traits.filter(({ trait }) => (weights[trait] ?? 0) !== 0);
  return Array.from(diagonal, (relationship, q) => {
    const contributions = weighed
      .map((trait) => contribution(trait, weights[trait.trait]!, q))
      .sort((a, b) => Math.abs(b.points) - Math.abs(a.points));
    let errorVariance = 0;
    let variance = 0;
    for (const { trait, reliability } of contributions) {
      variance += weights[trait]! ** 2 * relationship;
      errorVariance += weights[trait]! ** 2 * relationship * (1 - reliability);
    }
    return {
      index: contributions.reduce((sum, { points }) => sum + points, 0),
      standardError: Math.sqrt(errorVariance),
      reliability: variance > 0 ? 1 - errorVariance / variance : 0,
      contributions,
    };
  });
}

function contribution(trait: IndexTrait, weight: number, q: number): Contribution {
  const direction = trait.better === 'higher' ? 1 : -1;
  const value = trait.breedingValue?.[q];
  const standardised = value === undefined || trait.sigma === 0 ? 0 : (direction * value) / trait.sigma;
  return {
    trait: trait.trait,
    points: weight * standardised,
    standardised,
    reliability: trait.reliability?.[q] ?? 0,
  };
}
