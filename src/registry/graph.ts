import {
  createRegistryGraph,
  makingKey,
  type ParentageEvidence,
  poolKey,
  type QueenAttributes,
  queenKey,
  type RegistryGraph,
  setEdge,
} from '../../graph/lineage/registry-graph.ts';
import { dayNumber, firstDay, yearOf } from '../journal/day.ts';
import type { Evidence, PossibleDam } from '../journal/entry-parts.ts';
import type { QueenId } from '../journal/ids.ts';
import { queensInCircles } from './circles.ts';
import { type DronePool, dronePools, matingOf } from './pools.ts';
import { damCertainty, likelyDam, queenTitle } from './queries.ts';
import { droneKey, type Queen, type Registry } from './state.ts';

/** The one graph of the registry, drawn from the state. O(queens + edges). */
export function registryGraph(registry: Registry): RegistryGraph {
  const graph = createRegistryGraph();
  return syncGraph(graph, registry);
}

/**
 * Brings a graph in step with a registry: nodes and edges that differ are changed, the rest is left as it stands. The
 * outcome equals a graph drawn from nothing.
 */
export function syncGraph(graph: RegistryGraph, registry: Registry): RegistryGraph {
  const pools = dronePools(registry);
  dropStrangers(graph, registry, pools);
  const lines = founders(registry);
  for (const queen of registry.queens.values()) {
    graph.mergeNode(queenKey(queen.id));
    graph.replaceNodeAttributes(queenKey(queen.id), queenAttributes(registry, queen, lines.get(queen.id)));
  }
  for (const making of registry.makings.values()) {
    graph.mergeNode(makingKey(making.id));
    graph.replaceNodeAttributes(makingKey(making.id), {
      type: 'making',
      id: making.id,
      how: making.how,
      day: dayNumber(firstDay(making.day)),
    });
  }
  for (const pool of pools.values()) syncPool(graph, registry, pool);
  const circles = queensInCircles(registry);
  for (const queen of registry.queens.values()) {
    syncQueenEdges(graph, registry, queen, {
      pools,
      dams: circles.has(queen.id) ? [] : knownDams(registry, queen),
    });
  }
  return graph;
}

function dropStrangers(
  graph: RegistryGraph,
  registry: Registry,
  pools: ReadonlyMap<string, DronePool>,
): void {
  for (const node of graph.nodes()) {
    const attributes = graph.getNodeAttributes(node);
    const known =
      attributes.type === 'queen'
        ? registry.queens.has(attributes.id as QueenId)
        : attributes.type === 'making'
          ? registry.makings.has(attributes.id as never)
          : pools.has(attributes.id);
    if (!known) graph.dropNode(node);
  }
}

/** The founder of each queen by the most likely dams, found without recursion. O(queens). */
export function founders(registry: Registry): ReadonlyMap<QueenId, QueenId> {
  const founder = new Map<QueenId, QueenId>();
  const circles = queensInCircles(registry);
  for (const start of registry.queens.keys()) {
    const path: QueenId[] = [];
    const seen = new Set<QueenId>();
    let at = start;
    while (!founder.has(at) && !seen.has(at)) {
      path.push(at);
      seen.add(at);
      const queen = registry.queens.get(at);
      const dam = queen && !circles.has(at) ? likelyDam(queen)?.queen : undefined;
      if (!dam || !registry.queens.has(dam)) break;
      at = dam;
    }
    const root = founder.get(at) ?? at;
    for (const id of path) founder.set(id, root);
  }
  return founder;
}

const STATES: Record<Queen['state']['is'], QueenAttributes['state']> = {
  expected: 'expected',
  failed: 'failed',
  laying: 'confirmed',
  gone: 'confirmed',
  unknown: 'confirmed',
};

function queenAttributes(registry: Registry, queen: Queen, line: QueenId | undefined): QueenAttributes {
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  const born = queen.born ?? undefined;
  const year = born ? yearOf(born.last) : making ? yearOf(making.day) : undefined;
  const dams = queen.parentage?.dams ?? [];
  return {
    type: 'queen',
    id: queen.id,
    name: queenTitle(queen),
    state: STATES[queen.state.is],
    alive: queen.state.is === 'laying' || queen.state.is === 'expected',
    certain: dams.length === 0 || damCertainty(queen) === 'firm',
    ...(year === undefined ? {} : { bornYear: year }),
    ...(born && born.first === born.last ? { bornDay: dayNumber(born.first) } : {}),
    ...(line ? { line } : {}),
    ...(queen.background ? { background: queen.background } : {}),
  };
}

const EVIDENCE: Record<Evidence, ParentageEvidence> = {
  'eggs-named': 'brood',
  'dam-in-colony': 'brood',
  'unmarked-queen-found': 'presumed',
  'old-record': 'stated',
  told: 'received',
  'marker-test': 'stated',
};

function syncPool(graph: RegistryGraph, registry: Registry, pool: DronePool): void {
  const key = poolKey(pool.key);
  graph.mergeNode(key);
  graph.replaceNodeAttributes(key, {
    type: 'pool',
    id: pool.key,
    yard: pool.yard,
    season: pool.season,
    name: `${registry.yards.get(pool.yard)?.name ?? 'a yard without records'} ${pool.season}`,
  });
  dropOtherEdges(graph, key, new Set(pool.droneMothers.map(({ queen }) => queenKey(queen))));
  for (const { queen, share } of pool.droneMothers) {
    setEdge(graph, key, queenKey(queen), { type: 'drones-from', share });
  }
}

function knownDams(registry: Registry, queen: Queen): readonly PossibleDam[] {
  return (queen.parentage?.dams ?? []).filter((dam) => dam.probability > 0 && registry.queens.has(dam.queen));
}

function syncQueenEdges(
  graph: RegistryGraph,
  registry: Registry,
  queen: Queen,
  { pools, dams }: { readonly pools: ReadonlyMap<string, DronePool>; readonly dams: readonly PossibleDam[] },
): void {
  const key = queenKey(queen.id);
  const mates = matesOf(registry, queen, pools);
  for (const edge of graph.outEdges(key)) graph.dropEdge(edge);
  for (const { queen: dam, probability } of dams) {
    setEdge(graph, key, queenKey(dam), {
      type: 'daughter-of',
      probability,
      evidence: EVIDENCE[queen.parentage?.evidence ?? 'old-record'],
    });
  }
  if (queen.madeBy && registry.makings.has(queen.madeBy)) {
    setEdge(graph, key, makingKey(queen.madeBy), { type: 'made-by' });
  }
  for (const { target, share } of mates) setEdge(graph, key, target, { type: 'mated-in', share });
}

function matesOf(
  registry: Registry,
  queen: Queen,
  pools: ReadonlyMap<string, DronePool>,
): readonly { readonly target: string; readonly share: number }[] {
  if (queen.state.is === 'expected' || queen.state.is === 'failed') return [];
  const mating = matingOf(registry, queen);
  if (mating.kind === 'pool') {
    const id = droneKey(mating.yard, mating.season);
    return pools.has(id) ? [{ target: poolKey(id), share: 1 }] : [];
  }
  if (mating.kind === 'unrecorded' || mating.entry.way.manner === 'open') return [];
  return mating.entry.way.droneMothers
    .filter((mother) => mother.share > 0 && registry.queens.has(mother.queen))
    .map((mother) => ({ target: queenKey(mother.queen), share: mother.share }));
}

function dropOtherEdges(graph: RegistryGraph, source: string, targets: ReadonlySet<string>): void {
  for (const edge of graph.outEdges(source)) {
    if (!targets.has(graph.target(edge))) graph.dropEdge(edge);
  }
}
