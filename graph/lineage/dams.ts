/**
 * The possible dams of one queen, most probable first.
 *
 *   dams(q) = the targets d of q's daughter-of edges, by falling probability p(d), ties by node key
 *
 * Unknown: a queen without a daughter-of edge is a founder (no dams). Probabilities may sum to less than 1;
 * the rest is a dam nobody recorded. Source: the definition itself. Cost O(edges of the queen).
 */
import type { ParentageEvidence, RegistryGraph } from './registry-graph.ts';

export interface PossibleDam {
  /** Node key of the dam. */
  readonly dam: string;
  /** Probability (0..1]. */
  readonly probability: number;
  readonly evidence: ParentageEvidence;
}

/** Orders node keys and ids the same way on every machine, whatever its language. */
export function compareKeys(a: string, b: string): number {
  if (a < b) return -1;
  return a > b ? 1 : 0;
}

/** All possible dams of the queen at this node key, most probable first. */
export function dams(graph: RegistryGraph, queen: string): PossibleDam[] {
  const found: PossibleDam[] = [];
  graph.forEachOutboundEdge(queen, (_edge, attributes, _source, target) => {
    if (attributes.type !== 'daughter-of') return;
    found.push({ dam: target, probability: attributes.probability, evidence: attributes.evidence });
  });
  if (found.length < 2) return found;
  return found.sort((a, b) => b.probability - a.probability || compareKeys(a.dam, b.dam));
}

/** Her most probable dam, or undefined for a founder. */
export function mostProbableDam(graph: RegistryGraph, queen: string): PossibleDam | undefined {
  return dams(graph, queen)[0];
}
