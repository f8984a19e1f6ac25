/**
 * The nearest dam that two queens share on their most probable dam lines.
 *
 *   c = the first queen on a's path that is on b's path too
 *   probability = product of the step probabilities from a to c and from b to c
 *
 * Source: the definition itself (lowest common ancestor of a tree, by climbing). Cost O(generations).
 * Unknown: undefined when the two lines end in different founders.
 */
import { mostProbableDam } from './dams.ts';
import { maternalPath } from './maternal-path.ts';
import type { RegistryGraph } from './registry-graph.ts';

export interface CommonDam {
  /** Node key of the shared dam; one of the two queens when she is the other's ancestor. */
  readonly key: string;
  /** Steps from the first queen up to her, 0 or more. */
  readonly fromFirst: number;
  /** Steps from the second queen up to her, 0 or more. */
  readonly fromSecond: number;
  /** Probability (0..1] that all those steps are right. */
  readonly probability: number;
}

/** The nearest common dam of two queens (node keys), or undefined when they are of different lines. */
export function nearestCommonDam(graph: RegistryGraph, first: string, second: string): CommonDam | undefined {
  const steps = new Map(maternalPath(graph, first).keys.map((key, index) => [key, index]));
  let key = second;
  let fromSecond = 0;
  let probability = 1;
  while (!steps.has(key)) {
    const step = mostProbableDam(graph, key);
    if (!step) return undefined;
    key = step.dam;
    fromSecond += 1;
    probability *= step.probability;
  }
  const fromFirst = steps.get(key)!;
  return { key, fromFirst, fromSecond, probability: probability * climbed(graph, first, fromFirst) };
}

/** Probability of the first `count` steps up from the queen. */
function climbed(graph: RegistryGraph, queen: string, count: number): number {
  let key = queen;
  let probability = 1;
  for (let index = 0; index < count; index += 1) {
    const step = mostProbableDam(graph, key)!;
    probability *= step.probability;
    key = step.dam;
  }
  return probability;
}
