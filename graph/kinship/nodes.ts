/**
 * Lays the structural nodes of a checked pedigree out in birth order, parents in compressed rows:
 *   founder: her background (1); queen: each possible dam (p/2) and that dam's mates (p/2);
 *   pool: its drone mothers, backgrounds or drones (shares); mates: their pool (1), or the list itself where
 *   only one queen has it; single drone: his mother (1).
 * The mates of a dam stand right before her first daughter, mates without daughters at the end.
 * Cost: O(entities + shares).
 */
import { NodeKind, type Pedigree } from './pedigree.ts';
import type { PedigreeInput } from './pedigree-input.ts';
import type { Resolved } from './resolve-input.ts';

/** A pedigree whose Mendelian variances and diagonal are still to be computed. */
export type Layout = Omit<Pedigree, 'mendelian' | 'diagonal' | 'inbreeding' | 'relationToMates'> & {
  /** Node of each entity of the resolved input; -1 for a source without a node of its own. */
  readonly entityNode: Int32Array;
};

interface Writer {
  readonly kind: Uint8Array;
  readonly parentStart: Int32Array;
  readonly parent: Int32Array;
  readonly coefficient: Float64Array;
  size: number;
  pairs: number;
}

function link(writer: Writer, parent: number, coefficient: number): void {
  writer.parent[writer.pairs] = parent;
  writer.coefficient[writer.pairs++] = coefficient;
}

/** Ends the node whose parents were just linked; returns its number. */
function close(writer: Writer, kind: NodeKind): number {
  writer.kind[writer.size] = kind;
  writer.parentStart[writer.size + 1] = writer.pairs;
  return writer.size++;
}

/** Sources that become nodes: every named pool, and a list that two or more queens share. */
function sourcesWithNodes(resolved: Resolved, pools: number): Uint8Array {
  const users = new Int32Array(resolved.sources.rows).fill(2, 0, pools);
  for (const source of resolved.sourceOf) if (source >= 0) users[source]!++;
  return Uint8Array.from(users, (count) => (count > 1 ? 1 : 0));
}

function newWriter(resolved: Resolved, hasNode: Uint8Array): Writer {
  const { founderBackground, dams, sources, sourceOf, firstSource } = resolved;
  const mated = sourceOf.reduce((count, source) => (source >= 0 ? count + 1 : count), 0);
  const founders = founderBackground.reduce((count, background) => (background >= 0 ? count + 1 : count), 0);
  const drones = firstSource - resolved.firstDrone;
  const nodes = firstSource + mated + hasNode.reduce((count, has) => count + has, 0);
  let pairs = founders + 2 * dams.item.length + drones;
  for (let source = 0; source < sources.rows; source++) {
    if (hasNode[source]) pairs += sources.start[source + 1]! - sources.start[source]!;
  }
  for (const source of sourceOf) {
    if (source >= 0) pairs += hasNode[source] ? 1 : sources.start[source + 1]! - sources.start[source]!;
  }
  return {
    kind: new Uint8Array(nodes),
    parentStart: new Int32Array(nodes + 1),
    parent: new Int32Array(pairs),
    coefficient: new Float64Array(pairs),
    size: 0,
    pairs: 0,
  };
}

/** `order`: all entities in birth order. */
export function layOutNodes(input: PedigreeInput, resolved: Resolved, order: Int32Array): Layout {
  const { firstQueen, firstDrone, firstSource, dams, sources, sourceOf, founderBackground } = resolved;
  const hasNode = sourcesWithNodes(resolved, input.pools.length);
  const writer = newWriter(resolved, hasNode);
  const entityNode = new Int32Array(order.length).fill(-1);
  const matesNode = new Int32Array(input.queens.length).fill(-1);

  const linkSource = (source: number): void => {
    for (let k = sources.start[source]!; k < sources.start[source + 1]!; k++) {
      link(writer, entityNode[sources.item[k]!]!, sources.share[k]!);
    }
  };
  const ensureMates = (queen: number): void => {
    if (matesNode[queen] !== -1) return;
    const source = sourceOf[queen]!;
    if (hasNode[source]) link(writer, entityNode[firstSource + source]!, 1);
    else linkSource(source);
    matesNode[queen] = close(writer, NodeKind.mates);
  };
  const addQueen = (queen: number): number => {
    if (founderBackground[queen]! >= 0) {
      link(writer, entityNode[founderBackground[queen]!]!, 1);
      return close(writer, NodeKind.founder);
    }
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) ensureMates(dams.item[k]!);
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) {
      const dam = dams.item[k]!;
      link(writer, entityNode[firstQueen + dam]!, dams.share[k]! / 2);
      link(writer, matesNode[dam]!, dams.share[k]! / 2);
    }
    return close(writer, NodeKind.queen);
  };
  const addEntity = (entity: number): number => {
    if (entity < firstQueen) return close(writer, NodeKind.background);
    if (entity < firstDrone) return addQueen(entity - firstQueen);
    if (entity < firstSource) {
      link(writer, entityNode[firstQueen + resolved.droneMother[entity - firstDrone]!]!, 1);
      return close(writer, NodeKind.drone);
    }
    if (!hasNode[entity - firstSource]) return -1;
    linkSource(entity - firstSource);
    return close(writer, NodeKind.pool);
  };

  for (const entity of order) entityNode[entity] = addEntity(entity);
  for (let queen = 0; queen < sourceOf.length; queen++) if (sourceOf[queen]! >= 0) ensureMates(queen);
  return { ...named(input, resolved, entityNode), ...writer, matesNode, entityNode };
}

const nodesById = (records: readonly { readonly id: string }[], nodes: Int32Array, first: number) =>
  new Map(records.map(({ id }, index) => [id, nodes[first + index]!] as const));

function named(input: PedigreeInput, resolved: Resolved, nodes: Int32Array) {
  const { firstQueen, firstDrone, firstSource, queenIndex } = resolved;
  return {
    queenIds: input.queens.map(({ id }) => id),
    queenIndex,
    queenNode: nodes.slice(firstQueen, firstDrone),
    poolNode: nodesById(input.pools, nodes, firstSource),
    backgroundNode: nodesById(input.backgrounds, nodes, 0),
    droneNode: nodesById(input.drones, nodes, firstDrone),
  };
}
