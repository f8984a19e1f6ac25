/**
 * How many generations each queen stands below her founder, by her most probable dams.
 *
 *   generation(founder) = 0,   generation(q) = generation(most probable dam of q) + 1
 *
 * Source: the definition itself. Cost O(queens). Unknown dams: a queen without a recorded dam is a founder.
 */
import type { DescentTable } from './descent-table.ts';

/** Generation of each queen, aligned to `table.keys`: 0 for founders. */
export function generations(table: DescentTable): Int32Array {
  const { order, mainDam } = table;
  const generation = new Int32Array(mainDam.length);
  for (const row of order) {
    if (mainDam[row]! >= 0) generation[row] = generation[mainDam[row]!]! + 1;
  }
  return generation;
}

/** Row of the founder of each queen by her most probable dams, aligned to `table.keys`. */
export function founderOf(table: DescentTable): Int32Array {
  const { order, mainDam } = table;
  const founder = new Int32Array(mainDam.length);
  for (const row of order) founder[row] = mainDam[row]! < 0 ? row : founder[mainDam[row]!]!;
  return founder;
}
