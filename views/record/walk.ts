import type { PlainDay } from '../../src/journal/day.ts';
import { coloniesAt, yardOn } from '../../src/registry/queries.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { byRoof } from '../parts/colony-facts.ts';

/** The colonies of a yard in the order of walking along its stands. */
export function walkOf(registry: Registry, colony: Colony, on: PlainDay): readonly Colony[] {
  const yard = yardOn(colony, on);
  return yard ? byRoof(coloniesAt(registry, yard, on), on).flat() : [];
}

/** The colony at the next stand; none after the last. */
export function nextColony(registry: Registry, colony: Colony, on: PlainDay): Colony | undefined {
  const walk = walkOf(registry, colony, on);
  const at = walk.findIndex(({ id }) => id === colony.id);
  return at < 0 ? undefined : walk[at + 1];
}
