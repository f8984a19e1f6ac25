import { describe, expect, it } from 'vitest';
import {
  calendarEvents,
  inferQueenCalendar,
  type Observation,
  tasksFor,
} from '../../../../graph/calendar/index.ts';

/** Day of the split. */
const DAY = 20_574;

function events(observations: readonly Observation[], on: number) {
  const making = { kind: 'made-queenless', day: DAY } as const;
  const calendar = inferQueenCalendar({ making, observations, on });
  return calendarEvents(tasksFor({ colony: 'c7', key: 'split-3', calendar }, on, 60), {
    nameOf: () => 'Nucleus 7',
    on,
  });
}

describe('tasks as calendar events', () => {
  it('carry the colony, the task, its first and last day and its text', () => {
    const [first] = events([], DAY);
    expect(first).toMatchObject({ uid: 'c7:split-3:look-for-cells', day: DAY + 5, lastDay: DAY + 6 });
    expect(first?.title).toBe('Nucleus 7: Look for queen cells');
    expect(first?.description).toContain('Of use until');
  });

  it('keep their uids when a later look moves their days, so that a second export updates the first', () => {
    const late = { day: DAY + 8, openCells: true, cappedCells: false, emergedCells: false };
    const before = new Map(events([], DAY).map(({ uid, day }) => [uid, day]));
    const after = events([late], DAY + 8);
    const moved = after.filter(({ uid, day }) => before.has(uid) && before.get(uid) !== day);
    expect(moved.map(({ uid }) => uid)).toEqual(['c7:split-3:leave-closed', 'c7:split-3:look-for-eggs']);
  });

  it('are unique by uid and in order of day', () => {
    const list = events([], DAY);
    expect(new Set(list.map(({ uid }) => uid)).size).toBe(list.length);
    expect(list.map(({ day }) => day)).toEqual(list.map(({ day }) => day).sort((a, b) => a - b));
  });

  it('stand up to the day of writing when overdue, so that they are not lost in the past', () => {
    const eggs = (on: number) => events([], on).find(({ uid }) => uid.endsWith('look-for-eggs'));
    const first = eggs(DAY)?.day;
    expect(eggs(DAY + 60)).toMatchObject({ day: first, lastDay: DAY + 60 });
  });
});
