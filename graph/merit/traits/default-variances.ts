/**
 * The variances of a trait from its published (or assumed) shares, scaled to the keeper's own spread where that is
 * known.
 *
 *   worker = share_w P,  queen = share_q P,  covariance = r sqrt(worker queen),  permanent = share_p P
 *   residual = P (1 - 0.2917 share_w - share_q - r sqrt(share_w share_q) - share_p)       P phenotypic variance
 *   A of a worker group (12 unrelated mates) = (1 + 2/12)/4 = 0.2917, its covariance with the queen's own value 1/2
 *   P from the records: pooled squares inside comparison groups less the mean sampling variance
 *
 * Source: the model of `solve/colony-model.ts`; shares: each trait's own file. Cost: O(records).
 * Unknowns: with fewer than `FEWEST_DEGREES` comparisons the trait's assumed P stays.
 */
import { groupBy } from '../../grouping.ts';
import type { ColonyVariances } from '../solve/colony-model.ts';
import type { DefaultVariances } from './trait.ts';

/** Relationship of the worker group of a queen with 12 unrelated mates to itself. */
const WORKER_GROUP = (1 + 2 / 12) / 4;
/** Comparisons inside groups from which the keeper's own spread is taken (assumed). */
const FEWEST_DEGREES = 20;
/** The spread read from the records is believed between these multiples of the assumed one (assumed). */
const SCALE_RANGE = [0.25, 4] as const;

/** Variances in the squared unit of the trait: shares of a phenotypic variance, measured or assumed. */
export function defaultVariances(shares: DefaultVariances, phenotypic = shares.phenotypic): ColonyVariances {
  const covariance = shares.correlation * Math.sqrt(shares.worker * shares.queen);
  const residual = 1 - WORKER_GROUP * shares.worker - shares.queen - covariance - shares.permanent;
  return {
    worker: shares.worker * phenotypic,
    queen: shares.queen * phenotypic,
    covariance: covariance * phenotypic,
    permanent: shares.permanent * phenotypic,
    residual: residual * phenotypic,
  };
}

export interface Spread {
  readonly phenotypic: number;
  readonly from: 'records' | 'assumed';
}

/** Phenotypic variance inside comparison groups; the assumed one while the records are too few to tell. */
export function phenotypicVariance(
  records: readonly { readonly group: string; readonly value: number; readonly samplingVariance: number }[],
  assumed: number,
): Spread {
  const groups = groupBy(records, ({ group }) => group);
  const sampling = records.reduce((sum, { samplingVariance }) => sum + samplingVariance / records.length, 0);
  const degrees = records.length - groups.size;
  if (degrees < FEWEST_DEGREES) return { phenotypic: assumed, from: 'assumed' };
  let squares = 0;
  for (const members of groups.values()) {
    const mean = members.reduce((sum, { value }) => sum + value, 0) / members.length;
    for (const { value } of members) squares += (value - mean) ** 2;
  }
  const read = (squares / degrees - sampling) / assumed;
  return { phenotypic: assumed * Math.min(Math.max(read, SCALE_RANGE[0]), SCALE_RANGE[1]), from: 'records' };
}
