/**
 * All parentage of the registry graph as flat arrays, built once for the algorithms that read every queen.
 *
 * Queens stand in the order of their node keys, so the table of a graph does not depend on the order in which
 * the graph was filled. Parents of queen i stand at damStart[i] .. damStart[i + 1] - 1, most probable first.
 *
 * Method: one pass over nodes and edges; dams before daughters by the queue of Kahn 1962, Comm. ACM 5:558
 * (topological order). Cost O(n log n + edges). Unknown dams: a queen without dams has an empty row.
 */
import { compareKeys, dams } from './dams.ts';
import type { QueenAttributes, RegistryGraph } from './registry-graph.ts';

export interface DescentTable {
  /** Node keys of the queens, ascending. */
  readonly keys: readonly string[];
  readonly attributes: readonly QueenAttributes[];
  /** Row of each node key. */
  readonly index: ReadonlyMap<string, number>;
  readonly damStart: Int32Array;
  readonly dam: Int32Array;
  readonly damProbability: Float64Array;
  /** Row of the most probable dam; -1 for a founder. Inside `graph` only. */
  readonly mainDam: Int32Array;
  /** Rows in an order that puts every possible dam before her daughters. */
  readonly order: Int32Array;
}

/** Reads the daughter-of edges of the graph. Throws when the graph holds a circle of dams. */
export function descentTable(graph: RegistryGraph): DescentTable {
  const keys = queenKeys(graph);
  const index = new Map(keys.map((key, row) => [key, row]));
  const attributes = keys.map((key) => graph.getNodeAttributes(key) as QueenAttributes);
  const rows = keys.map((key) => dams(graph, key));
  const damStart = new Int32Array(keys.length + 1);
  rows.forEach((row, i) => {
    damStart[i + 1] = damStart[i]! + row.length;
  });
  const dam = new Int32Array(damStart[keys.length]!);
  const damProbability = new Float64Array(dam.length);
  const mainDam = new Int32Array(keys.length).fill(-1);
  rows.forEach((row, i) => {
    row.forEach((possible, k) => {
      dam[damStart[i]! + k] = index.get(possible.dam)!;
      damProbability[damStart[i]! + k] = possible.probability;
    });
    if (row.length > 0) mainDam[i] = dam[damStart[i]!]!;
  });
  const order = parentsFirst(damStart, dam, (row) => keys[row]!);
  return { keys, attributes, index, damStart, dam, damProbability, mainDam, order };
}

function queenKeys(graph: RegistryGraph): string[] {
  const keys: string[] = [];
  graph.forEachNode((key, attributes) => {
    if (attributes.type === 'queen') keys.push(key);
  });
  return keys.sort(compareKeys);
}

/**
 * Rows of a table of parents (compressed rows) in an order that puts every parent first; among those that are
 * free, the lowest row first come first. Throws, naming a row, when parents go in a circle.
 */
export function parentsFirst(
  parentStart: Int32Array,
  parent: Int32Array,
  name: (row: number) => string,
): Int32Array {
  const size = parentStart.length - 1;
  const waiting = new Int32Array(size);
  const { start, child } = children(parentStart, parent);
  const order = new Int32Array(size);
  let filled = 0;
  for (let i = 0; i < size; i += 1) {
    waiting[i] = parentStart[i + 1]! - parentStart[i]!;
    if (waiting[i] === 0) order[filled++] = i;
  }
  for (let head = 0; head < filled; head += 1) {
    const row = order[head]!;
    for (let k = start[row]!; k < start[row + 1]!; k += 1) {
      const young = child[k]!;
      waiting[young]! -= 1;
      if (waiting[young] === 0) order[filled++] = young;
    }
  }
  if (filled === size) return order;
  const stuck = waiting.findIndex((count) => count > 0);
  throw new Error(`The registry graph holds a circle of descent at or above ${name(stuck)}.`);
}

/** The same table turned round: for each row the rows it is a parent of, ascending. Cost O(size). */
function children(
  parentStart: Int32Array,
  parent: Int32Array,
): { readonly start: Int32Array; readonly child: Int32Array } {
  const size = parentStart.length - 1;
  const start = new Int32Array(size + 1);
  for (const row of parent) start[row + 1]! += 1;
  for (let i = 0; i < size; i += 1) start[i + 1]! += start[i]!;
  const next = start.slice();
  const child = new Int32Array(parent.length);
  for (let i = 0; i < size; i += 1) {
    for (let k = parentStart[i]!; k < parentStart[i + 1]!; k += 1) {
      const row = parent[k]!;
      child[next[row]!] = i;
      next[row]! += 1;
    }
  }
  return { start, child };
}
