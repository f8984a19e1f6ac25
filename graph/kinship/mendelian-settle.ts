/** Writes what follows for one node once all it depends on is known. Formulas and sources: mendelian.ts. Cost: O(parents). */
import type { MendelianState } from './mendelian-state.ts';
import { addEntityRow, addFamilyRow, addSourceRow } from './row-forms.ts';

/** Writes a node's variance and diagonal. */
function settleNode(state: MendelianState, node: number, diagonal: number, mendelian: number): void {
  state.diagonal[node] = diagonal;
  state.mendelian[node] = mendelian;
}

/** Marks an entity as known, and gives it a row where it needs one. */
function announce(state: MendelianState, entity: number): void {
  addEntityRow(state, entity);
  state.isKnown[entity] = 1;
  state.newlyKnown.push(entity);
}

/** Settles the node of a background: its relationship with itself is twice the kinship within it. */
export function settleBackground(state: MendelianState, background: number): void {
  const own = 2 * state.resolved.backgroundKinship[background]!;
  settleNode(state, state.layout.entityNode[background]!, own, own);
  announce(state, background);
}

/** `square`: c' A c over the parents of a queen with a dam; unused for a founder. */
export function settleQueen(state: MendelianState, queen: number, square: number): void {
  const { resolved, layout } = state;
  const node = layout.nodes.queenNode[queen]!;
  const background = resolved.founderBackground[queen]!;
  if (background >= 0) {
    const theta = resolved.backgroundKinship[background]!;
    state.inbreeding[queen] = theta;
    settleNode(state, node, 1 + theta, 1 - theta);
  } else {
    let inbreeding = 0;
    for (let k = resolved.dams.start[queen]!; k < resolved.dams.start[queen + 1]!; k++) {
      inbreeding += (resolved.dams.share[k]! * state.relationToMates[resolved.dams.item[k]!]!) / 2;
    }
    state.inbreeding[queen] = inbreeding;
    settleNode(state, node, 1 + inbreeding, Math.max(0, 1 + inbreeding - square));
  }
  announce(state, resolved.firstQueen + queen);
}

/** A drone is one gamete: haploid, alike to himself, d = 2 - A[mother][mother]. */
export function settleDrone(state: MendelianState, drone: number): void {
  const { resolved, layout } = state;
  const mother = layout.nodes.queenNode[resolved.droneMother[drone]!]!;
  const entity = resolved.firstDrone + drone;
  settleNode(state, layout.entityNode[entity]!, 2, 2 - state.diagonal[mother]!);
  announce(state, entity);
}

/** A source's own node, where it has one: a mean of many, without variance of its own. */
export function settlePool(state: MendelianState, source: number): void {
  const node = state.layout.entityNode[state.resolved.firstSource + source]!;
  if (node >= 0) settleNode(state, node, state.squares[source]!, 0);
  addSourceRow(state, source);
}

/** The mates of one mating, when its source's square is known; with daughters, its family too. */
export function settleMates(state: MendelianState, mating: number): void {
  const { resolved, layout } = state;
  const source = resolved.sourceOf[mating]!;
  const square = state.squares[source]!;
  const mates = resolved.effectiveMates[resolved.queenOfMating[mating]!]!;
  const own = resolved.ofKnownDrones[source] ? 0 : Math.max(0, 2 - square) / mates;
  settleNode(state, layout.nodeOfMating[mating]!, square + own, own);
  if (hasDaughters(state, mating)) addFamilyRow(state, mating);
}

/** c' A c over the parents of a queen with one certain dam: from what is known of dam and mates. */
export function squareOfOneDam(state: MendelianState, mating: number): number {
  const { resolved, layout, diagonal, relationToMates } = state;
  const damNode = layout.nodes.queenNode[resolved.queenOfMating[mating]!]!;
  const matesNode = layout.nodeOfMating[mating]!;
  return (diagonal[damNode]! + diagonal[matesNode]! + 2 * relationToMates[mating]!) / 4;
}

export const hasDaughters = ({ daughtersOf }: MendelianState, mating: number): boolean =>
  daughtersOf.start[mating + 1]! > daughtersOf.start[mating]!;
