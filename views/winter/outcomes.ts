import { pushTo } from '../../graph/grouping.ts';
import type { WinterObservation } from '../../graph/merit/observations.ts';
import { saysNothingOfBees } from '../../graph/merit/traits/winter-survival.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyId, YardId } from '../../src/journal/ids.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';
import { winterObservations } from './survival.ts';

/** How one colony came through one winter, and who headed it when winter began. */
export interface WinterOutcome {
  readonly colony: Colony;
  readonly yard: YardId | undefined;
  /** Named by the year of its spring. */
  readonly winter: number;
  readonly alive: boolean;
  readonly cause: string | undefined;
  /** Lost through no doing of its bees: an animal, the weather, a sale. In no share of survival. */
  readonly outside: boolean;
  readonly autumnFrames: number | undefined;
  readonly springFrames: number | undefined;
  /** Who headed it on 1 December; absent where nobody known did. */
  readonly head: Queen | undefined;
}

/** Every outcome on record, in the order of winters, then of labels. O(entries). */
export function winterOutcomes(registry: Registry): readonly WinterOutcome[] {
  return winterObservations(registry)
    .flatMap((each) => outcomeOf(registry, each) ?? [])
    .sort(
      (a, b) =>
        a.winter - b.winter ||
        a.colony.label.localeCompare(b.colony.label, 'en', { numeric: true }) ||
        (a.colony.id < b.colony.id ? -1 : 1),
    );
}

function outcomeOf(registry: Registry, seen: WinterObservation): WinterOutcome | undefined {
  const colony = registry.colonies.get(seen.colony as ColonyId);
  if (!colony) return undefined;
  return {
    colony,
    yard: seen.yard as YardId | undefined,
    winter: seen.season,
    alive: seen.alive,
    cause: seen.alive ? undefined : (seen.cause ?? 'unknown'),
    outside: saysNothingOfBees(seen),
    autumnFrames: seen.autumnFramesOfBees,
    springFrames: seen.springFramesOfBees,
    head: headOn(registry, colony, `${seen.season - 1}-12-01` as PlainDay),
  };
}

/** The winters that anything is known of, the last first. */
export function wintersKnown(outcomes: readonly WinterOutcome[]): readonly number[] {
  return [...new Set(outcomes.map(({ winter }) => winter))].sort((a, b) => b - a);
}

export interface Share {
  readonly alive: number;
  readonly dead: number;
  readonly outside: number;
}

/** How many came through, were lost, and were lost from outside. */
export function shareOf(outcomes: readonly WinterOutcome[]): Share {
  return {
    alive: outcomes.filter(({ alive }) => alive).length,
    dead: outcomes.filter(({ alive, outside }) => !alive && !outside).length,
    outside: outcomes.filter(({ outside }) => outside).length,
  };
}

/** Losses by their cause, the most frequent first; ties in order of words. */
export function lossesByCause(
  outcomes: readonly WinterOutcome[],
): readonly { readonly cause: string; readonly lost: readonly WinterOutcome[] }[] {
  const causes = new Map<string, WinterOutcome[]>();
  for (const outcome of outcomes) {
    if (!outcome.alive && outcome.cause !== undefined) pushTo(causes, outcome.cause, outcome);
  }
  return [...causes]
    .map(([cause, lost]) => ({ cause, lost }))
    .sort((a, b) => b.lost.length - a.lost.length || (a.cause < b.cause ? -1 : 1));
}
