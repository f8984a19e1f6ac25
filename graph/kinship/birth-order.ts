/**
 * Puts the entities of a pedigree in birth order: each after all it descends from.
 *   level(e) = 0 without dependencies, otherwise 1 + the greatest level of its dependencies.
 * Sorted by level and, within a level, by the place of the (first) dam, so that sisters stand together and the
 * sweeps walk through memory instead of jumping. Renumbering the input moves no coefficient.
 * Cost: O(entities + dependencies), and a sort of each level.
 */
import type { Dependencies } from './dependencies.ts';

/** Level of each entity, or undefined where some entity descends from itself. */
export function levels({ entities, count, at }: Dependencies): Int32Array | undefined {
  const OPEN = -2;
  const level = new Int32Array(entities).fill(-1);
  const cursor = new Int32Array(entities);
  const stack: number[] = [];
  for (let root = 0; root < entities; root++) {
    if (level[root] !== -1) continue;
    stack.push(root);
    level[root] = OPEN;
    while (stack.length > 0) {
      const entity = stack[stack.length - 1]!;
      if (cursor[entity]! < count(entity)) {
        const next = at(entity, cursor[entity]!);
        cursor[entity]!++;
        if (level[next] === OPEN) return undefined;
        if (level[next] === -1) {
          stack.push(next);
          level[next] = OPEN;
        }
      } else {
        let greatest = -1;
        for (let k = cursor[entity]! - 1; k >= 0; k--) greatest = Math.max(greatest, level[at(entity, k)]!);
        level[entity] = greatest + 1;
        stack.pop();
      }
    }
  }
  return level;
}

/** Entities in birth order, given their levels. */
export function birthOrder(dependencies: Dependencies, level: Int32Array): Int32Array {
  const { entities, count, at } = dependencies;
  let depth = 0;
  for (let entity = 0; entity < entities; entity++) depth = Math.max(depth, level[entity]! + 1);
  const start = new Int32Array(depth + 1);
  for (let entity = 0; entity < entities; entity++) start[level[entity]! + 1]!++;
  for (let k = 0; k < depth; k++) start[k + 1]! += start[k]!;
  const order = new Int32Array(entities);
  const next = start.slice();
  for (let entity = 0; entity < entities; entity++) order[next[level[entity]!]!++] = entity;
  const place = new Int32Array(entities);
  for (let k = 0; k < depth; k++) {
    const keys = new Float64Array(start[k + 1]! - start[k]!);
    for (let j = 0; j < keys.length; j++) {
      const entity = order[start[k]! + j]!;
      keys[j] = (count(entity) > 0 ? place[at(entity, 0)]! : 0) * entities + entity;
    }
    keys.sort();
    for (let j = 0; j < keys.length; j++) {
      const entity = keys[j]! % entities;
      order[start[k]! + j] = entity;
      place[entity] = start[k]! + j;
    }
  }
  return order;
}
