/**
 * The rows that matter for reading A between a few targets: their ancestors, and of these only those with two or
 * more children among them. A row with one child is folded into it, exactly: the child takes over
 * coefficient * parents, and coefficient^2 * variance. What is left is near the branching of the pedigree, lies
 * close together in memory, and gives the same values at the targets.
 * Cost: O(rows + parents), once for all columns of a batch.
 */
import { closeRow, type KnownRows, linkRow, newKnownRows } from './column-kernel.ts';

export interface CompactRows {
  readonly rows: KnownRows;
  /** Compact row of each target row; others undefined in meaning. */
  readonly placeOf: Int32Array;
}

const TARGET = 2;

/** `targets`: rows of `known`, in any order, doubled or not. */
export function compactRows(known: KnownRows, targets: Iterable<number>): CompactRows {
  const children = childrenTowards(known, targets);
  const rows = newKnownRows(targets instanceof Int32Array ? targets.length * 2 : 1024, 4096);
  const placeOf = new Int32Array(known.count);
  const expand = expander(known, rows, children, placeOf);
  for (let row = 0; row < known.count; row++) {
    if (children[row]! >= TARGET) placeOf[row] = closeRow(rows, expand(row));
  }
  return { rows, placeOf };
}

/** 0: no target descends from the row; 1: one child leads to targets; TARGET: a target, or several children do. */
function childrenTowards(known: KnownRows, targets: Iterable<number>): Uint8Array {
  const children = new Uint8Array(known.count);
  for (const row of targets) children[row] = TARGET;
  for (let row = known.count - 1; row >= 0; row--) {
    if (children[row] === 0) continue;
    for (let k = known.start[row]!; k < known.start[row + 1]!; k++) {
      if (children[known.parent[k]!]! < TARGET) children[known.parent[k]!]!++;
    }
  }
  return children;
}

/** Links the kept ancestors of a row through those folded into it; returns its variance, theirs folded in. */
function expander(known: KnownRows, rows: KnownRows, children: Uint8Array, placeOf: Int32Array) {
  const pending: number[] = [];
  const scales: number[] = [];
  return (kept: number): number => {
    let mendelian = 0;
    pending.push(kept);
    scales.push(1);
    for (let row = pending.pop(); row !== undefined; row = pending.pop()) {
      const scale = scales.pop()!;
      mendelian += scale * scale * known.mendelian[row]!;
      for (let k = known.start[row]!; k < known.start[row + 1]!; k++) {
        const parent = known.parent[k]!;
        const coefficient = scale * known.coefficient[k]!;
        if (children[parent]! >= TARGET) linkRow(rows, placeOf[parent]!, coefficient);
        else {
          pending.push(parent);
          scales.push(coefficient);
        }
      }
    }
    return mendelian;
  };
}
