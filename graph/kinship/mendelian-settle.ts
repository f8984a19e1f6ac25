/** Writes what follows for one node once all it depends on is known. Formulas and sources: mendelian.ts. Cost: O(parents). */
import type { MendelianState } from './mendelian-state.ts';

/** Writes a node's variance and diagonal; gives it a row where others descend from it. */
function settleNode(state: MendelianState, node: number, diagonal: number, mendelian: number): void {
  const { known, layout, rowOf } = state;
  state.diagonal[node] = diagonal;
  state.mendelian[node] = mendelian;
  if (!state.isAncestor[node]) return;
  const row = known.count++;
  rowOf[node] = row;
  known.mendelian[row] = mendelian;
  let pair = known.start[row]!;
  for (let k = layout.parentStart[node]!; k < layout.parentStart[node + 1]!; k++) {
    known.parent[pair] = rowOf[layout.parent[k]!]!;
    known.coefficient[pair++] = layout.coefficient[k]!;
  }
  known.start[row + 1] = pair;
}

export function settleBackground(state: MendelianState, background: number): void {
  const own = 2 * state.resolved.backgroundKinship[background]!;
  settleNode(state, state.layout.entityNode[background]!, own, own);
  state.isKnown[background] = 1;
  state.newlyKnown.push(background);
}

/** `square`: c' A c over the parents of a queen with a dam; unused for a founder. */
export function settleQueen(state: MendelianState, queen: number, square: number): void {
  const { resolved, layout } = state;
  const node = layout.queenNode[queen]!;
  const background = resolved.founderBackground[queen]!;
  if (background >= 0) {
    const theta = resolved.backgroundKinship[background]!;
    settleNode(state, node, 1 + theta, 1 - theta);
  } else {
    let inbreeding = 0;
    for (let k = resolved.dams.start[queen]!; k < resolved.dams.start[queen + 1]!; k++) {
      inbreeding += (resolved.dams.share[k]! * state.relationToMates[resolved.dams.item[k]!]!) / 2;
    }
    settleNode(state, node, 1 + inbreeding, Math.max(0, 1 + inbreeding - square));
  }
  state.isKnown[resolved.firstQueen + queen] = 1;
  state.newlyKnown.push(resolved.firstQueen + queen);
}

/** A drone is one gamete: haploid, alike to himself, d = 2 - A[mother][mother]. */
export function settleDrone(state: MendelianState, drone: number): void {
  const { resolved, layout } = state;
  const mother = layout.queenNode[resolved.droneMother[drone]!]!;
  const entity = resolved.firstDrone + drone;
  settleNode(state, layout.entityNode[entity]!, 2, 2 - state.diagonal[mother]!);
  state.isKnown[entity] = 1;
  state.newlyKnown.push(entity);
}

/** A source's own node, where it has one: a mean of many, without variance of its own. */
export function settlePool(state: MendelianState, source: number): void {
  const node = state.layout.entityNode[state.resolved.firstSource + source]!;
  if (node >= 0) settleNode(state, node, state.squares[source]!, 0);
}

/** The mates of a queen whose source's square is known. */
export function settleMates(state: MendelianState, queen: number): void {
  const { resolved, layout } = state;
  const source = resolved.sourceOf[queen]!;
  const square = state.squares[source]!;
  const own = resolved.ofKnownDrones[source] ? 0 : Math.max(0, 2 - square) / resolved.effectiveMates[queen]!;
  settleNode(state, layout.matesNode[queen]!, square + own, own);
}

/** c' A c over the parents of a queen with one certain dam: from what is known of dam and mates. */
export function squareOfOneDam({ layout, diagonal, relationToMates }: MendelianState, dam: number): number {
  const damNode = layout.queenNode[dam]!;
  const matesNode = layout.matesNode[dam]!;
  return (diagonal[damNode]! + diagonal[matesNode]! + 2 * relationToMates[dam]!) / 4;
}
