/**
 * The dam line of a queen: from her, by the most probable dam each time, to the founder.
 *
 *   path = q0, q1, ... qk   where q(i+1) is the most probable dam of q(i) and qk has none
 *   probability = product over i of p(q(i) is a daughter of q(i+1))
 *
 * The step is the most probable dam, not the most probable whole path, so that every path is a piece of the
 * one tree that the lines are drawn by. Source: the definition itself. Cost O(generations).
 * Unknown: a founder is her own path, with probability 1.
 */
import { mostProbableDam } from './dams.ts';
import type { RegistryGraph } from './registry-graph.ts';

export interface MaternalPath {
  /** Node keys from the queen herself to the founder. */
  readonly keys: readonly string[];
  /** Node key of the founder: the last of `keys`. */
  readonly founder: string;
  /** Probability (0..1] that every step is right. */
  readonly probability: number;
}

/** The most probable dam line of the queen at this node key. Throws when the graph holds a circle of dams. */
export function maternalPath(graph: RegistryGraph, queen: string): MaternalPath {
  const keys = [queen];
  const seen = new Set(keys);
  let founder = queen;
  let probability = 1;
  for (let step = mostProbableDam(graph, queen); step; step = mostProbableDam(graph, founder)) {
    if (seen.has(step.dam)) throw new Error(`The registry graph holds a circle of dams through ${step.dam}.`);
    founder = step.dam;
    probability *= step.probability;
    seen.add(founder);
    keys.push(founder);
  }
  return { keys, founder, probability };
}
