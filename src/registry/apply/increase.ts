import type { RoughDay } from '../../journal/day.ts';
import type { CellAge, SplitPart } from '../../journal/entries/increase.ts';
import type { EntryOf } from '../../journal/entry.ts';
import type { QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { DayWindow } from '../state.ts';
import { checkEggs, livingColony, livingQueen, OLDEST_DAYS, onlyQueen } from './checks.ts';
import { moveHead } from './places.ts';
import { addMaking, addQueen, bornBetween } from './queens.ts';
import { expectIn, headOf } from './tenures.ts';

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
  const old = headOf(draft, source.id);
  const parts = entry.parts.filter((part) => livingColony(draft, entry, part.colony) !== undefined);
  for (const part of parts) {
    if (part.colony === source.id) continue;
    const startedHere = draft.colonies.get(part.colony)?.entries[0];
    if (startedHere?.kind === 'colony-started' && startedHere.how === 'split') {
      draft.changeColony(part.colony, (colony) => ({ ...colony, splitFrom: colony.splitFrom ?? source.id }));
    }
  }
  draft.file(entry, {
    colonies: [source.id, ...parts.map(({ colony }) => colony)],
    queens: old ? [old] : [],
  });
  placeOldQueen(draft, entry, old);
  const made = parts.flatMap((part) => queenOfPart(draft, entry, part));
  if (made.length > 0) addMaking(draft, entry, 'split', made, source.id);
}

/** Where the old queen went; says so when the split leaves that open. */
function placeOldQueen(draft: RegistryDraft, entry: EntryOf<'split'>, old: QueenId | undefined): void {
  const withOld = entry.parts.filter(({ queen }) => queen.how === 'old-queen');
  if (withOld.length > 1) {
    draft.contradict(entry, 'queen-in-two-colonies', {
      queen: old,
      colony: entry.source,
      found: withOld.map(({ colony }) => draft.labelOf(colony)).join(' and '),
      because: 'The old queen can be in one part only.',
      remedies: ['Say for each other part what it has instead.'],
    });
  }
  const sourcePart = entry.parts.find(({ colony }) => colony === entry.source);
  const part = withOld[0];
  if (part?.queen.how === 'old-queen') {
    const queen = part.queen.queen ?? old;
    if (!queen) return;
    if (queen !== old) saysOther(draft, entry, queen, old);
    if (part.colony !== entry.source) {
      onlyQueen(draft, entry, part.colony, queen);
      moveHead(draft, queen, part.colony, entry.day, 'split');
      if (!sourcePart && queen === old) sourceLeftOpen(draft, entry);
    } else if (queen !== old) {
      moveHead(draft, queen, part.colony, entry.day, 'split');
    }
    return;
  }
  if (old && sourcePart && sourcePart.queen.how !== 'none') {
    draft.contradict(entry, 'two-queens-in-colony', {
      colony: entry.source,
      queen: old,
      found: `${draft.titleOf(old)} still in ${draft.labelOf(entry.source)}`,
      because: 'The split gives the source another queen, and does not say where the old queen went.',
      remedies: ['Say which part has the old queen.', 'Enter first what became of her.'],
    });
  }
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
    remedies: ['Choose the queen who heads it.', 'Enter first how the other queen came there.'],
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
    case 'given-queen': {
      if (!livingQueen(draft, entry, queen.queen)) return [];
      onlyQueen(draft, entry, part.colony, queen.queen);
      draft.file(entry, { queens: [queen.queen] });
      if (draft.queens.get(queen.queen)?.state.is === 'expected')
        expectIn(draft, queen.queen, part.colony, entry.day);
      else moveHead(draft, queen.queen, part.colony, entry.day, 'moved');
      return [];
    }
    case 'given-cells': {
      const born = emergence(entry.day, queen.age);
      if (!addQueen(draft, entry, queen.expected, { parentage: queen.parentage, born })) return [];
      if (queen.cellsFrom) checkEggs(draft, entry, queen.cellsFrom, queen.parentage, OLDEST_DAYS.cells);
      expectIn(draft, queen.expected, part.colony, entry.day);
      return [queen.expected];
    }
    case 'raises-own': {
      const born = emergence(entry.day, queen.from);
      if (!addQueen(draft, entry, queen.expected, { parentage: queen.parentage, born })) return [];
      checkEggs(draft, entry, entry.source, queen.parentage, OLDEST_DAYS[queen.from]);
      expectIn(draft, queen.expected, part.colony, entry.day);
      return [queen.expected];
    }
  }
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
  if (entry.from) checkEggs(draft, entry, entry.from, entry.parentage, OLDEST_DAYS.cells);
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
  if (entry.from) checkEggs(draft, entry, entry.from, entry.parentage, OLDEST_DAYS.eggs);
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
