/**
 * Finds the loops of descent that make a pedigree impossible: an entity that descends from itself. Each knot
 * (strongly connected set) of the dependencies is told once, by one of its loops.
 * Source: Tarjan 1972, Depth-first search and linear graph algorithms, SIAM J. Comput. 1:146 (from memory, not
 * re-read). Cost: O(entities + dependencies).
 */
import type { Dependencies } from './dependencies.ts';

/** One loop for each knot: entities, each followed by one it waits for, the last waiting for the first. */
export function loops(dependencies: Dependencies): number[][] {
  return knots(dependencies).map((knot) => oneLoop(dependencies, knot));
}

/** Sets of entities that all descend from each other. */
function knots({ entities, count, at }: Dependencies): Set<number>[] {
  const found: Set<number>[] = [];
  const seenAt = new Int32Array(entities).fill(-1);
  const lowest = new Int32Array(entities);
  const cursor = new Int32Array(entities);
  const isOpen = new Uint8Array(entities);
  const open: number[] = [];
  const path: number[] = [];
  let clock = 0;
  const enter = (entity: number): void => {
    seenAt[entity] = lowest[entity] = clock++;
    isOpen[entity] = 1;
    open.push(entity);
    path.push(entity);
  };
  const leave = (entity: number): void => {
    path.pop();
    const above = path[path.length - 1];
    if (above !== undefined) lowest[above] = Math.min(lowest[above]!, lowest[entity]!);
    if (lowest[entity] !== seenAt[entity]) return;
    const knot = new Set<number>(open.splice(open.lastIndexOf(entity)));
    for (const member of knot) isOpen[member] = 0;
    const waitsForItself = Array.from({ length: count(entity) }, (_, k) => at(entity, k)).includes(entity);
    if (knot.size > 1 || waitsForItself) found.push(knot);
  };
  for (let root = 0; root < entities; root++) {
    if (seenAt[root] === -1) enter(root);
    while (path.length > 0) {
      const entity = path[path.length - 1]!;
      if (cursor[entity]! === count(entity)) {
        leave(entity);
        continue;
      }
      const next = at(entity, cursor[entity]!);
      cursor[entity]!++;
      if (seenAt[next] === -1) enter(next);
      else if (isOpen[next]) lowest[entity] = Math.min(lowest[entity]!, seenAt[next]!);
    }
  }
  return found;
}

/** Walks inside a knot until an entity comes round again. */
function oneLoop({ count, at }: Dependencies, knot: ReadonlySet<number>): number[] {
  const walk: number[] = [];
  const placeOf = new Map<number, number>();
  let entity = Math.min(...knot);
  while (!placeOf.has(entity)) {
    placeOf.set(entity, walk.length);
    walk.push(entity);
    let k = 0;
    while (k < count(entity) - 1 && !knot.has(at(entity, k))) k++;
    entity = at(entity, k);
  }
  return walk.slice(placeOf.get(entity)!);
}
