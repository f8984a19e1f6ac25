import type { EntryOf } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Colony } from '../state.ts';
import { livingColony, onlyQueen } from './checks.ts';
import { failOthers } from './succession.ts';
import { endQueen, expectIn, headsOf, moveHead } from './tenures.ts';

/** Two colonies put together: the bees of both, and one queen at most. */

export function applyColoniesJoined(draft: RegistryDraft, entry: EntryOf<'colonies-joined'>): void {
  const given = livingColony(draft, entry, entry.colony);
  const receiving = livingColony(draft, entry, entry.into);
  if (!given || !receiving) return;
  if (given.id === receiving.id) {
    draft.file(entry, { colonies: [given.id] });
    joinedWithItself(draft, entry, given);
    return;
  }
  const mine = headsOf(draft, receiving.id);
  const theirs = headsOf(draft, given.id);
  draft.file(entry, { colonies: [given.id, receiving.id], queens: [...theirs, ...mine] });
  draft.changeColony(given.id, (colony) => ({
    ...colony,
    ended: { day: entry.day, cause: 'joined', into: receiving.id, entry: entry.id },
  }));
  const kept = whoseQueen(entry, theirs, mine);
  if (kept === undefined) {
    for (const queen of [...theirs, ...mine]) lose(draft, entry, queen, true);
  } else if (kept === 'of-the-joined') {
    for (const queen of mine) lose(draft, entry, queen, false);
    takeOver(draft, entry, theirs, receiving.id);
  } else {
    for (const queen of theirs) lose(draft, entry, queen, false);
  }
  for (const queen of draft.colonies.get(given.id)?.expected ?? []) {
    if (kept === 'of-the-joined') expectIn(draft, queen, receiving.id, entry.day);
    else endQueen(draft, queen, { is: 'failed', day: entry.day, cause: 'unknown' });
  }
}

function joinedWithItself(draft: RegistryDraft, entry: EntryOf<'colonies-joined'>, colony: Colony): void {
  draft.contradict(entry, 'joined-with-itself', {
    colony: colony.id,
    found: `${colony.label} joined with ${colony.label}`,
    because: 'A colony cannot be joined with itself.',
    remedies: ['Choose the other of the two colonies.', 'Take the entry back.'],
  });
}

/** Whose queen was kept, where the keeper says so or only one of the two had one. */
function whoseQueen(
  { queenKept }: EntryOf<'colonies-joined'>,
  theirs: readonly QueenId[],
  mine: readonly QueenId[],
): 'of-the-receiving' | 'of-the-joined' | undefined {
  if (queenKept !== 'unknown') return queenKept;
  if (theirs.length > 0 && mine.length > 0) return undefined;
  if (theirs.length > 0) return 'of-the-joined';
  return mine.length > 0 ? 'of-the-receiving' : undefined;
}

function lose(
  draft: RegistryDraft,
  { day }: EntryOf<'colonies-joined'>,
  queen: QueenId,
  deduced: boolean,
): void {
  endQueen(draft, queen, { is: 'gone', day, cause: deduced ? 'unknown' : 'killed', deduced });
}

/** A laying queen of the joined colony goes over, and settles what was awaited in the other. */
function takeOver(
  draft: RegistryDraft,
  entry: EntryOf<'colonies-joined'>,
  queens: readonly QueenId[],
  into: ColonyId,
): void {
  for (const queen of queens) {
    onlyQueen(draft, entry, into, queen);
    moveHead(draft, queen, into, entry.day, 'moved');
    failOthers(draft, into, queen, entry.day);
  }
}
