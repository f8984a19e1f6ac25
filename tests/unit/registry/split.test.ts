import { describe, expect, it } from 'vitest';
import { project } from '../../../src/registry/project.ts';
import { headOn } from '../../../src/registry/queries.ts';
import { day, rough, Story } from '../../helpers/story.ts';

function splitStory(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Rowan' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  return story;
}

function head(story: Story, label: string, on = '2026-07-01'): string | undefined {
  const registry = project(story.journal());
  const colony = registry.colonies.get(story.colony(label));
  return colony && headOn(registry, colony, day(on))?.name;
}

function codes(story: Story): string[] {
  return project(story.journal()).contradictions.map(({ code }) => code);
}

describe('a three-way split', () => {
  it('moves the old queen into the nucleus and leaves the source without a head', () => {
    const story = splitStory();
    expect(head(story, 'Nucleus')).toBe('Alder');
    expect(head(story, 'One')).toBeUndefined();
    expect(head(story, 'One', '2026-05-09')).toBe('Alder');
    expect(codes(story)).toEqual([]);
  });

  it('expects a daughter of the old queen in each queenless part', () => {
    const registry = project(splitStory().journal());
    const expected = [...registry.queens.values()].filter(({ state }) => state.is === 'expected');
    expect(expected).toHaveLength(2);
    const story = splitStory();
    for (const queen of expected) expect(queen.parentage?.dams[0]?.queen).toBe(story.queen('Alder'));
  });

  it('makes cells carried from the queenless parent a week later daughters of the old queen', () => {
    const story = splitStory();
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-12'), queen: story.queen('Rowan'), cause: 'not-found' },
      {
        kind: 'cells-given',
        day: rough('2026-05-17'),
        to: story.colony('Two'),
        from: story.colony('One'),
        expected: story.queen('from cells'),
        parentage: story.of('Alder'),
        age: 'unknown',
      },
    );
    expect(codes(story)).toEqual([]);
    const daughters = project(story.journal()).queens.get(story.queen('Alder'))?.daughters;
    expect(daughters).toContain(story.queen('from cells'));
  });

  it('refuses cells named after a queen who never laid in that colony', () => {
    const story = splitStory();
    story.write({
      kind: 'cells-given',
      day: rough('2026-05-17'),
      to: story.colony('Three'),
      from: story.colony('One'),
      expected: story.queen('from cells'),
      parentage: story.of('Rowan'),
      age: 'unknown',
    });
    expect(codes(story)).toEqual(['eggs-of-absent-queen']);
  });

  it('refuses eggs of a queen who left more than three days before', () => {
    const story = splitStory();
    const given = (on: string, name: string) =>
      story.write({
        kind: 'eggs-given',
        day: rough(on),
        to: story.colony('Three'),
        from: story.colony('One'),
        expected: story.queen(name),
        parentage: story.of('Alder'),
      });
    given('2026-05-13', 'in time');
    expect(codes(story)).toEqual([]);
    given('2026-05-14', 'too late');
    expect(codes(story)).toEqual(['eggs-of-absent-queen']);
  });

  it('follows brood through a frame carried to a third colony', () => {
    const story = splitStory();
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-09'), queen: story.queen('Rowan'), cause: 'not-found' },
      {
        kind: 'frames-moved',
        day: rough('2026-05-11'),
        from: story.colony('Nucleus'),
        to: story.colony('Two'),
        frames: { eggs: 1 },
      },
      {
        kind: 'eggs-given',
        day: rough('2026-05-12'),
        to: story.colony('Three'),
        from: story.colony('Two'),
        expected: story.queen('twice carried'),
        parentage: story.of('Alder'),
      },
    );
    expect(codes(story)).toEqual([]);
  });

  it('says so when the old queen is put into two parts, or left out', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    const raises = {
      how: 'raises-own' as const,
      expected: story.queen('X'),
      parentage: story.of('Alder'),
      from: 'eggs' as const,
    };
    story.write({
      kind: 'split',
      day: rough('2026-05-10'),
      source: story.colony('One'),
      parts: [{ colony: story.colony('One'), queen: raises }],
    });
    expect(codes(story)).toEqual(['two-queens-in-colony']);
  });

  it('says so when a dead colony is split, and keeps the reason when the keeper overrules it', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write({
      kind: 'colony-ended',
      day: rough('2026-02-01'),
      colony: story.colony('One'),
      cause: 'winter',
    });
    story.write({
      kind: 'split',
      day: rough('2026-05-10'),
      source: story.colony('One'),
      parts: [{ colony: story.colony('One'), queen: { how: 'none' } }],
      overruled: [{ rule: 'colony-already-ended', reason: 'Two boxes had the same label' }],
    });
    const [contradiction] = project(story.journal()).contradictions;
    expect(contradiction?.code).toBe('colony-already-ended');
    expect(contradiction?.overruled).toBe('Two boxes had the same label');
  });
});

describe('a daughter confirmed', () => {
  it('heads the colony from that day, and the other queens expected there have failed', () => {
    const story = splitStory();
    story.write({
      kind: 'cells-given',
      day: rough('2026-05-17'),
      to: story.colony('Three'),
      from: story.colony('One'),
      expected: story.queen('second'),
      parentage: story.of('Alder'),
      age: 'capped',
    });
    story.write({
      kind: 'queen-confirmed',
      day: rough('2026-06-08'),
      queen: story.queen('Three 2026'),
      colony: story.colony('Three'),
      seen: 'eggs',
    });
    const registry = project(story.journal());
    expect(registry.queens.get(story.queen('Three 2026'))?.state.is).toBe('laying');
    expect(registry.queens.get(story.queen('second'))?.state).toMatchObject({
      is: 'failed',
      cause: 'another-came-first',
    });
    expect(registry.contradictions).toEqual([]);
  });

  it('found in another colony than expected is said to be in two', () => {
    const story = splitStory();
    story.write({
      kind: 'queen-confirmed',
      day: rough('2026-06-08'),
      queen: story.queen('Three 2026'),
      colony: story.colony('One'),
      seen: 'eggs',
    });
    expect(codes(story)).toEqual(['queen-in-two-colonies']);
  });
});

describe('an unmarked queen where a marked one was', () => {
  it('is probably a daughter by supersedure, and the old queen is gone by deduction', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write({
      kind: 'queen-found',
      day: rough('2026-04-20'),
      queen: story.queen('found'),
      colony: story.colony('One'),
    });
    const registry = project(story.journal());
    const found = registry.queens.get(story.queen('found'));
    expect(found?.parentage?.evidence).toBe('unmarked-queen-found');
    expect(found?.parentage?.dams[0]?.probability).toBeLessThan(1);
    expect(registry.queens.get(story.queen('Alder'))?.state).toMatchObject({ is: 'gone', deduced: true });
    expect(registry.contradictions).toEqual([]);
  });
});

describe('impossible parentage', () => {
  it('a daughter older than her dam, and a dam who descends from her daughter, are named', () => {
    const story = new Story();
    const enter = (name: string, born: string) =>
      story.write({
        kind: 'queen-entered',
        day: rough('2026'),
        queen: story.queen(name),
        name,
        born: rough(born),
      });
    enter('Alder', '2023');
    enter('Birch', '2022');
    const state = (daughter: string, dam: string) =>
      story.write({
        kind: 'parentage-stated',
        day: rough('2026'),
        queen: story.queen(daughter),
        parentage: story.of(dam),
      });
    state('Birch', 'Alder');
    expect(codes(story)).toEqual(['daughter-older-than-dam']);
    state('Alder', 'Birch');
    expect(codes(story)).toEqual(['daughter-older-than-dam', 'dam-is-descendant']);
  });
});
