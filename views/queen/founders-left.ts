import { descentTable } from '../../graph/lineage/descent-table.ts';
import { founderShares, geneShareTable, type ShareTable } from '../../graph/lineage/founder-shares.ts';
import { queenKey } from '../../graph/lineage/registry-graph.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Registry } from '../../src/registry/state.ts';
import { graphOf } from '../lines/graph-of.ts';

/** What is left of each founder in a queen, drones counted. */
export interface FoundersLeft {
  /** Largest share first. */
  readonly founders: readonly { readonly queen: QueenId; readonly share: number }[];
  /** Share (0..1) of drones and dams that nobody recorded. */
  readonly unrecorded: number;
}

const tables = new WeakMap<Registry, { readonly table?: ShareTable }>();

/** Undefined where the records let drones descend from themselves, so that no shares can be told. */
export function foundersLeft(registry: Registry, queen: QueenId): FoundersLeft | undefined {
  const table = tableOf(registry);
  if (!table) return undefined;
  const { shares, unrecorded } = founderShares(table, queenKey(queen));
  const ids = new Map<string, QueenId>([...registry.queens.keys()].map((id) => [queenKey(id), id]));
  return {
    founders: shares.flatMap(({ founder, share }) => {
      const id = ids.get(founder);
      return id ? [{ queen: id, share }] : [];
    }),
    unrecorded,
  };
}

/** Built once for each state of the registry. */
function tableOf(registry: Registry): ShareTable | undefined {
  const known = tables.get(registry);
  if (known) return known.table;
  const graph = graphOf(registry);
  let built: { readonly table?: ShareTable };
  try {
    built = { table: geneShareTable(graph, descentTable(graph)) };
  } catch {
    // A pool whose drone mothers descend from it: said among the disagreements, not here.
    built = {};
  }
  tables.set(registry, built);
  return built.table;
}
