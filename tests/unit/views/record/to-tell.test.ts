import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { toTell } from '../../../../views/record/winter/to-tell.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const story = new Story();
story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch', Three: 'Cedar' });
story.write({
  kind: 'winter-outcome',
  day: rough('2026-03-20'),
  colony: story.colony('One'),
  winter: 2026,
  alive: true,
});
story.write({
  kind: 'colony-moved',
  day: rough('2026-03-25'),
  colony: story.colony('Two'),
  yard: story.yard('Mill'),
});
story.write({
  kind: 'colony-ended',
  day: rough('2026-04-02'),
  colony: story.colony('Two'),
  cause: 'queenless',
});
story.write({
  kind: 'winter-outcome',
  day: rough('2026-04-10'),
  colony: story.colony('Three'),
  winter: 2026,
  alive: true,
});

function walkOn(on: string) {
  const whole = project(story.journal());
  const then = project(story.journal(), { until: day(on) });
  const yard = whole.yards.get(story.yard('Mill'))!;
  const { waiting, toldLater } = toTell(then, whole, { yard, winter: 2026, on: day(on) });
  const labels = (list: typeof waiting) => list.map(({ label }) => label);
  return { waiting: labels(waiting), toldLater: labels(toldLater) };
}

describe('the winter walk of a day looked back at', () => {
  it('asks of the colonies that were alive and not told of on that day', () => {
    expect(walkOn('2026-03-22').waiting).toEqual(['Two']);
    expect(walkOn('2026-04-20').waiting).toEqual([]);
  });

  it('does not ask again of one who is told of on a later day, and says that there is one', () => {
    expect(walkOn('2026-03-22').toldLater).toEqual(['Three']);
    expect(walkOn('2026-03-10').toldLater).toEqual(['One', 'Three']);
    expect(walkOn('2026-04-20').toldLater).toEqual([]);
  });
});
