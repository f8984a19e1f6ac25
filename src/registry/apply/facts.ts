import type { EntryOf } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import { knownQueen, livingQueen } from './checks.ts';
import { checkStated, setParentage } from './parentage.ts';
import { liftDoubt, seatOf } from './tenures.ts';

/** What is said of a queen on record: her mark, her name, her dam, her mating. */

function seat(draft: RegistryDraft, queen: QueenId): readonly ColonyId[] {
  const colony = seatOf(draft, queen);
  return colony ? [colony] : [];
}

/** Her mark, from that day on. */
export function applyQueenMarked(draft: RegistryDraft, entry: EntryOf<'queen-marked'>): void {
  if (!livingQueen(draft, entry, entry.queen)) return;
  const mark = { colour: entry.colour, since: entry.day, ...(entry.mark ? { number: entry.mark } : {}) };
  draft.changeQueen(entry.queen, (queen) => ({ ...queen, mark }));
  liftDoubt(draft, entry.queen);
  draft.file(entry, { queens: [entry.queen], colonies: seat(draft, entry.queen) });
}

/** Her name; it holds for her whole history. */
export function applyQueenNamed(draft: RegistryDraft, entry: EntryOf<'queen-named'>): void {
  if (!knownQueen(draft, entry, entry.queen)) return;
  draft.changeQueen(entry.queen, (queen) => ({ ...queen, name: entry.name }));
  draft.file(entry, { queens: [entry.queen], colonies: seat(draft, entry.queen) });
}

/** Her dams as the keeper states them, in place of what was inferred. */
export function applyParentageStated(draft: RegistryDraft, entry: EntryOf<'parentage-stated'>): void {
  if (!knownQueen(draft, entry, entry.queen)) return;
  setParentage(draft, entry, entry.queen, entry.parentage);
  draft.changeQueen(entry.queen, ({ orDaughterOf: _, ...queen }) => queen);
  checkStated(draft, entry, entry.queen, entry.parentage);
  draft.file(entry, { queens: [entry.queen] });
}

/** How she mated; the last said of it holds. */
export function applyMating(draft: RegistryDraft, entry: EntryOf<'mating'>): void {
  if (!knownQueen(draft, entry, entry.queen)) return;
  const { way } = entry;
  if (way.manner === 'open') {
    if (!draft.yards.get(way.yard)) {
      draft.contradict(entry, 'yard-unknown', {
        queen: entry.queen,
        found: 'a yard without records',
        because: 'The yard she is said to have flown from is not known by this day.',
        remedies: ['Enter the yard.', 'Choose another yard.'],
      });
    }
  } else {
    for (const { queen } of way.droneMothers) knownQueen(draft, entry, queen);
  }
  draft.changeQueen(entry.queen, (queen) => ({ ...queen, mating: entry }));
  draft.file(entry, { queens: [entry.queen], colonies: seat(draft, entry.queen) });
}
