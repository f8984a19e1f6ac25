import { describe, expect, it } from 'vitest';
import { FRAME_SIZES } from '../../../../graph/increase/comb.ts';
import { project } from '../../../../src/registry/project.ts';
import { framesForTwo, notNow, splitFirst, swarmSigns } from '../../../../views/split/first.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const ON = day('2026-05-20');

/** Four colonies of one yard, begun a year ago; 4 was begun this spring. */
function yard() {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { '1': 'Alder', '2': 'Rowan', '3': 'Hazel' });
  story.begin('Hill', '2026-04-01', { '4': 'Birch' });
  const look = (label: string, on: string, frames: number, cells?: number) =>
    story.write({
      kind: 'inspection',
      day: rough(on),
      colony: story.colony(label),
      framesOfBees: frames,
      ...(cells === undefined ? {} : { openCells: cells }),
    });
  return { story, look };
}

const order = (story: Story, on = ON) =>
  splitFirst(project(story.journal()), on, { places: new Map(), size: FRAME_SIZES[0] }).map(
    ({ colony }) => colony.label,
  );

describe('which colony to split first', () => {
  it('puts swarm signs before everything, then survivors by their strength', () => {
    const { story, look } = yard();
    look('1', '2026-05-15', 9);
    look('2', '2026-05-15', 11);
    look('3', '2026-05-15', 7, 4);
    look('4', '2026-05-15', 14);
    expect(order(story)).toEqual(['3', '2', '1', '4']);
  });

  it('puts a colony too small for two parts behind, whoever heads it', () => {
    const { story, look } = yard();
    look('1', '2026-05-15', 3);
    look('4', '2026-05-15', 9);
    // 6,800 and 4,500 bees at 2 x 8.8 x 130 = 2,288 a frame are 4.9 frames.
    expect(framesForTwo({ name: 'deep', sideDm2: 8.8 })).toBeCloseTo(11_300 / 2288, 9);
    expect(order(story).at(-1)).toBe('1');
  });

  it('forgets signs after two weeks, after a look without any, and after a split', () => {
    const { story, look } = yard();
    look('1', '2026-05-15', 9, 3);
    const one = () => {
      const colony = project(story.journal()).colonies.get(story.colony('1'));
      if (!colony) throw new Error('Colony 1 lives.');
      return colony;
    };
    expect(swarmSigns(one(), ON)).toBe('2026-05-15');
    expect(swarmSigns(one(), day('2026-05-30'))).toBeUndefined();
    look('1', '2026-05-18', 9, 0);
    expect(swarmSigns(one(), ON)).toBeUndefined();
    look('2', '2026-05-15', 9, 3);
    story.threeWaySplit('2026-05-16', 'Mill', '2', '21', '22', 'Rowan');
    const two = project(story.journal()).colonies.get(story.colony('2'));
    expect(two && swarmSigns(two, ON)).toBeUndefined();
  });

  it('leaves out colonies in which no queen lays, and names them apart', () => {
    const { story } = yard();
    story.threeWaySplit('2026-05-16', 'Mill', '2', '21', '22', 'Rowan');
    expect(order(story)).toContain('21');
    expect(order(story)).not.toContain('22');
    expect(notNow(project(story.journal()), ON).map(({ label }) => label)).toEqual(['2', '22']);
  });
});
