import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../../src/journal/day.ts';
import type { Draft } from '../../../../src/journal/entry.ts';
import { project } from '../../../../src/registry/project.ts';
import { wintersEntered } from '../../../../src/registry/winters-of-queen.ts';
import { livesOf } from '../../../../views/lines/lives.ts';
import { lineSummaries, winterCounts } from '../../../../views/lines/summaries.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/**
 * Alder (2023, H1) is split in May 2024: she goes to N1, H1 and N2 raise daughters. The one in N2 comes to nothing.
 * N1 dies in the winter 2024/25, found on 20 March. Birch (H2) founds a second line and is given away in 2025.
 */
function yard(): Story {
  const story = new Story();
  story.begin('Home', '2023-04-01', { H1: 'Alder', H2: 'Birch' });
  story.threeWaySplit('2024-05-05', 'Home', 'H1', 'N1', 'N2', 'Alder');
  story.write({
    kind: 'queen-confirmed',
    day: rough('2024-06-10'),
    queen: story.queen('H1 2024'),
    colony: story.colony('H1'),
    seen: 'worker-brood',
  });
  story.write({
    kind: 'queen-lost',
    day: rough('2024-06-12'),
    queen: story.queen('N2 2024'),
    cause: 'failed-to-mate',
  });
  story.write({
    kind: 'winter-outcome',
    day: rough('2025-03-20'),
    colony: story.colony('N1'),
    winter: 2025,
    alive: false,
    cause: 'winter',
  });
  story.write(cameThrough(story, 'H1', 2025), cameThrough(story, 'H1', 2026));
  story.write({
    kind: 'queen-lost',
    day: rough('2025-05-20'),
    queen: story.queen('Birch'),
    cause: 'given-away',
    to: 'a neighbour',
  });
  return story;
}

function cameThrough(story: Story, label: string, winter: number): Draft {
  return {
    kind: 'winter-outcome',
    day: rough(`${winter}-04-02`),
    colony: story.colony(label),
    winter,
    alive: true,
  };
}

const ON = day('2026-06-11');

describe('the lives of the queens', () => {
  const story = yard();
  const registry = project(story.journal());
  const lives = livesOf(registry, ON);
  const life = (name: string) => lives.find(({ id }) => id === story.queen(name))!;

  it('put dams before their daughters', () => {
    const place = new Map(lives.map(({ id }, index) => [id, index]));
    for (const { id, dam } of lives) if (dam) expect(place.get(dam)!).toBeLessThan(place.get(id)!);
  });

  it('begin on the day of the split that made her, and lay from the day she was confirmed', () => {
    const daughter = life('H1 2024');
    expect(daughter.start).toBe(dayNumber(day('2024-05-05')));
    expect(daughter.laying).toBe(dayNumber(day('2024-06-10')));
    expect(daughter.startSure).toBe(true);
  });

  it('tell what became of each', () => {
    expect(life('H1 2024').fate).toBe('living');
    expect(life('N2 2024').fate).toBe('failed');
    expect(life('Alder').fate).toBe('died');
    expect(life('Birch').fate).toBe('left');
  });

  it('do not count a winter as crossed in which the colony died, though it was found dead in March', () => {
    expect(life('Alder').winters).toEqual([2024]);
    expect(life('H1 2024').winters).toEqual([2025, 2026]);
  });

  it('belong to the line of their founder and know how many living hang on them', () => {
    expect(life('H1 2024').line).toBe(story.queen('Alder'));
    expect(life('Alder').livingBelow).toBe(1);
    expect(life('Birch').livingBelow).toBe(0);
  });

  it('say where a living queen is, by the label of the box and not by a name', () => {
    expect(life('H1 2024').colony?.label).toBe('H1');
    expect(life('H1 2024').named).toBe(false);
    expect(life('H1 2024').title).toContain('unnamed');
  });

  it('are not sure of a first day that is known to the year only', () => {
    const rougher = new Story();
    rougher.begin('Home', '2024-04-01', { H1: 'Alder' });
    rougher.write({
      kind: 'queen-entered',
      day: rough('2024-04-02'),
      queen: rougher.queen('Elm'),
      name: 'Elm',
      born: rough('2023'),
    });
    const elm = livesOf(project(rougher.journal()), ON).find(({ id }) => id === rougher.queen('Elm'))!;
    expect(elm.startSure).toBe(false);
    expect(elm.start).toBeGreaterThanOrEqual(dayNumber(day('2023-01-01')));
    expect(elm.start).toBeLessThanOrEqual(dayNumber(day('2023-12-31')));
  });

  it('weigh a dam line by the probability of each step', () => {
    const doubtful = yard();
    doubtful.write({
      kind: 'parentage-stated',
      day: rough('2025-06-01'),
      queen: doubtful.queen('H1 2024'),
      parentage: {
        dams: [
          { queen: doubtful.queen('Alder'), probability: 0.8 },
          { queen: doubtful.queen('Birch'), probability: 0.2 },
        ],
        evidence: 'old-record',
      },
    });
    const after = livesOf(project(doubtful.journal()), ON);
    const daughter = after.find(({ id }) => id === doubtful.queen('H1 2024'))!;
    expect(daughter.certainty).toBe('probable');
    expect(daughter.dam).toBe(doubtful.queen('Alder'));
    expect(daughter.lineProbability).toBeCloseTo(0.8, 12);
  });

  it('stand also where the records make a queen her own ancestor', () => {
    const circle = yard();
    circle.write({
      kind: 'parentage-stated',
      day: rough('2025-06-01'),
      queen: circle.queen('Alder'),
      parentage: { dams: [{ queen: circle.queen('H1 2024'), probability: 1 }], evidence: 'old-record' },
    });
    const drawn = livesOf(project(circle.journal()), ON);
    expect(drawn).toHaveLength(lives.length);
  });
});

describe('the lines at a glance', () => {
  const story = yard();
  const registry = project(story.journal());
  const lives = livesOf(registry, ON);
  const [alder, birch] = lineSummaries(registry, lives, ON);

  it('tell on how many living queens a line hangs', () => {
    expect(alder).toMatchObject({ line: story.queen('Alder'), letter: 'A', living: 1, expected: 0 });
    expect(birch).toMatchObject({ line: story.queen('Birch'), letter: 'B', living: 0 });
  });

  it('say when a line ended, and not of one that is alive', () => {
    expect(birch?.ended).toBe(dayNumber(day('2025-05-20')));
    expect(alder?.ended).toBeUndefined();
  });

  it('count a queen into each winter she headed a colony at the start of, and out of those she crossed', () => {
    expect(alder?.winters).toEqual([
      { spring: 2024, wentIn: 1, cameOut: 1 },
      { spring: 2025, wentIn: 2, cameOut: 1 },
      { spring: 2026, wentIn: 1, cameOut: 1 },
    ]);
  });

  it('leave out a winter that is not over', () => {
    const queen = registry.queens.get(story.queen('H1 2024'))!;
    expect(wintersEntered(queen, day('2026-01-20'))).toEqual([2025]);
    expect(winterCounts(registry, lives, day('2026-01-20')).map(({ spring }) => spring)).toEqual([
      2024, 2025,
    ]);
  });
});

describe('a queen of whom only years are known', () => {
  const story = new Story();
  story.begin('Home', '2022-04-01', { H1: 'Alder' });
  story.write({
    kind: 'colony-started',
    day: rough('2024'),
    colony: story.colony('H2'),
    yard: story.yard('Home'),
    label: 'H2',
    how: 'already-here',
  });
  story.write({
    kind: 'queen-entered',
    day: rough('2024'),
    queen: story.queen('Cedar'),
    colony: story.colony('H2'),
    name: 'Cedar',
    born: rough('2024'),
  });
  story.write({
    kind: 'winter-outcome',
    day: rough('2025'),
    colony: story.colony('H2'),
    winter: 2025,
    alive: false,
    cause: 'winter',
  });
  const life = livesOf(project(story.journal()), ON).find(({ id }) => id === story.queen('Cedar'))!;

  it('begins in the middle of her year, not on New Year, and is marked as not sure', () => {
    expect(life.start).toBe(dayNumber(day('2024-07-02')));
    expect(life.startSure).toBe(false);
  });

  it('ends with the winter in which her colony died, not half a year later', () => {
    expect(life.end).toBe(dayNumber(day('2025-03-01')));
  });
});
