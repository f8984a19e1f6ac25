/**
 * Mendelian variances, the diagonal of A, and A[queen][her mates], for every node of a pedigree.
 *   background b: A = 2 theta_b, d = 2 theta_b          founder: A = 1 + theta_b, d = 1 - theta_b
 *   single drone: A = 2, d = 2 - A[mother]              pool:    A = q, d = 0
 *   mates, n effective, of a pool with square q: A = 2/n + (1 - 1/n) q, d = (2 - q)/n
 *   mates given as single drones: A = q, d = 0 (their shares already say how often two draws are one drone)
 *   queen with dams D_k, probabilities p_k: A = 1 + F, F = sum p_k A[D_k][mates of D_k]/2, d = A - q
 * with theta_b the kinship of two gametes of b and q = c' A c over the node's parents.
 *
 * A queen's d needs one column: that of the drones her dam met, read at the dam. All dams that met the same
 * drones read the same column. So the registry is gone through in waves: a column is computed when all its
 * readers and all their ancestors are known (a season after a season, in practice); only when nothing is
 * complete, as when a pool is met by mother and daughter, is a column computed for the readers ready so far.
 * Only rows that stand in somebody's ancestry take part.
 * Sources: Colleau 2002, Genet. Sel. Evol. 34:409 (products with A by two sweeps); Legarra et al. 2015,
 * Genetics 200:455 (backgrounds as metafounders). Both from memory, not re-read.
 * Cost: O(distinct drone sources * rows in somebody's ancestry / 8 + nodes).
 */
import { evaluateBatch } from './column-batch.ts';
import {
  hasDaughters,
  settleBackground,
  settleDrone,
  settleMates,
  settlePool,
  settleQueen,
  squareOfOneDam,
} from './mendelian-settle.ts';
import { type MendelianState, type MendelianTerms, newMendelianState } from './mendelian-state.ts';
import type { Layout } from './nodes.ts';
import { numberLists } from './number-lists.ts';
import type { Resolved } from './resolve-input.ts';
import { lastRowOfQueen } from './row-forms.ts';

/** `level`: the level of each entity in birth order, which says which of several half-ready columns is earliest. */
export function mendelianTerms(resolved: Resolved, layout: Layout, level: Int32Array): MendelianTerms {
  const state = newMendelianState(resolved, layout, level);
  const open = new Set<number>();
  for (let background = 0; background < resolved.firstQueen; background++)
    settleBackground(state, background);
  for (let queen = 0; queen < resolved.dams.rows; queen++) {
    if (resolved.founderBackground[queen]! >= 0) settleQueen(state, queen, 0);
  }
  for (;;) {
    spread(state, open);
    const sources = nextSources(state, open, level);
    const batch = [...state.familiesReady.splice(0), ...sources];
    if (batch.length === 0) break;
    runBatch(state, batch, open);
  }
  if (state.isKnown.includes(0))
    throw new Error('Bug: some queens were never reached, in a pedigree without loops.');
  return state;
}

/** Tells sources and single drones of what has become known, until nothing more follows without a column. */
function spread(state: MendelianState, open: Set<number>): void {
  const { resolved, sourcesHolding, readersPending, damsWaiting, dronesOf, matingsOf, newlyKnown } = state;
  const { firstQueen, firstDrone, sourceOf } = resolved;
  for (let entity = newlyKnown.pop(); entity !== undefined; entity = newlyKnown.pop()) {
    for (let k = sourcesHolding.start[entity]!; k < sourcesHolding.start[entity + 1]!; k++) {
      const source = sourcesHolding.item[k]!;
      state.itemsPending[source]!--;
      if (state.itemsPending[source] === 0) open.add(source);
    }
    if (entity < firstQueen || entity >= firstDrone) continue;
    const queen = entity - firstQueen;
    for (let k = dronesOf.start[queen]!; k < dronesOf.start[queen + 1]!; k++)
      settleDrone(state, dronesOf.item[k]!);
    for (let k = matingsOf.start[queen]!; k < matingsOf.start[queen + 1]!; k++) {
      const mating = matingsOf.item[k]!;
      readersPending[sourceOf[mating]!]!--;
      if (hasDaughters(state, mating)) damsWaiting[sourceOf[mating]!]!++;
    }
  }
}

/** Sources whose readers are all known; failing those, the earliest that some dam waits for. */
function nextSources(state: MendelianState, open: ReadonlySet<number>, level: Int32Array): number[] {
  const complete: number[] = [];
  let earliest = Number.POSITIVE_INFINITY;
  let partial: number[] = [];
  for (const source of open) {
    if (state.readersPending[source] === 0) complete.push(source);
    else if (complete.length === 0 && state.damsWaiting[source]! > 0) {
      const own = level[state.resolved.firstSource + source]!;
      if (own < earliest) {
        earliest = own;
        partial = [];
      }
      if (own === earliest) partial.push(source);
    }
  }
  return complete.length > 0 || state.familiesReady.length > 0 ? complete : partial;
}

/** Matings with the drones of a source whose queen is known, and which have not been read. */
function readersNow(
  { resolved, readersOf, isKnown, relationToMates }: MendelianState,
  source: number,
): number[] {
  const ready: number[] = [];
  for (let k = readersOf.start[source]!; k < readersOf.start[source + 1]!; k++) {
    const mating = readersOf.item[k]!;
    const queen = resolved.firstQueen + resolved.queenOfMating[mating]!;
    if (isKnown[queen] && Number.isNaN(relationToMates[mating]!)) ready.push(mating);
  }
  return ready;
}

function runBatch(state: MendelianState, tasks: readonly number[], open: Set<number>): void {
  const matings: number[] = [];
  const places: number[] = [];
  tasks.forEach((task, place) => {
    if (task >= state.firstFamily) return;
    for (const mating of readersNow(state, task)) {
      matings.push(mating);
      places.push(place);
    }
  });
  const readers = numberLists(tasks.length, places, matings);
  const { squares, readings } = evaluateBatch(state, { tasks, readers });
  readers.item.forEach((mating, k) => {
    state.relationToMates[mating] = readings[k]!;
  });
  tasks.forEach((task, place) => {
    if (task >= state.firstFamily) finishFamily(state, task, squares[place]!);
    else finishSource(state, task, squares[place]!, open);
  });
  for (const mating of inRowOrder(state, matings)) finishReader(state, mating);
}

/** Matings by the row their queen comes from, so that the rows of families follow the order of memory. */
function inRowOrder(state: MendelianState, matings: readonly number[]): Float64Array {
  const count = state.rowOfFamily.length;
  const keys = new Float64Array(matings.length);
  for (let k = 0; k < matings.length; k++) {
    const mating = matings[k]!;
    keys[k] = (lastRowOfQueen(state, state.resolved.queenOfMating[mating]!) + 1) * count + mating;
  }
  keys.sort();
  for (let k = 0; k < keys.length; k++) keys[k]! %= count;
  return keys;
}

function finishFamily(state: MendelianState, task: number, square: number): void {
  const { queensOfFamily, firstFamily } = state;
  const family = task - firstFamily;
  for (let k = queensOfFamily.start[family]!; k < queensOfFamily.start[family + 1]!; k++) {
    settleQueen(state, queensOfFamily.item[k]!, square);
  }
}

function finishSource(state: MendelianState, source: number, square: number, open: Set<number>): void {
  if (state.readersPending[source] === 0) open.delete(source);
  state.damsWaiting[source] = 0;
  if (!Number.isNaN(state.squares[source]!)) return;
  state.squares[source] = square;
  settlePool(state, source);
}

/** A mating whose queen's relation to the mates is now known: they follow, and daughters whose dams are all read. */
function finishReader(state: MendelianState, mating: number): void {
  const { daughtersOf, damsPending, familyOf, firstFamily, queensOfFamily, familiesReady } = state;
  settleMates(state, mating);
  for (let k = daughtersOf.start[mating]!; k < daughtersOf.start[mating + 1]!; k++) {
    const daughter = daughtersOf.item[k]!;
    damsPending[daughter]!--;
    if (damsPending[daughter]! > 0) continue;
    const family = familyOf[daughter]!;
    if (family < 0) settleQueen(state, daughter, squareOfOneDam(state, mating));
    else if (queensOfFamily.item[queensOfFamily.start[family - firstFamily]!] === daughter) {
      familiesReady.push(family);
    }
  }
}
