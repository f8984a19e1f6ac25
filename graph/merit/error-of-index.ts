/**
 * How well the index of any mixture of genes is known: of a daughter to come, half her dam's and half those of the
 * drones that her dam met.
 *
 *   error variance of c'I = sum over traits  weight_t^2 e_t(c) / sigma_t^2     e_t(c): error variance of c'u of the trait
 *   a trait without a solution leaves all of its variance open:  e_t(c) / sigma_t^2 = c'A c
 *
 * c: weights on structural nodes. The traits are taken as genetically uncorrelated, as in `index-of-traits.ts`.
 * Source: `solve/error-covariance.ts`. Cost: one system a trait when it is made, then m^2 a trait for each question
 * (m recorded queens), one solve a trait in large registries. Unknowns: a solve that does not converge counts as a
 * trait without a solution, so that the error is never told smaller than it is.
 */
import type { Pedigree } from '../kinship/pedigree.ts';
import { collectRecords, inOrder } from './collect-records.ts';
import { type EvaluationInput, variancesOf } from './evaluate.ts';
import type { TraitWeights } from './index-of-traits.ts';
import { refusal } from './refusal.ts';
import { unitsOf } from './solve/colony-model.ts';
import { type Combination, errorCovariance, priorCovariance } from './solve/error-covariance.ts';
import { isDense, type MeritOptions, makeDense } from './solve/merit.ts';
import { packRecords } from './solve/pack-records.ts';
import { TRAITS } from './traits/all-traits.ts';
import type { Trait } from './traits/trait.ts';

/** What values are known from. */
export interface KnownMerit extends Pick<EvaluationInput, 'observations' | 'variances'> {
  readonly pedigree: Pedigree;
  /** In the unit of the index that is asked about. */
  readonly weights: TraitWeights;
}

/** Covariance of an index of one trait, in its own spread: A itself. */
const ONE = { worker: 1, queen: 0, covariance: 0, permanent: 0, residual: 1 };

/** Error variance of the index of weighted nodes, as a function of them. */
export function errorOfIndex(
  input: KnownMerit,
): (nodes: ArrayLike<number>, weights: ArrayLike<number>) => number {
  const { pedigree, weights: traitWeights } = input;
  const observations = inOrder(input.observations);
  const asked = TRAITS.flatMap((trait) => {
    const weight = traitWeights[trait.id] ?? 0;
    return weight === 0 ? [] : [{ weight, error: traitError(input, trait, observations) }];
  });
  return (nodes, weights) => {
    const combination = { nodes, weights };
    const open = priorCovariance(pedigree, ONE, [combination])[0] ?? 0;
    return asked.reduce((sum, { weight, error }) => sum + weight ** 2 * (error?.(combination) ?? open), 0);
  };
}

/** Error variance of the trait in its own spread; absent where the trait has no records. */
function traitError(
  { pedigree, variances: own }: KnownMerit,
  trait: Trait,
  observations: KnownMerit['observations'],
): ((combination: Combination) => number | undefined) | undefined {
  const collected = collectRecords(trait, observations, { refuses: refusal(pedigree) });
  if (collected.records.length === 0) return undefined;
  const { variances } = variancesOf(trait, collected, own?.[trait.id]);
  const spread = variances.worker + variances.queen + 2 * variances.covariance;
  if (!(spread > 0)) return undefined;
  const { records } = packRecords(pedigree, collected.records);
  const units = unitsOf(pedigree, records.queen);
  const way: MeritOptions = isDense(pedigree, units.unitQueen.length, {})
    ? { dense: makeDense(pedigree, records, variances, {}, units) }
    : {};
  return (combination) => {
    const found = errorCovariance(pedigree, records, variances, [combination], way);
    return found.is === 'solved' ? Math.max(0, found.covariance[0]!) / spread : undefined;
  };
}
