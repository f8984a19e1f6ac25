import { addDays, firstDay, lastDay, type RoughDay } from '../../journal/day.ts';
import type { Entry, EntryOf } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { Parentage } from '../../journal/shared.ts';
import type { RegistryDraft } from '../draft.ts';
import type { DayWindow, MakingHow, Queen } from '../state.ts';
import { checkParentage, knownQueen, livingColony, livingQueen, onlyQueen } from './checks.ts';
import { closeTenure, endQueen, expectIn, headOf, openTenure } from './tenures.ts';

/** Queens: entered, expected, found, confirmed, lost, moved, and what is said of them. */

/**
 * How likely an unmarked queen in the place of a marked one is her daughter. An assumption, shown as such wherever it
 * counts: the rest is a swarm or a virgin that flew in.
 */
export const SUPERSEDURE_PROBABILITY = 0.9;

/**
 * Makes the record of a new queen; says so when there is one already. A queen of whom another keeper only told comes to
 * be by the entry that made her: it goes before what was told.
 */
export function addQueen(
  draft: RegistryDraft,
  entry: Entry,
  id: QueenId,
  facts: Partial<Omit<Queen, 'id' | 'tenures' | 'daughters' | 'entries'>>,
): Queen | undefined {
  const known = draft.queens.get(id);
  if (known && !onlyTold(known)) {
    draft.contradict(entry, 'queen-entered-twice', {
      queen: id,
      found: `${draft.titleOf(id)} is on record since ${known.entries[0]?.day ?? 'before'}`,
      because: 'A queen is entered once.',
      remedies: ['Take one of the two entries back.', 'Enter this as another queen.'],
    });
    return undefined;
  }
  const { parentage, ...rest } = facts;
  // From whom she was told of is no fact about a queen who was made here.
  const { from: _, ...told } = known ?? {};
  draft.queens.set(id, {
    id,
    tenures: [],
    daughters: [],
    ...told,
    state: { is: 'unknown' },
    ...rest,
    entries: [...(known?.entries ?? []), entry],
  });
  if (parentage) setParentage(draft, entry, id, parentage);
  return draft.queens.get(id);
}

/** A queen told of without a colony, of whom nothing is on record but what was told. */
function onlyTold(queen: Queen): boolean {
  return queen.entries.every((entry) => {
    if (entry.kind === 'queen-entered') return entry.colony === undefined;
    return entry.kind === 'mating' || entry.kind === 'note';
  });
}

/** What is told of a queen on record fills in what is not known of her, and changes nothing that is. */
function tellMore(draft: RegistryDraft, entry: EntryOf<'queen-entered'>, known: Queen): void {
  const { parentage, from: _, ...told } = enteredFacts(entry);
  draft.changeQueen(known.id, (queen) => ({ ...told, ...queen }));
  if (parentage && !known.parentage) setParentage(draft, entry, known.id, parentage);
  draft.file(entry, { queens: [known.id] });
}

/** Sets who a queen's dams may be, and keeps the lists of daughters in step. */
export function setParentage(draft: RegistryDraft, entry: Entry, id: QueenId, parentage: Parentage): void {
  const queen = draft.queens.get(id);
  if (!queen) return;
  checkParentage(draft, entry, queen, parentage);
  for (const dam of queen.parentage?.dams ?? []) {
    draft.changeQueen(dam.queen, (record) => ({
      ...record,
      daughters: record.daughters.filter((daughter) => daughter !== id),
    }));
  }
  draft.changeQueen(id, (record) => ({ ...record, parentage }));
  for (const dam of parentage.dams) {
    if (dam.probability === 0) continue;
    draft.changeQueen(dam.queen, (record) => ({ ...record, daughters: [...record.daughters, id] }));
  }
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

export function bornBetween(day: RoughDay, earliest: number, latest: number): DayWindow {
  return { first: addDays(firstDay(day), earliest), last: addDays(lastDay(day), latest) };
}

function enteredFacts(entry: EntryOf<'queen-entered'>) {
  return {
    ...(entry.name ? { name: entry.name } : {}),
    ...(entry.born ? { born: { first: firstDay(entry.born), last: lastDay(entry.born) } } : {}),
    ...(entry.parentage ? { parentage: entry.parentage } : {}),
    ...(entry.background ? { background: entry.background } : {}),
    ...(entry.from ? { from: entry.from } : {}),
    ...(entry.colour
      ? { mark: { colour: entry.colour, since: entry.day, ...(entry.mark ? { number: entry.mark } : {}) } }
      : {}),
  };
}

export function applyQueenEntered(draft: RegistryDraft, entry: EntryOf<'queen-entered'>): void {
  const known = draft.queens.get(entry.queen);
  if (known && entry.colony === undefined) {
    tellMore(draft, entry, known);
    return;
  }
  const colony = entry.colony && livingColony(draft, entry, entry.colony);
  const queen = addQueen(draft, entry, entry.queen, enteredFacts(entry));
  if (!queen) return;
  addMaking(draft, entry, 'brought-in', [entry.queen], entry.colony);
  if (!colony) return;
  if (entry.laying === false) {
    expectIn(draft, entry.queen, colony.id, entry.day);
  } else {
    onlyQueen(draft, entry, colony.id, entry.queen);
    openTenure(draft, { queen: entry.queen, colony: colony.id, from: entry.day, layingFrom: entry.day });
  }
  draft.file(entry, { colonies: [colony.id] });
}

export function applyQueenExpected(draft: RegistryDraft, entry: EntryOf<'queen-expected'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  const head = headOf(draft, colony.id) ?? colony.tenures.at(-1)?.queen;
  const deduced: Parentage | undefined = head && {
    dams: [{ queen: head, probability: 1 }],
    evidence: 'dam-in-colony',
  };
  const parentage = entry.parentage ?? deduced;
  const queen = addQueen(draft, entry, entry.queen, {
    born: bornBetween(entry.day, 0, 17),
    ...(parentage ? { parentage } : {}),
  });
  if (!queen) return;
  expectIn(draft, entry.queen, colony.id, entry.day);
  addMaking(draft, entry, entry.reason, [entry.queen], colony.id);
  draft.file(entry, { colonies: [colony.id] });
}

export function applyQueenFound(draft: RegistryDraft, entry: EntryOf<'queen-found'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  const head = headOf(draft, colony.id);
  const before = entry.insteadOf ?? head;
  const deduced: Parentage | undefined = before && {
    dams: [{ queen: before, probability: SUPERSEDURE_PROBABILITY }],
    evidence: 'unmarked-queen-found',
  };
  const parentage = entry.parentage ?? deduced;
  const queen = addQueen(draft, entry, entry.queen, {
    ...(entry.name ? { name: entry.name } : {}),
    ...(parentage ? { parentage } : {}),
    ...(entry.born ? { born: { first: firstDay(entry.born), last: lastDay(entry.born) } } : {}),
  });
  if (!queen) return;
  if (head) {
    draft.file(entry, { queens: [head] });
    endQueen(draft, head, { is: 'gone', day: entry.day, cause: 'superseded', deduced: true });
  }
  failOthers(draft, colony.id, entry.queen, entry.day);
  openTenure(draft, { queen: entry.queen, colony: colony.id, from: entry.day, layingFrom: entry.day });
  addMaking(draft, entry, 'supersedure', [entry.queen], colony.id);
  draft.file(entry, { colonies: [colony.id] });
}

/** The queens expected in a colony besides the one that came: another came first. */
function failOthers(draft: RegistryDraft, colony: ColonyId, came: QueenId, day: RoughDay): void {
  for (const other of draft.colonies.get(colony)?.expected ?? []) {
    if (other !== came) endQueen(draft, other, { is: 'failed', day, cause: 'another-came-first' });
  }
}

/** Cells of these kinds are raised while the old queen is there; her end follows from the daughter's beginning. */
const SUCCEEDS: Partial<Record<MakingHow, 'superseded' | 'swarmed'>> = {
  supersedure: 'superseded',
  swarm: 'swarmed',
};

export function applyQueenConfirmed(draft: RegistryDraft, entry: EntryOf<'queen-confirmed'>): void {
  const queen = livingQueen(draft, entry, entry.queen);
  const colony = livingColony(draft, entry, entry.colony);
  if (!queen || !colony) return;
  draft.file(entry, { colonies: [colony.id], queens: [queen.id] });
  const head = headOf(draft, colony.id);
  if (head === queen.id) return;
  const elsewhere = queen.expectedIn ?? queen.tenures.findLast(({ to }) => to === undefined)?.colony;
  if (elsewhere && elsewhere !== colony.id) {
    draft.contradict(entry, 'queen-in-two-colonies', {
      queen: queen.id,
      colony: colony.id,
      found: `${draft.titleOf(queen.id)} in ${draft.labelOf(elsewhere)} by the records, confirmed in ${colony.label}`,
      because: 'A queen is in one colony at a time.',
      remedies: [`Enter how she came to ${colony.label}.`, `Choose ${draft.labelOf(elsewhere)}.`],
    });
  }
  const making = queen.madeBy && draft.makings.get(queen.madeBy);
  const succeeds = making && SUCCEEDS[making.how];
  if (head && succeeds) endQueen(draft, head, { is: 'gone', day: entry.day, cause: succeeds, deduced: true });
  else onlyQueen(draft, entry, colony.id, queen.id);
  closeTenure(draft, queen.id, { to: entry.day, ended: 'moved' });
  stopAndOpen(draft, queen.id, colony.id, entry.day);
  failOthers(draft, colony.id, queen.id, entry.day);
}

function stopAndOpen(draft: RegistryDraft, queen: QueenId, colony: ColonyId, day: RoughDay): void {
  const expectedIn = draft.queens.get(queen)?.expectedIn;
  if (expectedIn && expectedIn !== colony) {
    draft.changeColony(expectedIn, (record) => ({
      ...record,
      expected: record.expected.filter((id) => id !== queen),
    }));
  }
  openTenure(draft, { queen, colony, from: day, layingFrom: day });
}

export function applyQueenLost(draft: RegistryDraft, entry: EntryOf<'queen-lost'>): void {
  const queen = livingQueen(draft, entry, entry.queen);
  if (!queen) return;
  const colony = queen.expectedIn ?? queen.tenures.findLast(({ to }) => to === undefined)?.colony;
  draft.file(entry, { queens: [queen.id], colonies: colony ? [colony] : [] });
  if (queen.state.is === 'expected' && entry.cause !== 'given-away') {
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

export function applyQueenMoved(draft: RegistryDraft, entry: EntryOf<'queen-moved'>): void {
  const queen = draft.queens.get(entry.queen);
  const givenAway = queen?.state.is === 'gone' && queen.state.cause === 'given-away';
  if (!(givenAway ? queen : livingQueen(draft, entry, entry.queen))) return;
  const colony = livingColony(draft, entry, entry.to);
  if (!queen || !colony) return;
  const from = queen.expectedIn ?? queen.tenures.findLast(({ to }) => to === undefined)?.colony;
  draft.file(entry, { queens: [queen.id], colonies: from ? [from, colony.id] : [colony.id] });
  onlyQueen(draft, entry, colony.id, queen.id);
  if (queen.state.is === 'expected') {
    expectIn(draft, queen.id, colony.id, entry.day);
    return;
  }
  closeTenure(draft, queen.id, { to: entry.day, ended: 'moved' });
  openTenure(draft, { queen: queen.id, colony: colony.id, from: entry.day, layingFrom: entry.day });
}

export function applyQueenMarked(draft: RegistryDraft, entry: EntryOf<'queen-marked'>): void {
  if (!livingQueen(draft, entry, entry.queen)) return;
  const mark = { colour: entry.colour, since: entry.day, ...(entry.mark ? { number: entry.mark } : {}) };
  draft.changeQueen(entry.queen, (queen) => ({ ...queen, mark }));
  draft.file(entry, { queens: [entry.queen], colonies: seatOf(draft, entry.queen) });
}

export function applyQueenNamed(draft: RegistryDraft, entry: EntryOf<'queen-named'>): void {
  if (!knownQueen(draft, entry, entry.queen)) return;
  draft.changeQueen(entry.queen, (queen) => ({ ...queen, name: entry.name }));
  draft.file(entry, { queens: [entry.queen], colonies: seatOf(draft, entry.queen) });
}

function seatOf(draft: RegistryDraft, queen: QueenId): readonly ColonyId[] {
  const record = draft.queens.get(queen);
  const colony = record?.expectedIn ?? record?.tenures.findLast(({ to }) => to === undefined)?.colony;
  return colony ? [colony] : [];
}

export function applyParentageStated(draft: RegistryDraft, entry: EntryOf<'parentage-stated'>): void {
  if (!knownQueen(draft, entry, entry.queen)) return;
  setParentage(draft, entry, entry.queen, entry.parentage);
  draft.file(entry, { queens: [entry.queen] });
}

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
  draft.file(entry, { queens: [entry.queen], colonies: seatOf(draft, entry.queen) });
}
