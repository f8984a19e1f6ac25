import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/journal/entry.ts';
import type { KeeperId } from '../../../../src/journal/ids.ts';
import { reading } from '../../../helpers/reading.ts';
import { rough, Story, testId } from '../../../helpers/story.ts';

/** A queen goes from one keeper to another, and both have written of it when the journals are joined. */

const NAMES = ['Alder', 'Birch', 'daughter'];
const OTHER = testId(0x1000) as KeeperId;

/** The other keeper's yard stands beside mine; she knows Alder by the pedigree she was sent, if at all. */
function yards(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder' });
  story.writeAs(
    OTHER,
    { kind: 'yard-opened', day: rough('2025-05-01'), yard: story.yard('Brook'), name: 'Brook' },
    {
      kind: 'colony-started',
      day: rough('2025-05-01'),
      colony: story.colony('Hers'),
      yard: story.yard('Brook'),
      label: 'Hers',
      how: 'bought',
    },
  );
  return story;
}

const givenAway = (story: Story, on: string): Draft => ({
  kind: 'queen-lost',
  day: rough(on),
  queen: story.queen('Alder'),
  cause: 'given-away',
  to: 'the keeper at the brook',
});

const entered = (story: Story, on: string): Draft => ({
  kind: 'queen-entered',
  day: rough(on),
  queen: story.queen('Alder'),
  name: 'Alder of the mill',
  colony: story.colony('Hers'),
  laying: true,
});

const putIn = (story: Story, on: string): Draft => ({
  kind: 'queen-moved',
  day: rough(on),
  queen: story.queen('Alder'),
  to: story.colony('Hers'),
});

describe('a handing over that both keepers wrote down', () => {
  for (const [manner, takingIn] of [
    ['entered', entered],
    ['put into a colony', putIn],
  ] as const) {
    for (const [when, gave, took] of [
      ['a day after she was given', '2026-06-10', '2026-06-11'],
      ['on the same day', '2026-06-10', '2026-06-10'],
      ['a day before by the other’s diary', '2026-06-10', '2026-06-09'],
    ] as const) {
      for (const first of ['giver', 'taker']) {
        it(`is one event where she was ${manner} ${when} and the ${first} wrote first`, () => {
          const story = yards();
          if (first === 'giver') story.write(givenAway(story, gave));
          story.writeAs(OTHER, takingIn(story, took));
          if (first === 'taker') story.write(givenAway(story, gave));
          const { codes, head, state, queen } = reading(story, NAMES);
          expect(codes).toEqual([]);
          expect(state('Alder')).toBe('laying');
          expect(head('One', '2026-06-20')).toBeUndefined();
          expect(head('Hers', '2026-06-20')).toBe('Alder');
          expect(queen('Alder').name).toBe('Alder');
        });
      }
    }
  }
});

describe('results of a queen given away', () => {
  it('come back in the other keeper’s file as hers, and her daughters there as her daughters', () => {
    const story = yards();
    story.write(givenAway(story, '2026-06-10'));
    story.writeAs(
      OTHER,
      putIn(story, '2026-06-11'),
      {
        kind: 'inspection',
        day: rough('2026-08-20'),
        colony: story.colony('Hers'),
        gentle: 4,
      },
      {
        kind: 'winter-outcome',
        day: rough('2027-04-10'),
        colony: story.colony('Hers'),
        winter: 2027,
        alive: true,
      },
      {
        kind: 'queen-expected',
        day: rough('2027-05-20'),
        queen: story.queen('daughter'),
        colony: story.colony('Hers'),
        reason: 'swarm',
      },
    );
    const { codes, workers, dams, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(workers('Hers', '2026-08-20')).toBe('Alder');
    expect(dams('daughter')).toEqual({ Alder: 1 });
    expect(queen('Alder').entries.map(({ kind }) => kind)).toContain('winter-outcome');
  });
});

describe('one keeper alone', () => {
  it('cannot enter the same queen into two boxes', () => {
    const story = yards();
    story.write({ ...entered(story, '2026-06-10'), colony: story.colony('One') } as Draft);
    expect(reading(story, NAMES).codes).toEqual(['queen-entered-twice']);
  });
});

describe('a colony given away with its queen', () => {
  it('ends here, and she goes on in the box of the keeper who got it', () => {
    const story = yards();
    story.write({
      kind: 'colony-ended',
      day: rough('2026-06-10'),
      colony: story.colony('One'),
      cause: 'given',
    });
    story.writeAs(OTHER, putIn(story, '2026-06-12'));
    const { codes, head, state } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(state('Alder')).toBe('laying');
    expect(head('Hers', '2026-06-20')).toBe('Alder');
  });
});
