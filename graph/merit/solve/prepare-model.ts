/**
 * Puts the records of a mixed model in the order in which the solver reads them.
 *
 * Records are sorted by level and, inside a level, by predictor and first column; those alike in all three are merged
 * into their weighted mean, which leaves every solution as it is. Values are centred by the first fixed factor, so that
 * right-hand sides are of the size of the effects and a residual of 1e-8 means what it says.
 *
 * Source: none needed (sufficiency of weighted means under normal errors). Cost: O(records + levels), plus sorting
 * inside levels. Unknowns: none at this depth.
 */
import type { MixedModel } from './mixed-model.ts';

export interface PreparedModel extends MixedModel {
  /** 1 / (sum of weights + 1 / v_l); 0 where v_l = 0. */
  readonly levelShrink: Float64Array;
  /** Weighted mean of the values in each column of the first factor, already taken off `value`. */
  readonly centre: Float64Array;
}

export function prepareModel(model: MixedModel): PreparedModel {
  const merged = mergeRecords(model, solverOrder(model));
  return { ...merged, levelShrink: shrinkOf(merged), centre: centreInPlace(merged) };
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

function shrinkOf({ levelVariance, level, weight }: MixedModel): Float64Array {
  const sums = new Float64Array(levelVariance.length);
  for (let r = 0; r < level.length; r++) sums[level[r]!]! += weight[r]!;
  return levelVariance.map((variance, l) => (variance === 0 ? 0 : 1 / (sums[l]! + 1 / variance)));
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
