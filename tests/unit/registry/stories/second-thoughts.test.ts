import { describe, expect, it } from 'vitest';
import type { Draft, Entry } from '../../../../src/journal/entry.ts';
import { reading } from '../../../helpers/reading.ts';
import { rough, Story } from '../../../helpers/story.ts';

/** Corrections, withdrawals and entries written late, on which others rest. */

const NAMES = ['Alder', 'Birch', 'One 2026', 'Three 2026'];

function yard(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
  return story;
}

const ids = (entries: readonly Entry[]) => entries.map(({ id }) => id);

const confirmed = (story: Story): Draft => ({
  kind: 'queen-confirmed',
  day: rough('2026-06-08'),
  queen: story.queen('Three 2026'),
  colony: story.colony('Three'),
  seen: 'eggs',
});

describe('a split undone after later entries rest on it', () => {
  function undone() {
    const story = yard();
    const split = story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    story.write(confirmed(story));
    const undo = story.withdraw('2026-06-09', ...ids(split));
    return { story, undo };
  }

  it('gives the old queen back to her box, and says of each later entry what it lacks now', () => {
    const { codes, head, contradictions } = reading(undone().story, NAMES);
    expect(head('One', '2026-07-01')).toBe('Alder');
    expect([...codes].sort()).toEqual(['colony-not-started', 'queen-unknown']);
    expect(contradictions.flatMap(({ remedies }) => remedies)).toContain(
      'If the entry that told of her was taken back, bring it back.',
    );
  });

  it('is as it was once the undo is taken back', () => {
    const { story, undo } = undone();
    story.withdraw('2026-06-10', ...ids(undo));
    const { codes, head } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('Three', '2026-07-01')).toBe('Three 2026');
  });
});

describe('a split corrected after the daughter was confirmed', () => {
  it('keeps her: entries refer to the first version', () => {
    const story = yard();
    const split = story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder').at(-1);
    story.write(confirmed(story));
    if (split?.kind !== 'split') throw new Error('No split.');
    const { id, action: _, recordedAt: __, recordedBy: ___, ...said } = split;
    story.write({ ...said, day: rough('2026-05-11'), supersedes: id });
    const { codes, head, queen, registry } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('Three', '2026-07-01')).toBe('Three 2026');
    expect(head('One', '2026-05-10')).toBe('Alder');
    expect(registry.makings.get(queen('Three 2026').madeBy!)?.day).toBe('2026-05-11');
  });
});

describe('a loss written late', () => {
  it('that makes a later split impossible is said at the split, not at the loss', () => {
    const story = yard();
    const split = story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder').at(-1);
    story.write({
      kind: 'queen-lost',
      day: rough('2026-04-20'),
      queen: story.queen('Alder'),
      cause: 'killed',
    });
    const { codes, contradictions } = reading(story, NAMES);
    expect(new Set(codes)).toEqual(new Set(['eggs-of-absent-queen']));
    expect(new Set(contradictions.map(({ entry }) => entry))).toEqual(new Set([split?.id]));
  });
});

describe('a queen entered late, before what was already written', () => {
  it('heads the box from that day, and what was seen in it is filed with her', () => {
    const story = new Story();
    story.write(
      { kind: 'yard-opened', day: rough('2025-05-01'), yard: story.yard('Mill'), name: 'Mill' },
      {
        kind: 'colony-started',
        day: rough('2025-05-01'),
        colony: story.colony('One'),
        yard: story.yard('Mill'),
        label: 'One',
        how: 'already-here',
      },
      { kind: 'inspection', day: rough('2025-07-01'), colony: story.colony('One'), gentle: 4 },
    );
    expect(reading(story, NAMES).workers('One', '2025-07-01')).toBe('nobody-known');
    story.write({
      kind: 'queen-entered',
      day: rough('2025-05-02'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
    });
    const { codes, queen, workers } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(workers('One', '2025-07-01')).toBe('Alder');
    expect(queen('Alder').entries.map(({ kind }) => kind)).toEqual(['queen-entered', 'inspection']);
  });
});

describe('a supersedure taken back', () => {
  it('brings the old queen back, with all that was seen in the box since', () => {
    const story = yard();
    const [found] = story.write({
      kind: 'queen-found',
      day: rough('2026-04-20'),
      queen: story.queen('One 2026'),
      colony: story.colony('One'),
    });
    story.write({ kind: 'inspection', day: rough('2026-06-20'), colony: story.colony('One'), gentle: 3 });
    expect(reading(story, NAMES).head('One', '2026-07-01')).toBe('One 2026');
    story.withdraw('2026-06-21', found!.id);
    const { codes, head, queen, registry } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2026-07-01')).toBe('Alder');
    expect(queen('Alder').entries.at(-1)?.kind).toBe('inspection');
    expect(registry.queens.has(story.queen('One 2026'))).toBe(false);
  });
});

describe('the end of a colony taken back', () => {
  it('makes it and its queen alive again', () => {
    const story = yard();
    const [end] = story.write({
      kind: 'colony-ended',
      day: rough('2026-02-01'),
      colony: story.colony('One'),
      cause: 'winter',
    });
    expect(reading(story, NAMES).state('Alder')).toBe('gone: died-with-colony');
    story.withdraw('2026-02-02', end!.id);
    const { codes, state, head } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(state('Alder')).toBe('laying');
    expect(head('One', '2026-03-01')).toBe('Alder');
  });
});

describe('each thing that cannot be', () => {
  const impossible: Readonly<Record<string, (story: Story) => Draft>> = {
    'queen-in-two-colonies': (story) => ({
      kind: 'queen-confirmed',
      day: rough('2026-05-01'),
      queen: story.queen('Alder'),
      colony: story.colony('Two'),
      seen: 'eggs',
    }),
    'daughter-older-than-dam': (story) => ({
      kind: 'queen-entered',
      day: rough('2026-05-01'),
      queen: story.queen('Three 2026'),
      born: rough('2020'),
      parentage: story.of('Cedar'),
    }),
    'eggs-of-absent-queen': (story) => ({
      kind: 'eggs-given',
      day: rough('2026-05-01'),
      from: story.colony('Two'),
      to: story.colony('Empty'),
      expected: story.queen('Three 2026'),
      parentage: story.of('Alder'),
    }),
    'colony-already-ended': (story) => ({
      kind: 'split',
      day: rough('2026-05-01'),
      source: story.colony('Dead'),
      parts: [{ colony: story.colony('Dead'), queen: { how: 'none' } }],
    }),
  };

  function told(): Story {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch', Dead: 'Dogwood', Empty: 'Elder' });
    story.write(
      { kind: 'queen-lost', day: rough('2025-06-01'), queen: story.queen('Elder'), cause: 'killed' },
      { kind: 'colony-ended', day: rough('2026-02-01'), colony: story.colony('Dead'), cause: 'winter' },
      { kind: 'queen-entered', day: rough('2025'), queen: story.queen('Cedar'), born: rough('2024') },
    );
    return story;
  }

  for (const [rule, draft] of Object.entries(impossible)) {
    it(`is said plainly with ways out, and stands with the keeper's reason once overruled: ${rule}`, () => {
      const story = told();
      story.write(draft(story));
      const { contradictions } = reading(story, NAMES);
      expect(contradictions.map(({ code }) => code)).toContain(rule);
      for (const { found, because, remedies } of contradictions) {
        expect(found.length).toBeGreaterThan(5);
        expect(because).toMatch(/^[A-Z].+\.$/);
        expect(remedies.length).toBeGreaterThan(1);
      }
      const overruled = told();
      const reasons = [...new Set(contradictions.map(({ code }) => code))].map((code) => ({
        rule: code,
        reason: 'it was so all the same',
      }));
      overruled.write({ ...draft(overruled), overruled: reasons });
      const after = reading(overruled, NAMES);
      expect(after.codes).toEqual([]);
      expect(after.registry.contradictions.map(({ overruled: why }) => why)).toEqual(
        contradictions.map(() => 'it was so all the same'),
      );
    });
  }
});
