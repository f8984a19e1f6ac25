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
function ownInformation({ model, onFirst, onSecond }: Operator, columns: Float64Array): Float64Array {
  const { levelStart, levelShrink, runStart, runPredictor, weight, column, factors } = model;
  const { start, node } = model.predictors;
  const blocks = new Float64Array(3 * model.descent.size);
  for (let l = 0; l < levelShrink.length; l++) {
    for (let run = levelStart[l]!; run < levelStart[l + 1]!; run++) {
      let sum = 0;
      for (let r = runStart[run]!; r < runStart[run + 1]!; r++) {
        sum += weight[r]!;
        const own = weight[r]! - weight[r]! * weight[r]! * levelShrink[l]!;
        for (let f = r * factors; f < (r + 1) * factors; f++)
          if (column[f]! >= 0) columns[column[f]!]! += own;
      }
      const information = sum - sum * sum * levelShrink[l]!;
      for (let k = start[runPredictor[run]!]!; k < start[runPredictor[run]! + 1]!; k++) {
        const at = 3 * node[k]!;
        blocks[at]! += information * onFirst[k]! * onFirst[k]!;
        blocks[at + 1]! += information * onFirst[k]! * onSecond[k]!;
        blocks[at + 2]! += information * onSecond[k]! * onSecond[k]!;
      }
    }
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
