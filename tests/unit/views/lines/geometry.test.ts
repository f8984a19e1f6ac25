import { describe, expect, it } from 'vitest';
import type { QueenId } from '../../../../src/journal/ids.ts';
import { project } from '../../../../src/registry/project.ts';
import { cullingIndex, inSight } from '../../../../views/lines/culling.ts';
import { filterLives } from '../../../../views/lines/filter.ts';
import { placeLives } from '../../../../views/lines/geometry.ts';
import { livesOf } from '../../../../views/lines/lives.ts';
import { branchesOf } from '../../../../views/lines/outline-tree.ts';
import { isLarge, metricsFor, plotFor } from '../../../../views/lines/sizes.ts';
import { timeScale } from '../../../../views/lines/time-scale.ts';
import { roamingView } from '../../../../views/lines/use-zoom.ts';
import { AT_REST } from '../../../../views/lines/view.ts';
import { nearest, stepOfKey, walk } from '../../../../views/lines/walk.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Alder split in 2024 into three: she in N1, daughters in N2 and H1, both awaited. Birch in another yard. */
function drawn() {
  const story = new Story();
  story.begin('Home', '2023-04-01', { H1: 'Alder' });
  story.begin('Hill', '2023-04-01', { K1: 'Birch' });
  story.threeWaySplit('2024-05-05', 'Home', 'H1', 'N1', 'N2', 'Alder');
  story.write({
    kind: 'queen-confirmed',
    day: rough('2024-06-10'),
    queen: story.queen('N2 2024'),
    colony: story.colony('N2'),
    seen: 'worker-brood',
  });
  const on = day('2024-07-01');
  const lives = livesOf(project(story.journal()), on);
  const scale = timeScale(Math.min(...lives.map(({ start }) => start)), on, 200);
  const metrics = metricsFor(1000, lives.length);
  const geometry = placeLives(lives, [story.queen('Alder'), story.queen('Birch')], scale, metrics);
  return { story, lives, geometry, scale, metrics };
}

describe('the places of the drawing', () => {
  const { story, geometry, scale, metrics } = drawn();
  const at = (name: string) => geometry.byId.get(story.queen(name))!;

  it('let the lives of the living and the awaited reach today', () => {
    for (const name of ['Alder', 'N2 2024', 'H1 2024', 'Birch']) expect(at(name).to).toBe(scale.width);
  });

  it('group the sisters of one split under one joint on the life of their dam', () => {
    expect(geometry.joints).toHaveLength(1);
    const [joint] = geometry.joints;
    expect(joint).toMatchObject({ dam: story.queen('Alder'), how: 'split', y: at('Alder').y });
    expect(joint?.daughters.map(({ id }) => id).sort()).toEqual(
      [story.queen('N2 2024'), story.queen('H1 2024')].sort(),
    );
    expect(joint?.x).toBe(at('N2 2024').from);
  });

  it('keep at least a lane between two queens alive on the same day', () => {
    const heights = geometry.queens.map(({ y }) => y).sort((a, b) => a - b);
    for (const [k, y] of heights.entries()) {
      if (k > 0) expect(y - heights[k - 1]!).toBeGreaterThanOrEqual(metrics.lane - 1e-9);
    }
  });

  it('mark a winter where it ends', () => {
    expect(at('Alder').winters.map(({ x }) => x)).toEqual([scale.years[0]?.winter?.to]);
  });

  it('write no names on those whose names stand beside the drawing', () => {
    expect(geometry.queens.every(({ name }) => name === undefined)).toBe(true);
  });
});

describe('walking through the drawing', () => {
  const { story, geometry } = drawn();
  const go = (from: string | undefined, key: string) =>
    walk(geometry, from === undefined ? undefined : story.queen(from), stepOfKey(key)!);

  it('starts with the topmost queen', () => {
    expect(go(undefined, 'ArrowDown')).toBe(story.queen('Alder'));
  });

  it('goes left to the dam and right to a daughter', () => {
    const daughter = go('Alder', 'ArrowRight');
    expect([story.queen('N2 2024'), story.queen('H1 2024')]).toContain(daughter);
    expect(walk(geometry, daughter, 'dam')).toBe(story.queen('Alder'));
    expect(go('Alder', 'ArrowLeft')).toBeUndefined();
  });

  it('goes up and down among sisters, and among founders', () => {
    const first = go('Alder', 'ArrowRight')!;
    const second = walk(geometry, first, 'down')!;
    expect(walk(geometry, second, 'up')).toBe(first);
    expect(walk(geometry, second, 'down')).toBeUndefined();
    expect(go('Alder', 'ArrowDown')).toBe(story.queen('Birch'));
  });

  it('leaves other keys alone', () => {
    expect(stepOfKey('a')).toBeUndefined();
  });

  it('finds the queen under a tap, also by her name beside the drawing, and nobody in the open', () => {
    const birch = geometry.byId.get(story.queen('Birch'))!;
    expect(nearest(geometry, AT_REST, { x: birch.from + 5, y: birch.y }, geometry.width)).toBe(birch.life.id);
    expect(nearest(geometry, AT_REST, { x: geometry.width + 30, y: birch.y + 4 }, geometry.width)).toBe(
      birch.life.id,
    );
    expect(nearest(geometry, AT_REST, { x: 50, y: geometry.height + 200 }, geometry.width)).toBeUndefined();
  });
});

describe('what is left to draw', () => {
  const { story, lives } = drawn();

  it('keeps the dams that join the living to their founder', () => {
    const { lives: left } = filterLives(lives, { living: true });
    expect(left.map(({ id }) => id)).toContain(story.queen('Alder'));
  });

  it('keeps of another yard only what is asked for and its dams', () => {
    const { lives: left, wanted } = filterLives(lives, { living: false, yard: story.yard('Hill') });
    expect(left.map(({ id }) => id)).toEqual([story.queen('Birch')]);
    expect([...(wanted ?? [])]).toEqual([story.queen('Birch')]);
  });

  it('is one line when one is asked for', () => {
    const { lives: left } = filterLives(lives, { living: false, line: story.queen('Alder') });
    expect(left).toHaveLength(3);
  });

  it('reads as a list with each queen under her dam', () => {
    const [alder, ...others] = branchesOf(lives, story.queen('Alder'));
    expect(others).toEqual([]);
    expect(alder?.life.id).toBe(story.queen('Alder'));
    expect(alder?.daughters).toHaveLength(2);
  });
});

describe('a large registry', () => {
  const ids = Array.from({ length: 500 }, (_, k) => `q${String(k).padStart(3, '0')}` as QueenId);
  const template = drawn().lives[0]!;
  const lives = ids.map((id) => ({ ...template, id, line: id }));
  const on = day('2024-07-01');
  const scale = timeScale(template.start, on, 100);
  const geometry = placeLives(lives, ids, scale, metricsFor(1000, lives.length));
  const index = cullingIndex(geometry);

  it('is drawn on a canvas', () => {
    expect(isLarge(400)).toBe(false);
    expect(isLarge(401)).toBe(true);
  });

  it('draws only what is in sight, and all of that', () => {
    const view = { ...AT_REST, y: -3000 };
    const { queens } = inSight(index, view, 800, 600);
    const expected = geometry.queens.filter(({ y }) => y >= 3000 - 40 && y <= 3000 + 600 + 40);
    expect(queens.map(({ life }) => life.id).sort()).toEqual(expected.map(({ life }) => life.id).sort());
    expect(queens.length).toBeLessThan(30);
  });
});

describe('the width', () => {
  it('goes to the lives and the names beside them, and a year never gets too narrow to read', () => {
    const phone = plotFor(358, 12);
    expect(phone.plot + phone.gutter).toBe(358);
    expect(phone.yearWidth * 12).toBeGreaterThan(phone.plot);
    const desk = plotFor(1100, 6);
    expect(desk.yearWidth * 6).toBeCloseTo(desk.plot, 9);
  });
});

describe('a large registry seen through a window', () => {
  const size = { width: 1000, windowWidth: 500 };

  it('moves and grows both ways alike', () => {
    expect(roamingView({ k: 2, x: -300, y: -700 }, size)).toEqual({ kx: 2, ky: 2, x: -300, y: -700 });
  });

  it('keeps the years as wide as the window when only the lanes get thin', () => {
    expect(roamingView({ k: 0.1, x: 200, y: 0 }, size)).toEqual({ kx: 0.5, ky: 0.1, x: 0, y: 0 });
  });

  it('does not jump where the two meet', () => {
    const before = roamingView({ k: 0.5, x: 0, y: 0 }, size);
    const after = roamingView({ k: 0.5001, x: 0, y: 0 }, size);
    expect(after.kx).toBeCloseTo(before.kx, 3);
    expect(after.x).toBeCloseTo(before.x, 1);
  });
});
