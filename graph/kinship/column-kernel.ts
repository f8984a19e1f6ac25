/**
 * Columns of A, eight at a time, over the rows whose Mendelian variance is already known.
 *   A v = T D T' v: a backward sweep adds coefficient * x[child] to each parent, D scales, a forward sweep adds
 *   coefficient * x[parent] to each child (Colleau 2002, Genet. Sel. Evol. 34:409; from memory, not re-read).
 * Rows are added in the order in which they become known; each batch of columns sweeps over the few of them that
 * matter to it (compact-rows.ts). The eight values of a row lie side by side: one cache line, and each parent's number is read once for eight columns.
 * Cost: O(rows + parents) for eight columns. Rows with nothing in them are skipped on the way back.
 */

export const COLUMNS = 8;

/** Rows in birth order with weighted parents. */
export interface KnownRows {
  count: number;
  /** Parents of row r stand at start[r] .. start[r + 1] - 1. */
  start: Int32Array;
  parent: Int32Array;
  coefficient: Float64Array;
  mendelian: Float64Array;
}

/** The sizes are first guesses; all arrays grow. */
export function newKnownRows(rows: number, pairs: number): KnownRows {
  return {
    count: 0,
    start: new Int32Array(rows + 2),
    parent: new Int32Array(pairs + 1),
    coefficient: new Float64Array(pairs + 1),
    mendelian: new Float64Array(rows + 1),
  };
}

/** Adds a parent to the row that `closeRow` will end. */
export function linkRow(known: KnownRows, parent: number, coefficient: number): void {
  const pair = known.start[known.count + 1]!;
  if (pair === known.parent.length) {
    known.parent = doubled(known.parent, new Int32Array(2 * pair));
    known.coefficient = doubled(known.coefficient, new Float64Array(2 * pair));
  }
  known.parent[pair] = parent;
  known.coefficient[pair] = coefficient;
  known.start[known.count + 1] = pair + 1;
}

/** Ends the row whose parents were just linked; returns its number. */
export function closeRow(known: KnownRows, mendelian: number): number {
  const row = known.count++;
  if (row + 2 >= known.mendelian.length) {
    known.mendelian = doubled(known.mendelian, new Float64Array(2 * row + 8));
    known.start = doubled(known.start, new Int32Array(2 * row + 8));
  }
  known.mendelian[row] = mendelian;
  known.start[row + 2] = known.start[row + 1]!;
  return row;
}

function doubled<Numbers extends Int32Array | Float64Array>(old: Numbers, larger: Numbers): Numbers {
  larger.set(old);
  return larger;
}

/**
 * block <- A block: value b of row r at r * COLUMNS + b, not negative, zero from row `top` on. Results hold for
 * all rows.
 */
export function sweepBlock(rows: KnownRows, block: Float64Array, top: number): void {
  backward(rows, block, top);
  forward(rows, block);
}

function backward({ start, parent, coefficient, mendelian }: KnownRows, x: Float64Array, top: number): void {
  for (let row = top - 1; row >= 0; row--) {
    const at = row * COLUMNS;
    const x0 = x[at]!;
    const x1 = x[at + 1]!;
    const x2 = x[at + 2]!;
    const x3 = x[at + 3]!;
    const x4 = x[at + 4]!;
    const x5 = x[at + 5]!;
    const x6 = x[at + 6]!;
    const x7 = x[at + 7]!;
    // Shares and coefficients are positive, so a sum of zero means that all eight are zero.
    if (x0 + x1 + x2 + x3 + x4 + x5 + x6 + x7 === 0) continue;
    const pairsEnd = start[row + 1]!;
    for (let k = start[row]!; k < pairsEnd; k++) {
      const to = parent[k]! * COLUMNS;
      const c = coefficient[k]!;
      x[to] = x[to]! + c * x0;
      x[to + 1] = x[to + 1]! + c * x1;
      x[to + 2] = x[to + 2]! + c * x2;
      x[to + 3] = x[to + 3]! + c * x3;
      x[to + 4] = x[to + 4]! + c * x4;
      x[to + 5] = x[to + 5]! + c * x5;
      x[to + 6] = x[to + 6]! + c * x6;
      x[to + 7] = x[to + 7]! + c * x7;
    }
    const d = mendelian[row]!;
    x[at] = x0 * d;
    x[at + 1] = x1 * d;
    x[at + 2] = x2 * d;
    x[at + 3] = x3 * d;
    x[at + 4] = x4 * d;
    x[at + 5] = x5 * d;
    x[at + 6] = x6 * d;
    x[at + 7] = x7 * d;
  }
}

function forward({ count, start, parent, coefficient }: KnownRows, x: Float64Array): void {
  for (let row = 0; row < count; row++) {
    const at = row * COLUMNS;
    let x0 = x[at]!;
    let x1 = x[at + 1]!;
    let x2 = x[at + 2]!;
    let x3 = x[at + 3]!;
    let x4 = x[at + 4]!;
    let x5 = x[at + 5]!;
    let x6 = x[at + 6]!;
    let x7 = x[at + 7]!;
    const pairsEnd = start[row + 1]!;
    for (let k = start[row]!; k < pairsEnd; k++) {
      const from = parent[k]! * COLUMNS;
      const c = coefficient[k]!;
      x0 += c * x[from]!;
      x1 += c * x[from + 1]!;
      x2 += c * x[from + 2]!;
      x3 += c * x[from + 3]!;
      x4 += c * x[from + 4]!;
      x5 += c * x[from + 5]!;
      x6 += c * x[from + 6]!;
      x7 += c * x[from + 7]!;
    }
    x[at] = x0;
    x[at + 1] = x1;
    x[at + 2] = x2;
    x[at + 3] = x3;
    x[at + 4] = x4;
    x[at + 5] = x5;
    x[at + 6] = x6;
    x[at + 7] = x7;
  }
}
