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
  type ColonyEffects,
  type ColonyRecords,
  type ColonyVariances,
  colonyEffects,
  colonyModel,
  recordedQueens,
  unitsOf,
} from './colony-model.ts';
import type { SolveOptions } from './conjugate-gradients.ts';
import { type DenseSystem, denseEffects, denseGroups, denseSystem } from './dense-colony.ts';
import { type MeritProblem, meritProblems } from './problems.ts';
import { makeSolver, type NotConverged, solveModel } from './solve-model.ts';
import { pickColumns, type UnitColumns, unitColumns } from './unit-columns.ts';

export interface MeritOptions extends Partial<SolveOptions> {
  /** 'auto' solves directly up to `DENSE_UNITS` recorded queens and by sweeps beyond. */
  readonly method?: 'auto' | 'dense' | 'sweeps';
  /** Relationship columns shared by several traits (dense way only); must hold every recorded queen. */
  readonly columns?: UnitColumns;
  /** A direct system made before of the same records and variances, shared by values and reliabilities. */
  readonly dense?: DenseWay;
  /** Relative residual for the solves of reliabilities. */
  readonly reliabilityTolerance?: number;
}

/** The direct system and the unit of each record in it. */
export interface DenseWay {
  readonly system: DenseSystem;
  readonly unitOf: Int32Array;
}

/** Recorded queens up to which the direct way is the faster one, and the numbers it may hold. */
export const DENSE_UNITS = 250;
export const DENSE_NUMBERS = 4e6;

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
  | NotConverged
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
  if (isDense(pedigree, recordedQueens(pedigree, records.queen), options)) {
    const { system, unitOf } = options.dense ?? makeDense(pedigree, records, variances, options);
    const groups = denseGroups(system, records, unitOf);
    const way = { method: 'dense', iterations: 0, residual: 0 } as const;
    return solvedMerit(denseEffects(pedigree, system), groups, way);
  }
  return solveBySweeps(pedigree, records, variances, options);
}

/** Whether the direct way serves so many recorded queens. */
export function isDense(
  pedigree: Pedigree,
  units: number,
  { method = 'auto', dense }: MeritOptions,
): boolean {
  if (dense) return true;
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
): DenseWay {
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
  const solved = solveModel(makeSolver(colony.model), options);
  if (solved.is !== 'solved') return solved;
  const { columns: groups, effects, levels, iterations, residual } = solved;
  const colonies = colonyEffects(pedigree, colony, variances, effects, levels);
  return solvedMerit(colonies, groups, { method: 'sweeps', iterations, residual });
}

function solvedMerit(
  { worker, queen, permanent }: ColonyEffects,
  groups: Float64Array,
  way: Pick<Extract<MeritResult, { is: 'solved' }>, 'method' | 'iterations' | 'residual'>,
): MeritResult {
  const breedingValue = worker.map((value, q) => value + queen[q]!);
  return { is: 'solved', worker, queen, breedingValue, permanent, groups, ...way };
}
