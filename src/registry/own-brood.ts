import { dayNumber, firstDay, lastDay, type RoughDay } from '../journal/day.ts';
import type { QueenId } from '../journal/ids.ts';
import { OLDEST_DAYS } from './brood.ts';
import type { Colony } from './state.ts';

/** Brood of a colony's own queen that hangs beside cells given to it: bees may raise a queen of that too. */

/**
 * The queen whose eggs and larvae may still hang uncapped in a colony on a day, since she headed it within the days
 * before that an open queen cell takes from the egg. A daughter of hers may come before, or instead of, one from cells
 * given then. Nothing where the last queen has been gone for longer, or where nobody known laid there.
 */
export function ownBroodIn(colony: Colony, on: RoughDay): QueenId | undefined {
  const latest = dayNumber(lastDay(on));
  const earliest = dayNumber(firstDay(on)) - OLDEST_DAYS['open-cells'];
  return colony.tenures.findLast(
    ({ layingFrom, to }) =>
      layingFrom !== undefined &&
      to !== undefined &&
      dayNumber(firstDay(layingFrom)) <= latest &&
      dayNumber(lastDay(to)) >= earliest &&
      dayNumber(firstDay(to)) <= latest,
  )?.queen;
}
