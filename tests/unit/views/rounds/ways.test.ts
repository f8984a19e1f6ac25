import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { rounds, yearSettings } from '../../../../src/registry/rounds.ts';
import { DEFAULT_SETTINGS } from '../../../../src/store/settings.ts';
import { giversTo, waysOf } from '../../../../views/rounds/ways.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** A yard with a colony split in three and a neighbour; no cells were found in Three on 16 May. */
function noCells() {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  const none = { openCells: 0, cappedCells: 0, emergedCells: 0 };
  story.write({ kind: 'inspection', day: rough('2026-05-16'), colony: story.colony('Three'), ...none });
  return story;
}

function roundsOn(story: Story, on: string) {
  const registry = project(story.journal());
  const year = yearSettings(DEFAULT_SETTINGS.yearSpans, 30, day(on));
  const all = rounds(registry, { on: day(on), horizonDays: 21, year }).flatMap(({ colonies }) => colonies);
  const tasksOf = (label: string) => all.find(({ colony }) => colony === story.colony(label))?.tasks ?? [];
  return { registry, tasksOf };
}

describe('what helps a colony without a queen to come', () => {
  it('leads each to where it is written down, joining last', () => {
    const { tasksOf } = roundsOn(noCells(), '2026-05-16');
    const help = tasksOf('Three').find(({ code }) => code === 'help-queenless');
    expect(help && waysOf(help).map(({ name, does }) => [name, does.is])).toEqual([
      ['Give a frame with eggs and young larvae', 'carry'],
      ['Give ripe queen cells', 'carry'],
      ['Give a queen', 'page'],
      ['Join with a neighbour', 'join'],
    ]);
  });

  it('is not pressed on a keeper who has yet to look', () => {
    const { tasksOf } = roundsOn(noCells(), '2026-05-16');
    const look = tasksOf('One').find(({ code }) => code === 'look-for-cells');
    expect(look && waysOf(look)).toEqual([]);
  });

  it('takes eggs from where a queen lays, and cells from where one is raised', () => {
    const story = noCells();
    const { registry } = roundsOn(story, '2026-05-16');
    const three = registry.colonies.get(story.colony('Three'));
    const labels = (frame: 'eggs' | 'cells') =>
      three && giversTo(registry, three, frame, day('2026-05-16')).map(({ label }) => label);
    expect(labels('eggs')).toEqual(['Nucleus', 'Two']);
    expect(labels('cells')).toEqual(['One']);
  });
});

describe('the rounds of a colony that was divided', () => {
  it('count the day of the split as a look for swarm cells', () => {
    const check = roundsOn(noCells(), '2026-05-16')
      .tasksOf('Nucleus')
      .find(({ code }) => code === 'swarm-check');
    expect(check && [check.from, check.overdue]).toEqual([Date.UTC(2026, 4, 17) / 86_400_000, false]);
  });

  it('no longer ask for the strength it came out of winter with', () => {
    const { tasksOf } = roundsOn(noCells(), '2026-05-16');
    expect(tasksOf('One').map(({ code }) => code)).not.toContain('spring-strength');
    expect(tasksOf('Two').map(({ code }) => code)).toContain('spring-strength');
  });

  it('no longer ask for cells once eggs can be looked for', () => {
    const { tasksOf } = roundsOn(noCells(), '2026-06-05');
    expect(tasksOf('One').map(({ code }) => code)).toEqual(expect.arrayContaining(['look-for-eggs']));
    expect(tasksOf('One').map(({ code }) => code)).not.toContain('look-for-cells');
  });
});
