import { addDays, dayNumber, lastDay, type PlainDay } from '../../journal/day.ts';
import type { Entry } from '../../journal/entry.ts';
import type { Parentage } from '../../journal/entry-parts.ts';
import type { QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Queen } from '../state.ts';
import { knownQueen } from './checks.ts';
import { checkEggs, EGG_TO_QUEEN_DAYS } from './eggs.ts';

/** Who a queen's dams are, and whether that can be. */

/**
 * Days that a daughter is at least younger than her dam: at least 5 until the dam flies and 15 from egg to queen, common
 * practice with no source.
 */
const GENERATION_DAYS = 20;

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
  for (const dam of new Set(
    parentage.dams.filter(({ probability }) => probability > 0).map((each) => each.queen),
  )) {
    draft.changeQueen(dam, (record) => ({ ...record, daughters: [...record.daughters, id] }));
  }
}

/**
 * Checks a parentage: dams known, probabilities at most 1 together, no dam younger than her daughter, no dam who
 * descends from her own daughter.
 */
function checkParentage(draft: RegistryDraft, entry: Entry, daughter: Queen, parentage: Parentage): void {
  const sum = parentage.dams.reduce((total, { probability }) => total + probability, 0);
  if (sum > 1 + 1e-9) {
    draft.contradict(entry, 'probabilities-over-one', {
      queen: daughter.id,
      found: `${Number(sum.toFixed(3))} together`,
      because: 'The probabilities of the possible dams come to more than 1.',
      remedies: ['Lower one of them, so that together they are 1 at most.'],
    });
  }
  for (const { queen: id, probability } of parentage.dams) {
    const dam = knownQueen(draft, entry, id);
    if (!dam || probability === 0) continue;
    checkAges(draft, entry, daughter, dam);
    if (descendsFrom(draft, dam, daughter.id)) {
      draft.contradict(entry, 'dam-is-descendant', {
        queen: daughter.id,
        found: `${draft.titleOf(id)} as dam of ${draft.titleOf(daughter.id)}`,
        because: 'By the records she descends from this very daughter.',
        remedies: ['Choose another dam.', 'Correct the parentage of the other queen.'],
      });
    }
  }
}

/** True when a queen who was there by a day may be the daughter of this one. */
export function mayBeDam(dam: Queen, daughterBornBy: PlainDay): boolean {
  return dam.born === undefined || addDays(dam.born.first, GENERATION_DAYS) <= daughterBornBy;
}

function checkAges(draft: RegistryDraft, entry: Entry, daughter: Queen, dam: Queen): void {
  const bornBy = latestBirth(daughter);
  if (bornBy === undefined || dam.born === undefined || mayBeDam(dam, bornBy)) return;
  const older = bornBy < dam.born.first;
  draft.contradict(entry, 'daughter-older-than-dam', {
    queen: daughter.id,
    found: `daughter there by ${bornBy}, dam ${draft.titleOf(dam.id)} not before ${dam.born.first}`,
    because: older
      ? 'A daughter cannot be older than her dam.'
      : `A daughter emerges at least ${GENERATION_DAYS} days after her dam.`,
    remedies: ['Choose another dam.', 'Correct the year of one of the two queens.'],
  });
}

/** The last day on which she may have emerged: that of her birth, or the one on which she was first there. */
function latestBirth({ born, entries }: Queen): PlainDay | undefined {
  const met = entries.find(
    (entry) => entry.kind === 'queen-found' || (entry.kind === 'queen-entered' && entry.laying !== false),
  );
  const days = [born?.last, met && lastDay(met.day)].filter((day) => day !== undefined);
  return days.sort()[0];
}

/** What is learnt late of a queen's birth is checked against the dams and daughters on record. */
export function checkFamily(draft: RegistryDraft, entry: Entry, id: QueenId): void {
  const queen = draft.queens.get(id);
  if (!queen) return;
  for (const dam of queen.parentage?.dams ?? []) {
    const record = draft.queens.get(dam.queen);
    if (record) checkAges(draft, entry, queen, record);
  }
  for (const daughter of queen.daughters) {
    const record = draft.queens.get(daughter);
    if (record) checkAges(draft, entry, record, queen);
  }
}

/** Daughters on record whose dam was named before anything was known of her. */
export function daughtersNaming(draft: RegistryDraft, dam: QueenId): readonly QueenId[] {
  if (!draft.namedUnknown.has(dam)) return [];
  const names = ({ parentage }: Queen) =>
    parentage?.dams.some(({ queen, probability }) => queen === dam && probability > 0) ?? false;
  return [...draft.queens.values()].filter(names).map(({ id }) => id);
}

/** Says so when a stated dam was no more when the egg must have been laid, by the birth that is on record. */
export function checkStated(draft: RegistryDraft, entry: Entry, id: QueenId, parentage: Parentage): void {
  const born = draft.queens.get(id)?.born;
  if (!born) return;
  const laid = {
    earliest: dayNumber(born.first) - EGG_TO_QUEEN_DAYS,
    latest: Number.POSITIVE_INFINITY,
  };
  checkEggs(draft, entry, undefined, parentage, laid);
}

function descendsFrom(draft: RegistryDraft, queen: Queen, ancestor: QueenId): boolean {
  const seen = new Set<QueenId>();
  const waiting: QueenId[] = [queen.id];
  for (let id = waiting.pop(); id; id = waiting.pop()) {
    if (id === ancestor) return true;
    if (seen.has(id)) continue;
    seen.add(id);
    for (const dam of draft.queens.get(id)?.parentage?.dams ?? []) {
      if (dam.probability > 0) waiting.push(dam.queen);
    }
  }
  return false;
}
