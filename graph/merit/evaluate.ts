/**
 * The whole evaluation of a registry in one call: records of every trait, breeding values, reliabilities of the queens
 * asked for, their weighted index, lines over winters, and everything that was set aside.
 *
 * Formulas and sources: `collect-records.ts`, `solve/merit.ts`, `solve/reliability.ts`, `index-of-traits.ts`,
 * `survival/line-scores.ts`.
 * Cost: for a small registry some m^3 a trait (m recorded queens), milliseconds for 80 queens; for a large one tens of
 * sweeps a trait and as many again for each queen whose reliability is asked for.
 * Unknowns: a trait without comparable records has no values and says so; it adds nothing to the index but its doubt.
 */
import type { Pedigree } from '../kinship/pedigree.ts';
import { type CollectedRecords, collectRecords, inOrder } from './collect-records.ts';
import { type IndexTrait, type IndexValue, type TraitWeights, weightedIndex } from './index-of-traits.ts';
import type { TraitObservation } from './observations.ts';
import { refusal } from './refusal.ts';
import type { ColonyVariances } from './solve/colony-model.ts';
import { type Combination, errorCovariance } from './solve/error-covariance.ts';
import {
  DENSE_NUMBERS,
  DENSE_UNITS,
  isDense,
  type MeritOptions,
  makeDense,
  solveMerit,
} from './solve/merit.ts';
import { packRecords } from './solve/pack-records.ts';
import { reliabilities } from './solve/reliability.ts';
import { type UnitColumns, unitColumns } from './solve/unit-columns.ts';
import { type LineScore, lineScores } from './survival/line-scores.ts';
import type { SetAside } from './trait-record.ts';
import { TRAITS } from './traits/all-traits.ts';
import { defaultVariances, phenotypicVariance } from './traits/default-variances.ts';
import type { Trait, TraitId } from './traits/trait.ts';

export interface EvaluationInput {
  readonly pedigree: Pedigree;
  readonly observations: readonly TraitObservation[];
  /** Queens whose reliability and index are wanted, by id; those not in the pedigree are left out of the answer. */
  readonly queens: readonly string[];
  readonly weights: TraitWeights;
  /** Line of a queen, for the line scores; `undefined` where unknown. */
  readonly lineOf?: (queen: string) => string | undefined;
  /**
   * Queens to be told apart, by id: how far their errors go together is worked out as well. Left out beyond
   * `MOST_TOLD_APART`.
   */
  readonly candidates?: readonly string[];
  /** Variances to use instead of the published ones (from `estimateVariances`, or the keeper's own). */
  readonly variances?: Partial<Record<TraitId, ColonyVariances>>;
  readonly traits?: readonly Trait[];
}

/** Candidates up to which errors are compared pair by pair: more are no longer looked at one by one. */
const MOST_TOLD_APART = 80;

export interface EvaluationOptions {
  readonly tolerance?: number;
  readonly onProgress?: (fraction: number) => void;
  /** True ends the evaluation; the answer is then `{ is: 'stopped' }`. */
  readonly shouldStop?: () => boolean;
}

export type TraitWarning =
  /** No record left to compare: the trait has no values. */
  | 'no-records'
  /** Every comparison group is small: a ranking would be mostly luck. */
  | 'only-small-groups'
  | 'some-small-groups'
  /** Some records rest on fewer evaluations than the protocol asks for. */
  | 'below-protocol'
  /** The variances are assumed, not published. */
  | 'assumed-variances'
  | 'not-converged';

export interface TraitEvaluation extends CollectedRecords {
  readonly trait: TraitId;
  readonly unit: string;
  readonly better: 'higher' | 'lower';
  readonly warnings: readonly TraitWarning[];
  readonly variances: ColonyVariances;
  /** Own: given by the caller. Scaled: published shares of the spread in the keeper's own records. */
  readonly variancesFrom: 'own' | 'published-scaled' | 'published';
  readonly source: string;
  /** Genetic standard deviation of a breeding value, in the trait's unit. */
  readonly sigma: number;
  /** By queen of the evaluation; absent without a solution. */
  readonly breedingValue?: Float64Array;
  readonly workerEffect?: Float64Array;
  readonly queenEffect?: Float64Array;
  readonly reliability?: Float64Array;
  /** Prediction error covariance of the breeding values of the candidates, row by row, in the squared unit. */
  readonly errorCovariance?: Float64Array;
  /** Estimated mean of each comparison group, by name. */
  readonly groupMeans?: ReadonlyMap<string, number>;
}

export type Evaluation =
  | { readonly is: 'stopped' }
  | {
      readonly is: 'done';
      /** The queens asked for that are in the pedigree; all arrays are aligned to it. */
      readonly queens: readonly string[];
      readonly traits: readonly TraitEvaluation[];
      readonly index: readonly IndexValue[];
      /** Empty without `lineOf`. */
      readonly lines: readonly LineScore[];
    };

/** Evaluates all traits. */
export function evaluate(input: EvaluationInput, options: EvaluationOptions = {}): Evaluation {
  const { pedigree, lineOf } = input;
  const traits = input.traits ?? TRAITS;
  const queens = input.queens.filter((id) => pedigree.queenIndex.has(id));
  const asked = Int32Array.from(queens, (id) => pedigree.queenIndex.get(id)!);
  const apart = toldApart(pedigree, input.candidates ?? []);
  const refuses = refusal(pedigree);
  const observations = inOrder(input.observations);
  const collected = traits.map((trait) => collectRecords(trait, observations, { refuses }));
  const columns = sharedColumns(pedigree, collected);
  const evaluated: TraitEvaluation[] = [];
  for (const [at, trait] of traits.entries()) {
    if (options.shouldStop?.()) return { is: 'stopped' };
    const part = (fraction: number) => options.onProgress?.((at + fraction) / traits.length);
    const given = input.variances?.[trait.id];
    const result = evaluateTrait(
      pedigree,
      trait,
      collected[at]!,
      given,
      { asked, apart },
      {
        ...(columns ? { columns } : {}),
        ...(options.tolerance === undefined ? {} : { tolerance: options.tolerance }),
        ...(options.shouldStop ? { shouldStop: options.shouldStop } : {}),
        onProgress: part,
      },
    );
    if (result === 'stopped') return { is: 'stopped' };
    evaluated.push(result);
    part(1);
  }
  const winters = collected[traits.findIndex(({ id }) => id === 'winter-survival')]?.records ?? [];
  const lines = lineOf ? lineScores(winters, lineOf) : [];
  return {
    is: 'done',
    queens,
    traits: evaluated,
    index: indexOf(pedigree, evaluated, input.weights, asked),
    lines,
  };
}

/** The index anew with other weights: what moves when the keeper moves a weight. */
export function reweigh(
  pedigree: Pedigree,
  evaluation: Extract<Evaluation, { is: 'done' }>,
  weights: TraitWeights,
): readonly IndexValue[] {
  const asked = Int32Array.from(evaluation.queens, (id) => pedigree.queenIndex.get(id)!);
  return indexOf(pedigree, evaluation.traits, weights, asked);
}

function indexOf(
  pedigree: Pedigree,
  traits: readonly IndexTrait[],
  weights: TraitWeights,
  asked: Int32Array,
) {
  const diagonal = Float64Array.from(asked, (q) => pedigree.diagonal[pedigree.queenNode[q]!]!);
  return weightedIndex(traits, weights, diagonal);
}

/** Relationship columns of all recorded queens, made once for all traits where the registry is small enough. */
function sharedColumns(pedigree: Pedigree, collected: readonly CollectedRecords[]): UnitColumns | undefined {
  const recorded = new Set(collected.flatMap(({ records }) => records.map(({ queen }) => queen)));
  if (recorded.size > DENSE_UNITS || recorded.size * pedigree.size > DENSE_NUMBERS) return undefined;
  return unitColumns(pedigree, Int32Array.from(recorded, (id) => pedigree.queenIndex.get(id)!).sort());
}

function toldApart(pedigree: Pedigree, candidates: readonly string[]): readonly Combination[] {
  const known = candidates.flatMap((id) => pedigree.queenIndex.get(id) ?? []);
  if (known.length > MOST_TOLD_APART) return [];
  return known.map((q) => ({ nodes: [pedigree.queenNode[q]!], weights: [1] }));
}

/** The variances that a trait is evaluated with, and where they come from. */
export function variancesOf(trait: Trait, { records }: CollectedRecords, given: ColonyVariances | undefined) {
  if (given) return { variances: given, variancesFrom: 'own' as const };
  const { phenotypic, from } = phenotypicVariance(records, trait.variances.phenotypic);
  const variancesFrom = from === 'records' ? ('published-scaled' as const) : ('published' as const);
  return { variances: defaultVariances(trait.variances, phenotypic), variancesFrom };
}

function evaluateTrait(
  pedigree: Pedigree,
  trait: Trait,
  collected: CollectedRecords,
  given: ColonyVariances | undefined,
  { asked, apart }: { readonly asked: Int32Array; readonly apart: readonly Combination[] },
  options: MeritOptions,
): TraitEvaluation | 'stopped' {
  const { variances, variancesFrom } = variancesOf(trait, collected, given);
  const sigma = Math.sqrt(Math.max(0, variances.worker + variances.queen + 2 * variances.covariance));
  const warnings = warningsOf(trait, collected, variancesFrom);
  const { id, unit, better } = trait;
  const { source } = trait.variances;
  const base = { ...collected, trait: id, unit, better, variances, variancesFrom, source, sigma };
  if (collected.records.length === 0) return { ...base, warnings };
  const { records, groupNames } = packRecords(pedigree, collected.records);
  const recorded = new Set(records.queen).size;
  const dense = isDense(pedigree, recorded, options)
    ? makeDense(pedigree, records, variances, options)
    : undefined;
  const way = dense ? { ...options, dense } : options;
  const half = (from: number) => (fraction: number) => options.onProgress?.(from + fraction / 2);
  const solved = solveMerit(pedigree, records, variances, { ...way, onProgress: half(0) });
  if (solved.is === 'not-converged' && solved.stopped) return 'stopped';
  if (solved.is !== 'solved') return { ...base, warnings: [...warnings, 'not-converged'] };
  const known = reliabilities(pedigree, records, variances, asked, { ...way, onProgress: half(0.5) });
  if (known.is === 'not-converged' && known.stopped) return 'stopped';
  const errors = errorCovariance(pedigree, records, variances, apart, way);
  return {
    ...base,
    warnings: known.is === 'solved' ? warnings : [...warnings, 'not-converged'],
    breedingValue: pick(solved.breedingValue, asked),
    workerEffect: pick(solved.worker, asked),
    queenEffect: pick(solved.queen, asked),
    groupMeans: new Map(groupNames.map((name, g) => [name, solved.groups[g]!])),
    ...(known.is === 'solved' ? { reliability: known.reliability } : {}),
    ...(apart.length > 0 && errors.is === 'solved' ? { errorCovariance: errors.covariance } : {}),
  };
}

const pick = (values: Float64Array, queens: Int32Array) => Float64Array.from(queens, (q) => values[q]!);

function warningsOf(
  trait: Trait,
  { records, groups }: CollectedRecords,
  variancesFrom: TraitEvaluation['variancesFrom'],
): TraitWarning[] {
  const warnings: TraitWarning[] = [];
  if (records.length === 0) warnings.push('no-records');
  else if (groups.every(({ small }) => small)) warnings.push('only-small-groups');
  else if (groups.some(({ small }) => small)) warnings.push('some-small-groups');
  if (records.some(({ belowProtocol }) => belowProtocol)) warnings.push('below-protocol');
  if (variancesFrom !== 'own' && trait.variances.status === 'assumed') warnings.push('assumed-variances');
  return warnings;
}

/** Everything set aside, over all traits. */
export function allSetAside(evaluation: Extract<Evaluation, { is: 'done' }>): readonly SetAside[] {
  return evaluation.traits.flatMap(({ setAside }) => setAside);
}
