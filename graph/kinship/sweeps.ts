/**
 * Products with the relationship matrix A (twice the kinship), and its entries, without ever building it.
 *   A = T D T', T^-1 = I - C (C: parent coefficients), D = diag(mendelian)
 *   T' v: from the youngest node to the oldest, each adds coefficient * value to its parents.
 *   T x: from the oldest to the youngest, each receives coefficient * value from its parents.
 * Source: Colleau 2002, An indirect approach to the extensive calculation of relationship coefficients,
 * Genet. Sel. Evol. 34:409 (from memory, not re-read). Kinship of a pair by ancestors only: the same sums,
 * restricted to nodes both descend from.
 * Cost: O(nodes + parents) for each product or column. No unknowns: a compiled pedigree is complete.
 */
import { COLUMNS, sweepBlock } from './column-kernel.ts';
import { compactRows } from './compact-rows.ts';
import type { Pedigree } from './pedigree.ts';

/** out = T' v over all nodes. `out` may be `v` itself. */
export function transposeSweep(
  { size, parentStart, parent, coefficient }: Pedigree,
  v: Float64Array,
  out: Float64Array = new Float64Array(size),
): Float64Array {
  if (out !== v) out.set(v);
  for (let node = size - 1; node >= 0; node--) {
    const value = out[node]!;
    if (value === 0) continue;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      out[parent[k]!]! += coefficient[k]! * value;
    }
  }
  return out;
}

/** out = T x over all nodes. `out` may be `x` itself. */
export function forwardSweep(
  { size, parentStart, parent, coefficient }: Pedigree,
  x: Float64Array,
  out: Float64Array = new Float64Array(size),
): Float64Array {
  for (let node = 0; node < size; node++) {
    let value = x[node]!;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      value += coefficient[k]! * out[parent[k]!]!;
    }
    out[node] = value;
  }
  return out;
}

/** out = A v over all nodes. `out` may be `v` itself. */
export function multiplyA(
  pedigree: Pedigree,
  v: Float64Array,
  out: Float64Array = new Float64Array(pedigree.size),
): Float64Array {
  transposeSweep(pedigree, v, out);
  for (let node = 0; node < pedigree.size; node++) out[node]! *= pedigree.mendelian[node]!;
  return forwardSweep(pedigree, out, out);
}

/** Kinship (0..1) of one node with every node, itself included: half its column of A. */
export function kinshipColumn(pedigree: Pedigree, node: number): Float64Array {
  const column = new Float64Array(pedigree.size);
  column[node] = 0.5;
  return multiplyA(pedigree, column, column);
}

/** Kinship (0..1) of two nodes; of a queen with herself (1 + F)/2, of a single drone with himself 1. */
export function kinship(pedigree: Pedigree, a: number, b: number): number {
  if (a === b) return pedigree.diagonal[a]! / 2;
  const older = Math.min(a, b);
  const younger = Math.max(a, b);
  const fromOlder = new Float64Array(older + 1);
  const fromYounger = new Float64Array(younger + 1);
  fromOlder[older] = 1;
  fromYounger[younger] = 1;
  traceBack(pedigree, fromYounger, younger);
  traceBack(pedigree, fromOlder, older);
  let sum = 0;
  for (let node = 0; node <= older; node++) {
    sum += fromOlder[node]! * fromYounger[node]! * pedigree.mendelian[node]!;
  }
  return sum / 2;
}

function traceBack({ parentStart, parent, coefficient }: Pedigree, x: Float64Array, from: number): void {
  for (let node = from; node >= 0; node--) {
    const value = x[node]!;
    if (value === 0) continue;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      x[parent[k]!]! += coefficient[k]! * value;
    }
  }
}

/**
 * Kinship of each pair of some nodes: row a, column b at a * nodes.length + b. Dense on purpose, for the
 * candidates on screen; not for a registry. O(nodes + parents), then O(rows that matter) for eight columns.
 */
export function kinshipBlock(pedigree: Pedigree, nodes: ArrayLike<number>): Float64Array {
  const targets = Int32Array.from(nodes);
  const block = new Float64Array(targets.length * targets.length);
  let place = 0;
  for (const kinships of kinshipColumns(pedigree, targets)) block.set(kinships, place++ * targets.length);
  return block;
}

/**
 * Kinships of each target node with all targets, one target after the other in the order given, without holding
 * them all. The array yielded is used again for the next.
 */
export function* kinshipColumns(pedigree: Pedigree, targets: Int32Array): Generator<Float64Array> {
  const { size: count, parentStart: start, parent, coefficient, mendelian } = pedigree;
  const { rows, placeOf } = compactRows({ count, start, parent, coefficient, mendelian }, targets);
  const block = new Float64Array(rows.count * COLUMNS);
  const kinships = new Float64Array(targets.length);
  for (let first = 0; first < targets.length; first += COLUMNS) {
    const width = Math.min(COLUMNS, targets.length - first);
    block.fill(0);
    for (let b = 0; b < width; b++) block[placeOf[targets[first + b]!]! * COLUMNS + b] = 0.5;
    sweepBlock(rows, block, rows.count);
    for (let b = 0; b < width; b++) {
      for (let k = 0; k < targets.length; k++) kinships[k] = block[placeOf[targets[k]!]! * COLUMNS + b]!;
      yield kinships;
    }
  }
}
