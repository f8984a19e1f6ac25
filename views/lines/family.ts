import type { QueenAttributes, RegistryGraph } from '../../graph/lineage/registry-graph.ts';
import { queenKey } from '../../graph/lineage/registry-graph.ts';
import { ancestors, descent } from '../../graph/lineage/relatives.ts';
import type { QueenId } from '../../src/journal/ids.ts';

/** Which of a queen's kin by dams stay in full ink. */
export type FamilyShown = 'ancestors' | 'descendants' | 'both';

/** The queen herself and her ancestors, her descent or both, by every possible dam. */
export function familyOf(graph: RegistryGraph, queen: QueenId, shown: FamilyShown): ReadonlySet<QueenId> {
  const family = new Set<QueenId>([queen]);
  const key = queenKey(queen);
  if (!graph.hasNode(key)) return family;
  const add = (kin: readonly { readonly key: string }[]) => {
    for (const each of kin) family.add(queenIdOf(graph, each.key));
  };
  if (shown !== 'descendants') add(ancestors(graph, key));
  if (shown !== 'ancestors') add(descent(graph, key));
  return family;
}

/** The id of the queen at a node key. */
export function queenIdOf(graph: RegistryGraph, key: string): QueenId {
  return (graph.getNodeAttributes(key) as QueenAttributes).id as QueenId;
}
