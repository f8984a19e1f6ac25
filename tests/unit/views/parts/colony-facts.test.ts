import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { coloniesAt } from '../../../../src/registry/queries.ts';
import {
  awaitingOutcome,
  byRoof,
  lastObserved,
  lastStrength,
  yardsInOrder,
} from '../../../../views/parts/colony-facts.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Two yards; at the first a divided box (B north, A south), a box on stand 10 and one on stand 9. */
function twoYards() {
  const story = new Story();
  const on = rough('2025-04-01');
  const home = story.yard('Home');
  story.write({ kind: 'yard-opened', day: on, yard: home, name: 'Home', roundOrder: 2 });
  story.write({ kind: 'yard-opened', day: on, yard: story.yard('Away'), name: 'Away', roundOrder: 1 });
  const start = (label: string, place: object) =>
    story.write({
      kind: 'colony-started',
      day: on,
      colony: story.colony(label),
      yard: home,
      label,
      how: 'already-here',
      place,
    });
  start('A', { stand: '1', entrance: 'S' });
  start('B', { stand: '1', entrance: 'N', underRoofWith: story.colony('A') });
  start('ten', { stand: '10' });
  start('nine', { stand: '9' });
  return { story, home };
}

const on = day('2026-03-20');

describe('a yard walked along its stands', () => {
  it('goes by the number of the stand and not by its spelling', () => {
    const { story, home } = twoYards();
    const labels = byRoof(coloniesAt(project(story.journal()), home, on), on).map((roof) =>
      roof.map(({ label }) => label),
    );
    expect(labels).toEqual([['B', 'A'], ['nine'], ['ten']]);
  });

  it('comes to the yards in the order of driving', () => {
    expect(yardsInOrder(project(twoYards().story.journal())).map(({ name }) => name)).toEqual([
      'Away',
      'Home',
    ]);
  });
});

describe('what was last seen of a colony', () => {
  it('is the last value looked at, not the last look', () => {
    const { story } = twoYards();
    const colony = story.colony('A');
    story.write({ kind: 'inspection', day: rough('2025-05-01'), colony, framesOfBees: 7, gentle: 3 });
    story.write({ kind: 'inspection', day: rough('2025-05-09'), colony, framesOfBees: 8 });
    const record = project(story.journal()).colonies.get(colony)!;
    expect(lastObserved(record, on, 'gentle')).toEqual({ value: 3, day: '2025-05-01' });
    expect(lastStrength(record, on)).toEqual({ frames: 8, day: '2025-05-09' });
  });

  it('is said to be older than a split that came after it', () => {
    const { story } = twoYards();
    const colony = story.colony('A');
    story.write({ kind: 'inspection', day: rough('2025-05-09'), colony, framesOfBees: 8 });
    story.write({
      kind: 'split',
      day: rough('2025-05-20'),
      source: colony,
      parts: [{ colony, queen: { how: 'none' } }],
    });
    const record = project(story.journal()).colonies.get(colony)!;
    expect(lastStrength(record, on)).toEqual({ frames: 8, day: '2025-05-09', divided: true });
    expect(lastStrength(record, day('2025-05-19'))).toEqual({ frames: 8, day: '2025-05-09' });
  });

  it('does not look past the day shown', () => {
    const { story } = twoYards();
    const colony = story.colony('A');
    story.write({ kind: 'inspection', day: rough('2025-05-09'), colony, framesOfBees: 8 });
    const record = project(story.journal()).colonies.get(colony)!;
    expect(lastStrength(record, day('2025-05-08'))).toBeUndefined();
  });
});

describe('the winter walk', () => {
  it('asks of each colony that stood there in winter until its outcome is written down', () => {
    const { story, home } = twoYards();
    const yardOf = () => project(story.journal()).yards.get(home)!;
    const waiting = () =>
      awaitingOutcome(project(story.journal()), yardOf(), 2026, on).map(({ label }) => label);
    expect(waiting().sort()).toEqual(['A', 'B', 'nine', 'ten']);
    const colony = story.colony('A');
    story.write({ kind: 'winter-outcome', day: rough('2026-03-20'), colony, winter: 2026, alive: true });
    expect(waiting().sort()).toEqual(['B', 'nine', 'ten']);
  });

  it('asks nothing before February', () => {
    const { story, home } = twoYards();
    const registry = project(story.journal());
    expect(awaitingOutcome(registry, registry.yards.get(home)!, 2026, day('2026-01-31'))).toEqual([]);
  });
});
