import { describe, expect, it } from 'vitest';
import { extendProjection, startProjection } from '../../../../src/registry/project.ts';
import { reading } from '../../../helpers/reading.ts';
import { rough, Story, testScribe } from '../../../helpers/story.ts';

/** Days known to the month or year only: old tables, and what a keeper remembers in winter. */

const NAMES = ['Alder', 'Birch', 'Cedar'];

function yard(story: Story, on: string): void {
  story.write({ kind: 'yard-opened', day: rough(on), yard: story.yard('Mill'), name: 'Mill' });
}

function start(story: Story, label: string, on: string): void {
  story.write({
    kind: 'colony-started',
    day: rough(on),
    colony: story.colony(label),
    yard: story.yard('Mill'),
    label,
    how: 'already-here',
  });
}

describe('a queen who heads a box since a year', () => {
  it('is in it from its start, though the box began in April and was written down after her', () => {
    const story = new Story();
    yard(story, '2024');
    story.write({
      kind: 'queen-entered',
      day: rough('2025'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
    });
    start(story, 'One', '2025-04-12');
    const { codes, head } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2025-04-12')).toBe('Alder');
  });

  it('cannot be in a box that began in a later year', () => {
    const story = new Story();
    yard(story, '2024');
    start(story, 'One', '2026-04-12');
    story.write({
      kind: 'queen-entered',
      day: rough('2025'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
    });
    expect(reading(story, NAMES).codes).toEqual(['colony-not-started']);
  });
});

describe('a table of years', () => {
  it('of yard, box, dam and daughter all of one year contradicts nothing, in whatever order it is written', () => {
    const story = new Story();
    story.write({
      kind: 'queen-entered',
      day: rough('2024'),
      queen: story.queen('Birch'),
      colony: story.colony('Two'),
      parentage: story.of('Alder'),
    });
    story.write({
      kind: 'queen-entered',
      day: rough('2024'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
    });
    start(story, 'Two', '2024');
    start(story, 'One', '2024-05');
    yard(story, '2024');
    const { codes, dams, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(dams('Birch')).toEqual({ Alder: 1 });
    expect(queen('Alder').daughters).toEqual([story.queen('Birch')]);
  });
});

describe('a queen lost some time in a month or year', () => {
  it('was there for all that was written of her before, and is gone today', () => {
    const story = new Story(testScribe(1, '2026-06-10T18:00:00.000Z'));
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    story.write({
      kind: 'queen-lost',
      day: rough('2026'),
      queen: story.queen('Alder'),
      cause: 'not-found',
    });
    const { codes, head, state } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(state('Alder')).toBe('gone: not-found');
    expect(head('Nucleus', '2026-06-10')).toBeUndefined();
    expect(reading(story, NAMES, '2026-05-20').head('Nucleus', '2026-05-20')).toBe('Alder');
  });

  it('makes room for a queen put in on the very day it was written', () => {
    const story = new Story(testScribe(1, '2026-06-11T02:00:00.000Z'));
    story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
    story.write({ kind: 'queen-lost', day: rough('2026-06'), queen: story.queen('Alder'), cause: 'killed' });
    // An evening in America: the day there is still the tenth.
    story.write({
      kind: 'queen-moved',
      day: rough('2026-06-10'),
      queen: story.queen('Birch'),
      to: story.colony('One'),
    });
    expect(reading(story, NAMES).codes).toEqual([]);
  });
});

describe('a colony that ended in a year', () => {
  it('was alive for what was seen in it that year', () => {
    const story = new Story();
    story.begin('Mill', '2023-05-01', { One: 'Alder' });
    story.write({ kind: 'colony-ended', day: rough('2024'), colony: story.colony('One'), cause: 'winter' });
    story.write({ kind: 'inspection', day: rough('2024-03-20'), colony: story.colony('One'), eggs: true });
    const { codes, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(queen('Alder').entries.map(({ kind }) => kind)).toEqual([
      'queen-entered',
      'inspection',
      'colony-ended',
    ]);
  });
});

describe('what an entry without an exact day waits for', () => {
  it('moves it into place when it arrives later', () => {
    const story = new Story();
    yard(story, '2024');
    story.write({
      kind: 'queen-entered',
      day: rough('2025'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
    });
    start(story, 'One', '2025-04-12');
    const [opened, entered, started] = story.entries;
    const first = startProjection(new Map([opened!, entered!].map((entry) => [entry.id, entry])));
    expect(first.registry.contradictions).toHaveLength(1);
    expect(extendProjection(first, [started!]).registry.contradictions).toEqual([]);
  });
});
