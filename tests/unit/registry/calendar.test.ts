import { describe, expect, it } from 'vitest';
import { project } from '../../../src/registry/project.ts';
import { colonyCalendar } from '../../../src/registry/rounds.ts';
import { day, rough, Story } from '../../helpers/story.ts';

function calendarOn(story: Story, label: string, on: string) {
  const registry = project(story.journal());
  const colony = registry.colonies.get(story.colony(label));
  if (!colony) throw new Error(`No colony ${label}.`);
  return colonyCalendar(registry, colony, day(on))?.calendar;
}

describe('the calendar of a colony', () => {
  it('runs from a split until all workers are the new queen’s', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    expect(calendarOn(story, 'Three', '2026-05-20')?.state.code).toMatch(/cells/);
    story.write({
      kind: 'queen-confirmed',
      day: rough('2026-06-08'),
      queen: story.queen('Three 2026'),
      colony: story.colony('Three'),
      seen: 'eggs',
    });
    expect(calendarOn(story, 'Three', '2026-06-20')?.state.code).toBe('laying');
    expect(calendarOn(story, 'Three', '2026-08-20')).toBeUndefined();
    expect(calendarOn(story, 'Nucleus', '2026-05-20')).toBeUndefined();
  });

  it('takes the old queen’s eggs and the old queen herself for no riddle beside supersedure cells', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write(
      {
        kind: 'queen-expected',
        day: rough('2026-05-10'),
        queen: story.queen('daughter'),
        colony: story.colony('One'),
        reason: 'supersedure',
      },
      {
        kind: 'inspection',
        day: rough('2026-05-16'),
        colony: story.colony('One'),
        queenSeen: 'seen-marked',
        eggs: true,
      },
    );
    const calendar = calendarOn(story, 'One', '2026-05-17');
    expect(calendar?.contradictions).toEqual([]);
    expect(calendar?.state.code).not.toBe('laying');
  });

  it('begins anew when a queen is lost and eggs are given', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Rowan' });
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-10'), queen: story.queen('Alder'), cause: 'killed' },
      {
        kind: 'eggs-given',
        day: rough('2026-05-24'),
        to: story.colony('One'),
        from: story.colony('Two'),
        expected: story.queen('of Rowan'),
        parentage: story.of('Rowan'),
      },
    );
    expect(calendarOn(story, 'One', '2026-05-25')?.makings.map(({ kind }) => kind)).toEqual([
      'made-queenless',
      'brood-given',
    ]);
  });

  it('forgets what was awaited once a part with a laying queen is joined to it, and looks whether she lays on', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    story.write({
      kind: 'colonies-joined',
      day: rough('2026-06-25'),
      colony: story.colony('Nucleus'),
      into: story.colony('One'),
      queenKept: 'of-the-joined',
    });
    const calendar = calendarOn(story, 'One', '2026-06-26');
    expect(calendar?.makings.map(({ kind }) => kind)).toEqual(['mated-queen-given']);
    expect(calendar?.state.code).toBe('introduced');
    expect(calendarOn(story, 'One', '2026-06-24')?.state.code).toBe('eggs-due');
  });
});
