/**
 * How reliable the breeding value (worker plus queen effect) of a queen is, given the records, fixed effects unknown.
 *
 *   reliability = 1 - PEV / (A[q][q] (w + q + 2 wq))
 *   by sweeps: with c = (1, 1) at her node and r = (D^(1/2) T' C'c, 0),   PEV = r' K^-1 r: one extra solve
 *   directly:  Var - PEV = k'P k with k the covariances of her value with the recorded colonies
 * The error of r' K^-1 r is of second order in the residual of the solve, so a residual of 1e-7 gives more digits
 * than are ever shown. Exact: no approximation by counting daughters.
 *
 * Source: Henderson 1984, Applications of Linear Models in Animal Breeding (from memory); `operator.ts` for K.
 * Cost: one solve a candidate by sweeps; m^2 a candidate directly, m recorded queens. Unknowns: a queen without
 * records has what her relatives tell; where all variance is 0 the reliability is 0.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import { type ColonyRecords, type ColonyVariances, colonyModel, recordedQueens } from './colony-model.ts';
import { explainedVariances } from './dense-colony.ts';
import { isDense, type MeritOptions, makeDense } from './merit.ts';
import { type MeritProblem, meritProblems } from './problems.ts';
import { explainedAtNode, makeSolver, type NotConverged } from './solve-model.ts';

const RELIABILITY_TOLERANCE = 1e-7;

export type ReliabilityResult =
  | {
      readonly is: 'solved';
      /** Aligned to the queens asked for; 0..1. */
      readonly reliability: Float64Array;
      /** Prediction error variance of the breeding value. */
      readonly predictionErrorVariance: Float64Array;
    }
  | NotConverged
  | { readonly is: 'refused'; readonly problems: readonly MeritProblem[] };

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
  if (!isDense(pedigree, recordedQueens(pedigree, records.queen), options)) {
    return reliabilitiesBySweeps(pedigree, records, variances, queens, options);
  }
  const { system } = options.dense ?? makeDense(pedigree, records, variances, options);
  const { worker, queen, covariance } = variances;
  const prior = Float64Array.from(
    queens,
    (q) => pedigree.diagonal[pedigree.queenNode[q]!]! * (worker + queen + 2 * covariance),
  );
  return reliabilityFrom(prior, explainedVariances(pedigree, system, queens));
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
  const solver = makeSolver(colony.model);
  const { reliabilityTolerance: tolerance = RELIABILITY_TOLERANCE, onProgress, ...others } = options;
  const prior = new Float64Array(queens.length);
  const explained = new Float64Array(queens.length);
  for (let i = 0; i < queens.length; i++) {
    const found = explainedAtNode(solver, colony.kept[nodes[i]!]!, { ...others, tolerance });
    if (found.is !== 'solved') return found;
    prior[i] = found.variance;
    explained[i] = found.explained;
    onProgress?.((i + 1) / queens.length);
  }
  return reliabilityFrom(prior, explained);
}
