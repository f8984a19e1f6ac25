import type { PartQueen, SplitPart } from '../../journal/entries/increase.ts';
import type { EntryOf } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import { OLDEST_DAYS } from '../brood.ts';
import type { RegistryDraft } from '../draft.ts';
import { livingColony, livingQueen, onlyQueen } from './checks.ts';
import { checkEggs, laidBefore } from './eggs.ts';
import { emergence } from './increase.ts';
import { addMaking, addQueen } from './records.ts';
import { expectIn, headsOf, moveHead, neverLaid, seatOf } from './tenures.ts';

/** A colony divided: where its queen went, and what each part has for one. */

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
  saysTwice(draft, entry, heads.at(-1));
  placeOldQueen(draft, entry, parts, heads);
  const made = parts.flatMap((part) => queenOfPart(draft, entry, part));
  if (made.length > 0) addMaking(draft, entry, 'split', made, source.id);
}

/** Where the old queen went; says so when the split leaves that open. */
function placeOldQueen(
  draft: RegistryDraft,
  entry: EntryOf<'split'>,
  parts: readonly SplitPart[],
  heads: readonly QueenId[],
): void {
  const old = heads.at(-1);
  const sourcePart = entry.parts.find(({ colony }) => colony === entry.source);
  const placed = entry.parts.some(({ queen }) => queen.how === 'old-queen' || queenIn(queen, old) === old);
  if (old && !placed && sourcePart && sourcePart.queen.how !== 'none') oldQueenLeftOut(draft, entry, old);
  const moved = new Set<QueenId>();
  for (const part of parts) {
    const queen = part.queen.how === 'old-queen' ? queenIn(part.queen, old) : undefined;
    if (!queen || moved.has(queen)) continue;
    moved.add(queen);
    moveOldQueen(draft, entry, part.colony, queen, heads);
  }
  const leaves = moved.size > 0 && heads.length > 0 && headsOf(draft, entry.source).length === 0;
  if (leaves && !sourcePart) sourceLeftOpen(draft, entry);
}

function moveOldQueen(
  draft: RegistryDraft,
  entry: EntryOf<'split'>,
  to: ColonyId,
  queen: QueenId,
  heads: readonly QueenId[],
): void {
  const there = heads.includes(queen);
  if (!there) saysOther(draft, entry, queen, heads.at(-1));
  if (to === entry.source && there) return;
  if (to !== entry.source) onlyQueen(draft, entry, to, queen);
  moveHead(draft, queen, to, entry.day, 'split');
}

/** The laying queen whom a part has: the old one, or one given to it. */
function queenIn(queen: PartQueen, old: QueenId | undefined): QueenId | undefined {
  if (queen.how === 'old-queen') return queen.queen ?? old;
  return queen.how === 'given-queen' ? queen.queen : undefined;
}

/** Says so when the split puts one queen into two parts. */
function saysTwice(draft: RegistryDraft, entry: EntryOf<'split'>, old: QueenId | undefined): void {
  const parts = new Map<QueenId | undefined, ColonyId[]>();
  for (const { queen, colony } of entry.parts) {
    if (queen.how !== 'old-queen' && queen.how !== 'given-queen') continue;
    const id = queenIn(queen, old);
    parts.set(id, [...(parts.get(id) ?? []), colony]);
  }
  for (const [queen, colonies] of parts) {
    if (colonies.length < 2) continue;
    draft.contradict(entry, 'queen-in-two-colonies', {
      queen,
      colony: entry.source,
      found: colonies.map((colony) => draft.labelOf(colony)).join(' and '),
      because: queen === old ? 'The old queen can be in one part only.' : 'A queen can be in one part only.',
      remedies: ['Say for each other part what it has instead.'],
    });
  }
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
  if (from === part.colony) return;
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
