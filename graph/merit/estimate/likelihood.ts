/**
 * Restricted likelihood of the variances of one trait, its slope and its average information, over the recorded queens.
 *
 *   V = Z S Z' + R,  S = w Ww + wq (Wq + qW) + q Qq + p I over the m units,  R = diag(residual + sampling)
 *   log L = -1/2 (log|R| + log|X'R^-1 X| + log|B| + y'P y),   B = I + L'M L,  S = L L',  M = Z'Q Z,  Q groups absorbed
 *   slope_i = -1/2 (tr(P V_i) - y'P V_i P y),   information_ij = 1/2 y'P V_i P V_j P y,   V_i = dV/d(variance i)
 *   with a = Z'P y:  tr(P V_i) = tr(Z'P Z K_i),  y'P V_i P y = a'K_i a for the four kernels K_i of S;
 *   for the residual: tr(P) = tr Q - tr(C N),  N = Z'Q Q Z,  C = L B^-1 L'
 *
 * Sources: Patterson & Thompson 1971, Biometrika 58:545 (REML); Gilmour, Thompson & Cullis 1995, Biometrics 51:1440
 * (average information; both from memory). The reduction to units is ours, tested against the plain definition.
 * Cost: O(m^3 + sum of squared group sizes) a call. Unknowns: groups of one record cancel out.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import {
  choleskyInPlace,
  dot,
  lowerSolveInPlace,
  product,
  semiDefiniteInPlace,
  times,
  transposeTimes,
  upperSolveInPlace,
} from '../dense.ts';
import { type AbsorbedRecords, absorbRecords } from '../solve/absorbed-records.ts';
import type { ColonyRecords, ColonyVariances } from '../solve/colony-model.ts';
import { unitsOf } from '../solve/colony-model.ts';
import { onePlusSquare } from '../solve/dense-colony.ts';
import { type UnitKernels, unitColumns, unitCovariance, unitKernels } from '../solve/unit-columns.ts';

/** The variances in the order of the slope and the information. */
export const COMPONENTS = ['worker', 'covariance', 'queen', 'permanent', 'residual'] as const;

/** What does not change with the variances. */
export interface EstimationData {
  readonly records: ColonyRecords;
  readonly units: number;
  /** Unit of each record. */
  readonly unitOf: Int32Array;
  readonly kernels: UnitKernels;
}

/** Records of one trait by unit (recorded queen), and the kernels between the units. Cost O(units x nodes). */
export function estimationData(pedigree: Pedigree, records: ColonyRecords): EstimationData {
  const { unitQueen, unitOfQueen } = unitsOf(pedigree, records.queen);
  return {
    records,
    units: unitQueen.length,
    unitOf: records.queen.map((q) => unitOfQueen[q]!),
    kernels: unitKernels(pedigree, unitColumns(pedigree, unitQueen)),
  };
}

export interface Likelihood {
  /** Log of the restricted likelihood, less a constant that depends on nothing but the number of records. */
  readonly logLikelihood: number;
  /** By `COMPONENTS`. */
  readonly slope: Float64Array;
  /** By `COMPONENTS`, 5 x 5 row-major. */
  readonly information: Float64Array;
}

interface Factored {
  readonly absorbed: AbsorbedRecords;
  readonly root: Float64Array;
  readonly informationRoot: Float64Array;
  readonly factor: Float64Array;
}

function factorAt({ records, units, unitOf, kernels }: EstimationData, variances: ColonyVariances): Factored {
  const root = unitCovariance(kernels, variances);
  semiDefiniteInPlace(root, units);
  const absorbed = absorbRecords(records, unitOf, units, variances.residual);
  const informationRoot = product(absorbed.information, root, units);
  const factor = onePlusSquare(root, informationRoot, units);
  if (!choleskyInPlace(factor, units))
    throw new Error("I + L'M L is positive definite by its making; it was not");
  return { absorbed, root, informationRoot, factor };
}

/** Q x of record values: weighted, less the weighted mean of their group. */
function absorbInto(
  { group }: ColonyRecords,
  { weight, groupWeight }: AbsorbedRecords,
  x: Float64Array,
): Float64Array {
  const sums = new Float64Array(groupWeight.length);
  for (let r = 0; r < x.length; r++) sums[group[r]!]! += weight[r]! * x[r]!;
  return x.map((value, r) => weight[r]! * (value - sums[group[r]!]! / groupWeight[group[r]!]!));
}

/** P x of record values: Q x less Q Z C Z'Q x. */
function project(data: EstimationData, { absorbed, root, factor }: Factored, x: Float64Array): Float64Array {
  const { records, units, unitOf } = data;
  const once = absorbInto(records, absorbed, x);
  const summed = new Float64Array(units);
  for (let r = 0; r < x.length; r++) summed[unitOf[r]!]! += once[r]!;
  const back = transposeTimes(root, units, summed);
  lowerSolveInPlace(factor, units, back);
  upperSolveInPlace(factor, units, back);
  const spread = times(root, units, back);
  const again = absorbInto(
    records,
    absorbed,
    x.map((_, r) => spread[unitOf[r]!]!),
  );
  return once.map((value, r) => value - again[r]!);
}

/** Sum of record values by unit. */
function byUnit({ units, unitOf }: EstimationData, x: Float64Array): Float64Array {
  const out = new Float64Array(units);
  for (let r = 0; r < x.length; r++) out[unitOf[r]!]! += x[r]!;
  return out;
}

/** Log-likelihood alone, for trying a step. */
export function logLikelihoodAt(data: EstimationData, variances: ColonyVariances): number {
  const factored = factorAt(data, variances);
  return logOf(data, factored, project(data, factored, data.records.value));
}

function logOf(
  { records, units }: EstimationData,
  { absorbed, factor }: Factored,
  projected: Float64Array,
): number {
  let log = 0;
  for (const weight of absorbed.weight) log -= Math.log(weight);
  for (const weight of absorbed.groupWeight) if (weight > 0) log += Math.log(weight);
  for (let i = 0; i < units; i++) log += 2 * Math.log(factor[i * units + i]!);
  return -0.5 * (log + dot(records.value, projected));
}

/** Log-likelihood, slope and average information at the variances. */
export function likelihoodAt(data: EstimationData, variances: ColonyVariances): Likelihood {
  const factored = factorAt(data, variances);
  const { units, kernels, records } = data;
  const projected = project(data, factored, records.value);
  const weights = byUnit(data, projected);
  const middle = sandwich(factored.root, factored.factor, units);
  const taken = sandwich(factored.informationRoot, factored.factor, units);
  const unitP = factored.absorbed.information.map((value, k) => value - taken[k]!);
  const onUnits = [kernels.workers, kernels.across, kernels.own].map((kernel) =>
    times(kernel, units, weights),
  );
  onUnits.push(weights);
  const slope = new Float64Array(5);
  [kernels.workers, kernels.across, kernels.own].forEach((kernel, i) => {
    slope[i] = -0.5 * (dot(unitP, kernel) - dot(weights, onUnits[i]!));
  });
  let trace = 0;
  for (let i = 0; i < units; i++) trace += unitP[i * units + i]!;
  slope[3] = -0.5 * (trace - dot(weights, weights));
  slope[4] = -0.5 * (projectionTrace(data, factored.absorbed, middle) - dot(projected, projected));
  const twice = project(data, factored, projected);
  const twiceByUnit = byUnit(data, twice);
  const information = new Float64Array(25);
  for (let i = 0; i < 4; i++) {
    const image = times(unitP, units, onUnits[i]!);
    for (let j = 0; j < 4; j++) information[5 * i + j] = 0.5 * dot(image, onUnits[j]!);
    information[5 * i + 4] = 0.5 * dot(twiceByUnit, onUnits[i]!);
    information[20 + i] = information[5 * i + 4]!;
  }
  information[24] = 0.5 * dot(projected, twice);
  return { logLikelihood: logOf(data, factored, projected), slope, information };
}

/** R B^-1 R' for a square R whose rows are solved by the factor of B: C from L, M C M from M L. */
function sandwich(rows: Float64Array, factor: Float64Array, n: number): Float64Array {
  const half = rows.slice();
  for (let i = 0; i < n; i++) lowerSolveInPlace(factor, n, half.subarray(i * n, (i + 1) * n));
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = 0, a = i * n, b = j * n; k < n; k++, a++, b++) sum += half[a]! * half[b]!;
      out[i * n + j] = sum;
      out[j * n + i] = sum;
    }
  }
  return out;
}

/** tr P = tr Q - tr(C Z'Q Q Z). */
function projectionTrace(data: EstimationData, absorbed: AbsorbedRecords, middle: Float64Array): number {
  const { records, units, unitOf } = data;
  const { weight, groupWeight } = absorbed;
  const squares = new Float64Array(groupWeight.length);
  const members: number[][] = Array.from({ length: groupWeight.length }, () => []);
  let trace = 0;
  for (let r = 0; r < weight.length; r++) {
    const w = weight[r]!;
    trace += w - (w * w) / groupWeight[records.group[r]!]!;
    squares[records.group[r]!]! += w * w;
    members[records.group[r]!]!.push(r);
    trace -= w * w * middle[unitOf[r]! * (units + 1)]!;
  }
  members.forEach((inGroup, g) => {
    const all = groupWeight[g]!;
    for (const r of inGroup) {
      for (const s of inGroup) {
        const both = weight[r]! * weight[s]!;
        const square = (both * squares[g]!) / (all * all) - (both * (weight[r]! + weight[s]!)) / all;
        trace -= square * middle[unitOf[r]! * units + unitOf[s]!]!;
      }
    }
  });
  return trace;
}
