import { describe, expect, it } from 'vitest';
import type { Draft, Entry } from '../../../../src/journal/entry.ts';
import { orderOfEvents } from '../../../../src/journal/order.ts';
import type { Scribe } from '../../../../src/journal/write.ts';
import { extendProjection, project, startProjection } from '../../../../src/registry/project.ts';
import { reading } from '../../../helpers/reading.ts';
import { rough, Story, testId, testScribe } from '../../../helpers/story.ts';

/** One day at the hive with a clock that is set back on the way, or with two phones whose clocks differ. */

const TODAY = '2026-05-20';

/** A scribe whose next id is the one that its clock gives; ids rise with the clock. */
function settableClock(): Scribe & { at: (time: number) => void } {
  let time = 0x100;
  return {
    ...testScribe(),
    newId: () => testId(time++),
    at: (next: number) => {
      time = next;
    },
  };
}

function morning(): { story: Story; clock: ReturnType<typeof settableClock> } {
  const clock = settableClock();
  const story = new Story(clock);
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
  return { story, clock };
}

const start = (story: Story, label: string): Draft => ({
  kind: 'colony-started',
  day: rough(TODAY),
  colony: story.colony(label),
  yard: story.yard('Mill'),
  label,
  how: 'split',
});

const look = (story: Story, label: string): Draft => ({
  kind: 'inspection',
  day: rough(TODAY),
  colony: story.colony(label),
  queenSeen: 'seen-marked',
});

const kinds = (entries: readonly Entry[]) => entries.map(({ kind }) => kind);

describe('a clock set back between a start and what was seen of it', () => {
  it('puts the start first, and the whole step that it is part of', () => {
    const { story, clock } = morning();
    clock.at(0x500);
    story.threeWaySplit(TODAY, 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    clock.at(0x300);
    story.write(look(story, 'Nucleus'));
    const { codes, head, queen } = reading(story, ['Alder', 'Birch']);
    expect(codes).toEqual([]);
    expect(head('Nucleus', TODAY)).toBe('Alder');
    expect(kinds(queen('Alder').entries).slice(-2)).toEqual(['split', 'inspection']);
  });

  it('keeps a chain of such steps in order: a box, a queen put into it, her mark', () => {
    const { story, clock } = morning();
    clock.at(0x800);
    story.write(start(story, 'Three'));
    clock.at(0x700);
    story.write({
      kind: 'queen-entered',
      day: rough(TODAY),
      queen: story.queen('Cedar'),
      colony: story.colony('Three'),
    });
    clock.at(0x600);
    story.write({ kind: 'queen-marked', day: rough(TODAY), queen: story.queen('Cedar'), colour: 'white' });
    const { codes, head } = reading(story, ['Cedar']);
    expect(codes).toEqual([]);
    expect(head('Three', TODAY)).toBe('Cedar');
  });

  it('leaves all else of the day by the clock', () => {
    const { story, clock } = morning();
    clock.at(0x400);
    const [other] = story.write(look(story, 'Two'));
    clock.at(0x500);
    const [began] = story.write(start(story, 'Three'));
    clock.at(0x300);
    const [seen] = story.write(look(story, 'Three'));
    clock.at(0x600);
    const [last] = story.write(look(story, 'One'));
    const today = project(story.journal()).entries.filter(({ day }) => day === rough(TODAY));
    expect(today).toEqual([other, began, seen, last]);
  });

  it('is no reason to refuse the entry, whether it arrives before the start or after', () => {
    const { story, clock } = morning();
    const standing = startProjection(story.journal());
    clock.at(0x500);
    const began = story.write(start(story, 'Three'));
    clock.at(0x300);
    const seen = story.write(look(story, 'Three'));
    const codes = (steps: readonly (readonly Entry[])[]) =>
      steps.reduce(extendProjection, standing).registry.contradictions.map(({ code }) => code);
    expect(codes([began, seen])).toEqual([]);
    expect(codes([seen, began])).toEqual([]);
    expect(codes([[...seen, ...began]])).toEqual([]);
  });

  it('excuses nothing that stands on an earlier day than the start', () => {
    const { story } = morning();
    story.write({ ...look(story, 'Three'), day: rough('2026-05-19') });
    story.write(start(story, 'Three'));
    expect(reading(story, []).codes).toEqual(['colony-not-started']);
  });
});

describe('two boxes that each stand under one roof with the other', () => {
  it('come in one order, however the entries are given', () => {
    const { story } = morning();
    const under = (label: string, other: string): Draft => ({
      ...(start(story, label) as Draft<'colony-started'>),
      place: { underRoofWith: story.colony(other) },
    });
    story.write(under('Three', 'Four'));
    story.write(under('Four', 'Three'));
    story.write(look(story, 'Three'));
    const none = new Map();
    expect(orderOfEvents(story.entries.toReversed(), none).ordered).toEqual(
      orderOfEvents(story.entries, none).ordered,
    );
    expect(kinds(orderOfEvents(story.entries, none).ordered).at(-1)).toBe('inspection');
    expect(reading(story, []).codes).toEqual([]);
  });
});
