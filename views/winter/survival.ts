import type { WinterObservation } from '../../graph/merit/observations.ts';
import type { YardId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';

/** The winters on record, each with the queen whose bees faced it. */
export function winterObservations(registry: Registry): readonly WinterObservation[] {
  return traitObservations(registry).filter((each): each is WinterObservation => each.kind === 'winter');
}

/** The yard at which each queen faced her first winter that is known of. */
export function firstYards(winters: readonly WinterObservation[]): ReadonlyMap<string, YardId> {
  const yards = new Map<string, YardId>();
  for (const { workers, yard } of [...winters].sort((a, b) => a.season - b.season)) {
    if (workers.known && yard !== undefined && !yards.has(workers.queen))
      yards.set(workers.queen, yard as YardId);
  }
  return yards;
}
