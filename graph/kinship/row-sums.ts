/** Weighted sums over rows: sum s is that of coefficient[k] * row[k], k from start[s] to start[s + 1] - 1. */
import type { Take } from './row-forms.ts';

export interface RowSums {
  readonly start: Int32Array;
  readonly row: Int32Array;
  readonly coefficient: Float64Array;
}

/** `each` hands the rows of one sum to `take`. O(rows taken). */
export function rowSums(sums: number, each: (sum: number, take: Take) => void): RowSums {
  const start = new Int32Array(sums + 1);
  let row = new Int32Array(sums + 16);
  let coefficient = new Float64Array(sums + 16);
  let count = 0;
  const take: Take = (taken, scale) => {
    if (count === row.length) {
      const larger = new Int32Array(2 * count);
      larger.set(row);
      row = larger;
      const largerScales = new Float64Array(2 * count);
      largerScales.set(coefficient);
      coefficient = largerScales;
    }
    row[count] = taken;
    coefficient[count++] = scale;
  };
  for (let sum = 0; sum < sums; sum++) {
    each(sum, take);
    start[sum + 1] = count;
  }
  return { start, row: row.slice(0, count), coefficient: coefficient.slice(0, count) };
}
