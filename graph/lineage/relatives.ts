/**
 * The ancestors and the descent of a queen, each once, nearest first.
 *
 * By dams alone a step leads from a queen to each possible dam. With drones a step also leads to the mothers
 * of the drones that dam met, named or through a pool: a drone is an unfertilised gamete of his mother, so she
 * stands one generation above the queen he fathered, as the dam does.
 *
 *   generations(x) = the fewest steps from the start to x
 *
 * Method: breadth-first search; every mating and pool is opened once. Source: the definition itself.
 * Cost O(nodes + edges reached); no recursion. Unknown dams and drones end the path.
 */
import type { RegistryGraph } from './registry-graph.ts';

export interface RelativesOptions {
  /** Whether to follow drones through pools and named drone mothers as well as dams. */
  readonly drones: boolean;
}

const RELATIVES_DEFAULTS: RelativesOptions = { drones: false };

export interface Relative {
  /** Node key of the queen. */
  readonly key: string;
  /** Fewest steps from the start, 1 or more. */
  readonly generations: number;
}

type Step = (
  graph: RegistryGraph,
  from: string,
  reach: (key: string) => void,
  open: (key: string) => boolean,
) => void;

/** All ancestors of the queen, nearest first. */
export function ancestors(
  graph: RegistryGraph,
  queen: string,
  options: Partial<RelativesOptions> = {},
): Relative[] {
  const { drones } = { ...RELATIVES_DEFAULTS, ...options };
  return search(graph, queen, drones ? toDamsAndDroneMothers : toDams);
}

/** All descent of the queen, nearest first. */
export function descent(
  graph: RegistryGraph,
  queen: string,
  options: Partial<RelativesOptions> = {},
): Relative[] {
  const { drones } = { ...RELATIVES_DEFAULTS, ...options };
  return search(graph, queen, drones ? toDaughtersAndThoseOfHerDrones : toDaughters);
}

function search(graph: RegistryGraph, start: string, step: Step): Relative[] {
  const found: Relative[] = [];
  const seen = new Set([start]);
  const opened = new Set<string>();
  const open = (key: string): boolean => !opened.has(key) && opened.add(key) !== undefined;
  const stepFrom = (key: string, generations: number) => {
    const reach = (next: string) => {
      if (seen.has(next)) return;
      seen.add(next);
      found.push({ key: next, generations: generations + 1 });
    };
    step(graph, key, reach, open);
  };
  stepFrom(start, 0);
  // The list grows while it is walked: what is found last is farthest.
  for (const { key, generations } of found) stepFrom(key, generations);
  return found;
}

const toDams: Step = (graph, from, reach) => {
  graph.forEachOutboundEdge(from, (_edge, attributes, _source, target) => {
    if (attributes.type === 'daughter-of') reach(target);
  });
};

const toDaughters: Step = (graph, from, reach) => {
  graph.forEachInboundEdge(from, (_edge, attributes, source) => {
    if (attributes.type === 'daughter-of') reach(source);
  });
};

const toDamsAndDroneMothers: Step = (graph, from, reach, open) => {
  toDams(graph, from, reach, open);
  graph.forEachOutboundEdge(from, (_edge, attributes, _source, dam) => {
    if (attributes.type !== 'daughter-of' || !open(`mating|${dam}`)) return;
    graph.forEachOutboundEdge(dam, (_mating, mating, _dam, source) => {
      if (mating.type !== 'mated-in') return;
      if (graph.getNodeAttribute(source, 'type') === 'queen') reach(source);
      else if (open(source)) toDroneMothers(graph, source, reach);
    });
  });
};

function toDroneMothers(graph: RegistryGraph, pool: string, reach: (key: string) => void): void {
  graph.forEachOutboundEdge(pool, (_edge, attributes, _source, mother) => {
    if (attributes.type === 'drones-from') reach(mother);
  });
}

const toDaughtersAndThoseOfHerDrones: Step = (graph, from, reach, open) => {
  toDaughters(graph, from, reach, open);
  graph.forEachInboundEdge(from, (_edge, attributes, source) => {
    if (attributes.type === 'mated-in' && open(`mating|${source}`)) toDaughters(graph, source, reach, open);
    if (attributes.type === 'drones-from' && open(source)) toDaughtersOfPool(graph, source, reach, open);
  });
};

const toDaughtersOfPool: Step = (graph, pool, reach, open) => {
  graph.forEachInboundEdge(pool, (_edge, attributes, dam) => {
    if (attributes.type === 'mated-in' && open(`mating|${dam}`)) toDaughters(graph, dam, reach, open);
  });
};
