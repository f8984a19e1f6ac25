import fc from 'fast-check';
import type { Draft, EntryKind } from '../../src/journal/entry.ts';
import type { EntryId, KeeperId } from '../../src/journal/ids.ts';
import type { Scribe } from '../../src/journal/write.ts';
import { rough, Story, testId, testScribe } from './story.ts';

/**
 * Random journals: entries of every kind about a few colonies and queens, in any order of days (one in three known to
 * the month or year only), most of them contradicting one another, some corrected, taken back or brought back, by two
 * keepers. Honest or not, a projection must be a function of the set.
 */
const LABELS = ['One', 'Two', 'Three', 'Four'];
const QUEENS = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elder', 'Fir'];
const YARDS = ['Mill', 'Brook'];

const label = fc.constantFrom(...LABELS);
const queen = fc.constantFrom(...QUEENS);
/** Every other entry is of one of a few days, so that many of a day speak of what begins on it. */
const BUSY_DAYS = ['2024-05-10', '2024-05-11', '2025-06-01'];
const anyDay = fc
  .tuple(
    fc.integer({ min: 2023, max: 2026 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
    fc.constantFrom(10, 10, 10, 10, 7, 4),
  )
  .map(([year, month, date, known]) =>
    `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`.slice(0, known),
  );

const someDay = fc.oneof(fc.constantFrom(...BUSY_DAYS), anyDay);

/** What an entry speaks of, drawn at random. */
const subject = fc.record({
  on: someDay,
  a: label,
  b: label,
  x: queen,
  y: queen,
  z: queen,
  pick: fc.nat(99),
});
type Subject = typeof subject extends fc.Arbitrary<infer T> ? T : never;

type Makers = { readonly [K in EntryKind]: (story: Story, about: Subject) => Draft };

function common(story: Story, { on, a, b, x, y, pick }: Subject) {
  return {
    day: rough(on),
    colony: story.colony(a),
    other: story.colony(b),
    queen: story.queen(x),
    yard: story.yard(YARDS[pick % YARDS.length]!),
    parentage: {
      dams: [{ queen: story.queen(y), probability: pick % 4 === 0 ? 1 : 0.8 }],
      evidence: 'told' as const,
    },
  };
}

/** An entry of each kind; the compiler asks for the one that is missing. */
const MAKERS: Makers = {
  'yard-opened': (story, about) => {
    const { day, yard } = common(story, about);
    return { kind: 'yard-opened', day, yard, name: 'a yard' };
  },
  'drone-background': (story, about) => {
    const { day, yard } = common(story, about);
    return { kind: 'drone-background', day, yard, season: 2025, ownShare: 0.5, background: 'local' };
  },
  'colony-started': (story, about) => {
    const { day, colony, yard } = common(story, about);
    const how = (['already-here', 'split', 'package'] as const)[about.pick % 3]!;
    return { kind: 'colony-started', day, colony, yard, label: about.a, how };
  },
  'colony-moved': (story, about) => {
    const { day, colony, yard } = common(story, about);
    return { kind: 'colony-moved', day, colony, yard };
  },
  'colony-relabelled': (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'colony-relabelled', day, colony, label: about.b };
  },
  'colonies-joined': (story, about) => {
    const { day, colony, other } = common(story, about);
    const queenKept = (['of-the-receiving', 'of-the-joined', 'unknown'] as const)[about.pick % 3]!;
    return { kind: 'colonies-joined', day, colony, into: other, queenKept };
  },
  'colony-ended': (story, about) => {
    const { day, colony } = common(story, about);
    const cause = (['winter', 'given', 'swarmed-out'] as const)[about.pick % 3]!;
    return { kind: 'colony-ended', day, colony, cause };
  },
  'frames-moved': (story, about) => {
    const { day, colony, other } = common(story, about);
    return { kind: 'frames-moved', day, from: other, to: colony, frames: { eggs: about.pick % 2 } };
  },
  'queen-entered': (story, about) => {
    const { day, colony, queen, parentage } = common(story, about);
    const seated = about.pick % 3 !== 0 ? { colony, laying: about.pick % 5 !== 0 } : {};
    const born = about.pick % 2 === 0 ? { born: rough(String(2022 + (about.pick % 4))) } : {};
    return { kind: 'queen-entered', day, queen, name: about.x, parentage, ...seated, ...born };
  },
  'queen-expected': (story, about) => {
    const { day, colony, queen } = common(story, about);
    const reason = (['swarm', 'supersedure', 'emergency'] as const)[about.pick % 3]!;
    return { kind: 'queen-expected', day, queen, colony, reason };
  },
  'queen-found': (story, about) => {
    const { day, colony, queen } = common(story, about);
    const instead = about.pick % 2 === 0 ? { insteadOf: story.queen(about.y) } : {};
    const born = about.pick % 3 === 0 ? { born: rough('2024-07') } : {};
    return { kind: 'queen-found', day, queen, colony, ...instead, ...born };
  },
  'queen-confirmed': (story, about) => {
    const { day, colony, queen } = common(story, about);
    return { kind: 'queen-confirmed', day, queen, colony, seen: 'eggs' };
  },
  'queen-marked': (story, about) => {
    const { day, queen } = common(story, about);
    return { kind: 'queen-marked', day, queen, colour: 'white' };
  },
  'queen-named': (story, about) => {
    const { day, queen } = common(story, about);
    return { kind: 'queen-named', day, queen, name: `${about.x} the younger` };
  },
  'queen-lost': (story, about) => {
    const { day, queen } = common(story, about);
    const cause = (['killed', 'swarmed', 'given-away', 'not-found', 'failed-to-mate'] as const)[
      about.pick % 5
    ]!;
    return { kind: 'queen-lost', day, queen, cause };
  },
  'queen-moved': (story, about) => {
    const { day, colony, queen } = common(story, about);
    return { kind: 'queen-moved', day, queen, to: colony };
  },
  'parentage-stated': (story, about) => {
    const { day, queen, parentage } = common(story, about);
    return { kind: 'parentage-stated', day, queen, parentage };
  },
  mating: (story, about) => {
    const { day, queen, yard } = common(story, about);
    const droneMothers = [{ queen: story.queen(about.z), share: 1 }];
    return about.pick % 2 === 0
      ? { kind: 'mating', day, queen, way: { manner: 'open', yard } }
      : { kind: 'mating', day, queen, way: { manner: 'insemination', droneMothers } };
  },
  split: (story, about) => {
    const { day, colony, other, queen, parentage } = common(story, about);
    const first = { colony: other, queen: { how: 'old-queen' as const } };
    const second = (
      [
        { how: 'raises-own', expected: queen, parentage, from: 'eggs' },
        { how: 'given-queen', queen },
        { how: 'given-cells', expected: queen, parentage, age: 'open', cellsFrom: other },
        { how: 'none' },
      ] as const
    )[about.pick % 4]!;
    return { kind: 'split', day, source: colony, parts: [first, { colony, queen: second }] };
  },
  'cells-given': (story, about) => {
    const { day, colony, other, queen, parentage } = common(story, about);
    return { kind: 'cells-given', day, to: colony, from: other, expected: queen, parentage, age: 'open' };
  },
  'eggs-given': (story, about) => {
    const { day, colony, other, queen, parentage } = common(story, about);
    return { kind: 'eggs-given', day, to: colony, from: other, expected: queen, parentage };
  },
  graft: (story, about) => {
    const { day, colony, parentage } = common(story, about);
    return { kind: 'graft', day, builder: colony, name: 'a graft', parentage, larvae: 20 };
  },
  inspection: (story, about) => {
    const { day, colony } = common(story, about);
    const queenSeen = (['seen-marked', 'seen-unmarked', 'not-seen'] as const)[about.pick % 3]!;
    return { kind: 'inspection', day, colony, eggs: true, queenSeen };
  },
  'mite-count': (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'mite-count', day, colony, sample: { method: 'wash', mites: 3, bees: 300 } };
  },
  treatment: (story, about) => {
    const { day, colony, other } = common(story, about);
    return { kind: 'treatment', day, colonies: [colony, other], active: 'oxalic acid' };
  },
  'treatment-ended': (story, about) => {
    const { day } = common(story, about);
    const given = story.entries.filter(({ kind }) => kind === 'treatment');
    const id = given[about.pick % Math.max(1, given.length)]?.id ?? (testId(0xabcdef) as EntryId);
    return { kind: 'treatment-ended', day, treatment: id };
  },
  'winter-outcome': (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'winter-outcome', day, colony, winter: 2025, alive: about.pick % 2 === 0 };
  },
  'hygienic-test': (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'hygienic-test', day, colony, method: 'pin', cells: 50, notCleared: 5, hours: 24 };
  },
  harvest: (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'harvest', day, colony, kilograms: 12 };
  },
  feeding: (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'feeding', day, colony, feed: 'syrup' };
  },
  'keeper-named': (_, { on, pick }) => {
    const keeper = testId(0xfff + (pick % 2)) as KeeperId;
    return { kind: 'keeper-named', day: rough(on), keeper, name: `Keeper ${pick}` };
  },
  note: (story, about) => {
    const { day, colony, queen } = common(story, about);
    const of = about.pick % 2 === 0 ? { of: 'colony' as const, colony } : { of: 'queen' as const, queen };
    return { kind: 'note', day, about: of, text: 'a note' };
  },
  withdrawal: (story, { on, pick }) => {
    const ids = story.entries.map(({ id }) => id);
    return { kind: 'withdrawal', day: rough(on), withdraws: [ids[pick % ids.length]!] };
  },
  'task-settled': (story, about) => {
    const { day, colony } = common(story, about);
    return { kind: 'task-settled', day, colony, task: 'look for eggs', how: 'done' };
  },
};

const KINDS = Object.keys(MAKERS) as EntryKind[];
/** Kinds that change who heads what are drawn as often again as the others. */
const TELLING: readonly EntryKind[] = [
  'colony-started',
  'queen-entered',
  'queen-found',
  'queen-expected',
  'queen-confirmed',
  'queen-lost',
  'queen-moved',
  'colonies-joined',
  'colony-ended',
  'cells-given',
  'split',
  'parentage-stated',
];
const kind = fc.constantFrom(...KINDS, ...TELLING, ...TELLING);

/**
 * A random story. It may begin with a yard in order; one in six entries corrects or takes back an earlier one, one in
 * three is by a second keeper. The clock, and with it the order of ids, may jump back and forth.
 */
export const randomStory: fc.Arbitrary<Story> = fc
  .tuple(
    fc.boolean(),
    fc.constantFrom(0, 0, 1, 6, 21, 63),
    fc.array(fc.tuple(kind, subject, fc.nat(11), fc.nat(), fc.nat(2)), { minLength: 1, maxLength: 45 }),
  )
  .map(([orderly, jumps, steps]) => {
    const story = new Story(jumpingScribe(jumps));
    if (orderly) story.begin('Mill', '2023-01-01', { One: 'Alder', Two: 'Birch', Three: 'Cedar' });
    else
      story.write({ kind: 'yard-opened', day: rough('2023-01-01'), yard: story.yard('Mill'), name: 'Mill' });
    for (const [which, about, turn, pick, hand] of steps) {
      const by = testId(hand === 0 ? 0x1000 : 0xfff) as KeeperId;
      const earlier = story.entries[pick % story.entries.length]!;
      const corrects = turn === 1 && earlier.kind !== 'withdrawal' && which !== 'withdrawal';
      const draft = MAKERS[turn === 0 ? 'withdrawal' : which](story, about);
      story.writeAs(by, corrects ? { ...draft, supersedes: earlier.id } : draft);
    }
    return story;
  });

/** A scribe whose ids are unique and rise only as far as its clock does: the jumps are bits that the count is turned by. */
function jumpingScribe(jumps: number): Scribe {
  let next = 64;
  return { ...testScribe(), newId: () => testId(next++ ^ jumps) };
}
