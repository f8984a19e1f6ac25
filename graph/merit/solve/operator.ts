/**
 * The coefficient matrix of the mixed model as a product with a vector, never built.
 *
 *   (u1, u2) = T D^(1/2) z C',  G0 = C C',  z ~ N(0, I);   unknowns x = (z, b)
 *   K = [ I + W'MW   W'MX ]      W = Z C T D^(1/2) (predictors on z),  X fixed columns
 *       [  X'MW      X'MX ]      M = R^-1 - R^-1 L (L'R^-1 L + V^-1)^-1 L'R^-1   (noise of the levels taken out)
 * One product is a sweep from the oldest node to the youngest, one pass over the records, and a sweep back. z holds
 * two numbers a node side by side. K is symmetric and positive definite as long as the fixed columns are
 * independent, even where D has zeros (pools) and where G0 has rank one.
 *
 * Sources: Colleau 2002, Genet. Sel. Evol. 34:409 (T and D by sweeps; from memory); the equivalent model in Mendelian
 * terms and the elimination of the levels are standard algebra, tested against a dense textbook solve.
 * Cost: O(nodes + parents + records). Unknowns: none at this depth.
 */
import { effectFactor } from './mixed-model.ts';
import type { PreparedModel } from './prepare-model.ts';
import { gatherUp, spreadDown } from './two-sweeps.ts';

/** What a product needs besides the model, made once. */
export interface Operator {
  readonly model: PreparedModel;
  /** Unknowns: 2 * nodes, then the fixed columns. */
  readonly unknowns: number;
  /** Square roots of the Mendelian variances. */
  readonly root: Float64Array;
  /** Predictor coefficients on the two columns of z: C' (first, second)'. */
  readonly onFirst: Float64Array;
  readonly onSecond: Float64Array;
  /** C as [c11, c21, c22]. */
  readonly factor: readonly [number, number, number];
  /** Scratch: node values going down, node values coming up, values of the runs and of the records. */
  readonly down: Float64Array;
  readonly up: Float64Array;
  readonly runValue: Float64Array;
  readonly recordValue: Float64Array;
}

/** The operator of a prepared model; throws if G0 is not positive semi-definite (callers check it before). */
export function makeOperator(model: PreparedModel): Operator {
  const factor = effectFactor(model.effects);
  if (!factor) throw new Error('makeOperator needs a positive semi-definite covariance of the two effects');
  const { first, second } = model.predictors;
  const [c11, c21, c22] = factor;
  return {
    model,
    unknowns: 2 * model.descent.size + model.columns,
    root: model.descent.mendelian.map(Math.sqrt),
    onFirst: first.map((value, k) => c11 * value + c21 * second[k]!),
    onSecond: second.map((value) => c22 * value),
    factor,
    down: new Float64Array(2 * model.descent.size),
    up: new Float64Array(2 * model.descent.size),
    runValue: new Float64Array(model.runPredictor.length),
    recordValue: new Float64Array(model.value.length),
  };
}

/** Fixed part of every record: the sum of its columns, which stand in x from `offset` on. */
function readColumns(
  { factors, column }: PreparedModel,
  x: Float64Array,
  offset: number,
  t: Float64Array,
): void {
  if (factors === 1) {
    for (let r = 0; r < t.length; r++) t[r] = column[r]! < 0 ? 0 : x[offset + column[r]!]!;
    return;
  }
  for (let r = 0; r < t.length; r++) {
    let sum = 0;
    for (let f = r * factors; f < (r + 1) * factors; f++) if (column[f]! >= 0) sum += x[offset + column[f]!]!;
    t[r] = sum;
  }
}

/** Sums record values into the fixed columns of `out` from `offset` on, which are overwritten. */
function sumColumns(
  { factors, column }: PreparedModel,
  t: Float64Array,
  out: Float64Array,
  offset: number,
): void {
  out.fill(0, offset);
  for (let r = 0; r < t.length; r++) {
    for (let f = r * factors; f < (r + 1) * factors; f++)
      if (column[f]! >= 0) out[offset + column[f]!]! += t[r]!;
  }
}

/** Value of the predictor of each run at node values u. */
function readRuns({ model, onFirst, onSecond }: Operator, u: Float64Array, runValue: Float64Array): void {
  const { runPredictor } = model;
  const { start, node } = model.predictors;
  for (let run = 0; run < runValue.length; run++) {
    let sum = 0;
    const p = runPredictor[run]!;
    for (let k = start[p]!, end = start[p + 1]!; k < end; k++) {
      const at = 2 * node[k]!;
      sum += onFirst[k]! * u[at]! + onSecond[k]! * u[at + 1]!;
    }
    runValue[run] = sum;
  }
}

/** Transpose of `readRuns`: node values `up` (overwritten) from the values of the runs. */
function spreadRuns({ model, onFirst, onSecond }: Operator, runValue: Float64Array, up: Float64Array): void {
  const { runPredictor } = model;
  const { start, node } = model.predictors;
  up.fill(0);
  for (let run = 0; run < runValue.length; run++) {
    const p = runPredictor[run]!;
    const value = runValue[run]!;
    for (let k = start[p]!, end = start[p + 1]!; k < end; k++) {
      const at = 2 * node[k]!;
      up[at]! += onFirst[k]! * value;
      up[at + 1]! += onSecond[k]! * value;
    }
  }
}

/** With t the records' own part and runValue that of their runs: t becomes M (t + run), runValue its sum by run. */
function weighRuns({ model, runValue, recordValue: t }: Operator): void {
  const { levelStart, levelShrink, runStart, weight } = model;
  let run = 0;
  let r = 0;
  for (let l = 0; l < levelShrink.length; l++) {
    const firstRun = run;
    const endRun = levelStart[l + 1]!;
    let total = 0;
    for (; run < endRun; run++) {
      for (const end = runStart[run + 1]!; r < end; r++) total += weight[r]! * (t[r]! + runValue[run]!);
    }
    const shared = total * levelShrink[l]!;
    for (run = firstRun; run < endRun; run++) {
      const shift = runValue[run]! - shared;
      let sum = 0;
      for (let s = runStart[run]!, end = runStart[run + 1]!; s < end; s++) {
        const weighed = weight[s]! * (t[s]! + shift);
        t[s] = weighed;
        sum += weighed;
      }
      runValue[run] = sum;
    }
  }
}

/** From record and run values to (W, X)' M of them. */
function gatherRecords(operator: Operator, out: Float64Array): void {
  const { model, root, up, runValue, recordValue } = operator;
  weighRuns(operator);
  sumColumns(model, recordValue, out, 2 * model.descent.size);
  spreadRuns(operator, runValue, up);
  gatherUp(model.descent, root, up, out);
}

/** out = K x. */
export function multiply(operator: Operator, x: Float64Array, out: Float64Array): void {
  const { model, root, down, runValue, recordValue } = operator;
  const nodes = 2 * model.descent.size;
  spreadDown(model.descent, root, x, down);
  readRuns(operator, down, runValue);
  readColumns(model, x, nodes, recordValue);
  gatherRecords(operator, out);
  for (let i = 0; i < nodes; i++) out[i]! += x[i]!;
}

/** Right-hand side (W, X)' M y of the (centred) record values y. */
export function rightHandSide(operator: Operator): Float64Array {
  const out = new Float64Array(operator.unknowns);
  operator.recordValue.set(operator.model.value);
  operator.runValue.fill(0);
  gatherRecords(operator, out);
  return out;
}

/** Node values of the two effects (u1, u2 side by side) from a solution x. */
export function effectsOf({ model, root, factor }: Operator, x: Float64Array): Float64Array {
  const u = new Float64Array(2 * model.descent.size);
  spreadDown(model.descent, root, x, u);
  const [c11, c21, c22] = factor;
  for (let i = 0; i < u.length; i += 2) {
    const one = u[i]!;
    u[i] = c11 * one;
    u[i + 1] = c21 * one + c22 * u[i + 1]!;
  }
  return u;
}

/** Estimated noise of each level, from a solution x: levelShrink * sum of w (y - fitted). */
export function levelsOf(operator: Operator, x: Float64Array): Float64Array {
  const { model, root, down, runValue, recordValue } = operator;
  const { levelStart, levelShrink, runStart, weight, value } = model;
  spreadDown(model.descent, root, x, down);
  readRuns(operator, down, runValue);
  readColumns(model, x, 2 * model.descent.size, recordValue);
  const levels = new Float64Array(levelShrink.length);
  for (let l = 0; l < levels.length; l++) {
    let sum = 0;
    for (let run = levelStart[l]!; run < levelStart[l + 1]!; run++) {
      for (let r = runStart[run]!; r < runStart[run + 1]!; r++) {
        sum += weight[r]! * (value[r]! - recordValue[r]! - runValue[run]!);
      }
    }
    levels[l] = levelShrink[l]! * sum;
  }
  return levels;
}
