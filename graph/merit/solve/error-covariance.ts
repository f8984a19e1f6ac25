/**
 * How far the errors of breeding values (worker plus queen effect) go together, given the records, fixed effects
 * unknown. It says how surely one queen is better than another, and how well the mean of dam and drones is known.
 *
 *   error covariance of c_i'u and c_j'u  =  s c_i'A c_j - k_i'P k_j          s = w + q + 2 wq
 *   directly:   k = covariances of c'u with the recorded colonies, P as in `dense-colony.ts`
 *   by sweeps:  r = (D^(1/2) T' C'c, 0),  r_i' K^-1 r_j: one solve a combination
 *   variance of the error of a difference = E_ii + E_jj - 2 E_ij
 *
 * c: weights on structural nodes (a queen, her mates, drones on offer). Close kin share much of their error, so that
 * their difference is known better than their two standard errors suggest.
 *
 * Source: Henderson 1984, Applications of Linear Models in Animal Breeding (from memory); `operator.ts` for K.
 * Cost: for n combinations n products with A and m^2 n + n^2 m directly (m recorded queens), n solves by sweeps.
 * Unknowns: where nothing is recorded the error covariance is the whole covariance, s c_i'A c_j.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import { multiplyA } from '../../kinship/sweeps.ts';
import { type ColonyRecords, type ColonyVariances, colonyModel, unitsOf } from './colony-model.ts';
import { type DenseSystem, unitProjection } from './dense-colony.ts';
import { isDense, type MeritOptions, makeDense } from './merit.ts';
import { type MeritProblem, meritProblems } from './problems.ts';
import { errorOfCombination, makeSolver, type NotConverged } from './solve-model.ts';

/** A weighted sum of the breeding values of structural nodes. */
export interface Combination {
  readonly nodes: ArrayLike<number>;
  readonly weights: ArrayLike<number>;
}

export type ErrorCovariance =
  | {
      readonly is: 'solved';
      /** Row by row, symmetric, in the squared unit of the trait. */
      readonly covariance: Float64Array;
    }
  | NotConverged
  | { readonly is: 'refused'; readonly problems: readonly MeritProblem[] };

const SOLVE_TOLERANCE = 1e-6;

/** Prediction error covariance of each pair of combinations. */
export function errorCovariance(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  combinations: readonly Combination[],
  options: MeritOptions = {},
): ErrorCovariance {
  const problems = meritProblems(pedigree, records, variances);
  if (problems.length > 0) return { is: 'refused', problems };
  const units = unitsOf(pedigree, records.queen);
  if (!isDense(pedigree, units.unitQueen.length, options)) {
    return bySweeps(pedigree, records, variances, combinations, options);
  }
  const { system } = options.dense ?? makeDense(pedigree, records, variances, options, units);
  const covariance = priorCovariance(pedigree, variances, combinations);
  const explained = explainedBlock(system, combinations);
  return { is: 'solved', covariance: covariance.map((value, k) => value - explained[k]!) };
}

/** s c_i'A c_j: what is not known of the combinations before any record. */
export function priorCovariance(
  pedigree: Pedigree,
  { worker, queen, covariance }: ColonyVariances,
  combinations: readonly Combination[],
): Float64Array {
  const count = combinations.length;
  const spread = worker + queen + 2 * covariance;
  const block = new Float64Array(count * count);
  const column = new Float64Array(pedigree.size);
  combinations.forEach(({ nodes, weights }, i) => {
    column.fill(0);
    for (let k = 0; k < nodes.length; k++) column[nodes[k]!]! += spread * weights[k]!;
    multiplyA(pedigree, column, column);
    combinations.forEach((other, j) => {
      block[i * count + j] = read(column, other);
    });
  });
  return block;
}

function read(column: Float64Array, { nodes, weights }: Combination): number {
  let sum = 0;
  for (let k = 0; k < nodes.length; k++) sum += weights[k]! * column[nodes[k]!]!;
  return sum;
}

/** k_i'P k_j. */
function explainedBlock(system: DenseSystem, combinations: readonly Combination[]): Float64Array {
  const { columns, variances } = system;
  const units = columns.unitQueen.length;
  const count = combinations.length;
  const byWorkers = variances.worker + variances.covariance;
  const byOwn = variances.covariance + variances.queen;
  const lower = unitProjection(system);
  const known = combinations.map(({ nodes, weights }) => {
    const k = new Float64Array(units);
    for (let unit = 0; unit < units; unit++) {
      const base = unit * columns.nodes;
      for (let n = 0; n < nodes.length; n++) {
        const at = base + nodes[n]!;
        k[unit]! += weights[n]! * (byWorkers * columns.workers[at]! + byOwn * columns.own[at]!);
      }
    }
    return k;
  });
  const projected = known.map((k) => symmetricTimes(lower, k));
  return Float64Array.from({ length: count * count }, (_, at) => {
    const k = known[Math.floor(at / count)]!;
    const other = projected[at % count]!;
    return k.reduce((sum, value, unit) => sum + value * other[unit]!, 0);
  });
}

/** M v, from the lower triangle of M. */
function symmetricTimes(lower: Float64Array, v: Float64Array): Float64Array {
  const n = v.length;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const value = lower[i * n + j]!;
      out[i]! += value * v[j]!;
      if (j < i) out[j]! += value * v[i]!;
    }
  }
  return out;
}

function bySweeps(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  combinations: readonly Combination[],
  options: MeritOptions,
): ErrorCovariance {
  const { reliabilityTolerance: tolerance = SOLVE_TOLERANCE, onProgress: _, ...others } = options;
  const wanted = combinations.flatMap(({ nodes }) => Array.from(nodes));
  const { model, kept } = colonyModel(pedigree, records, variances, wanted);
  const solver = makeSolver(model);
  const count = combinations.length;
  const rows: Float64Array[] = [];
  const covariance = new Float64Array(count * count);
  for (const [i, { nodes, weights }] of combinations.entries()) {
    const inModel = { nodes: Array.from(nodes, (node) => kept[node]!), weights };
    const found = errorOfCombination(solver, inModel, { ...others, tolerance });
    if (found.is !== 'solved') return found;
    rows.push(found.row);
    rows.forEach((row, j) => {
      const value = row.reduce((sum, each, k) => sum + each * found.error[k]!, 0);
      covariance[i * count + j] = value;
      covariance[j * count + i] = value;
    });
  }
  return { is: 'solved', covariance };
}
