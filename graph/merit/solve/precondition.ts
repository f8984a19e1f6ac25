/**
 * An approximate inverse of the coefficient matrix that is cheap to apply: a 2 x 2 block a node, a number a column.
 *
 *   H_node = own information + sum over children c^2 H_child,   block = I + d_node H_node
 *   column: sum of weights less what the level takes out
 * H counts the information that reaches a node along each single path of descent; paths that meet again are not
 * multiplied out, which costs accuracy of the approximation only, not of the solution.
 *
 * Source: block-Jacobi preconditioning is common practice (Saad 2003, Iterative Methods for Sparse Linear Systems,
 * from memory); the sweep for the diagonal is ours.
 * Cost: O(nodes + parents + records) once, O(unknowns) each use.
 */
import type { Operator } from './operator.ts';

export interface Preconditioner {
  /** Inverse blocks: [a11, a12, a22] a node. */
  readonly blocks: Float64Array;
  readonly columns: Float64Array;
}

/** Built once for an operator. Cost O(nodes + records). */
export function makePreconditioner(operator: Operator): Preconditioner {
  const { model, root } = operator;
  const { size, parentStart, parent, coefficient } = model.descent;
  const columns = new Float64Array(model.columns);
  const blocks = ownInformation(operator, columns);
  for (let node = size - 1; node >= 0; node--) {
    const at = 3 * node;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      const square = coefficient[k]! * coefficient[k]!;
      const to = 3 * parent[k]!;
      blocks[to]! += square * blocks[at]!;
      blocks[to + 1]! += square * blocks[at + 1]!;
      blocks[to + 2]! += square * blocks[at + 2]!;
    }
    invertBlock(blocks, at, root[node]! * root[node]!);
  }
  return { blocks, columns: columns.map((sum) => (sum > 0 ? 1 / sum : 1)) };
}

/** Replaces H by (I + d H)^-1. */
function invertBlock(blocks: Float64Array, at: number, d: number): void {
  const a = 1 + d * blocks[at]!;
  const b = d * blocks[at + 1]!;
  const c = 1 + d * blocks[at + 2]!;
  const determinant = a * c - b * b;
  blocks[at] = c / determinant;
  blocks[at + 1] = -b / determinant;
  blocks[at + 2] = a / determinant;
}

/** Information of the records on each node itself; that on the columns is added to `columns`. */
function ownInformation(
  { model, entryPredictor, onFirst, onSecond }: Operator,
  columns: Float64Array,
): Float64Array {
  const { levelVariance, levelShrink, level, predictor, weight, column, factors } = model;
  const { node, start } = model.predictors;
  const information = new Float64Array(start.length - 1);
  for (let r = 0; r < weight.length; r++) {
    const l = level[r]!;
    // Share of the level's information that its own noise leaves: (1 / v) / (sum of weights + 1 / v).
    const left = levelVariance[l] === 0 ? 1 : levelShrink[l]! / levelVariance[l]!;
    information[predictor[r]!]! += weight[r]! * left;
    const own = weight[r]! - weight[r]! * weight[r]! * levelShrink[l]!;
    for (let f = r * factors; f < (r + 1) * factors; f++) if (column[f]! >= 0) columns[column[f]!]! += own;
  }
  const blocks = new Float64Array(3 * model.descent.size);
  for (let k = 0; k < node.length; k++) {
    const at = 3 * node[k]!;
    const known = information[entryPredictor[k]!]!;
    blocks[at]! += known * onFirst[k]! * onFirst[k]!;
    blocks[at + 1]! += known * onFirst[k]! * onSecond[k]!;
    blocks[at + 2]! += known * onSecond[k]! * onSecond[k]!;
  }
  return blocks;
}

/** out = approximate inverse times r. */
export function precondition({ blocks, columns }: Preconditioner, r: Float64Array, out: Float64Array): void {
  const nodes = blocks.length / 3;
  for (let node = 0; node < nodes; node++) {
    const one = r[2 * node]!;
    const two = r[2 * node + 1]!;
    out[2 * node] = blocks[3 * node]! * one + blocks[3 * node + 1]! * two;
    out[2 * node + 1] = blocks[3 * node + 1]! * one + blocks[3 * node + 2]! * two;
  }
  for (let c = 0; c < columns.length; c++) out[2 * nodes + c] = columns[c]! * r[2 * nodes + c]!;
}
