/**
 * THE graph of the registry: queens, the events that made them, and the drone pools they flew into.
 *
 * One directed multigraph (graphology) that the registry projects from the journal and every lineage
 * algorithm reads. Edges run from the younger thing to what it came from:
 *
 *   queen --daughter-of--> queen     several with probabilities when the dam is uncertain
 *   queen --made-by------> making    one split, graft, swarm ... joins the sisters it made
 *   queen --mated-in-----> pool      open mating; share 1
 *   queen --mated-in-----> queen     named drone mother; the shares of one queen sum to at most 1,
 *                                    the rest being drones of nobody recorded (a loop is selfing)
 *   pool  --drones-from--> queen     whose drones flew there; the rest of the share is background
 *
 * Days are whole days since 1970-01-01. Unknown is an absent attribute, never 0.
 */
import { MultiDirectedGraph } from 'graphology';

/** What is known of a queen's being: seen laying, still awaited, or come to nothing. */
export type QueenState = 'confirmed' | 'expected' | 'failed';

export type QueenAttributes = {
  readonly type: 'queen';
  readonly id: string;
  readonly name: string;
  readonly state: QueenState;
  /** Heads a colony, or is awaited, on the day of the projection. */
  readonly alive: boolean;
  readonly bornYear?: number;
  /** Day of emergence, days since 1970-01-01. */
  readonly bornDay?: number;
  /** Id of the founder she descends from by the most probable dams. */
  readonly line?: string;
  /** Population a founder was drawn from. */
  readonly background?: string;
  /** Whether her identity and parentage are firm (no probable dam, no presumed change of queen). */
  readonly certain: boolean;
};

/** How queens came to be. */
export type MakingHow =
  | 'split'
  | 'graft'
  | 'cells'
  | 'eggs'
  | 'swarm'
  | 'supersedure'
  | 'emergency'
  | 'brought-in'
  | 'unknown';

export type MakingAttributes = {
  readonly type: 'making';
  readonly id: string;
  readonly how: MakingHow;
  /** Days since 1970-01-01. */
  readonly day?: number;
};

/** The drones flying at one yard in one season. */
export type PoolAttributes = {
  readonly type: 'pool';
  readonly id: string;
  readonly yard: string;
  readonly season: number;
  readonly name: string;
};

export type NodeAttributes = QueenAttributes | MakingAttributes | PoolAttributes;

/**
 * Why we hold a queen for the daughter of that dam: the keeper said so, the brood was followed to the dam
 * that laid it, a change of queen is presumed, or another breeder's pedigree says so.
 */
export type ParentageEvidence = 'stated' | 'brood' | 'presumed' | 'received';

export type DaughterOfAttributes = {
  readonly type: 'daughter-of';
  /** Probability (0..1] that this is her dam; over all her possible dams at most 1. */
  readonly probability: number;
  readonly evidence: ParentageEvidence;
};

export type MadeByAttributes = { readonly type: 'made-by' };

export type MatedInAttributes = {
  readonly type: 'mated-in';
  /** Share (0..1] of her mates out of this pool or drone mother. */
  readonly share: number;
};

export type DronesFromAttributes = {
  readonly type: 'drones-from';
  /** Share (0..1] of the pool's drones bred by this queen. */
  readonly share: number;
};

export type EdgeAttributes =
  | DaughterOfAttributes
  | MadeByAttributes
  | MatedInAttributes
  | DronesFromAttributes;

export type RegistryGraph = MultiDirectedGraph<NodeAttributes, EdgeAttributes>;

/** An empty registry graph. */
export function createRegistryGraph(): RegistryGraph {
  return new MultiDirectedGraph<NodeAttributes, EdgeAttributes>();
}

/** Node key of the queen with this id. */
export function queenKey(id: string): string {
  return `queen:${id}`;
}

/** Node key of the making event with this id. */
export function makingKey(id: string): string {
  return `making:${id}`;
}

/** Node key of the drone pool with this id. */
export function poolKey(id: string): string {
  return `pool:${id}`;
}

/** The one key of an edge: between two nodes there is at most one of each type. */
function edgeKey(type: EdgeAttributes['type'], source: string, target: string): string {
  return `${type}|${source}|${target}`;
}

/** Adds or replaces the edge of that type between two node keys. */
export function setEdge(
  graph: RegistryGraph,
  source: string,
  target: string,
  attributes: EdgeAttributes,
): void {
  const key = edgeKey(attributes.type, source, target);
  if (graph.hasEdge(key)) graph.replaceEdgeAttributes(key, attributes);
  else graph.addDirectedEdgeWithKey(key, source, target, attributes);
}
