import { BIOLOGY } from '../../../graph/calendar/biology.ts';
import { addDays, firstDay, lastDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { Entry, EntryOf } from '../../journal/entry.ts';
import type { Queen } from '../state.ts';

/**
 * A supersedure that nobody saw: some time between the day on which the old queen was last known to be there and the
 * day on which the new one is found, the colony changed hands.
 */

/**
 * The last day on which the queen who headed the colony is known to have been there: when she was last seen, or before
 * the one found in her place can have emerged. Absent where a table names one queen after another, without a doubt.
 */
export function surelyThereUntil(
  queen: Queen | undefined,
  entry: EntryOf<'queen-found'>,
): PlainDay | undefined {
  const days: PlainDay[] = entry.born ? [firstDay(entry.born)] : [];
  const unawares = entry.parentage === undefined;
  const seen = queen && unawares ? queen.entries.findLast((each) => tellsOfHerself(each, queen)) : undefined;
  if (seen) days.push(lastDay(seen.day));
  const last = days.sort().at(-1);
  return last !== undefined && last < firstDay(entry.day) ? last : undefined;
}

/** True for an entry that says that she herself was there; eggs alone do not. */
function tellsOfHerself(entry: Entry, queen: Queen): boolean {
  switch (entry.kind) {
    case 'queen-entered':
    case 'queen-found':
    case 'queen-confirmed':
      return entry.queen === queen.id;
    case 'queen-marked':
    case 'queen-moved':
      return true;
    case 'split':
      return entry.parts.some((part) => part.queen.how === 'old-queen');
    case 'inspection':
      return entry.queenSeen === (queen.mark ? 'seen-marked' : 'seen-unmarked');
    default:
      return false;
  }
}

/** The day from which her eggs are taken to be in the combs: that of her finding, or earlier where her birth is told. */
export function laysSince({ day, born }: EntryOf<'queen-found'>): RoughDay {
  if (!born) return day;
  const laid = addDays(lastDay(born), BIOLOGY.firstEggs.latest);
  return laid < firstDay(day) ? laid : day;
}
