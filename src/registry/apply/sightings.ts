import { BIOLOGY } from '../../../graph/calendar/biology.ts';
import { addDays, firstDay, lastDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { Entry, EntryOf } from '../../journal/entry.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Queen } from '../state.ts';
import { taskOfUnmarked } from '../unmarked.ts';
import { livingColony } from './checks.ts';
import { fileWithHead } from './places.ts';
import { doubtTenure, headsOf, liftDoubt } from './tenures.ts';

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
  const seen = queen && entry.parentage === undefined ? lastKnownThere(queen) : undefined;
  if (seen) days.push(seen);
  const last = days.sort().at(-1);
  return last !== undefined && last < firstDay(entry.day) ? last : undefined;
}

function lastKnownThere(queen: Queen): PlainDay | undefined {
  const seen = queen.entries.findLast((each) => tellsOfHerself(each, queen));
  return seen && lastDay(seen.day);
}

/**
 * A look into a hive. An unmarked queen where a marked one heads leaves it in doubt, from the day on which she was last
 * known to be there, whether she still does: until she is seen again, another is found, or the keeper says that she lost
 * her mark.
 */
export function applyInspection(draft: RegistryDraft, entry: EntryOf<'inspection'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  const heads = headsOf(draft, colony.id);
  const [head] = heads;
  const queen = head && draft.queens.get(head);
  const tenure = queen?.tenures.findLast(({ to }) => to === undefined);
  if (queen?.mark && tenure && heads.length === 1) {
    if (entry.queenSeen === 'seen-marked') liftDoubt(draft, queen.id);
    if (entry.queenSeen === 'seen-unmarked' && tenure.unmarkedSeen === undefined) {
      const known = lastKnownThere(queen) ?? firstDay(tenure.from);
      const [surelyUntil = known] = [known, firstDay(entry.day)].sort();
      doubtTenure(draft, tenure, { surelyUntil, unmarkedSeen: entry.day });
    }
  }
  fileWithHead(draft, entry, colony.id);
}

/** A task settled. That of an unmarked queen, once done, says that she is the one on record and has lost her mark. */
export function applyTaskSettled(draft: RegistryDraft, entry: EntryOf<'task-settled'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  for (const head of headsOf(draft, colony.id)) {
    if (entry.how !== 'done' || entry.task !== taskOfUnmarked(colony.id, head)) continue;
    liftDoubt(draft, head);
    draft.changeQueen(head, ({ mark: _, ...queen }) => queen);
  }
  fileWithHead(draft, entry, colony.id);
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
