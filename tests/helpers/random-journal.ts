import fc from 'fast-check';
import type { Draft } from '../../src/journal/entry.ts';
import type { EntryId } from '../../src/journal/ids.ts';
import { rough, Story, testScribe } from './story.ts';

/**
 * Random journals: many kinds of entry about a few colonies and queens, in any order of days (one in three known to the
 * month or year only), most of them contradicting one another, some corrected or taken back. Honest or not, a projection
 * must be a function of the set.
 */
const LABELS = ['One', 'Two', 'Three', 'Four'];
const QUEENS = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elder', 'Fir'];

const label = fc.constantFrom(...LABELS);
const queen = fc.constantFrom(...QUEENS);
const someDay = fc
  .tuple(
    fc.integer({ min: 2023, max: 2026 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
    fc.constantFrom(10, 10, 10, 10, 7, 4),
  )
  .map(([year, month, date, known]) =>
    `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`.slice(0, known),
  );

type Maker = (story: Story) => Draft;

function drafts(): fc.Arbitrary<Maker> {
  return fc
    .tuple(someDay, label, label, queen, queen, fc.nat(14))
    .map(([on, a, b, x, y, which]) => (story) => {
      const day = rough(on);
      const colony = story.colony(a);
      const parentage = { dams: [{ queen: story.queen(y), probability: 0.8 }], evidence: 'told' as const };
      const makers: Draft[] = [
        { kind: 'colony-started', day, colony, yard: story.yard('Mill'), label: a, how: 'already-here' },
        { kind: 'queen-entered', day, queen: story.queen(x), name: x, colony, parentage },
        { kind: 'queen-found', day, queen: story.queen(x), colony },
        { kind: 'queen-expected', day, queen: story.queen(x), colony, reason: 'swarm' },
        { kind: 'queen-confirmed', day, queen: story.queen(x), colony, seen: 'eggs' },
        { kind: 'queen-lost', day, queen: story.queen(x), cause: 'killed' },
        { kind: 'queen-moved', day, queen: story.queen(x), to: colony },
        {
          kind: 'cells-given',
          day,
          to: colony,
          from: story.colony(b),
          expected: story.queen(x),
          parentage,
          age: 'open',
        },
        { kind: 'colonies-joined', day, colony, into: story.colony(b), queenKept: 'unknown' },
        { kind: 'colony-ended', day, colony, cause: 'winter' },
        { kind: 'winter-outcome', day, colony, winter: 2025, alive: false },
        { kind: 'parentage-stated', day, queen: story.queen(x), parentage },
        { kind: 'inspection', day, colony, eggs: true },
        { kind: 'queen-named', day, queen: story.queen(x), name: `${x} the younger` },
        {
          kind: 'split',
          day,
          source: colony,
          parts: [
            { colony: story.colony(b), queen: { how: 'old-queen' } },
            { colony, queen: { how: 'raises-own', expected: story.queen(x), parentage, from: 'eggs' } },
          ],
        },
      ];
      return makers[which] as Draft;
    });
}

/** A random story. One in six entries corrects or takes back an earlier one. */
export const randomStory: fc.Arbitrary<Story> = fc
  .array(fc.tuple(drafts(), fc.nat(11), fc.nat()), { minLength: 1, maxLength: 40 })
  .map((steps) => {
    const story = new Story(testScribe());
    story.write({ kind: 'yard-opened', day: rough('2023-01-01'), yard: story.yard('Mill'), name: 'Mill' });
    for (const [make, turn, pick] of steps) {
      const earlier = story.entries[pick % story.entries.length];
      const id = earlier?.id as EntryId;
      if (turn === 0) story.withdraw('2026-06-01', id);
      else if (turn === 1 && earlier?.kind !== 'withdrawal') story.write({ ...make(story), supersedes: id });
      else story.write(make(story));
    }
    return story;
  });
