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
export interface Layout {
  readonly nodes: Omit<Pedigree, 'mendelian' | 'diagonal' | 'inbreeding' | 'relationToMates'>;
  /** Node of each entity of the resolved input; -1 for a source without a node of its own. */
  readonly entityNode: Int32Array;
  /** Mates node of each mating; -1 for a queen without one. */
  readonly nodeOfMating: Int32Array;
}

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

interface Work extends Omit<Layout, 'nodes'> {
  readonly resolved: Resolved;
  readonly writer: Writer;
  readonly hasNode: Uint8Array;
}

/** `order`: all entities in birth order. */
export function layOutNodes(input: PedigreeInput, resolved: Resolved, order: Int32Array): Layout {
  const { sourceOf } = resolved;
  const hasNode = sourcesWithNodes(resolved, input.pools.length);
  const work: Work = {
    resolved,
    hasNode,
    writer: newWriter(resolved, hasNode),
    entityNode: new Int32Array(order.length).fill(-1),
    nodeOfMating: new Int32Array(sourceOf.length).fill(-1),
  };
  for (const entity of order) work.entityNode[entity] = addEntity(work, entity);
  for (let mating = 0; mating < sourceOf.length; mating++)
    if (sourceOf[mating]! >= 0) ensureMates(work, mating);
  const { entityNode, nodeOfMating, writer } = work;
  const { size, kind, parentStart, parent, coefficient } = writer;
  const matesNode = nodeOfMating.slice(0, input.queens.length);
  const names = named(input, resolved, entityNode);
  return {
    nodes: { size, kind, parentStart, parent, coefficient, matesNode, ...names },
    entityNode,
    nodeOfMating,
  };
}

/** Writes the node of an entity whose parents have theirs; -1 for a source that needs none. */
function addEntity(work: Work, entity: number): number {
  const { resolved, writer, hasNode, entityNode } = work;
  const { firstQueen, firstDrone, firstSource, droneMother } = resolved;
  if (entity < firstQueen) return close(writer, NodeKind.background);
  if (entity < firstDrone) return addQueen(work, entity - firstQueen);
  if (entity < firstSource) {
    link(writer, entityNode[firstQueen + droneMother[entity - firstDrone]!]!, 1);
    return close(writer, NodeKind.drone);
  }
  if (!hasNode[entity - firstSource]) return -1;
  linkSource(work, entity - firstSource);
  return close(writer, NodeKind.pool);
}

function addQueen(work: Work, queen: number): number {
  const { resolved, writer, entityNode, nodeOfMating } = work;
  const { firstQueen, dams, founderBackground, queenOfMating } = resolved;
  if (founderBackground[queen]! >= 0) {
    link(writer, entityNode[founderBackground[queen]!]!, 1);
    return close(writer, NodeKind.founder);
  }
  for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) ensureMates(work, dams.item[k]!);
  for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) {
    const mating = dams.item[k]!;
    link(writer, entityNode[firstQueen + queenOfMating[mating]!]!, dams.share[k]! / 2);
    link(writer, nodeOfMating[mating]!, dams.share[k]! / 2);
  }
  return close(writer, NodeKind.queen);
}

function ensureMates(work: Work, mating: number): void {
  const { resolved, writer, hasNode, entityNode, nodeOfMating } = work;
  if (nodeOfMating[mating] !== -1) return;
  const source = resolved.sourceOf[mating]!;
  if (hasNode[source]) link(writer, entityNode[resolved.firstSource + source]!, 1);
  else linkSource(work, source);
  nodeOfMating[mating] = close(writer, NodeKind.mates);
}

function linkSource({ resolved: { sources }, writer, entityNode }: Work, source: number): void {
  for (let k = sources.start[source]!; k < sources.start[source + 1]!; k++) {
    link(writer, entityNode[sources.item[k]!]!, sources.share[k]!);
  }
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
