/**
 * Breeding values of all queens of a registry for one trait, and how reliable they are.
 *
 *   breeding value = u_w + u_q                  reliability = 1 - PEV / (A[q][q] (w + q + 2 wq))
 * Model: `colony-model.ts`. Small registries are solved directly (`dense-colony.ts`), large ones by sweeps and
 * conjugate gradients (`operator.ts`): the answers agree, a test holds them together.
 *
 * PEV of a candidate x by sweeps: with c = (1, 1) at her node, PEV = r' K^-1 r for r = (C' c through D^(1/2) T', 0): one
 * extra solve. Its error is of second order in the residual, so a residual of 1e-6 gives more digits than are shown.
 *
 * Sources: Bienefeld, Ehrhardt & Reinhardt 2007, Apidologie 38:77 (abstract read); Henderson 1984 (from memory).
 * Cost: O(iterations * (nodes + records)), tens of iterations; the same again for each candidate's reliability.
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
import {
  type DenseSystem,
  denseEffects,
  denseGroups,
  denseSystem,
  explainedVariance,
} from './dense-colony.ts';
import { effectsOf, levelsOf, makeOperator, multiply, type Operator, rightHandSide } from './operator.ts';
import { makePreconditioner, type Preconditioner, precondition } from './precondition.ts';
import { prepareModel } from './prepare-model.ts';
import { type MeritProblem, meritProblems } from './problems.ts';
import { gatherUp } from './two-sweeps.ts';
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
const RELIABILITY_TOLERANCE = 1e-6;

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

export type ReliabilityResult =
  | {
      readonly is: 'solved';
      /** Aligned to the queens asked for; 0..1. */
      readonly reliability: Float64Array;
      /** Prediction error variance of the breeding value. */
      readonly predictionErrorVariance: Float64Array;
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

function isDense(pedigree: Pedigree, units: number, { method = 'auto' }: MeritOptions): boolean {
  if (method !== 'auto') return method === 'dense';
  return units <= DENSE_UNITS && units * pedigree.size <= DENSE_NUMBERS;
}

function makeDense(
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

function failed({ iterations, residual, stopped }: SolveOutcome) {
  return { is: 'not-converged', iterations, residual, stopped } as const;
}

function solveOne(
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

/** Exact reliability of the breeding values (worker plus queen effect) of some queens, fixed effects unknown. */
export function reliabilities(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  queens: Int32Array,
  options: MeritOptions = {},
): ReliabilityResult {
  const problems = meritProblems(pedigree, records, variances);
  if (problems.length > 0) return { is: 'refused', problems };
  const units = unitsOf(pedigree, records.queen);
  if (!isDense(pedigree, units.unitQueen.length, options)) {
    return reliabilitiesBySweeps(pedigree, records, variances, queens, options);
  }
  const { system } = makeDense(pedigree, records, variances, options, units);
  const { worker, queen, covariance } = variances;
  const prior = Float64Array.from(
    queens,
    (q) => pedigree.diagonal[pedigree.queenNode[q]!]! * (worker + queen + 2 * covariance),
  );
  const explained = Float64Array.from(queens, (q) => explainedVariance(pedigree, system, q));
  return reliabilityFrom(prior, explained);
}

function reliabilityFrom(prior: Float64Array, explained: Float64Array): ReliabilityResult {
  return {
    is: 'solved',
    reliability: explained.map((value, i) =>
      prior[i]! > 0 ? Math.min(1, Math.max(0, value / prior[i]!)) : 0,
    ),
    predictionErrorVariance: explained.map((value, i) => Math.max(0, prior[i]! - value)),
  };
}

function reliabilitiesBySweeps(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  queens: Int32Array,
  options: MeritOptions,
): ReliabilityResult {
  const nodes = queens.map((q) => pedigree.queenNode[q]!);
  const colony = colonyModel(pedigree, records, variances, nodes);
  const operator = makeOperator(prepareModel(colony.model));
  const preconditioner = makePreconditioner(operator);
  const tolerance = options.reliabilityTolerance ?? RELIABILITY_TOLERANCE;
  const prior = new Float64Array(queens.length);
  const explained = new Float64Array(queens.length);
  for (let i = 0; i < queens.length; i++) {
    const right = contrast(operator, colony.kept[nodes[i]!]!);
    const kept = right.slice();
    const x = new Float64Array(operator.unknowns);
    const outcome = solveOne(operator, preconditioner, right, x, {
      ...options,
      tolerance,
      onProgress: () => {},
    });
    if (!outcome.converged) return failed(outcome);
    options.onProgress?.((i + 1) / queens.length);
    for (let j = 0; j < x.length; j++) {
      prior[i]! += kept[j]! * kept[j]!;
      explained[i]! += kept[j]! * (kept[j]! - x[j]!);
    }
  }
  return reliabilityFrom(prior, explained);
}

/** The breeding value of one node as a row on the unknowns: D^(1/2) T' (C' (1, 1)) and zeros for the columns. */
function contrast({ model, root, factor, up, unknowns }: Operator, node: number): Float64Array {
  const row = new Float64Array(unknowns);
  up.fill(0);
  up[2 * node] = factor[0] + factor[1];
  up[2 * node + 1] = factor[2];
  gatherUp(model.descent, root, up, row);
  return row;
}
