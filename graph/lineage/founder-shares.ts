/**
 * What part of a queen comes from each founder: by dam lines alone, or of all her genes, drones included.
 *
 *   by dams     s(q) = sum over possible dams d of p(d) s(d)
 *   with drones s(q) = sum over possible dams d of p(d) (s(d) + s(mates of d)) / 2
 *               s(mates of d) = sum over what d met of share * s(that queen or pool)
 *               s(pool) = sum over its drone mothers of share * s(mother)
 *   s(founder f) = 1 at f
 *
 * s(q)[f] is the expected share (0..1) of q's founder f. What is missing to 1 is unrecorded: background
 * drones, unknown matings, dams nobody recorded.
 * Source: expected founder contributions, James 1972, Theor. Appl. Genet. 42:272 and Lacy 1989, Zoo Biol.
 * 8:111 (both from memory, not re-read), with the haplodiploid rule that a drone is a gamete of his mother.
 * Cost O(nodes + edges) for one weighted group of queens: one sweep from young to old.
 */
import type { DescentTable } from './descent-table.ts';
import { parentsFirst } from './descent-table.ts';
import type { RegistryGraph } from './registry-graph.ts';

export interface FounderShare {
  /** Node key of the founder. */
  readonly founder: string;
  /** Share, 0..1. */
  readonly share: number;
}

export interface FounderShares {
  /** Founders with a share above 0, largest first, ties by key. */
  readonly shares: readonly FounderShare[];
  /** Share (0..1) that leads to nobody recorded. */
  readonly unrecorded: number;
}

/** Parents with coefficients, in compressed rows, and rows with parents first; queens are the first rows. */
export interface ShareTable {
  readonly keys: readonly string[];
  readonly index: ReadonlyMap<string, number>;
  readonly parentStart: Int32Array;
  readonly parent: Int32Array;
  readonly coefficient: Float64Array;
  readonly order: Int32Array;
  /** 1 for queens without a recorded dam. */
  readonly isFounder: Uint8Array;
}

/** Shares by dam lines alone. */
export function maternalShareTable(table: DescentTable): ShareTable {
  const { keys, index, damStart, dam, damProbability, order } = table;
  const isFounder = Uint8Array.from(keys, (_, row) => (damStart[row] === damStart[row + 1] ? 1 : 0));
  return { keys, index, parentStart: damStart, parent: dam, coefficient: damProbability, order, isFounder };
}

/**
 * Shares of all genes, drones included. Rows: queens, then the mates of each queen, then the pools.
 * Throws when descent through pools goes in a circle.
 */
export function geneShareTable(graph: RegistryGraph, table: DescentTable): ShareTable {
  const queens = table.keys.length;
  const pools = graph.filterNodes((_key, attributes) => attributes.type === 'pool').sort();
  const poolRow = new Map(pools.map((key, k) => [key, 2 * queens + k]));
  const rowOf = (key: string): number => table.index.get(key) ?? poolRow.get(key)!;
  const builder = rowBuilder();
  for (let row = 0; row < queens; row += 1) {
    for (let e = table.damStart[row]!; e < table.damStart[row + 1]!; e += 1) {
      builder.add(table.dam[e]!, table.damProbability[e]! / 2);
      builder.add(queens + table.dam[e]!, table.damProbability[e]! / 2);
    }
    builder.close();
  }
  for (const key of [...table.keys, ...pools]) {
    graph.forEachOutboundEdge(key, (_edge, attributes, _source, target) => {
      if (attributes.type !== 'mated-in' && attributes.type !== 'drones-from') return;
      builder.add(rowOf(target), attributes.share);
    });
    builder.close();
  }
  const { parentStart, parent, coefficient } = builder.finish();
  const name = (row: number): string =>
    table.keys[row] ?? table.keys[row - queens] ?? pools[row - 2 * queens]!;
  const isFounder = maternalShareTable(table).isFounder;
  const order = parentsFirst(parentStart, parent, name);
  return { keys: table.keys, index: table.index, parentStart, parent, coefficient, order, isFounder };
}

function rowBuilder() {
  const starts = [0];
  const parents: number[] = [];
  const coefficients: number[] = [];
  return {
    add(parent: number, coefficient: number): void {
      parents.push(parent);
      coefficients.push(coefficient);
    },
    close(): void {
      starts.push(parents.length);
    },
    finish: () => ({
      parentStart: Int32Array.from(starts),
      parent: Int32Array.from(parents),
      coefficient: Float64Array.from(coefficients),
    }),
  };
}

/** Founder shares of one queen (node key). Throws on a key that is no queen. */
export function founderShares(table: ShareTable, queen: string): FounderShares {
  return groupFounderShares(table, new Map([[queen, 1]]));
}

/**
 * Mean founder shares of a group: each queen's node key with her weight; weights are divided by their sum.
 */
export function groupFounderShares(table: ShareTable, weights: ReadonlyMap<string, number>): FounderShares {
  const value = new Float64Array(table.parentStart.length - 1);
  let total = 0;
  for (const [key, weight] of weights) {
    const row = table.index.get(key);
    if (row === undefined) throw new Error(`${key} is no queen of the registry graph.`);
    value[row]! += weight;
    total += weight;
  }
  sweepToParents(table, value);
  const shares: FounderShare[] = [];
  let known = 0;
  table.isFounder.forEach((founder, row) => {
    const share = founder === 1 ? value[row]! / total : 0;
    if (share === 0) return;
    known += share;
    shares.push({ founder: table.keys[row]!, share });
  });
  shares.sort((a, b) => b.share - a.share || (a.founder < b.founder ? -1 : 1));
  return { shares, unrecorded: Math.max(0, 1 - known) };
}

function sweepToParents(table: ShareTable, value: Float64Array): void {
  const { order, parentStart, parent, coefficient } = table;
  for (let k = order.length - 1; k >= 0; k -= 1) {
    const row = order[k]!;
    const here = value[row]!;
    if (here === 0) continue;
    for (let e = parentStart[row]!; e < parentStart[row + 1]!; e += 1) {
      value[parent[e]!]! += coefficient[e]! * here;
    }
  }
}
