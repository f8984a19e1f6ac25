import { addDays, firstDay, lastDay, type RoughDay } from '../../journal/day.ts';
import type { Entry } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { DayWindow, MakingHow, Queen } from '../state.ts';
import { checkFamily, daughtersNaming, setParentage } from './parentage.ts';

/** The records of queens, and of the events that made them. */

export type QueenFacts = Partial<Omit<Queen, 'id' | 'tenures' | 'daughters' | 'entries'>>;

/**
 * Makes the record of a new queen; says so when there is one already. A queen of whom another keeper only told comes to
 * be by the entry that made her: it goes before what was told.
 */
export function addQueen(
  draft: RegistryDraft,
  entry: Entry,
  id: QueenId,
  facts: QueenFacts,
): Queen | undefined {
  const known = draft.queens.get(id);
  if (known && !onlyTold(known)) {
    draft.contradict(entry, 'queen-entered-twice', {
      queen: id,
      found: `${draft.titleOf(id)} is on record since ${known.entries[0]?.day ?? 'before'}`,
      because: 'A queen is entered once.',
      remedies: [
        'Enter that she was put into this colony, if she came here.',
        'Take one of the two entries back.',
        'Enter this as another queen.',
      ],
    });
    return undefined;
  }
  const { parentage, ...rest } = facts;
  // From whom she was told of is no fact about a queen who was made here.
  const { from: _, ...told } = known ?? {};
  draft.queens.set(id, {
    id,
    tenures: [],
    daughters: daughtersNaming(draft, id),
    ...told,
    state: { is: 'unknown' },
    ...rest,
    entries: [...(known?.entries ?? []), entry],
  });
  if (parentage) setParentage(draft, entry, id, parentage);
  checkFamily(draft, entry, id);
  return draft.queens.get(id);
}

/** A queen told of without a colony, of whom nothing is on record but what was told. */
function onlyTold(queen: Queen): boolean {
  return queen.entries.every(isTold);
}

/** An entry that tells of a queen without saying that she was here. */
export function isTold(entry: Entry): boolean {
  if (entry.kind === 'queen-entered') return entry.colony === undefined;
  return entry.kind === 'mating' || entry.kind === 'note';
}

/** What is told of a queen on record fills in what is not known of her, and changes nothing that is. */
export function tellMore(draft: RegistryDraft, entry: Entry, known: Queen, facts: QueenFacts): void {
  const { parentage, from: _, ...told } = facts;
  draft.changeQueen(known.id, (queen) => ({ ...told, ...queen }));
  if (told.born && !known.born) checkFamily(draft, entry, known.id);
  if (parentage && !known.parentage) setParentage(draft, entry, known.id, parentage);
  draft.file(entry, { queens: [known.id] });
}

/** Records the event that made queens. */
export function addMaking(
  draft: RegistryDraft,
  entry: Entry,
  how: MakingHow,
  queens: readonly QueenId[],
  colony?: ColonyId,
): void {
  const id = draft.firstVersion(entry.id);
  draft.makings.set(id, { id, how, day: entry.day, queens, ...(colony ? { colony } : {}) });
  for (const queen of queens) draft.changeQueen(queen, (record) => ({ ...record, madeBy: id }));
}

/** The window of her emergence: so many days after the first and the last day meant. */
export function bornBetween(day: RoughDay, earliest: number, latest: number): DayWindow {
  return { first: addDays(firstDay(day), earliest), last: addDays(lastDay(day), latest) };
}
