import type { QueenId } from '../../src/journal/ids.ts';
import { dronePool, matingOf, type PoolBasis } from '../../src/registry/pools.ts';
import type { Queen, Registry } from '../../src/registry/state.ts';

/** The drones that one queen met, as far as they are known: shown on demand, for one queen at a time. */
export interface DroneSources {
  readonly queen: QueenId;
  /** The yard and season she flew at, or the station; absent when that is not recorded. */
  readonly place?: string;
  /** Whether the keeper wrote the mating down or it follows from where she came into lay. */
  readonly stated: boolean;
  /** How the own share of the pool is known; absent for named drone mothers. */
  readonly basis?: PoolBasis;
  /** Queens whose sons flew, largest share first; shares of all drones. */
  readonly mothers: readonly { readonly queen: QueenId; readonly share: number }[];
  /** Share of drones of mothers nobody recorded. */
  readonly unrecorded: number;
  readonly background: string;
}

/** Whose drones she met. A queen who has not mated yet has met none: undefined. */
export function droneSources(registry: Registry, queen: Queen): DroneSources | undefined {
  if (queen.state.is === 'expected' || queen.state.is === 'failed') return undefined;
  const facts = matingOf(registry, queen);
  if (facts.kind === 'unrecorded') {
    return { queen: queen.id, stated: false, mothers: [], unrecorded: 1, background: facts.background };
  }
  if (facts.kind === 'pool') {
    const pool = dronePool(registry, facts.yard, facts.season);
    return {
      queen: queen.id,
      place: `${registry.yards.get(facts.yard)?.name ?? 'a yard without records'} ${facts.season}`,
      stated: facts.stated,
      basis: pool.basis,
      mothers: byShare(pool.droneMothers),
      unrecorded: rest(pool.droneMothers),
      background: pool.background,
    };
  }
  const { way } = facts.entry;
  if (way.manner === 'open') throw new Error('An open mating is a pool, never named drone mothers.');
  return {
    queen: queen.id,
    ...(way.manner === 'station' ? { place: way.station } : {}),
    stated: true,
    mothers: byShare(way.droneMothers),
    unrecorded: rest(way.droneMothers),
    background: (way.manner === 'station' ? way.background : undefined) ?? 'unrecorded',
  };
}

type Shares = DroneSources['mothers'];

function byShare(mothers: Shares): Shares {
  return [...mothers].sort((a, b) => b.share - a.share || (a.queen < b.queen ? -1 : 1));
}

function rest(mothers: Shares): number {
  const named = mothers.reduce((sum, { share }) => sum + share, 0);
  return named > 1 - 1e-9 ? 0 : 1 - named;
}
