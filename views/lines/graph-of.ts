import type { RegistryGraph } from '../../graph/lineage/registry-graph.ts';
import { registryGraph } from '../../src/registry/graph.ts';
import type { Registry } from '../../src/registry/state.ts';

const drawn = new WeakMap<Registry, RegistryGraph>();

/** The graph of a registry, drawn once for each state of it. */
export function graphOf(registry: Registry): RegistryGraph {
  const known = drawn.get(registry);
  if (known) return known;
  const graph = registryGraph(registry);
  drawn.set(registry, graph);
  return graph;
}
