import { type Random, randomGenerator } from '../../graph/numerics/random.ts';
import { dayNumber, type PlainDay, yearOf } from '../../src/journal/day.ts';
import type { ColonyId, KeeperId, QueenId, YardId } from '../../src/journal/ids.ts';
import { type Book, openBook } from './book.ts';
import type { Hive, StoryQueen, StoryYard } from './hives.ts';
import { daughterWorth, foundersMates, matesWorth, type Worth, worth } from './worth.ts';

/**
 * The story so far: the book that is being written and what is really in the hives. In the scripts a hive goes by the
 * label on its box and a queen by the name that she has or will get; one who never gets a name by words in brackets.
 */
export interface Story {
  readonly book: Book;
  readonly random: Random;
  readonly hives: Map<string, Hive>;
  readonly queens: Map<string, StoryQueen>;
  readonly yards: Map<string, StoryYard>;
  readonly keepers: Map<string, KeeperId>;
}

export function beginStory(firstDay: PlainDay, seed: number): Story {
  const random = randomGenerator(seed);
  return {
    book: openBook(firstDay, random.fork()),
    random,
    hives: new Map(),
    queens: new Map(),
    yards: new Map(),
    keepers: new Map(),
  };
}

export function hiveCalled(story: Story, label: string): Hive {
  const hive = story.hives.get(label);
  if (!hive?.alive) throw new Error(`No living hive is called ${label} on ${story.book.today()}.`);
  return hive;
}

export function queenCalled(story: Story, name: string): StoryQueen {
  const queen = story.queens.get(name);
  if (!queen) throw new Error(`No queen goes by ${name} on ${story.book.today()}.`);
  return queen;
}

export function yardCalled(story: Story, name: string): StoryYard {
  const yard = story.yards.get(name);
  if (!yard) throw new Error(`No yard is called ${name}.`);
  return yard;
}

export function headName(story: Story, label: string): string {
  const { head } = hiveCalled(story, label);
  if (!head) throw new Error(`${label} has no queen on ${story.book.today()}.`);
  return head;
}

/** The living hives at a yard, in the order of their labels. */
export function hivesAt(story: Story, yard: string): readonly Hive[] {
  return [...story.hives.values()]
    .filter((hive) => hive.alive && hive.yard === yard)
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));
}

/** Puts a new hive into the story. Its first bees are the daughters of `bees`. */
export function addHive(story: Story, label: string, yard: string, size: number, bees?: string): Hive {
  if (story.hives.get(label)?.alive) throw new Error(`There is a hive called ${label} already.`);
  const hive: Hive = {
    id: story.book.newId() as ColonyId,
    label,
    yard,
    size,
    sizeDay: dayNumber(story.book.today()),
    mites: 0.003,
    mitesDay: dayNumber(story.book.today()),
    mothers: bees ? [{ queen: bees, from: Number.NEGATIVE_INFINITY }] : [],
    expected: [],
    alive: true,
  };
  story.hives.set(label, hive);
  return hive;
}

function addQueen(
  story: Story,
  name: string,
  queen: Omit<StoryQueen, 'id' | 'marked' | 'present'>,
): StoryQueen {
  if (story.queens.has(name)) throw new Error(`There is a queen called ${name} already.`);
  const record: StoryQueen = { ...queen, id: story.book.newId() as QueenId, marked: false, present: true };
  story.queens.set(name, record);
  return record;
}

const NOBODY: Worth = worth(() => 0);

export function addFounder(story: Story, name: string, own: Worth, year: number): StoryQueen {
  return addQueen(story, name, { own, mates: foundersMates(own, story.random), year });
}

/** An expected queen: a daughter of the dam, in a hive from today on. */
export function addDaughter(story: Story, name: string, dam: string, hive: Hive): StoryQueen {
  const { own, mates } = queenCalled(story, dam);
  const queen = addQueen(story, name, {
    own: daughterWorth(own, mates ?? NOBODY, story.random),
    year: yearOf(story.book.today()),
    expectedIn: hive,
  });
  hive.expected.push(name);
  return queen;
}

/** She has flown in the drones of the yard: those of the wintered queens there, and the rest of the country's. */
export function mateAt(story: Story, queen: StoryQueen, yard: string): void {
  if (queen.mates) return;
  const mothers = hivesAt(story, yard).flatMap(({ head }) => {
    const mother = head ? story.queens.get(head) : undefined;
    return mother && mother.year < queen.year ? [mother.own] : [];
  });
  queen.mates = matesWorth(mothers, yardCalled(story, yard).ownShare, story.random);
}

/** She is no longer on her way to heading a hive. */
export function noLongerExpected(queen: StoryQueen, name: string): void {
  const hive = queen.expectedIn;
  if (hive) hive.expected = hive.expected.filter((each) => each !== name);
  queen.expectedIn = undefined;
}

/** She heads this hive from today on, and her daughters begin to take over its work. */
export function takesOver(story: Story, name: string, hive: Hive): void {
  noLongerExpected(queenCalled(story, name), name);
  hive.head = name;
  hive.mothers.push({ queen: name, from: dayNumber(story.book.today()) });
}

export function addYard(story: Story, name: string): StoryYard {
  const yard: StoryYard = { id: story.book.newId() as YardId, ownShare: 0.3 };
  story.yards.set(name, yard);
  return yard;
}

export function addKeeper(story: Story, name: string): KeeperId {
  const id = story.book.newId() as KeeperId;
  story.keepers.set(name, id);
  return id;
}
