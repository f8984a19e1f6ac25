/**
 * Merit of every structural node from that of the queens: what drones are worth on average.
 *
 *   queen        as estimated; where she has no estimate, the mean of her parents
 *   background   as given (0 where merits are deviations from it)
 *   pool, mates, single drone   sum of coefficient * value over the parents
 *
 * A queen's mates get the mean of the drones on offer. The records of her own colony may say that she met better
 * ones; a daughter written into the pedigree and solved for with the others takes that into account as well.
 * Source: parent average of the structural nodes. Cost O(nodes + parents).
 */
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';

/**
 * Value of each node. `queenValues`: aligned to `pedigree.queenIds`, NaN where a queen has no estimate;
 * `backgroundValue`: merit of each background, by id.
 */
export function nodeValues(
  pedigree: Pedigree,
  queenValues: ArrayLike<number>,
  backgroundValue: (background: string) => number,
): Float64Array {
  const { size, kind, parentStart, parent, coefficient, queenNode, backgroundNode } = pedigree;
  const values = new Float64Array(size).fill(Number.NaN);
  queenNode.forEach((node, queen) => {
    values[node] = queenValues[queen]!;
  });
  for (const [id, node] of backgroundNode) values[node] = backgroundValue(id);
  for (let node = 0; node < size; node += 1) {
    if (kind[node] === NodeKind.background || !Number.isNaN(values[node])) continue;
    let value = 0;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k += 1) {
      value += coefficient[k]! * values[parent[k]!]!;
    }
    values[node] = value;
  }
  return values;
}
