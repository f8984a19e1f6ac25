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
  /** Predictor of each entry of the predictors. */
  readonly entryPredictor: Int32Array;
  /** Scratch: node values going down and coming up, predictor values, record values, sums of the levels. */
  readonly down: Float64Array;
  readonly up: Float64Array;
  readonly predictor: Float64Array;
  readonly fitted: Float64Array;
  readonly levelSum: Float64Array;
}

/** The operator of a prepared model; throws if G0 is not positive semi-definite (callers check it before). */
export function makeOperator(model: PreparedModel): Operator {
  const factor = effectFactor(model.effects);
  if (!factor) throw new Error('makeOperator needs a positive semi-definite covariance of the two effects');
  const { first, second, start } = model.predictors;
  const [c11, c21, c22] = factor;
  const entryPredictor = new Int32Array(first.length);
  for (let p = 0; p + 1 < start.length; p++) entryPredictor.fill(p, start[p]!, start[p + 1]!);
  return {
    model,
    unknowns: 2 * model.descent.size + model.columns,
    root: model.descent.mendelian.map(Math.sqrt),
    entryPredictor,
    onFirst: first.map((value, k) => c11 * value + c21 * second[k]!),
    onSecond: second.map((value) => c22 * value),
    factor,
    down: new Float64Array(2 * model.descent.size),
    up: new Float64Array(2 * model.descent.size),
    predictor: new Float64Array(start.length - 1),
    fitted: new Float64Array(model.value.length),
    levelSum: new Float64Array(model.levelVariance.length),
  };
}

/** Predictor values s from the node values `down`. Flat loops over entries: no short inner loops to mispredict. */
function readPredictors({ model, entryPredictor, onFirst, onSecond, down, predictor: s }: Operator): void {
  const { node } = model.predictors;
  s.fill(0);
  for (let k = 0; k < node.length; k++) {
    const at = 2 * node[k]!;
    s[entryPredictor[k]!]! += onFirst[k]! * down[at]! + onSecond[k]! * down[at + 1]!;
  }
}

/** Transpose of `readPredictors`: node values `up` from the predictor values. */
function spreadPredictors({ model, entryPredictor, onFirst, onSecond, up, predictor: s }: Operator): void {
  const { node } = model.predictors;
  up.fill(0);
  for (let k = 0; k < node.length; k++) {
    const at = 2 * node[k]!;
    const value = s[entryPredictor[k]!]!;
    up[at]! += onFirst[k]! * value;
    up[at + 1]! += onSecond[k]! * value;
  }
}

/** Fitted value t of every record: its predictor plus its fixed columns, which stand in x behind the nodes. */
function fitRecords({ model, predictor: s, fitted: t }: Operator, x: Float64Array): void {
  const { predictor, column, factors } = model;
  const offset = 2 * model.descent.size;
  for (let r = 0; r < t.length; r++) t[r] = s[predictor[r]!]!;
  for (let f = 0; f < factors; f++) {
    for (let r = 0, at = f; r < t.length; r++, at += factors) {
      const c = column[at]!;
      if (c >= 0) t[r]! += x[offset + c]!;
    }
  }
}

/** Record values t to M t, in place: weighted, the noise of each level taken out. */
function weighRecords({ model, fitted: t, levelSum }: Operator): void {
  const { level, weight, levelShrink } = model;
  levelSum.fill(0);
  for (let r = 0; r < t.length; r++) levelSum[level[r]!]! += weight[r]! * t[r]!;
  for (let l = 0; l < levelSum.length; l++) levelSum[l]! *= levelShrink[l]!;
  for (let r = 0; r < t.length; r++) t[r] = weight[r]! * (t[r]! - levelSum[level[r]!]!);
}

/** Record values t to (W, X)' t. */
function gatherRecords(operator: Operator, out: Float64Array): void {
  const { model, root, up, predictor: s, fitted: t } = operator;
  const { predictor, column, factors } = model;
  const offset = 2 * model.descent.size;
  s.fill(0);
  out.fill(0, offset);
  for (let r = 0; r < t.length; r++) s[predictor[r]!]! += t[r]!;
  for (let f = 0; f < factors; f++) {
    for (let r = 0, at = f; r < t.length; r++, at += factors) {
      const c = column[at]!;
      if (c >= 0) out[offset + c]! += t[r]!;
    }
  }
  spreadPredictors(operator);
  gatherUp(model.descent, root, up, out);
}

/** out = K x. */
export function multiply(operator: Operator, x: Float64Array, out: Float64Array): void {
  const { model, root, down } = operator;
  spreadDown(model.descent, root, x, down);
  readPredictors(operator);
  fitRecords(operator, x);
  weighRecords(operator);
  gatherRecords(operator, out);
  const nodes = 2 * model.descent.size;
  for (let i = 0; i < nodes; i++) out[i]! += x[i]!;
}

/** Right-hand side (W, X)' M y of the (centred) record values y. */
export function rightHandSide(operator: Operator): Float64Array {
  const out = new Float64Array(operator.unknowns);
  operator.fitted.set(operator.model.value);
  weighRecords(operator);
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
  const { model, root, down, fitted } = operator;
  const { level, levelShrink, weight, value } = model;
  spreadDown(model.descent, root, x, down);
  readPredictors(operator);
  fitRecords(operator, x);
  const levels = new Float64Array(levelShrink.length);
  for (let r = 0; r < value.length; r++) levels[level[r]!]! += weight[r]! * (value[r]! - fitted[r]!);
  return levels.map((sum, l) => levelShrink[l]! * sum);
}
