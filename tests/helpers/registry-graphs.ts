/** Small registry graphs for the tests, written as short rows. */
import {
  createRegistryGraph,
  type MakingHow,
  makingKey,
  poolKey,
  type QueenAttributes,
  queenKey,
  type RegistryGraph,
  setEdge,
} from '../../graph/lineage/index.ts';

export interface QueenRow {
  readonly id: string;
  /** Possible dams with probabilities. */
  readonly dams?: Readonly<Record<string, number>>;
  readonly year?: number;
  readonly state?: QueenAttributes['state'];
  readonly alive?: boolean;
  readonly making?: string;
  /** Pools and named drone mothers she met, with shares; a pool's name starts with a capital P. */
  readonly met?: Readonly<Record<string, number>>;
}

export interface GraphRows {
  readonly queens: readonly QueenRow[];
  /** Drone mothers of each pool with shares. */
  readonly pools?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly makings?: Readonly<Record<string, { readonly how: MakingHow; readonly day?: number }>>;
}

export function registryGraph({ queens, pools = {}, makings = {} }: GraphRows): RegistryGraph {
  const graph = createRegistryGraph();
  for (const row of queens) graph.addNode(queenKey(row.id), queenAttributes(row));
  for (const id of Object.keys(pools)) {
    graph.addNode(poolKey(id), { type: 'pool', id, yard: 'yard', season: 2020, name: id });
  }
  for (const [id, making] of Object.entries(makings))
    graph.addNode(makingKey(id), { type: 'making', id, ...making });
  for (const row of queens) addEdges(graph, row);
  for (const [id, mothers] of Object.entries(pools)) {
    for (const [mother, share] of Object.entries(mothers)) {
      setEdge(graph, poolKey(id), queenKey(mother), { type: 'drones-from', share });
    }
  }
  return graph;
}

function queenAttributes(row: QueenRow): QueenAttributes {
  return {
    type: 'queen',
    id: row.id,
    name: row.id,
    state: row.state ?? 'confirmed',
    alive: row.alive ?? true,
    certain: Object.keys(row.dams ?? {}).length < 2,
    ...(row.year === undefined ? {} : { bornYear: row.year }),
  };
}

function addEdges(graph: RegistryGraph, row: QueenRow): void {
  const queen = queenKey(row.id);
  for (const [dam, probability] of Object.entries(row.dams ?? {})) {
    setEdge(graph, queen, queenKey(dam), { type: 'daughter-of', probability, evidence: 'stated' });
  }
  for (const [source, share] of Object.entries(row.met ?? {})) {
    const target = source.startsWith('P') ? poolKey(source) : queenKey(source);
    setEdge(graph, queen, target, { type: 'mated-in', share });
  }
  if (row.making !== undefined) setEdge(graph, queen, makingKey(row.making), { type: 'made-by' });
}

/**
 * Two lines, one late founder; c is D's or b's daughter, probably b's.
 *
 *   a (2020)            D (2021)        n (2024, new)
 *   |-- b (2021)         |
 *   |-- s (2021)        e (2022, dead)
 *       b --(0.7)-- c (2023) --(0.3)-- D
 *       s -- t (2023, failed)
 *       c -- x (2024, expected)
 */
export const TWO_LINES: GraphRows = {
  queens: [
    { id: 'a', year: 2020, alive: false },
    { id: 'b', year: 2021, dams: { a: 1 }, making: 'm1' },
    { id: 's', year: 2021, dams: { a: 1 }, making: 'm1', alive: false },
    { id: 'D', year: 2021, alive: false },
    { id: 'e', year: 2022, dams: { D: 1 }, alive: false },
    { id: 'c', year: 2023, dams: { b: 0.7, D: 0.3 } },
    { id: 't', year: 2023, dams: { s: 1 }, state: 'failed', alive: false },
    { id: 'x', year: 2024, dams: { c: 1 }, state: 'expected' },
    { id: 'n', year: 2024 },
  ],
  makings: { m1: { how: 'split', day: 18_750 } },
};
