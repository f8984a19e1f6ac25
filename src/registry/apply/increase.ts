import { BIOLOGY } from '../../../graph/calendar/biology.ts';
import { lastDay, type RoughDay } from '../../journal/day.ts';
import type { EntryOf } from '../../journal/entry.ts';
import { OLDEST_DAYS } from '../brood.ts';
import type { RegistryDraft } from '../draft.ts';
import { ownBroodIn } from '../own-brood.ts';
import type { DayWindow } from '../state.ts';
import { knownQueen, livingColony, onlyQueen } from './checks.ts';
import { checkEggs, laidBefore } from './eggs.ts';
import { addMaking, addQueen, bornBetween } from './records.ts';
import { expectIn } from './tenures.ts';

/**
 * Cells, eggs and grafts: with splits, the events that make queens. Provenance follows the brood: daughters belong to
 * the queen who laid the eggs, wherever the frame hangs now.
 */

const { eggHatch, oldestLarva, queenCapped, queenEmergence } = BIOLOGY;

/** A colony left with eggs has young larvae too, and may raise its queen from those. */
const OLDEST_RAISED = eggHatch.latest + oldestLarva.latest;

/** Age, in days since the egg was laid, of what a queen is raised from: the youngest and the oldest. */
const AGE_OF = {
  eggs: [0, OLDEST_RAISED],
  'young-brood': [eggHatch.earliest, OLDEST_RAISED],
  open: [eggHatch.earliest, queenCapped.latest],
  capped: [queenCapped.earliest, queenEmergence.latest],
  emerging: [queenEmergence.earliest, queenEmergence.latest],
  unknown: [0, queenEmergence.latest],
} as const satisfies Record<string, readonly [number, number]>;

const RAISED_FROM = {
  eggs: 'eggs',
  'young-brood': 'young-brood',
  'open-cells': 'open',
  'capped-cells': 'capped',
  open: 'open',
  capped: 'capped',
  emerging: 'emerging',
  unknown: 'unknown',
} as const satisfies Record<string, keyof typeof AGE_OF>;

/** Days between which a queen emerges who is raised from this on a day. */
export function emergence(day: RoughDay, from: keyof typeof RAISED_FROM): DayWindow {
  const [youngest, oldest] = AGE_OF[RAISED_FROM[from]];
  return bornBetween(day, Math.max(0, queenEmergence.earliest - oldest), queenEmergence.latest - youngest);
}

/** A queen expected from cells carried over: a daughter of her who laid the eggs, wherever the frame hung. */
export function applyCellsGiven(draft: RegistryDraft, entry: EntryOf<'cells-given'>): void {
  const colony = livingColony(draft, entry, entry.to);
  if (!colony) return;
  const born = entry.eggsLaid
    ? bornBetween(entry.eggsLaid, queenEmergence.earliest, queenEmergence.latest)
    : emergence(entry.day, entry.age);
  const beside = ownBroodIn(colony, entry.day);
  const doubted = beside !== undefined && entry.parentage.dams.every(({ queen }) => queen !== beside);
  const facts = { parentage: entry.parentage, born, ...(doubted ? { orDaughterOf: beside } : {}) };
  if (!addQueen(draft, entry, entry.expected, facts)) return;
  checkLaidBefore(draft, entry);
  const laid = laidBefore(entry.day, OLDEST_DAYS.cells, entry.eggsLaid);
  checkEggs(draft, entry, entry.from, entry.parentage, laid);
  onlyQueen(draft, entry, colony.id, entry.expected);
  expectIn(draft, entry.expected, colony.id, entry.day);
  addMaking(draft, entry, entry.graft ? 'graft' : 'cells', [entry.expected], colony.id);
  fileIncrease(draft, entry, entry.from ? [colony.id, entry.from] : [colony.id]);
}

function checkLaidBefore(draft: RegistryDraft, entry: EntryOf<'cells-given'>): void {
  if (!entry.eggsLaid || entry.eggsLaid <= lastDay(entry.day)) return;
  draft.contradict(entry, 'day-in-future', {
    colony: entry.to,
    queen: entry.expected,
    found: `eggs laid on ${entry.eggsLaid}, cells given on ${entry.day}`,
    because: 'Cells cannot be given before their eggs were laid.',
    remedies: ['Correct the day on which the eggs were laid, or leave it out.', 'Correct the day.'],
  });
}

/** A queen expected from a frame of eggs given. */
export function applyEggsGiven(draft: RegistryDraft, entry: EntryOf<'eggs-given'>): void {
  const colony = livingColony(draft, entry, entry.to);
  if (!colony) return;
  const born = emergence(entry.day, 'eggs');
  if (!addQueen(draft, entry, entry.expected, { parentage: entry.parentage, born })) return;
  checkEggs(draft, entry, entry.from, entry.parentage, laidBefore(entry.day, OLDEST_DAYS.eggs));
  onlyQueen(draft, entry, colony.id, entry.expected);
  expectIn(draft, entry.expected, colony.id, entry.day);
  addMaking(draft, entry, 'eggs', [entry.expected], colony.id);
  fileIncrease(draft, entry, entry.from ? [colony.id, entry.from] : [colony.id]);
}

/** Age (days) that larvae fit for grafting have at most, where the keeper did not say. */
const OLDEST_GRAFTED_DAYS = 4;

/** A graft makes no queen yet: the cells do, when they are given. */
export function applyGraft(draft: RegistryDraft, entry: EntryOf<'graft'>): void {
  if (!livingColony(draft, entry, entry.builder)) return;
  for (const { queen } of entry.parentage.dams) knownQueen(draft, entry, queen);
  const oldest = OLDEST_DAYS.eggs + (entry.larvaAgeDays ?? OLDEST_GRAFTED_DAYS);
  checkEggs(draft, entry, undefined, entry.parentage, laidBefore(entry.day, oldest));
  fileIncrease(draft, entry, [entry.builder]);
}

function fileIncrease(
  draft: RegistryDraft,
  entry: EntryOf<'cells-given' | 'eggs-given' | 'graft'>,
  colonies: EntryOf<'graft'>['builder'][],
): void {
  draft.file(entry, { colonies, queens: entry.parentage.dams.map(({ queen }) => queen) });
}
