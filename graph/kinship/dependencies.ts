/**
 * What each entity of a pedigree waits for: a founder for her background, a queen for her possible dams and
 * the drone sources those met, a single drone for his mother, a drone source for its drone mothers,
 * backgrounds and drones. Entities are numbered as in resolve-input.ts.
 */
import type { Resolved } from './resolve-input.ts';

export interface Dependencies {
  readonly entities: number;
  readonly count: (entity: number) => number;
  /** The k-th dependency of an entity, 0 <= k < count(entity). */
  readonly at: (entity: number, k: number) => number;
}

/** Read off the resolved lists when asked for: nothing is stored. Cost O(1) a question. */
export function dependencies(resolved: Resolved): Dependencies {
  const { firstQueen, firstDrone, firstSource, dams, sources, founderBackground, sourceOf, queenOfMating } =
    resolved;
  const count = (entity: number): number => {
    if (entity < firstQueen) return 0;
    if (entity < firstDrone) {
      const queen = entity - firstQueen;
      return founderBackground[queen]! >= 0 ? 1 : 2 * (dams.start[queen + 1]! - dams.start[queen]!);
    }
    if (entity < firstSource) return 1;
    const source = entity - firstSource;
    return sources.start[source + 1]! - sources.start[source]!;
  };
  const queenDependency = (queen: number, k: number): number => {
    if (founderBackground[queen]! >= 0) return founderBackground[queen]!;
    const mating = dams.item[dams.start[queen]! + (k >> 1)]!;
    return k & 1 ? firstSource + sourceOf[mating]! : firstQueen + queenOfMating[mating]!;
  };
  const at = (entity: number, k: number): number => {
    if (entity < firstDrone) return queenDependency(entity - firstQueen, k);
    if (entity < firstSource) return firstQueen + resolved.droneMother[entity - firstDrone]!;
    return sources.item[sources.start[entity - firstSource]! + k]!;
  };
  return { entities: firstSource + sources.rows, count, at };
}
