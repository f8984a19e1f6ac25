import type { VarianceEstimate } from '../../graph/merit/estimate/reml.ts';
import type { TraitEvaluation } from '../../graph/merit/evaluate.ts';
import type { ColonyVariances } from '../../graph/merit/solve/colony-model.ts';
import { defaultVariances, phenotypicVariance } from '../../graph/merit/traits/default-variances.ts';
import type { Trait } from '../../graph/merit/traits/trait.ts';
import type { OwnVariances } from '../../src/store/settings.ts';
import { count } from '../parts/words.ts';

/** Variances from the keeper's own records beside the published ones. */

export type Component = keyof ColonyVariances;

export const COMPONENT_WORDS: Readonly<Record<Component, string>> = {
  worker: 'workers',
  queen: 'queens',
  covariance: 'between the two',
  permanent: 'lasting, of the colony',
  residual: 'the rest',
};

export interface VarianceRow {
  readonly component: Component;
  readonly published: string;
  readonly own: string;
}

/** The published (or assumed) shares, scaled to the spread of the records as the evaluation does. */
export function publishedVariances(
  trait: Trait,
  { records }: Pick<TraitEvaluation, 'records'>,
): ColonyVariances {
  return defaultVariances(
    trait.variances,
    phenotypicVariance(records, trait.variances.phenotypic).phenotypic,
  );
}

/** Part of all variance below which a component lies at the edge of what is possible, and is 0. */
const NOTHING = 1e-6;

/** Component by component: "0.064" beside "0.080 ± 0.03". */
export function varianceRows(
  published: ColonyVariances,
  { variances, standardErrors }: Extract<VarianceEstimate, { is: 'estimated' }>,
): readonly VarianceRow[] {
  const whole = variances.worker + variances.queen + variances.permanent + variances.residual;
  return (Object.keys(COMPONENT_WORDS) as Component[]).map((component) => {
    const error = standardErrors[component];
    const own = Math.abs(variances[component]) < NOTHING * whole ? '0' : figure(variances[component]);
    return {
      component,
      published: figure(published[component]),
      own: error === undefined ? own : `${own} ± ${figure(error)}`,
    };
  });
}

type Refused = Extract<VarianceEstimate, { is: 'refused' }>;

/** What it would take, said once for all the traits with too few records; undefined where there is none. */
export function neededWords(estimates: readonly VarianceEstimate[]): string | undefined {
  const few = estimates.find((each) => each.is === 'refused' && each.tooFew !== undefined);
  if (few?.is !== 'refused' || !few.tooFew) return undefined;
  const { leastRecords, leastQueens } = few.tooFew;
  return (
    `Too few records to tell: of at least ${leastQueens} queens, ${leastRecords} records more than there are ` +
    'comparison groups are needed. The published or assumed variances stay.'
  );
}

/** "73 records of 41 queens in 11 groups"; any other reason in its own sentence. */
export function refusedWords({ sentence, tooFew }: Refused): string {
  if (!tooFew) return sentence;
  const { records, queens, groups } = tooFew;
  return `${count(records, 'record')} of ${count(queens, 'queen')} in ${count(groups, 'group')}`;
}

/** What is kept when the keeper says to use them. */
export function keptVariances(variances: ColonyVariances, on: string): OwnVariances {
  const { worker, queen, covariance, permanent, residual } = variances;
  return { worker, queen, covariance, permanent, residual, on };
}

/** How far the records disagree with the published variances, in a sentence. */
export function disagreementWords({
  logLikelihood,
  logLikelihoodAtStart,
  estimated,
  converged,
}: Extract<VarianceEstimate, { is: 'estimated' }>): string {
  if (!converged) return 'The search did not settle, so these are not offered for use.';
  const twice = 2 * (logLikelihood - logLikelihoodAtStart);
  const parts =
    estimated === 'all'
      ? 'All five parts are estimated.'
      : 'The proportions of the inherited parts are held as published; how large they are is estimated.';
  const weight =
    twice < AGREES[estimated]
      ? 'The records fit the published or assumed ones about as well.'
      : 'The records fit these clearly better than the published or assumed ones.';
  return `${parts} ${weight}`;
}

/**
 * Twice the difference of log-likelihoods below which two sets fit about alike: the 5 % point of chi-square on as many
 * degrees of freedom as parts are estimated, three or five (any table of it).
 */
const AGREES = { ratio: 7.81, all: 11.07 } as const;

/** Two figures that count, with a true minus sign. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(2))).replace('-', '−');
}
