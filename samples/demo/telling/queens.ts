import { type RoughDay, yearOf } from '../../../src/journal/day.ts';
import type { MarkColour, QueenLossCause } from '../../../src/journal/entries/queen.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import {
  addDaughter,
  addFounder,
  hiveCalled,
  mateAt,
  noLongerExpected,
  queenCalled,
  type Story,
  takesOver,
  yardCalled,
} from '../story.ts';
import { FOUNDERS, matesWorth } from '../worth.ts';

/** Queens: entered, expected, confirmed, marked, moved, found, lost. */

/** The international colours by the last digit of the year of birth. */
const COLOURS = ['blue', 'white', 'yellow', 'red', 'green'] as const;

function colourOf(year: number): MarkColour {
  return COLOURS[year % 5] ?? 'other';
}

/** One of the four founders, in the box where records begin. */
export function founder(
  story: Story,
  name: keyof typeof FOUNDERS,
  label: string,
  about: {
    readonly born?: string;
    readonly background?: string;
    readonly from?: string;
    readonly marked: boolean;
    readonly day?: string;
    readonly remark?: string;
  },
): void {
  const { born, marked, day, ...rest } = about;
  const year = born ? yearOf(born as RoughDay) : yearOf(story.book.today()) - 1;
  const queen = addFounder(story, name, FOUNDERS[name], year);
  queen.marked = marked;
  const hive = hiveCalled(story, label);
  hive.mothers.push({ queen: name, from: Number.NEGATIVE_INFINITY });
  hive.head = name;
  story.book.write({
    kind: 'queen-entered',
    queen: queen.id,
    name,
    colony: hive.id,
    laying: true,
    ...(born ? { born: born as RoughDay } : {}),
    ...(marked ? { colour: colourOf(year) } : {}),
    ...rest,
    ...(day ? { day: day as RoughDay } : {}),
  });
}

/** Cells that nobody planned. */
export function cellsFound(
  story: Story,
  label: string,
  name: string,
  reason: EntryOf<'queen-expected'>['reason'],
  dam: string,
  remark?: string,
): void {
  const hive = hiveCalled(story, label);
  story.book.write({
    kind: 'queen-expected',
    queen: addDaughter(story, name, dam, hive).id,
    colony: hive.id,
    reason,
    parentage: { dams: [{ queen: queenCalled(story, dam).id, probability: 1 }], evidence: 'dam-in-colony' },
    ...(remark ? { remark } : {}),
  });
}

/** The queen that was expected lays. */
export function confirm(
  story: Story,
  name: string,
  seen: EntryOf<'queen-confirmed'>['seen'] = 'eggs',
  remark?: string,
): void {
  const queen = queenCalled(story, name);
  const hive = queen.expectedIn;
  if (!hive) throw new Error(`${name} is not expected anywhere.`);
  mateAt(story, queen, hive.yard);
  story.book.write({
    kind: 'queen-confirmed',
    queen: queen.id,
    colony: hive.id,
    seen,
    ...(remark ? { remark } : {}),
  });
  takesOver(story, name, hive);
}

/** Colour of her year on her back, and a name, as one action. Some get only the name. */
export function markAndName(
  story: Story,
  name: string,
  more: { readonly mark?: string; readonly unmarked?: true } = {},
): void {
  const queen = queenCalled(story, name);
  const named = { kind: 'queen-named' as const, queen: queen.id, name };
  if (more.unmarked) {
    story.book.write(named);
    return;
  }
  queen.marked = true;
  const mark = more.mark ? { mark: more.mark } : {};
  story.book.write({ kind: 'queen-marked', queen: queen.id, colour: colourOf(queen.year), ...mark }, named);
}

export function lose(story: Story, name: string, cause: QueenLossCause, remark?: string): void {
  const queen = queenCalled(story, name);
  leaves(story, name);
  story.book.write({ kind: 'queen-lost', queen: queen.id, cause, ...(remark ? { remark } : {}) });
}

export function giveAway(story: Story, name: string, to: string, remark: string): void {
  const queen = queenCalled(story, name);
  leaves(story, name);
  story.book.write({ kind: 'queen-lost', queen: queen.id, cause: 'given-away', to, remark });
}

function leaves(story: Story, name: string): void {
  noLongerExpected(queenCalled(story, name), name);
  for (const hive of story.hives.values()) if (hive.head === name) hive.head = undefined;
}

export function putInto(
  story: Story,
  name: string,
  label: string,
  more: Pick<EntryOf<'queen-moved'>, 'how' | 'overruled' | 'remark'> = {},
): void {
  leaves(story, name);
  const hive = hiveCalled(story, label);
  takesOver(story, name, hive);
  story.book.write({ kind: 'queen-moved', queen: queenCalled(story, name).id, to: hive.id, ...more });
}

/** What really happens and nobody sees: a daughter replaces her dam. `daughterFound` is when the keeper finds out. */
export function silentlySucceeded(story: Story, dam: string, name: string): void {
  const hive = [...story.hives.values()].find(({ head }) => head === dam);
  if (!hive) throw new Error(`${dam} heads no hive.`);
  const queen = addDaughter(story, name, dam, hive);
  mateAt(story, queen, hive.yard);
  queenCalled(story, dam).present = false;
  hive.mothers.push({ queen: name, from: Date.parse(`${story.book.today()}T00:00:00Z`) / 86_400_000 });
}

export function daughterFound(
  story: Story,
  name: string,
  insteadOf: string,
  about: { readonly probability: number; readonly born: string; readonly remark: string },
): void {
  const queen = queenCalled(story, name);
  const dam = queenCalled(story, insteadOf);
  const hive = queen.expectedIn;
  if (!hive) throw new Error(`${name} is nowhere to be found.`);
  noLongerExpected(queen, name);
  hive.head = name;
  story.book.write({
    kind: 'queen-found',
    queen: queen.id,
    colony: hive.id,
    insteadOf: dam.id,
    name,
    born: about.born as RoughDay,
    parentage: {
      dams: [{ queen: dam.id, probability: about.probability }],
      evidence: 'unmarked-queen-found',
    },
    remark: about.remark,
  });
}

export function flewAt(story: Story, name: string, yard: string, remark?: string): void {
  const queen = queenCalled(story, name);
  mateAt(story, queen, yard);
  story.book.write({
    kind: 'mating',
    queen: queen.id,
    way: { manner: 'open', yard: yardCalled(story, yard).id },
    ...(remark ? { remark } : {}),
  });
}

export function inseminate(
  story: Story,
  name: string,
  droneMother: string,
  more: { readonly effectiveMates: number; readonly remark: string },
): void {
  const queen = queenCalled(story, name);
  const mother = queenCalled(story, droneMother);
  queen.mates = matesWorth([mother.own], 1, story.random);
  story.book.write({
    kind: 'mating',
    queen: queen.id,
    way: { manner: 'insemination', droneMothers: [{ queen: mother.id, share: 1 }] },
    ...more,
  });
}

/** A note on a queen. */
export function noteOn(story: Story, name: string, text: string): void {
  story.book.write({ kind: 'note', about: { of: 'queen', queen: queenCalled(story, name).id }, text });
}
