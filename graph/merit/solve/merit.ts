/**
 * Breeding values of all queens of a registry for one trait.
 *
 *   breeding value = u_w + u_q        worker and queen effect
 * Model: `colony-model.ts`. Small registries are solved directly (`dense-colony.ts`), large ones by sweeps and
 * conjugate gradients (`operator.ts`): the answers agree, a test holds them together.
 *
 * Sources: Bienefeld, Ehrhardt & Reinhardt 2007, Apidologie 38:77 (abstract read); Henderson 1984 (from memory).
 * Cost: O(iterations * (nodes + records)), tens of iterations.
 * Unknowns: queens without records have values through their relatives; records without mating are refused.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import {
  type ColonyRecords,
  type ColonyVariances,
  colonyEffects,
  colonyModel,
  unitsOf,
} from './colony-model.ts';
import {
  conjugateGradients,
  SOLVE_DEFAULTS,
  type SolveOptions,
  type SolveOutcome,
} from './conjugate-gradients.ts';
import { type DenseSystem, denseEffects, denseGroups, denseSystem } from './dense-colony.ts';
import { effectsOf, levelsOf, makeOperator, multiply, type Operator, rightHandSide } from './operator.ts';
import { makePreconditioner, type Preconditioner, precondition } from './precondition.ts';
import { prepareModel } from './prepare-model.ts';
import { type MeritProblem, meritProblems } from './problems.ts';
import { pickColumns, type UnitColumns, unitColumns } from './unit-columns.ts';

export interface MeritOptions extends Partial<SolveOptions> {
  /** 'auto' solves directly up to `DENSE_UNITS` recorded queens and by sweeps beyond. */
  readonly method?: 'auto' | 'dense' | 'sweeps';
  /** Relationship columns shared by several traits (dense way only); must hold every recorded queen. */
  readonly columns?: UnitColumns;
  /** Relative residual for the solves of reliabilities. */
  readonly reliabilityTolerance?: number;
}

/** Recorded queens up to which the direct way is the faster one, and the numbers it may hold. */
export const DENSE_UNITS = 250;
const DENSE_NUMBERS = 4e6;

export type MeritResult =
  | {
      readonly is: 'solved';
      /** By queen, in the order of `Pedigree.queenIds`, in the unit of the trait. */
      readonly worker: Float64Array;
      readonly queen: Float64Array;
      readonly breedingValue: Float64Array;
      readonly permanent: Float64Array;
      /** Estimated mean of each comparison group. */
      readonly groups: Float64Array;
      readonly method: 'dense' | 'sweeps';
      /** 0 for the direct way. */
      readonly iterations: number;
      readonly residual: number;
    }
  | {
      readonly is: 'not-converged';
      readonly iterations: number;
      readonly residual: number;
      readonly stopped: boolean;
    }
  | { readonly is: 'refused'; readonly problems: readonly MeritProblem[] };

/** Breeding values of every queen of the pedigree from one trait's records. */
export function solveMerit(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  options: MeritOptions = {},
): MeritResult {
  const problems = meritProblems(pedigree, records, variances);
  if (problems.length > 0) return { is: 'refused', problems };
  const units = unitsOf(pedigree, records.queen);
  if (isDense(pedigree, units.unitQueen.length, options)) {
    const { system, unitOf } = makeDense(pedigree, records, variances, options, units);
    const { worker, queen, permanent } = denseEffects(pedigree, system);
    const groups = denseGroups(system, records, unitOf);
    const breedingValue = worker.map((value, q) => value + queen[q]!);
    return {
      is: 'solved',
      worker,
      queen,
      breedingValue,
      permanent,
      groups,
      method: 'dense',
      iterations: 0,
      residual: 0,
    };
  }
  return solveBySweeps(pedigree, records, variances, options);
}

/** Whether the direct way serves so many recorded queens. */
export function isDense(pedigree: Pedigree, units: number, { method = 'auto' }: MeritOptions): boolean {
  if (method !== 'auto') return method === 'dense';
  return units <= DENSE_UNITS && units * pedigree.size <= DENSE_NUMBERS;
}

/** The direct system of these records. */
export function makeDense(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  options: MeritOptions,
  { unitQueen, unitOfQueen } = unitsOf(pedigree, records.queen),
): { system: DenseSystem; unitOf: Int32Array } {
  const columns = options.columns
    ? pickColumns(options.columns, unitQueen)
    : unitColumns(pedigree, unitQueen);
  const unitOf = records.queen.map((q) => unitOfQueen[q]!);
  return { system: denseSystem(pedigree, columns, records, unitOf, variances), unitOf };
}

function solveBySweeps(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  options: MeritOptions,
): MeritResult {
  const colony = colonyModel(pedigree, records, variances);
  const operator = makeOperator(prepareModel(colony.model));
  const x = new Float64Array(operator.unknowns);
  const outcome = solveOne(operator, makePreconditioner(operator), rightHandSide(operator), x, options);
  if (!outcome.converged) return failed(outcome);
  const { worker, queen, permanent } = colonyEffects(
    pedigree,
    colony,
    variances,
    effectsOf(operator, x),
    levelsOf(operator, x),
  );
  const groups = operator.model.centre.map((mean, g) => mean + x[2 * operator.model.descent.size + g]!);
  const breedingValue = worker.map((value, q) => value + queen[q]!);
  const { iterations, residual } = outcome;
  return {
    is: 'solved',
    worker,
    queen,
    breedingValue,
    permanent,
    groups,
    method: 'sweeps',
    iterations,
    residual,
  };
}

/** A solve that did not arrive, as a result. */
export function failed({ iterations, residual, stopped }: SolveOutcome) {
  return { is: 'not-converged', iterations, residual, stopped } as const;
}

/** One preconditioned solve; `right` is overwritten. */
export function solveOne(
  operator: Operator,
  preconditioner: Preconditioner,
  right: Float64Array,
  x: Float64Array,
  options: Partial<SolveOptions>,
): SolveOutcome {
  return conjugateGradients(
    (v, out) => multiply(operator, v, out),
    (v, out) => precondition(preconditioner, v, out),
    right,
    x,
    { ...SOLVE_DEFAULTS, ...options },
  );
}
