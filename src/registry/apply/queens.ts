import { firstDay, lastDay } from '../../journal/day.ts';
import type { EntryOf } from '../../journal/entry.ts';
import type { Parentage } from '../../journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import { OLDEST_DAYS, whoseCells } from '../brood.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Colony, Queen } from '../state.ts';
import { knownQueen, livingColony, onlyQueen } from './checks.ts';
import { checkEggs, laidBefore } from './eggs.ts';
import { emergence } from './increase.ts';
import { checkStated, mayBeDam } from './parentage.ts';
import { addMaking, addQueen, isTold, tellMore } from './records.ts';
import { laysSince, surelyThereUntil } from './sightings.ts';
import { failOthers } from './succession.ts';
import { closeTenure, endQueen, expectIn, headOf, headsOf, openTenure, stopExpecting } from './tenures.ts';

/** Queens who come upon the records: entered, expected of cells, found where another was. */

/**
 * How likely an unmarked queen in the place of a marked one is her daughter. An assumption, shown as such wherever it
 * counts: the rest is a swarm or a virgin that flew in.
 */
const SUPERSEDURE_PROBABILITY = 0.9;

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

/** A queen the records did not know, or more of one they know from another keeper’s pedigree. */
export function applyQueenEntered(draft: RegistryDraft, entry: EntryOf<'queen-entered'>): void {
  const known = draft.queens.get(entry.queen);
  if (entry.laying !== false) checkBirthDay(draft, entry);
  if (known && (entry.colony === undefined || isHandedOver(known, entry))) {
    tellMore(draft, entry, known, enteredFacts(entry));
    if (entry.colony) seatEntered(draft, entry, entry.colony);
    return;
  }
  if (!addQueen(draft, entry, entry.queen, enteredFacts(entry))) return;
  addMaking(draft, entry, 'brought-in', [entry.queen], entry.colony);
  if (entry.parentage) checkStated(draft, entry, entry.queen, entry.parentage);
  if (entry.colony) seatEntered(draft, entry, entry.colony);
}

/**
 * True when a queen on record came to another keeper: she was given away, or the keeper who enters her had no hand in
 * anything before, so that the giving away may follow.
 */
function isHandedOver({ state, entries }: Queen, { recordedBy }: EntryOf<'queen-entered'>): boolean {
  if (state.is === 'gone' && state.cause === 'given-away') return true;
  if (state.is !== 'laying' && state.is !== 'expected') return false;
  return entries.every((entry) => entry.recordedBy !== recordedBy || isTold(entry));
}

/** Puts a queen into the colony that she is entered with. */
function seatEntered(draft: RegistryDraft, entry: EntryOf<'queen-entered'>, id: ColonyId): void {
  const colony = livingColony(draft, entry, id);
  if (!colony) return;
  onlyQueen(draft, entry, id, entry.queen);
  closeTenure(draft, entry.queen, { to: entry.day, ended: 'given-away' });
  stopExpecting(draft, entry.queen);
  if (entry.laying === false) expectIn(draft, entry.queen, id, entry.day);
  else openTenure(draft, { queen: entry.queen, colony: id, from: entry.day, layingFrom: entry.day });
  draft.file(entry, { colonies: [id] });
}

/** Says so when a queen is there before she can have emerged. */
function checkBirthDay(draft: RegistryDraft, entry: EntryOf<'queen-entered' | 'queen-found'>): void {
  if (!entry.born || firstDay(entry.born) <= lastDay(entry.day)) return;
  draft.contradict(entry, 'day-in-future', {
    queen: entry.queen,
    found: `emerged ${entry.born}, there on ${entry.day}`,
    because: 'She cannot be there before she emerged.',
    remedies: ['Correct the year in which she emerged.', 'Correct the day.'],
  });
}

/** Whose eggs the cells in a colony are: of those who laid what hung there in the days when the eggs were laid. */
function damsOfCells(
  draft: RegistryDraft,
  colony: Colony,
  day: EntryOf<'queen-expected'>['day'],
): Parentage | undefined {
  const laid = whoseCells(draft.colonies, colony.id, firstDay(day), lastDay(day));
  const head = headOf(draft, colony.id);
  // A queen who was confirmed only now has laid for longer than the records say.
  const dams = laid.length === 0 && head ? [{ queen: head, probability: 1 }] : laid;
  return dams.length === 0 ? undefined : { dams: [...dams], evidence: 'dam-in-colony' };
}

/** Cells found in a colony left whole: a queen is awaited there. */
export function applyQueenExpected(draft: RegistryDraft, entry: EntryOf<'queen-expected'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  const parentage = entry.parentage ?? damsOfCells(draft, colony, entry.day);
  const queen = addQueen(draft, entry, entry.queen, {
    born: emergence(entry.day, 'unknown'),
    ...(parentage ? { parentage } : {}),
  });
  if (!queen) return;
  if (entry.parentage) {
    checkEggs(draft, entry, colony.id, entry.parentage, laidBefore(entry.day, OLDEST_DAYS.cells));
  }
  expectIn(draft, entry.queen, colony.id, entry.day);
  addMaking(draft, entry, entry.reason, [entry.queen], colony.id);
  draft.file(entry, { colonies: [colony.id] });
}

/** A queen seen in place of the known one: probably her daughter. */
export function applyQueenFound(draft: RegistryDraft, entry: EntryOf<'queen-found'>): void {
  const colony = livingColony(draft, entry, entry.colony);
  if (!colony) return;
  const heads = headsOf(draft, colony.id);
  checkInsteadOf(draft, entry, colony);
  const parentage = entry.parentage ?? damOfFound(draft, entry, entry.insteadOf ?? heads.at(-1));
  checkBirthDay(draft, entry);
  const queen = addQueen(draft, entry, entry.queen, {
    ...(entry.name ? { name: entry.name } : {}),
    ...(parentage ? { parentage } : {}),
    ...(entry.born ? { born: { first: firstDay(entry.born), last: lastDay(entry.born) } } : {}),
  });
  if (!queen) return;
  if (entry.parentage) checkStated(draft, entry, entry.queen, entry.parentage);
  const gone = entry.insteadOf && heads.includes(entry.insteadOf) ? [entry.insteadOf] : heads;
  for (const head of gone) {
    const surely = surelyThereUntil(draft.queens.get(head), entry);
    draft.file(entry, { queens: [head] });
    endQueen(draft, head, { is: 'gone', day: entry.day, cause: 'superseded', deduced: true }, surely);
  }
  failOthers(draft, colony.id, entry.queen, entry.day);
  const tenure = { queen: entry.queen, colony: colony.id, from: entry.day };
  openTenure(draft, { ...tenure, layingFrom: laysSince(entry) });
  addMaking(draft, entry, 'supersedure', [entry.queen], colony.id);
  draft.file(entry, { colonies: [colony.id] });
}

/** Says so when the queen she is found instead of never headed this colony. */
function checkInsteadOf(draft: RegistryDraft, entry: EntryOf<'queen-found'>, colony: Colony): void {
  const { insteadOf } = entry;
  if (!insteadOf || !knownQueen(draft, entry, insteadOf)) return;
  if (colony.tenures.some(({ queen }) => queen === insteadOf)) return;
  draft.contradict(entry, 'queen-not-there', {
    queen: insteadOf,
    colony: colony.id,
    found: `${draft.titleOf(insteadOf)} as the queen who was in ${colony.label}`,
    because: `By the records ${draft.titleOf(insteadOf)} never headed ${colony.label}.`,
    remedies: [
      `Choose the queen who was known in ${colony.label}, or none.`,
      `Enter first how ${draft.titleOf(insteadOf)} came there.`,
    ],
  });
}

/** The queen found is probably a daughter of the one before her, unless that one is too young. */
function damOfFound(
  draft: RegistryDraft,
  entry: EntryOf<'queen-found'>,
  before: QueenId | undefined,
): Parentage | undefined {
  const dam = before && draft.queens.get(before);
  if (!before || (dam && !mayBeDam(dam, lastDay(entry.day)))) return undefined;
  return {
    dams: [{ queen: before, probability: SUPERSEDURE_PROBABILITY }],
    evidence: 'unmarked-queen-found',
  };
}
