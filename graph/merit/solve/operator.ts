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
  /** Scratch: node values going down and coming up, predictor values going and coming, record values of one level. */
  readonly down: Float64Array;
  readonly up: Float64Array;
  readonly predictor: Float64Array;
  readonly gathered: Float64Array;
  readonly fitted: Float64Array;
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
    gathered: new Float64Array(start.length - 1),
    fitted: new Float64Array(model.mostOfLevel),
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

/** Transpose of `readPredictors`: node values `up` from the predictor values that came back. */
function spreadPredictors({ model, entryPredictor, onFirst, onSecond, up, gathered }: Operator): void {
  const { node } = model.predictors;
  up.fill(0);
  for (let k = 0; k < node.length; k++) {
    const at = 2 * node[k]!;
    const value = gathered[entryPredictor[k]!]!;
    up[at]! += onFirst[k]! * value;
    up[at + 1]! += onSecond[k]! * value;
  }
}

/** Fitted value of one record: its predictor plus its fixed columns, which stand in x behind the nodes. */
function fittedAt({ model, predictor: s }: Operator, x: Float64Array, record: number): number {
  const { predictor, column, factors, descent } = model;
  let value = s[predictor[record]!]!;
  for (let f = record * factors; f < (record + 1) * factors; f++) {
    const c = column[f]!;
    if (c >= 0) value += x[2 * descent.size + c]!;
  }
  return value;
}

/**
 * Record values t to (W, X)' M t, the nodes still as predictor values. t is what x fits, or without x the records' own
 * values. Level by level, so that the records are walked once: their arrays do not fit any cache.
 */
function passRecords(operator: Operator, x: Float64Array | undefined, out: Float64Array): void {
  const { model, gathered, fitted: t } = operator;
  const { predictor, column, factors, weight, value, levelStart, levelShrink } = model;
  const offset = 2 * model.descent.size;
  gathered.fill(0);
  out.fill(0, offset);
  for (let l = 0; l < levelShrink.length; l++) {
    const first = levelStart[l]!;
    const end = levelStart[l + 1]!;
    let noise = 0;
    for (let r = first; r < end; r++) {
      t[r - first] = x ? fittedAt(operator, x, r) : value[r]!;
      noise += weight[r]! * t[r - first]!;
    }
    noise *= levelShrink[l]!;
    for (let r = first; r < end; r++) {
      const weighed = weight[r]! * (t[r - first]! - noise);
      gathered[predictor[r]!]! += weighed;
      for (let f = r * factors; f < (r + 1) * factors; f++) {
        if (column[f]! >= 0) out[offset + column[f]!]! += weighed;
      }
    }
  }
}

/** out = K x. */
export function multiply(operator: Operator, x: Float64Array, out: Float64Array): void {
  const { model, root, down, up } = operator;
  spreadDown(model.descent, root, x, down);
  readPredictors(operator);
  passRecords(operator, x, out);
  spreadPredictors(operator);
  gatherUp(model.descent, root, up, out);
  const nodes = 2 * model.descent.size;
  for (let i = 0; i < nodes; i++) out[i]! += x[i]!;
}

/** Right-hand side (W, X)' M y of the (centred) record values y. */
export function rightHandSide(operator: Operator): Float64Array {
  const out = new Float64Array(operator.unknowns);
  passRecords(operator, undefined, out);
  spreadPredictors(operator);
  gatherUp(operator.model.descent, operator.root, operator.up, out);
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
  const { model, root, down } = operator;
  const { level, levelShrink, weight, value } = model;
  spreadDown(model.descent, root, x, down);
  readPredictors(operator);
  const levels = new Float64Array(levelShrink.length);
  for (let r = 0; r < value.length; r++) {
    levels[level[r]!]! += weight[r]! * (value[r]! - fittedAt(operator, x, r));
  }
  return levels.map((sum, l) => levelShrink[l]! * sum);
}
