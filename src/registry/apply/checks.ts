import { dayNumber, firstDay, lastDay, type RoughDay } from '../../journal/day.ts';
import type { Entry } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { Parentage } from '../../journal/shared.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Colony, Queen } from '../state.ts';

/** The colony, after saying so when it had not begun or had ended by the day of the entry. */
export function livingColony(draft: RegistryDraft, entry: Entry, id: ColonyId): Colony | undefined {
  const colony = draft.colonies.get(id);
  if (!colony) {
    draft.contradict(entry, 'colony-not-started', {
      colony: id,
      found: `${entry.day}, before any entry that starts this colony`,
      because: 'The colony had not been started on this day.',
      remedies: ['Enter when and how the colony was started.', 'Correct the day of this entry.'],
    });
    return undefined;
  }
  if (colony.ended && lastDay(colony.ended.day) < firstDay(entry.day)) {
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
      remedies: ['Enter her first.', 'Choose another queen.'],
    });
  }
  return queen;
}

/** As `knownQueen`, and says so when she was lost or had failed before this day. */
export function livingQueen(draft: RegistryDraft, entry: Entry, id: QueenId): Queen | undefined {
  const queen = knownQueen(draft, entry, id);
  const state = queen?.state;
  if (queen && (state?.is === 'gone' || state?.is === 'failed')) {
    draft.contradict(entry, 'queen-already-lost', {
      queen: id,
      found: `${draft.titleOf(id)} was lost on ${state.day} (${state.cause.replaceAll('-', ' ')})`,
      because: 'A queen who is lost cannot do this afterwards.',
      remedies: ['Choose another queen.', 'Take back the entry of her loss.', 'Correct the day.'],
    });
  }
  return queen;
}

/** Says so when another queen already heads the colony. */
export function onlyQueen(draft: RegistryDraft, entry: Entry, colony: ColonyId, coming: QueenId): void {
  const head = draft.colonies.get(colony)?.tenures.findLast(({ to }) => to === undefined)?.queen;
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

/**
 * Checks a parentage: dams known, probabilities at most 1 together, no dam younger than her daughter, no dam who
 * descends from her own daughter.
 */
export function checkParentage(
  draft: RegistryDraft,
  entry: Entry,
  daughter: Queen,
  parentage: Parentage,
): void {
  const sum = parentage.dams.reduce((total, { probability }) => total + probability, 0);
  if (sum > 1 + 1e-9) {
    draft.contradict(entry, 'probabilities-over-one', {
      queen: daughter.id,
      found: `${Number(sum.toFixed(3))} together`,
      because: 'The probabilities of the possible dams come to more than 1.',
      remedies: ['Lower one of them, so that together they are 1 at most.'],
    });
  }
  for (const { queen: id } of parentage.dams) {
    const dam = knownQueen(draft, entry, id);
    if (!dam) continue;
    if (daughter.born && dam.born && daughter.born.last < dam.born.first) {
      draft.contradict(entry, 'daughter-older-than-dam', {
        queen: daughter.id,
        found: `daughter born by ${daughter.born.last}, dam ${draft.titleOf(id)} not before ${dam.born.first}`,
        because: 'A daughter cannot be older than her dam.',
        remedies: ['Choose another dam.', 'Correct the year of one of the two queens.'],
      });
    }
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

function descendsFrom(draft: RegistryDraft, queen: Queen, ancestor: QueenId): boolean {
  const seen = new Set<QueenId>();
  const waiting: QueenId[] = [queen.id];
  for (let id = waiting.pop(); id; id = waiting.pop()) {
    if (id === ancestor) return true;
    if (seen.has(id)) continue;
    seen.add(id);
    for (const dam of draft.queens.get(id)?.parentage?.dams ?? []) waiting.push(dam.queen);
  }
  return false;
}

/** Oldest age (days since the egg was laid) that brood used for raising queens may have. */
export const OLDEST_DAYS = {
  eggs: 3,
  'young-brood': 6,
  'open-cells': 8,
  'capped-cells': 16,
  cells: 16,
} as const;

/**
 * Says so when a named dam cannot have laid the eggs: she headed neither the colony they hung in, nor one from which
 * brood was carried there, within the age that they can have.
 */
export function checkEggs(
  draft: RegistryDraft,
  entry: Entry,
  colony: ColonyId,
  parentage: Parentage,
  oldestDays: number,
): void {
  for (const { queen, probability } of parentage.dams) {
    if (probability === 0 || !draft.queens.get(queen)) continue;
    if (laidThere(draft, queen, colony, entry.day, oldestDays, 3)) continue;
    draft.contradict(entry, 'eggs-of-absent-queen', {
      colony,
      queen,
      found: `${draft.titleOf(queen)} as the layer of eggs in ${draft.labelOf(colony)} on ${entry.day}`,
      because: `By the records she was not there within the ${oldestDays} days before, so none of this brood can be hers.`,
      remedies: [
        `Name the queen who headed ${draft.labelOf(colony)} then.`,
        'Enter the frame of brood that was carried there.',
        'Correct the day on which she left.',
      ],
    });
  }
}

function laidThere(
  draft: RegistryDraft,
  queen: QueenId,
  colony: ColonyId,
  day: RoughDay,
  oldestDays: number,
  steps: number,
): boolean {
  const record = draft.colonies.get(colony);
  if (!record) return false;
  const earliest = dayNumber(firstDay(day)) - oldestDays;
  const latest = dayNumber(lastDay(day));
  const headed = record.tenures.some(
    (tenure) =>
      tenure.queen === queen &&
      dayNumber(firstDay(tenure.from)) <= latest &&
      (tenure.to === undefined || dayNumber(lastDay(tenure.to)) >= earliest),
  );
  if (headed || record.entries.some((entry) => graftedThere(entry, queen, colony, earliest))) return true;
  if (steps === 0) return false;
  return record.entries.some((carried) => {
    if (dayNumber(lastDay(carried.day)) < earliest) return false;
    const from = carriedFrom(carried, colony);
    return from !== undefined && from !== colony && laidThere(draft, queen, from, day, oldestDays, steps - 1);
  });
}

/** A graft names the queen whose larvae went into the builder. */
function graftedThere(entry: Entry, queen: QueenId, builder: ColonyId, earliest: number): boolean {
  if (entry.kind !== 'graft' || entry.builder !== builder) return false;
  if (dayNumber(lastDay(entry.day)) < earliest) return false;
  return entry.parentage.dams.some((dam) => dam.queen === queen && dam.probability > 0);
}

function carriedFrom(entry: Entry, to: ColonyId): ColonyId | undefined {
  if (entry.kind === 'frames-moved' || entry.kind === 'eggs-given' || entry.kind === 'cells-given') {
    return entry.to === to ? entry.from : undefined;
  }
  if (entry.kind === 'split')
    return entry.parts.some((part) => part.colony === to) ? entry.source : undefined;
  if (entry.kind === 'colonies-joined') return entry.into === to ? entry.colony : undefined;
  return undefined;
}
