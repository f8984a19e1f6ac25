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
  /** Records of level l stand at levelStart[l] .. levelStart[l + 1] - 1, at most `mostOfLevel` of them. */
  readonly levelStart: Int32Array;
  readonly mostOfLevel: number;
  /** 1 / (sum of weights + 1 / v_l); 0 where v_l = 0. */
  readonly levelShrink: Float64Array;
  /** Weighted mean of the values in each column of the first factor, already taken off `value`. */
  readonly centre: Float64Array;
}

/** The model as the solver reads it: its records sorted, merged and centred. */
export function prepareModel(model: MixedModel): PreparedModel {
  const merged = mergeRecords(model, solverOrder(model));
  const levelStart = startsOf(merged);
  const most = levelStart.reduce((most, end, l) => Math.max(most, end - (levelStart[l - 1] ?? 0)), 0);
  const centre = centreInPlace(merged);
  return { ...merged, levelStart, mostOfLevel: most, levelShrink: shrinkOf(merged), centre };
}

/** Where the records of each level would begin in the order of the levels, and where the last ones end. */
function startsOf({ level, levelVariance }: MixedModel): Int32Array {
  const start = new Int32Array(levelVariance.length + 1);
  for (const l of level) start[l + 1]!++;
  for (let l = 0; l < levelVariance.length; l++) start[l + 1]! += start[l]!;
  return start;
}

/** Records by level (counting sort), then by predictor and first column inside each level. */
function solverOrder(model: MixedModel): Int32Array {
  const { level, predictor, column, factors } = model;
  const start = startsOf(model);
  const next = start.slice();
  const order = new Int32Array(level.length);
  for (let r = 0; r < level.length; r++) order[next[level[r]!]!++] = r;
  const before = (a: number, b: number) =>
    predictor[a]! - predictor[b]! || (factors > 0 ? column[a * factors]! - column[b * factors]! : 0) || a - b;
  for (let l = 0; l + 1 < start.length; l++) sortPart(order, start[l]!, start[l + 1]!, before);
  return order;
}

/** Parts up to this length are sorted by insertion: a queen has a few records, and a view on each costs more. */
const SHORT = 16;

function sortPart(
  order: Int32Array,
  first: number,
  end: number,
  before: (a: number, b: number) => number,
): void {
  if (end - first > SHORT) {
    order.subarray(first, end).sort(before);
    return;
  }
  for (let k = first + 1; k < end; k++) {
    const record = order[k]!;
    let to = k;
    for (; to > first && before(order[to - 1]!, record) > 0; to--) order[to] = order[to - 1]!;
    order[to] = record;
  }
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
