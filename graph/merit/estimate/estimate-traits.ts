/**
 * Variances of every trait from the keeper's own records, where there are enough of them.
 *
 * Formulas and source: `reml.ts`; starts from the published (or assumed) variances scaled to the spread of the records.
 * Cost: seconds for a few hundred recorded queens; made for a worker, with progress and a way to stop.
 * Unknowns: a trait with too few records is refused with a sentence and keeps its published variances.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import { collectRecords } from '../collect-records.ts';
import type { TraitObservation } from '../observations.ts';
import { refusal } from '../refusal.ts';
import type { ColonyVariances } from '../solve/colony-model.ts';
import { packRecords } from '../solve/pack-records.ts';
import { TRAITS } from '../traits/all-traits.ts';
import { defaultVariances, phenotypicVariance } from '../traits/default-variances.ts';
import type { Trait, TraitId } from '../traits/trait.ts';
import { type EstimateOptions, estimateVariances, type VarianceEstimate } from './reml.ts';

export interface TraitEstimates {
  readonly byTrait: ReadonlyMap<TraitId, VarianceEstimate>;
  /** The converged ones, as `evaluate` takes them. */
  readonly variances: Partial<Record<TraitId, ColonyVariances>>;
}

/** Variances of each trait from the records themselves; a trait with too few to go by is refused with a sentence. */
export function estimateTraits(
  pedigree: Pedigree,
  observations: readonly TraitObservation[],
  options: Partial<EstimateOptions> & { readonly traits?: readonly Trait[] } = {},
): TraitEstimates {
  const { traits = TRAITS, onProgress, ...settings } = options;
  const byTrait = new Map<TraitId, VarianceEstimate>();
  const variances: Partial<Record<TraitId, ColonyVariances>> = {};
  for (const [at, trait] of traits.entries()) {
    if (options.shouldStop?.()) break;
    const { records: rows } = collectRecords(trait, observations, { refuses: refusal(pedigree) });
    const { phenotypic } = phenotypicVariance(rows, trait.variances.phenotypic);
    const estimate = estimateVariances(
      pedigree,
      packRecords(pedigree, rows).records,
      defaultVariances(trait.variances, phenotypic),
      { ...settings, onProgress: (fraction) => onProgress?.((at + fraction) / traits.length) },
    );
    byTrait.set(trait.id, estimate);
    if (estimate.is === 'estimated' && estimate.converged) variances[trait.id] = estimate.variances;
    onProgress?.((at + 1) / traits.length);
  }
  return { byTrait, variances };
}
