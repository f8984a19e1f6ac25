import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import { kinship } from '../../graph/kinship/sweeps.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { openedPedigreeInput } from '../../src/registry/pedigree.ts';
import type { Registry } from '../../src/registry/state.ts';

const compiled = new WeakMap<Registry, { readonly pedigree?: Pedigree }>();

/** The compiled pedigree, circles of descent opened; undefined where the records contradict themselves otherwise. */
export function pedigreeOf(registry: Registry): Pedigree | undefined {
  const known = compiled.get(registry);
  if (known) return known.pedigree;
  const outcome = compilePedigree(openedPedigreeInput(registry).input);
  const kept = outcome.ok ? { pedigree: outcome.pedigree } : {};
  compiled.set(registry, kept);
  return kept.pedigree;
}

/**
 * Kinship (0..1) of two queens, drones included; undefined where the records contradict themselves. Compiled on demand, once for each state of the registry.
 */
export function kinshipOf(registry: Registry, first: QueenId, second: QueenId): number | undefined {
  const pedigree = pedigreeOf(registry);
  const a = pedigree?.queenNode[pedigree.queenIndex.get(first) ?? -1];
  const b = pedigree?.queenNode[pedigree.queenIndex.get(second) ?? -1];
  return pedigree && a !== undefined && b !== undefined ? kinship(pedigree, a, b) : undefined;
}
