import { describe, expect, it } from 'vitest';
import {
  answersFor,
  type FindingCode,
  inferQueenCalendar,
  type Making,
  type Observation,
  type Task,
  type TaskCode,
  tasksFor,
} from '../../../../graph/calendar/index.ts';

/** Day of the split. */
const DAY = 20_600;

/** One part of a split, followed only by taps on the findings that its tasks offer. */
function part(name: string, first: Making) {
  const makings: Making[] = [first];
  const seen: Observation[] = [];
  const calendar = (on: number) => inferQueenCalendar({ making: makings, observations: seen, on: DAY + on });
  const tasks = (on: number): readonly Task[] =>
    tasksFor({ colony: name, key: `making-${makings.length}`, calendar: calendar(on) }, DAY + on, 30);
  return {
    calendar,
    codes: (on: number) => tasks(on).map(({ code }) => code),
    give: (making: Making) => makings.push(making),
    tap: (on: number, code: TaskCode, finding: FindingCode) => {
      const task = tasks(on).find((one) => one.code === code);
      const answer = task && answersFor(task).find((one) => one.finding === finding);
      if (!answer) throw new Error(`${name}: on day ${on} ${code} does not offer ${finding}.`);
      seen.push({ day: DAY + on, ...answer.seen });
    },
  };
}

describe('a colony split three ways and followed by taps', () => {
  it('comes right in one part', () => {
    const stand = part('stand', { kind: 'made-queenless', day: DAY, left: 'both' });
    expect(stand.codes(0)).toEqual(['look-for-cells', 'leave-closed', 'look-for-eggs']);
    stand.tap(6, 'look-for-cells', 'cells-capped');
    expect(stand.calendar(6).state.code).toBe('capped-cells');
    expect(stand.codes(7)).toEqual(['leave-closed', 'look-for-eggs']);
    stand.tap(26, 'look-for-eggs', 'no-eggs');
    expect(stand.calendar(26).state).toMatchObject({ code: 'eggs-due' });
    stand.tap(32, 'look-for-eggs', 'eggs');
    expect(stand.calendar(32).state).toEqual({ code: 'laying', sure: true });
    stand.tap(42, 'look-for-worker-brood', 'worker-brood');
    expect(stand.codes(42)).toEqual(['mark-queen', 'her-records-begin']);
  });

  it('fails in another, is given young brood, and comes right at the second attempt', () => {
    const second = part('second', { kind: 'made-queenless', day: DAY, left: 'both' });
    second.tap(6, 'look-for-cells', 'no-cells');
    expect(second.codes(6)).toEqual(['help-queenless']);
    second.give({ kind: 'brood-given', day: DAY + 7 });
    expect(second.codes(7)).toContain('look-for-cells');
    second.tap(13, 'look-for-cells', 'cells-capped');
    const { scenarios, contradictions } = second.calendar(13);
    expect(contradictions).toEqual([]);
    expect(scenarios[0]?.making).toBe(1);
    expect(scenarios[0]?.windows.emerged?.earliest).toBe(DAY + 7 + 8);
    second.tap(34, 'look-for-eggs', 'queen-laying');
    expect(second.calendar(34).state.code).toBe('laying');
  });

  it('loses its virgin in the same part otherwise, and says so on the give-up day', () => {
    const lost = part('lost', { kind: 'made-queenless', day: DAY, left: 'both' });
    lost.tap(6, 'look-for-cells', 'cells-capped');
    lost.tap(27, 'look-for-eggs', 'no-eggs');
    lost.tap(44, 'look-for-eggs', 'no-eggs');
    expect(lost.calendar(44).scenarios[0]?.code).toBe('lost');
    expect(lost.codes(44)).toEqual(['help-queenless']);
  });

  it('finds weeks later that the new queen is being replaced', () => {
    const third = part('third', { kind: 'cells-given', day: DAY + 5, age: 'capped' });
    third.tap(24, 'look-for-eggs', 'eggs');
    third.tap(36, 'look-for-worker-brood', 'cells-capped');
    const { scenarios, windows, state } = third.calendar(36);
    expect(scenarios[0]?.code).toBe('replaced-since');
    expect(state.code).toBe('capped-cells');
    expect(windows.emerged?.latest).toBe(DAY + 36 + 9);
    expect(third.codes(36)).toContain('leave-closed');
  });
});
