/**
 * Breeding values and reliabilities of a small registry by direct algebra on its recorded colonies.
 *
 *   s = predictors of the m units, Var(s) = S = G + permanent I = L L';  records with groups absorbed: M, g
 *   B = I + L'M L,   P = M - M L B^-1 L'M,   a = g - M L B^-1 L'g        then for any queen x with k = Cov(u(x), s):
 *   u(x) = k'a,   Var(u(x)) - PEV(x) = k'P k,   reliability = k'P k / Var(u(x))
 * The answers are those of the sweeps in `operator.ts`; a property test compares the two.
 *
 * Source: Henderson 1984, Applications of Linear Models in Animal Breeding (from memory); Woodbury's identity.
 * Cost: some m^3 once, m^2 a candidate: for up to a few hundred units. Unknowns: as in `colony-model.ts`.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import {
  choleskyInPlace,
  lowerSolveInPlace,
  product,
  semiDefiniteInPlace,
  times,
  transposeTimes,
  upperSolveInPlace,
} from '../dense.ts';
import { type AbsorbedRecords, absorbRecords } from './absorbed-records.ts';
import type { ColonyEffects, ColonyRecords, ColonyVariances } from './colony-model.ts';
import { type UnitColumns, unitCovariance, unitKernels } from './unit-columns.ts';

export interface DenseSystem {
  readonly columns: UnitColumns;
  readonly variances: ColonyVariances;
  readonly absorbed: AbsorbedRecords;
  /** Cholesky factor of S. */
  readonly root: Float64Array;
  /** M L. */
  readonly informationRoot: Float64Array;
  /** Cholesky factor of B. */
  readonly factor: Float64Array;
  /** a. */
  readonly weights: Float64Array;
}

/** The system of the units in `columns`; `unitOf` gives each record's place among them. */
export function denseSystem(
  pedigree: Pedigree,
  columns: UnitColumns,
  records: ColonyRecords,
  unitOf: Int32Array,
  variances: ColonyVariances,
): DenseSystem {
  const units = columns.unitQueen.length;
  const root = unitCovariance(unitKernels(pedigree, columns), variances);
  semiDefiniteInPlace(root, units);
  const absorbed = absorbRecords(records, unitOf, units, variances.residual);
  const informationRoot = product(absorbed.information, root, units);
  const factor = onePlusSquare(root, informationRoot, units);
  if (!choleskyInPlace(factor, units))
    throw new Error("I + L'M L is positive definite by its making; it was not");
  const back = transposeTimes(root, units, absorbed.right);
  lowerSolveInPlace(factor, units, back);
  upperSolveInPlace(factor, units, back);
  const taken = times(informationRoot, units, back);
  const weights = absorbed.right.map((value, i) => value - taken[i]!);
  return { columns, variances, absorbed, root, informationRoot, factor, weights };
}

/** I + L' (M L), lower triangle filled. */
export function onePlusSquare(root: Float64Array, informationRoot: Float64Array, n: number): Float64Array {
  const out = new Float64Array(n * n);
  for (let k = 0; k < n; k++) {
    for (let i = 0; i <= k; i++) {
      const value = root[k * n + i]!;
      if (value === 0) continue;
      for (let j = 0; j <= i; j++) out[i * n + j]! += value * informationRoot[k * n + j]!;
    }
  }
  for (let i = 0; i < n; i++) out[i * n + i]! += 1;
  return out;
}

/** Effects of every queen of the pedigree. */
export function denseEffects(pedigree: Pedigree, system: DenseSystem): ColonyEffects {
  const { columns, variances, weights } = system;
  const onWorkers = new Float64Array(columns.nodes);
  const onOwn = new Float64Array(columns.nodes);
  weights.forEach((weight, unit) => {
    const base = unit * columns.nodes;
    for (let x = 0; x < columns.nodes; x++) {
      onWorkers[x]! += weight * columns.workers[base + x]!;
      onOwn[x]! += weight * columns.own[base + x]!;
    }
  });
  const nodes = pedigree.queenNode;
  const permanent = new Float64Array(nodes.length);
  columns.unitQueen.forEach((q, unit) => {
    permanent[q] = variances.permanent * weights[unit]!;
  });
  return {
    worker: Float64Array.from(
      nodes,
      (x) => variances.worker * onWorkers[x]! + variances.covariance * onOwn[x]!,
    ),
    queen: Float64Array.from(
      nodes,
      (x) => variances.covariance * onWorkers[x]! + variances.queen * onOwn[x]!,
    ),
    permanent,
  };
}

/** Estimated group means, in the unit of the trait; `unitOf` as given to `denseSystem`. */
export function denseGroups(system: DenseSystem, records: ColonyRecords, unitOf: Int32Array): Float64Array {
  const { absorbed, root, weights } = system;
  const { units, groupWeight, groupMean, weight } = absorbed;
  const across = transposeTimes(root, units, weights);
  const groups = groupMean.slice();
  for (let r = 0; r < unitOf.length; r++) {
    const row = unitOf[r]! * units;
    let fitted = 0;
    for (let k = 0; k <= unitOf[r]!; k++) fitted += root[row + k]! * across[k]!;
    groups[records.group[r]!]! -= (weight[r]! / groupWeight[records.group[r]!]!) * fitted;
  }
  return groups;
}

/** Variance of the breeding value u_w + u_q that the records explain (Var - PEV) of each queen: k'P k. */
export function explainedVariances(
  pedigree: Pedigree,
  system: DenseSystem,
  queens: Int32Array,
): Float64Array {
  const { columns, variances } = system;
  const units = columns.unitQueen.length;
  const projection = unitProjection(system);
  const byWorkers = variances.worker + variances.covariance;
  const byOwn = variances.covariance + variances.queen;
  const k = new Float64Array(units);
  return Float64Array.from(queens, (queen) => {
    let at = pedigree.queenNode[queen]!;
    for (let i = 0; i < units; i++, at += columns.nodes) {
      k[i] = byWorkers * columns.workers[at]! + byOwn * columns.own[at]!;
    }
    return quadratic(projection, k);
  });
}

/** k'P k from the lower triangle of P. */
function quadratic(projection: Float64Array, k: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < k.length; i++) {
    let row = 0;
    const at = i * k.length;
    for (let j = 0; j < i; j++) row += projection[at + j]! * k[j]!;
    sum += k[i]! * (2 * row + projection[at + i]! * k[i]!);
  }
  return sum;
}

/** Lower triangle of P = M - M L B^-1 L'M. */
export function unitProjection({ absorbed, informationRoot, factor }: DenseSystem): Float64Array {
  const n = absorbed.units;
  const half = informationRoot.slice();
  for (let i = 0; i < n; i++) lowerSolveInPlace(factor, n, half.subarray(i * n, (i + 1) * n));
  const out = absorbed.information.slice();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let l = 0, a = i * n, b = j * n; l < n; l++, a++, b++) sum += half[a]! * half[b]!;
      out[i * n + j]! -= sum;
    }
  }
  return out;
}
