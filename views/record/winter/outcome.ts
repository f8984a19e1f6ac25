import type { RoughDay } from '../../../src/journal/day.ts';
import type { LossCause } from '../../../src/journal/entries/colony.ts';
import type { Draft } from '../../../src/journal/entry.ts';
import type { ColonyId } from '../../../src/journal/ids.ts';

/** What is said of a colony after winter. */
export interface Outcome {
  readonly alive?: boolean | undefined;
  readonly cause?: LossCause | undefined;
  readonly autumn?: number | undefined;
  readonly spring?: number | undefined;
}

export const NO_OUTCOME: Outcome = {};

/** The winter outcome to write; undefined while it is not told whether the colony lives. */
export function outcomeDraft(
  outcome: Outcome,
  colony: ColonyId,
  winter: number,
  day: RoughDay,
): Draft<'winter-outcome'> | undefined {
  if (outcome.alive === undefined) return undefined;
  return {
    kind: 'winter-outcome',
    day,
    colony,
    winter,
    alive: outcome.alive,
    ...(!outcome.alive && outcome.cause ? { cause: outcome.cause } : {}),
    ...(outcome.autumn === undefined ? {} : { autumnFramesOfBees: outcome.autumn }),
    ...(outcome.alive && outcome.spring !== undefined ? { springFramesOfBees: outcome.spring } : {}),
  };
}
