/**
 * Rows of (number, share) pairs in compressed typed arrays, built row by row. Cost: O(1) a pair, amortised.
 */

export interface ShareRows {
  readonly rows: number;
  /** Pairs of row r stand at start[r] .. start[r + 1] - 1. */
  readonly start: Int32Array;
  readonly item: Int32Array;
  readonly share: Float64Array;
}

/** Growing rows: `add` to the open row, then `close` it or `drop` it. */
export interface ShareRowsBuilder {
  add(item: number, share: number): void;
  /** Ends the open row; returns its number. */
  close(): number;
  /** Number of an earlier row with the same pairs in the same order (the open row is dropped), or a new one. */
  closeShared(tag: number): number;
  finish(): ShareRows;
}

const grown = <T extends Int32Array | Float64Array>(array: T, Type: new (length: number) => T): T => {
  const larger = new Type(array.length * 2);
  larger.set(array);
  return larger;
};

/** `rowsExpected` and `pairsExpected` only size the first arrays. */
export function shareRowsBuilder(rowsExpected: number, pairsExpected: number): ShareRowsBuilder {
  let start = new Int32Array(rowsExpected + 2);
  let item = new Int32Array(Math.max(16, pairsExpected));
  let share = new Float64Array(Math.max(16, pairsExpected));
  let rows = 0;
  let pairs = 0;
  const rowsByHash = new Map<number, number[]>();

  const sameAsOpen = (row: number): boolean => {
    const from = start[row]!;
    const open = start[rows]!;
    if (start[row + 1]! - from !== pairs - open) return false;
    for (let k = 0; k < pairs - open; k++) {
      if (item[from + k] !== item[open + k] || share[from + k] !== share[open + k]) return false;
    }
    return true;
  };

  const openHash = (tag: number): number => {
    let hash = tag | 0;
    for (let k = start[rows]!; k < pairs; k++) {
      hash = (Math.imul(hash, 31) + item[k]!) | 0;
      hash = (Math.imul(hash, 31) + Math.floor(share[k]! * 2 ** 30)) | 0;
    }
    return hash;
  };

  const close = (): number => {
    rows++;
    if (rows + 1 >= start.length) start = grown(start, Int32Array);
    start[rows] = pairs;
    return rows - 1;
  };

  return {
    add(number, value) {
      if (pairs === item.length) {
        item = grown(item, Int32Array);
        share = grown(share, Float64Array);
      }
      item[pairs] = number;
      share[pairs] = value;
      pairs++;
    },
    close,
    closeShared(tag) {
      const hash = openHash(tag);
      const candidates = rowsByHash.get(hash);
      const same = candidates?.find(sameAsOpen);
      if (same !== undefined) {
        pairs = start[rows]!;
        return same;
      }
      if (candidates) candidates.push(rows);
      else rowsByHash.set(hash, [rows]);
      return close();
    },
    finish: () => ({
      rows,
      start: start.slice(0, rows + 1),
      item: item.slice(0, pairs),
      share: share.slice(0, pairs),
    }),
  };
}
