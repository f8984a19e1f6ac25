import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/journal/entry.ts';
import { project } from '../../../src/registry/project.ts';
import { headState } from '../../../src/registry/queries.ts';
import { wintersCrossed, wintersEntered } from '../../../src/registry/winters-of-queen.ts';
import { day, rough, Story } from '../../helpers/story.ts';

const APRIL = day('2026-04-12');

/** Alder heads H1 from the day on; what else is written follows. */
function told(from: string, ...more: readonly ((story: Story) => Draft)[]) {
  const story = new Story();
  story.begin('Home', from, { H1: 'Alder' });
  for (const draft of more) story.write(draft(story));
  const registry = project(story.journal());
  const queen = registry.queens.get(story.queen('Alder'))!;
  const colony = registry.colonies.get(story.colony('H1'))!;
  return { queen, head: headState(registry, colony, APRIL) };
}

const outcome = (on: string, winter: number, alive: boolean) => (story: Story) =>
  ({ kind: 'winter-outcome', day: rough(on), colony: story.colony('H1'), winter, alive }) satisfies Draft;

const looked = (on: string) => (story: Story) =>
  ({ kind: 'inspection', day: rough(on), colony: story.colony('H1'), eggs: true }) satisfies Draft;

const noted = (on: string) => (story: Story) =>
  ({
    kind: 'note',
    day: rough(on),
    about: { of: 'queen', queen: story.queen('Alder') },
    text: 'the best',
  }) satisfies Draft;

describe('the winters of a queen', () => {
  it('count once something shows that she was there after them, and not by the calendar alone', () => {
    const silent = told('2025-06-10');
    expect(wintersCrossed(silent.queen, APRIL)).toEqual([]);
    expect(silent.head).toBe('laying');
    const alive = told('2025-06-10', outcome('2026-04-02', 2026, true));
    expect(wintersCrossed(alive.queen, APRIL)).toEqual([2026]);
    expect(alive.head).toBe('proven');
  });

  it('are shown by any look into her colony, for each winter before it', () => {
    const { queen } = told('2023-06-10', looked('2026-03-20'));
    expect(wintersCrossed(queen, APRIL)).toEqual([2024, 2025, 2026]);
    expect(wintersCrossed(queen, day('2025-12-24'))).toEqual([]);
  });

  it('are not shown by a note: it is written at a desk', () => {
    expect(wintersCrossed(told('2025-06-10', noted('2026-04-01')).queen, APRIL)).toEqual([]);
  });

  it('begin in the year she was entered, where nothing but the year is known', () => {
    const { queen, head } = told('2025', outcome('2026-04-02', 2026, true));
    expect(wintersCrossed(queen, APRIL)).toEqual([2026]);
    expect(head).toBe('proven');
  });

  it('count by an outcome of which nothing but the year is known', () => {
    const { queen } = told('2023', outcome('2024', 2024, true), outcome('2025', 2025, true));
    expect(wintersCrossed(queen, APRIL)).toEqual([2024, 2025]);
  });

  it('went into but not told of are left out of the reckoning, and one that killed her is in it', () => {
    expect(wintersEntered(told('2024', outcome('2025', 2025, true)).queen, APRIL)).toEqual([2025]);
    const dead = told('2024', outcome('2025', 2025, true), outcome('2026', 2026, false)).queen;
    expect(wintersEntered(dead, APRIL)).toEqual([2025, 2026]);
    expect(wintersCrossed(dead, APRIL)).toEqual([2025]);
  });
});
