import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { traitFigure, traitFigures } from '../../../../views/parts/trait-words.ts';
import { betterScale, dots } from '../../../../views/queen/dot-strip.ts';
import {
  besides,
  groupWords,
  herTraits,
  type Neighbour,
  shared,
} from '../../../../views/queen/her-traits.ts';
import { rough, Story } from '../../../helpers/story.ts';

const COLONIES = { H1: 'Alder', H2: 'Birch', H3: 'Cedar', H4: 'Elm', H5: 'Fir', H6: 'Gorse' };

/** Six queens of one yard, scored gentle in July 2024: Alder 4, the others 3, 3, 2.5, 2, 1.5. */
function scored(): Story {
  const story = new Story();
  story.begin('Home', '2023-04-01', COLONIES);
  for (const [label, score] of Object.entries({ H1: 4, H2: 3, H3: 3, H4: 2.5, H5: 2, H6: 1.5 })) {
    story.write({ kind: 'inspection', day: rough('2024-07-01'), colony: story.colony(label), gentle: score });
  }
  return story;
}

describe('what her colonies did', () => {
  const story = scored();
  const registry = project(story.journal());
  const of = (name: string, trait: string) =>
    herTraits(registry, story.queen(name)).find((each) => each.trait === trait)!;

  it('stands among the queens of the same yard and season, with her place', () => {
    const [group, ...others] = of('Alder', 'gentle').groups;
    expect(others).toEqual([]);
    expect(group).toMatchObject({ yard: 'Home', season: 2024, queens: 6, small: false, place: 1 });
    expect(group?.members.filter(({ hers }) => hers).map(({ value }) => value)).toEqual([4]);
    expect(of('Gorse', 'gentle').groups[0]?.place).toBe(6);
  });

  it('gives queens who are alike the better place', () => {
    expect(of('Birch', 'gentle').groups[0]?.place).toBe(2);
    expect(of('Cedar', 'gentle').groups[0]?.place).toBe(2);
    expect(of('Elm', 'gentle').groups[0]?.place).toBe(4);
  });

  it('says in words where she stands', () => {
    expect(groupWords('gentle', of('Alder', 'gentle').groups[0]!)).toBe('best of 6');
    expect(groupWords('gentle', of('Birch', 'gentle').groups[0]!)).toBe('2nd of 6');
    expect(groupWords('gentle', of('Gorse', 'gentle').groups[0]!)).toBe('last of 6');
  });

  it('says so when there are too few to tell the line from luck', () => {
    const few = new Story();
    few.begin('Home', '2023-04-01', { H1: 'Alder', H2: 'Birch', H3: 'Cedar' });
    for (const label of ['H1', 'H2', 'H3']) {
      few.write({ kind: 'inspection', day: rough('2024-07-01'), colony: few.colony(label), gentle: 3 });
    }
    const [trait] = herTraits(project(few.journal()), few.queen('Alder'));
    expect(groupWords('gentle', trait!.groups[0]!)).toBe(
      'three colonies: too few to tell the line from luck',
    );
  });

  it('keeps in sight, with the reason, a count made while a treatment acted', () => {
    const treated = scored();
    treated.write({
      kind: 'treatment',
      day: rough('2024-08-01'),
      colonies: [treated.colony('H1')],
      active: 'formic acid',
      end: '2024-08-15' as never,
    });
    treated.write({
      kind: 'mite-count',
      day: rough('2024-08-10'),
      colony: treated.colony('H1'),
      sample: { method: 'wash', mites: 1, bees: 300 },
    });
    const traits = herTraits(project(treated.journal()), treated.queen('Alder'));
    const mites = traits.find(({ trait }) => trait === 'mite-level')!;
    expect(mites.groups).toEqual([]);
    expect(mites.aside[0]?.sentence).toContain('while formic acid was acting');
  });

  it('names what all groups share in the heading, and beside a group what sets it apart', () => {
    const gentle = of('Alder', 'gentle');
    expect(shared(gentle)).toBe('Home');
    expect(besides(gentle)).toEqual(['']);
    const group = gentle.groups[0]!;
    const mites = {
      ...gentle,
      groups: [
        { ...group, alike: 'wash' },
        { ...group, alike: 'natural-drop' },
      ],
    };
    expect(shared(mites)).toBe('Home');
    expect(besides(mites)).toEqual(['wash', 'natural drop']);
  });
});

describe('the strip of dots', () => {
  const story = scored();
  const gentle = herTraits(project(story.journal()), story.queen('Alder'))[0]!;

  it('has better to the right, whichever way the trait counts', () => {
    const higher = betterScale(gentle, 0, 100);
    expect(higher.x(4)).toBe(100);
    expect(higher.x(1.5)).toBe(0);
    const lower = betterScale({ ...gentle, better: 'lower' }, 0, 100);
    expect(lower.x(4)).toBe(0);
    expect(lower.best).toBe(1.5);
  });

  it('stands in the middle when all are alike', () => {
    const group = gentle.groups[0]!;
    const alike = { ...group, members: group.members.map((member) => ({ ...member, value: 3 })) };
    expect(betterScale({ ...gentle, groups: [alike] }, 0, 100).x(3)).toBe(50);
  });

  it('puts her dot on the line and lets no two dots touch', () => {
    const crowd: Neighbour[] = Array.from({ length: 20 }, (_, k) => ({
      queen: `q${k}` as never,
      colony: 'c' as never,
      value: k % 2,
      hers: k === 7,
    }));
    const placed = dots(crowd, (value) => 10 + 180 * value, 10, 200);
    expect(placed).toHaveLength(20);
    expect(placed.find(({ hers }) => hers)).toMatchObject({ row: 0, x: 190 });
    for (const [k, a] of placed.entries()) {
      for (const b of placed.slice(k + 1)) {
        expect(Math.hypot(a.x - b.x, 10 * (a.row - b.row))).toBeGreaterThanOrEqual(10 - 1e-6);
      }
    }
    expect(Math.max(...placed.map(({ row }) => row))).toBeLessThanOrEqual(2);
  });
});

describe('figures of the traits', () => {
  it('are said as a keeper says them, though they are kept as logarithms', () => {
    expect(traitFigure('winter-strength', Math.log(0.8))).toBe('80\u00a0% of autumn');
    expect(traitFigure('mite-level', Math.log(0.03), 'wash')).toBe('3\u00a0%');
    expect(traitFigure('mite-level', Math.log(8.12), 'natural-drop')).toBe('8.1 a day');
    expect(traitFigure('mite-growth', Math.log(2))).toBe('× 2 a month');
    expect(traitFigure('hygienic', 0)).toBe('50\u00a0% cleared');
    expect(traitFigure('spring-build-up', Math.log(0.9))).toBe('−10\u00a0% a week');
    expect(traitFigure('winter-survival', 0)).toBe('dead');
  });

  it('are joined with the unit said once', () => {
    expect(traitFigures('gentle', [2.5, 3])).toBe('2.5 and 3 points');
    expect(traitFigures('gentle', [3, 3])).toBe('3 points');
    expect(traitFigures('gentle', [1, 2.5])).toBe('1 and 2.5 points');
    expect(traitFigures('calm', [2.5, 1])).toBe('2.5 and 1 points');
    expect(traitFigures('calm', [1])).toBe('1 point');
    expect(traitFigure('calm', 1)).toBe('1 point');
  });
});
