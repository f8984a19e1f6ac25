import type { RoughDay } from '../../journal/day.ts';
import type { CellAge, SplitPart } from '../../journal/entries/increase.ts';
import type { EntryOf } from '../../journal/entry.ts';
import type { QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { DayWindow } from '../state.ts';
import { livingColony, livingQueen, onlyQueen } from './checks.ts';
import { checkEggs, laidBefore, OLDEST_DAYS } from './eggs.ts';
import { addMaking, addQueen, bornBetween } from './records.ts';
import { expectIn, headsOf, moveHead, neverLaid, seatOf } from './tenures.ts';

/**
 * Splits, cells and eggs: the events that make queens. Provenance follows the brood: daughters belong to the queen
 * who laid the eggs, wherever the frame hangs now.
 *
 * Days from the event to emergence, by what she is raised from (egg to emergence 15 to 17 days; a larva taken for a
 * queen is at most 3 days old; a cell is capped about day 8). Winston 1987, The Biology of the Honey Bee, from memory.
 */
const EMERGES = {
  eggs: [10, 17],
  'young-brood': [10, 14],
  'open-cells': [7, 13],
  'capped-cells': [0, 9],
  open: [7, 13],
  capped: [0, 9],
  emerging: [0, 2],
  unknown: [0, 17],
} as const satisfies Record<string, readonly [number, number]>;

function emergence(day: RoughDay, from: keyof typeof EMERGES): DayWindow {
  const [earliest, latest] = EMERGES[from];
  return bornBetween(day, earliest, latest);
}

export function applySplit(draft: RegistryDraft, entry: EntryOf<'split'>): void {
  const source = livingColony(draft, entry, entry.source);
  if (!source) return;
  const heads = headsOf(draft, source.id);
  const parts = entry.parts.filter((part) => livingColony(draft, entry, part.colony) !== undefined);
  for (const part of parts) {
    if (part.colony === source.id) continue;
    const startedHere = draft.colonies.get(part.colony)?.entries[0];
    if (startedHere?.kind === 'colony-started' && startedHere.how === 'split') {
      draft.changeColony(part.colony, (colony) => ({ ...colony, splitFrom: colony.splitFrom ?? source.id }));
    }
  }
  draft.file(entry, { colonies: [source.id, ...parts.map(({ colony }) => colony)], queens: heads });
  placeOldQueen(draft, entry, heads);
  const made = parts.flatMap((part) => queenOfPart(draft, entry, part));
  if (made.length > 0) addMaking(draft, entry, 'split', made, source.id);
}

/** Where the old queen went; says so when the split leaves that open. */
function placeOldQueen(draft: RegistryDraft, entry: EntryOf<'split'>, heads: readonly QueenId[]): void {
  const old = heads.at(-1);
  const withOld = entry.parts.filter(({ queen }) => queen.how === 'old-queen');
  if (withOld.length > 1) oldQueenTwice(draft, entry, old);
  const sourcePart = entry.parts.find(({ colony }) => colony === entry.source);
  const part = withOld[0];
  if (part?.queen.how !== 'old-queen') {
    if (old && sourcePart && sourcePart.queen.how !== 'none') oldQueenLeftOut(draft, entry, old);
    return;
  }
  const queen = part.queen.queen ?? old;
  if (!queen) return;
  const there = heads.includes(queen);
  if (!there) saysOther(draft, entry, queen, old);
  if (part.colony === entry.source) {
    if (!there) moveHead(draft, queen, part.colony, entry.day, 'split');
    return;
  }
  onlyQueen(draft, entry, part.colony, queen);
  moveHead(draft, queen, part.colony, entry.day, 'split');
  if (!sourcePart && there && heads.length === 1) sourceLeftOpen(draft, entry);
}

function oldQueenTwice(draft: RegistryDraft, entry: EntryOf<'split'>, old: QueenId | undefined): void {
  const parts = entry.parts.filter(({ queen }) => queen.how === 'old-queen');
  draft.contradict(entry, 'queen-in-two-colonies', {
    queen: old,
    colony: entry.source,
    found: parts.map(({ colony }) => draft.labelOf(colony)).join(' and '),
    because: 'The old queen can be in one part only.',
    remedies: ['Say for each other part what it has instead.'],
  });
}

function oldQueenLeftOut(draft: RegistryDraft, entry: EntryOf<'split'>, old: QueenId): void {
  draft.contradict(entry, 'two-queens-in-colony', {
    colony: entry.source,
    queen: old,
    found: `${draft.titleOf(old)} still in ${draft.labelOf(entry.source)}`,
    because: 'The split gives the source another queen, and does not say where the old queen went.',
    remedies: [
      'Say which part has the old queen.',
      'Enter first what became of her.',
      'If nobody looked for her, overrule it with that reason; eggs in one part will tell.',
    ],
  });
}

function saysOther(
  draft: RegistryDraft,
  entry: EntryOf<'split'>,
  queen: QueenId,
  old: QueenId | undefined,
): void {
  if (!livingQueen(draft, entry, queen)) return;
  draft.contradict(entry, 'queen-not-there', {
    queen,
    colony: entry.source,
    found: old ? `${draft.titleOf(old)} heads ${draft.labelOf(entry.source)}` : 'nobody known heads it',
    because: `${draft.titleOf(queen)} is not the queen of ${draft.labelOf(entry.source)} by the records.`,
    remedies: [
      'Choose the queen who heads it.',
      draft.queens.get(queen)?.expectedIn === entry.source
        ? 'Enter first that she lays there.'
        : 'Enter first how the other queen came there.',
    ],
  });
}

function sourceLeftOpen(draft: RegistryDraft, entry: EntryOf<'split'>): void {
  draft.contradict(entry, 'split-without-source', {
    colony: entry.source,
    found: `the old queen left ${draft.labelOf(entry.source)}, which is not among the parts`,
    because: 'What stays in the source has no queen, and the split does not say what it will do.',
    remedies: ['Add what stays in the source as a part.'],
  });
}

function queenOfPart(draft: RegistryDraft, entry: EntryOf<'split'>, part: SplitPart): readonly QueenId[] {
  const { queen } = part;
  switch (queen.how) {
    case 'old-queen':
    case 'none':
      return [];
    case 'given-queen':
      giveQueen(draft, entry, part, queen.queen);
      return [];
    case 'given-cells': {
      const born = emergence(entry.day, queen.age);
      if (!addQueen(draft, entry, queen.expected, { parentage: queen.parentage, born })) return [];
      checkEggs(draft, entry, queen.cellsFrom, queen.parentage, laidBefore(entry.day, OLDEST_DAYS.cells));
      expectInPart(draft, entry, part, queen.expected);
      return [queen.expected];
    }
    case 'raises-own': {
      const born = emergence(entry.day, queen.from);
      if (!addQueen(draft, entry, queen.expected, { parentage: queen.parentage, born })) return [];
      checkEggs(draft, entry, entry.source, queen.parentage, laidBefore(entry.day, OLDEST_DAYS[queen.from]));
      expectInPart(draft, entry, part, queen.expected);
      return [queen.expected];
    }
  }
}

function giveQueen(draft: RegistryDraft, entry: EntryOf<'split'>, part: SplitPart, queen: QueenId): void {
  if (!livingQueen(draft, entry, queen)) return;
  soleQueen(draft, entry, part, queen);
  const from = seatOf(draft, queen);
  draft.file(entry, { queens: [queen], colonies: from && from !== entry.source ? [from] : [] });
  if (neverLaid(draft, queen)) expectIn(draft, queen, part.colony, entry.day);
  else moveHead(draft, queen, part.colony, entry.day, 'moved');
}

function expectInPart(draft: RegistryDraft, entry: EntryOf<'split'>, part: SplitPart, queen: QueenId): void {
  soleQueen(draft, entry, part, queen);
  expectIn(draft, queen, part.colony, entry.day);
}

/** Says so when a part has a queen already. Of the source that was said where the split leaves the old queen out. */
function soleQueen(draft: RegistryDraft, entry: EntryOf<'split'>, part: SplitPart, coming: QueenId): void {
  const said = part.colony === entry.source && !entry.parts.some(({ queen }) => queen.how === 'old-queen');
  if (!said) onlyQueen(draft, entry, part.colony, coming);
}

const CELL_BORN: Record<CellAge, keyof typeof EMERGES> = {
  open: 'open',
  capped: 'capped',
  emerging: 'emerging',
  unknown: 'unknown',
};

export function applyCellsGiven(draft: RegistryDraft, entry: EntryOf<'cells-given'>): void {
  const colony = livingColony(draft, entry, entry.to);
  if (!colony) return;
  const born = entry.eggsLaid
    ? bornBetween(entry.eggsLaid, 15, 17)
    : emergence(entry.day, CELL_BORN[entry.age]);
  if (!addQueen(draft, entry, entry.expected, { parentage: entry.parentage, born })) return;
  const laid = laidBefore(entry.day, OLDEST_DAYS.cells, entry.eggsLaid);
  checkEggs(draft, entry, entry.from, entry.parentage, laid);
  onlyQueen(draft, entry, colony.id, entry.expected);
  expectIn(draft, entry.expected, colony.id, entry.day);
  addMaking(draft, entry, entry.graft ? 'graft' : 'cells', [entry.expected], colony.id);
  fileIncrease(draft, entry, entry.from ? [colony.id, entry.from] : [colony.id]);
}

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

export function applyGraft(draft: RegistryDraft, entry: EntryOf<'graft'>): void {
  if (!livingColony(draft, entry, entry.builder)) return;
  fileIncrease(draft, entry, [entry.builder]);
}

function fileIncrease(
  draft: RegistryDraft,
  entry: EntryOf<'cells-given' | 'eggs-given' | 'graft'>,
  colonies: EntryOf<'graft'>['builder'][],
): void {
  draft.file(entry, { colonies, queens: entry.parentage.dams.map(({ queen }) => queen) });
}
