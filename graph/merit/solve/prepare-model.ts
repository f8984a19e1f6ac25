/**
 * Puts the records of a mixed model in the order in which the solver reads them.
 *
 * Records are sorted by level and, inside a level, by predictor and first column: a run is the records of one
 * predictor in one level. Records of one run with the same columns are merged into their weighted mean, which leaves
 * every solution as it is. Values are centred by the first fixed factor, so that right-hand sides are of the size of
 * the effects and a residual of 1e-8 means what it says.
 *
 * Source: none needed (sufficiency of weighted means under normal errors). Cost: O(records + levels), plus sorting
 * inside levels. Unknowns: none at this depth.
 */
import type { MixedModel } from './mixed-model.ts';

export interface PreparedModel extends MixedModel {
  /** Runs of level l stand at levelStart[l] .. levelStart[l + 1] - 1. */
  readonly levelStart: Int32Array;
  /** Records of run j stand at runStart[j] .. runStart[j + 1] - 1. */
  readonly runStart: Int32Array;
  readonly runPredictor: Int32Array;
  /** 1 / (sum of weights + 1 / v_l); 0 where v_l = 0. */
  readonly levelShrink: Float64Array;
  /** Weighted mean of the values in each column of the first factor, already taken off `value`. */
  readonly centre: Float64Array;
}

export function prepareModel(model: MixedModel): PreparedModel {
  const merged = mergeRecords(model, solverOrder(model));
  const centre = centreInPlace(merged);
  const levels = model.levelVariance.length;
  const levelStart = new Int32Array(levels + 1);
  const runStart = new Int32Array(merged.value.length + 1);
  let runs = 0;
  for (let r = 0; r < merged.value.length; r++) {
    if (r > 0 && sameRun(merged, r, merged, r - 1)) continue;
    runStart[runs++] = r;
    levelStart[merged.level[r]! + 1]!++;
  }
  runStart[runs] = merged.value.length;
  for (let l = 0; l < levels; l++) levelStart[l + 1]! += levelStart[l]!;
  const runPredictor = new Int32Array(runs);
  for (let j = 0; j < runs; j++) runPredictor[j] = merged.predictor[runStart[j]!]!;
  const inRuns = { ...merged, levelStart, runStart: runStart.slice(0, runs + 1), runPredictor, centre };
  return { ...inRuns, levelShrink: shrinkOf(inRuns) };
}

/** Records by level (counting sort), then by predictor and first column inside each level. */
function solverOrder({ level, levelVariance, predictor, column, factors }: MixedModel): Int32Array {
  const start = new Int32Array(levelVariance.length + 1);
  for (const l of level) start[l + 1]!++;
  for (let l = 0; l < levelVariance.length; l++) start[l + 1]! += start[l]!;
  const next = start.slice();
  const order = new Int32Array(level.length);
  for (let r = 0; r < level.length; r++) order[next[level[r]!]!++] = r;
  const before = (a: number, b: number) =>
    predictor[a]! - predictor[b]! || (factors > 0 ? column[a * factors]! - column[b * factors]! : 0) || a - b;
  for (let l = 0; l < levelVariance.length; l++) {
    if (start[l + 1]! - start[l]! > 1) order.subarray(start[l]!, start[l + 1]!).sort(before);
  }
  return order;
}

function sameRun(a: MixedModel, r: number, b: MixedModel, s: number): boolean {
  return a.level[r] === b.level[s] && a.predictor[r] === b.predictor[s];
}

function sameColumns(a: MixedModel, r: number, b: MixedModel, s: number): boolean {
  for (let f = 0; f < a.factors; f++) {
    if (a.column[r * a.factors + f] !== b.column[s * a.factors + f]) return false;
  }
  return true;
}

function mergeRecords(model: MixedModel, order: Int32Array): MixedModel {
  const { factors } = model;
  const merged = {
    ...model,
    column: new Int32Array(model.column.length),
    predictor: new Int32Array(order.length),
    level: new Int32Array(order.length),
    value: new Float64Array(order.length),
    weight: new Float64Array(order.length),
  };
  let records = 0;
  for (const from of order) {
    const last = records - 1;
    if (last >= 0 && sameRun(model, from, merged, last) && sameColumns(model, from, merged, last)) {
      merged.weight[last]! += model.weight[from]!;
      merged.value[last]! +=
        ((model.value[from]! - merged.value[last]!) * model.weight[from]!) / merged.weight[last]!;
      continue;
    }
    merged.predictor[records] = model.predictor[from]!;
    merged.level[records] = model.level[from]!;
    merged.value[records] = model.value[from]!;
    merged.weight[records] = model.weight[from]!;
    for (let f = 0; f < factors; f++)
      merged.column[records * factors + f] = model.column[from * factors + f]!;
    records++;
  }
  return {
    ...merged,
    column: merged.column.slice(0, records * factors),
    predictor: merged.predictor.slice(0, records),
    level: merged.level.slice(0, records),
    value: merged.value.slice(0, records),
    weight: merged.weight.slice(0, records),
  };
}

function shrinkOf({
  levelVariance,
  levelStart,
  runStart,
  weight,
}: Omit<PreparedModel, 'levelShrink'>): Float64Array {
  const shrink = new Float64Array(levelVariance.length);
  for (let l = 0; l < shrink.length; l++) {
    if (levelVariance[l] === 0) continue;
    let sum = 1 / levelVariance[l]!;
    for (let r = runStart[levelStart[l]!]!; r < runStart[levelStart[l + 1]!]!; r++) sum += weight[r]!;
    shrink[l] = 1 / sum;
  }
  return shrink;
}

function centreInPlace({ columns, factors, column, value, weight }: MixedModel): Float64Array {
  const centre = new Float64Array(columns);
  if (factors === 0) return centre;
  const weights = new Float64Array(columns);
  for (let r = 0; r < value.length; r++) {
    const c = column[r * factors]!;
    if (c < 0) continue;
    centre[c]! += weight[r]! * value[r]!;
    weights[c]! += weight[r]!;
  }
  for (let c = 0; c < columns; c++) centre[c] = weights[c]! > 0 ? centre[c]! / weights[c]! : 0;
  for (let r = 0; r < value.length; r++) {
    const c = column[r * factors]!;
    if (c >= 0) value[r]! -= centre[c]!;
  }
  return centre;
}
