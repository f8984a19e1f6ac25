import type { PlainDay } from '../../../src/journal/day.ts';
import { isLiving } from '../../../src/registry/queries.ts';
import type { Colony, Registry, Yard } from '../../../src/registry/state.ts';
import { awaitingOutcome } from '../../parts/colony-facts.ts';

/** The colonies of a walk through a yard. */
export interface ToTell {
  /** Alive on the day looked at, without an outcome of that winter. */
  readonly waiting: readonly Colony[];
  /** The same, but told of on a later day: a second outcome would contradict the first. */
  readonly toldLater: readonly Colony[];
}

/** Of whom the walk asks: as the yard stood on the day looked at, less those of whom `whole` tells by now. */
export function toTell(
  then: Registry,
  whole: Registry,
  { yard, winter, on }: { readonly yard: Yard; readonly winter: number; readonly on: PlainDay },
): ToTell {
  const isTold = ({ id }: Colony) =>
    whole.colonies
      .get(id)
      ?.entries.some((entry) => entry.kind === 'winter-outcome' && entry.winter === winter) ?? false;
  const open = awaitingOutcome(then, yard, winter, on).filter((colony) => isLiving(colony, on));
  return { waiting: open.filter((colony) => !isTold(colony)), toldLater: open.filter(isTold) };
}
