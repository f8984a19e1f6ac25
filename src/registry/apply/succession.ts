import { daysBetween, firstDay, type RoughDay } from '../../journal/day.ts';
import type { QueenLossCause } from '../../journal/entries/queen.ts';
import type { EntryOf } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { MakingHow, Queen, Tenure } from '../state.ts';
import { livingColony, livingQueen, onlyQueen } from './checks.ts';
import {
  closeTenure,
  endQueen,
  expectIn,
  headsOf,
  neverLaid,
  openTenure,
  reopenTenure,
  seatOf,
  stopExpecting,
} from './tenures.ts';

/** Who heads a colony after whom: queens confirmed, lost, put into colonies. */

/** The queens expected in a colony besides the one that came: another came first. */
export function failOthers(draft: RegistryDraft, colony: ColonyId, came: QueenId, day: RoughDay): void {
  for (const other of draft.colonies.get(colony)?.expected ?? []) {
    if (other !== came) endQueen(draft, other, { is: 'failed', day, cause: 'another-came-first' });
  }
}

/**
 * What the end of the old queen is taken to be once a daughter from such cells lays. Supersedure and swarm cells are
 * raised while she is there; emergency cells are raised because she no longer is.
 */
const SUCCEEDS: Partial<Record<MakingHow, 'superseded' | 'swarmed' | 'unknown'>> = {
  supersedure: 'superseded',
  swarm: 'swarmed',
  emergency: 'unknown',
};

/** Losses that only say that nobody met her. */
const NEVER_LEFT: ReadonlySet<Tenure['ended']> = new Set<Tenure['ended']>(['not-found', 'unknown']);

/** She lays: she heads the colony from that day, and who else was awaited there has failed. */
export function applyQueenConfirmed(draft: RegistryDraft, entry: EntryOf<'queen-confirmed'>): void {
  const queen = livingQueen(draft, entry, entry.queen);
  const colony = livingColony(draft, entry, entry.colony);
  if (!queen || !colony) return;
  draft.file(entry, { colonies: [colony.id], queens: [queen.id] });
  if (headsOf(draft, colony.id).includes(queen.id)) {
    failEarlier(draft, colony.id, queen.id, entry.day);
    return;
  }
  if (wasThereAllAlong(queen, colony.id)) {
    onlyQueen(draft, entry, colony.id, queen.id);
    reopenTenure(draft, queen.id);
    failEarlier(draft, colony.id, queen.id, entry.day);
    return;
  }
  saysElsewhere(draft, entry, queen.id);
  succeed(draft, entry, queen);
  closeTenure(draft, queen.id, { to: entry.day, ended: 'moved' });
  if (seatOf(draft, queen.id) !== colony.id) stopExpecting(draft, queen.id);
  openTenure(draft, { queen: queen.id, colony: colony.id, from: entry.day, layingFrom: entry.day });
  failOthers(draft, colony.id, queen.id, entry.day);
}

/** True for one whose end in this colony was only taken to be: she is seen again where she was. */
function wasThereAllAlong({ state, tenures }: Queen, colony: ColonyId): boolean {
  const last = tenures.at(-1);
  if (state.is !== 'gone' || last?.colony !== colony) return false;
  return state.deduced || NEVER_LEFT.has(last.ended);
}

/** True for one whose end nobody saw. */
function isTakenToBeGone({ state }: Queen): boolean {
  return state.is === 'gone' && state.deduced;
}

function saysElsewhere(draft: RegistryDraft, entry: EntryOf<'queen-confirmed'>, queen: QueenId): void {
  const elsewhere = seatOf(draft, queen);
  if (!elsewhere || elsewhere === entry.colony) return;
  const label = draft.labelOf(entry.colony);
  draft.contradict(entry, 'queen-in-two-colonies', {
    queen,
    colony: entry.colony,
    found: `${draft.titleOf(queen)} in ${draft.labelOf(elsewhere)} by the records, confirmed in ${label}`,
    because: 'A queen is in one colony at a time.',
    remedies: [`Enter how she came to ${label}.`, `Choose ${draft.labelOf(elsewhere)}.`],
  });
}

/** Ends the queens whom she succeeds by the way she was made; says so when another stays beside her. */
function succeed(draft: RegistryDraft, entry: EntryOf<'queen-confirmed'>, queen: Queen): void {
  const making = queen.madeBy && draft.makings.get(queen.madeBy);
  const cause = making && making.colony === entry.colony ? SUCCEEDS[making.how] : undefined;
  const tenures = draft.colonies.get(entry.colony)?.tenures ?? [];
  for (const { queen: head, from, to } of tenures) {
    const before = cause !== undefined && firstDay(from) <= firstDay(making?.day ?? from);
    if (to !== undefined || !before) continue;
    const day = making?.how === 'emergency' ? making.day : entry.day;
    endQueen(draft, head, { is: 'gone', day, cause, deduced: true });
  }
  onlyQueen(draft, entry, entry.colony, queen.id);
}

/** Made beside a queen who lays on: her laying says nothing against them. */
const BESIDE_HER: ReadonlySet<MakingHow> = new Set<MakingHow>(['supersedure', 'swarm']);

/** Taken to be raised where no queen is, without anyone having seen cells: that she lays there says that none were. */
const WITHOUT_HER: ReadonlySet<MakingHow> = new Set<MakingHow>(['split', 'eggs']);

/**
 * The queens expected in a colony since before its head came have failed once she is seen to lay, and so have those
 * for whom there can have been no cells beside her.
 */
function failEarlier(draft: RegistryDraft, colony: ColonyId, head: QueenId, day: RoughDay): void {
  const came = draft.queens.get(head)?.tenures.at(-1)?.from;
  for (const id of draft.colonies.get(colony)?.expected ?? []) {
    const other = draft.queens.get(id);
    const making = other?.madeBy && draft.makings.get(other.madeBy);
    if (!came || other?.state.is !== 'expected' || (making && BESIDE_HER.has(making.how))) continue;
    const without = making && WITHOUT_HER.has(making.how) && other.state.since === making.day;
    if (!without && firstDay(other.state.since) > firstDay(came)) continue;
    endQueen(draft, id, { is: 'failed', day, cause: 'another-came-first' });
  }
}

/** Her tenure ends. A loss told once more, by day or cause, only adds to her history. */
export function applyQueenLost(draft: RegistryDraft, entry: EntryOf<'queen-lost'>): void {
  const known = draft.queens.get(entry.queen);
  if (known && tellsAgain(known, entry)) {
    draft.file(entry, { queens: [known.id] });
    return;
  }
  const onlyTaken = known?.state.is === 'failed' && known.state.cause === 'another-came-first';
  const queen = onlyTaken ? known : livingQueen(draft, entry, entry.queen);
  if (!queen) return;
  if (tookHerIn(queen, entry)) {
    draft.file(entry, { queens: [queen.id] });
    return;
  }
  if (isTakenToBeGone(queen)) reopenTenure(draft, queen.id);
  const colony = seatOf(draft, queen.id);
  draft.file(entry, { queens: [queen.id], colonies: colony ? [colony] : [] });
  if ((queen.state.is === 'expected' || onlyTaken) && entry.cause !== 'given-away') {
    endQueen(draft, queen.id, { is: 'failed', day: entry.day, cause: entry.cause });
  } else {
    endQueen(draft, queen.id, {
      is: 'gone',
      day: entry.day,
      cause: entry.cause,
      deduced: false,
      ...(entry.to ? { to: entry.to } : {}),
    });
  }
}

/** Days within which two entries, perhaps by two keepers, may tell of one event. */
const SAME_EVENT_DAYS = 14;

/** True when her loss by this cause is on record already: told twice, or by two keepers, it is one loss. */
function tellsAgain({ state }: Queen, { cause, day }: EntryOf<'queen-lost'>): boolean {
  if ((state.is !== 'gone' && state.is !== 'failed') || state.cause !== cause) return false;
  return Math.abs(daysBetween(firstDay(state.day), firstDay(day))) <= SAME_EVENT_DAYS;
}

/** True when the other keeper has written down already that she came: giving her away is then no second loss. */
function tookHerIn(queen: Queen, entry: EntryOf<'queen-lost'>): boolean {
  if (entry.cause !== ('given-away' satisfies QueenLossCause)) return false;
  const put = queen.entries.findLast(
    (each) => each.kind === 'queen-moved' || (each.kind === 'queen-entered' && each.colony !== undefined),
  );
  if (!put || put.recordedBy === entry.recordedBy) return false;
  return daysBetween(firstDay(put.day), firstDay(entry.day)) <= SAME_EVENT_DAYS;
}

/** She heads another colony from that day on; one taken to be gone comes back. */
export function applyQueenMoved(draft: RegistryDraft, entry: EntryOf<'queen-moved'>): void {
  const queen = livingQueen(draft, entry, entry.queen);
  const colony = livingColony(draft, entry, entry.to);
  if (!queen || !colony) return;
  const back = isTakenToBeGone(queen);
  if (back) reopenTenure(draft, queen.id);
  const from = seatOf(draft, queen.id);
  draft.file(entry, { queens: [queen.id], colonies: from ? [from, colony.id] : [colony.id] });
  // Caged for a while and let out again: she was never away.
  if (from === colony.id && !back) return;
  onlyQueen(draft, entry, colony.id, queen.id);
  if (from === colony.id) return;
  if (neverLaid(draft, queen.id)) {
    expectIn(draft, queen.id, colony.id, entry.day);
    return;
  }
  closeTenure(draft, queen.id, { to: entry.day, ended: 'moved' });
  openTenure(draft, { queen: queen.id, colony: colony.id, from: entry.day, layingFrom: entry.day });
}
