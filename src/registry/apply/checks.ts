import { firstDay, lastDay } from '../../journal/day.ts';
import type { Entry, EntryKind } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Colony, Queen, QueenState } from '../state.ts';
import { headOf } from './tenures.ts';

/** What puts a queen or cells into a colony cannot follow its end, not even on the same day. */
const SEATS_QUEENS: ReadonlySet<EntryKind> = new Set<EntryKind>([
  'queen-entered',
  'queen-expected',
  'queen-found',
  'queen-confirmed',
  'queen-moved',
  'split',
  'cells-given',
  'eggs-given',
  'colonies-joined',
]);

/** The colony, after saying so when it had not begun or had ended by the day of the entry. */
export function livingColony(draft: RegistryDraft, entry: Entry, id: ColonyId): Colony | undefined {
  const colony = draft.colonies.get(id);
  if (!colony) {
    draft.contradict(entry, 'colony-not-started', {
      colony: id,
      found: `${entry.day}, before any entry that starts this colony`,
      because: 'The colony had not been started on this day.',
      remedies: [
        'Enter when and how the colony was started.',
        'If its start is on record with a later day, correct that day first.',
        'Correct the day of this entry.',
      ],
    });
    return undefined;
  }
  if (colony.ended && (SEATS_QUEENS.has(entry.kind) || lastDay(colony.ended.day) < firstDay(entry.day))) {
    draft.contradict(entry, 'colony-already-ended', {
      colony: id,
      found: `${colony.label} ended on ${colony.ended.day}`,
      because: `${colony.label} was no longer alive on ${entry.day}.`,
      remedies: [
        'Choose another colony.',
        `Take back the entry that ended ${colony.label}.`,
        'Correct the day.',
      ],
    });
  }
  return colony;
}

/** The queen, after saying so when there is no record of her or she was already lost. */
export function knownQueen(draft: RegistryDraft, entry: Entry, id: QueenId): Queen | undefined {
  const queen = draft.queens.get(id);
  if (!queen) {
    draft.contradict(entry, 'queen-unknown', {
      queen: id,
      found: 'a queen of whom there is no record by this day',
      because: 'Nothing in the journal says where this queen came from.',
      remedies: [
        'Enter her first.',
        'If the entry that told of her was taken back, bring it back.',
        'Choose another queen.',
      ],
    });
  }
  return queen;
}

/** Losses after which a queen may be seen again, here or with another keeper. */
const MAY_RETURN: ReadonlySet<string> = new Set(['given-away', 'swarmed', 'not-found', 'unknown']);

function isLostForGood(state: QueenState): state is Extract<QueenState, { is: 'gone' } | { is: 'failed' }> {
  if (state.is === 'failed') return true;
  return state.is === 'gone' && !state.deduced && !MAY_RETURN.has(state.cause);
}

/**
 * As `knownQueen`, and says so when she was lost for good before this day. One who swarmed, was not found, was given
 * away, or is only taken to be gone may be met again.
 */
export function livingQueen(draft: RegistryDraft, entry: Entry, id: QueenId): Queen | undefined {
  const queen = knownQueen(draft, entry, id);
  if (queen && isLostForGood(queen.state)) {
    const { cause, day } = queen.state;
    draft.contradict(entry, 'queen-already-lost', {
      queen: id,
      found: `${draft.titleOf(id)} was lost on ${day} (${cause.replaceAll('-', ' ')})`,
      because: 'A queen who is lost cannot do this afterwards.',
      remedies: [
        'Choose another queen.',
        cause === 'another-came-first'
          ? 'Correct the entry by which another queen came first.'
          : 'Take back the entry of her loss.',
        'Correct the day.',
      ],
    });
  }
  return queen;
}

/** Says so when another queen already heads the colony. */
export function onlyQueen(draft: RegistryDraft, entry: Entry, colony: ColonyId, coming: QueenId): void {
  const head = headOf(draft, colony);
  if (!head || head === coming) return;
  draft.contradict(entry, 'two-queens-in-colony', {
    colony,
    queen: head,
    found: `${draft.titleOf(head)} in ${draft.labelOf(colony)}`,
    because: `${draft.labelOf(colony)} already has a queen by the records.`,
    remedies: [
      `Say what became of ${draft.titleOf(head)} first.`,
      'Choose another colony.',
      'Overrule it with a reason, such as mother and daughter laying side by side.',
    ],
  });
}
