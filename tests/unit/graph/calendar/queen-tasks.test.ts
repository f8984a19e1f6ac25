import { describe, expect, it } from 'vitest';
import { inferQueenCalendar } from '../../../../graph/calendar/infer.ts';
import type { Making } from '../../../../graph/calendar/making.ts';
import type { Observation } from '../../../../graph/calendar/observation.ts';
import { tasksFor } from '../../../../graph/calendar/queen-tasks.ts';
import { answersFor, type Task } from '../../../../graph/calendar/task.ts';

/** The day of the split; all days below count from it. */
const DAY = 20_000;
const queenless: Making = { kind: 'made-queenless', day: DAY };

function tasks(observations: readonly Observation[], on: number, horizon = 60, making: Making = queenless) {
  const calendar = inferQueenCalendar({ making, observations, on: DAY + on });
  return tasksFor({ colony: 'colony-1', key: 'split-1', calendar }, DAY + on, horizon);
}

const seen = (later: number, what: Omit<Observation, 'day'>): Observation => ({ day: DAY + later, ...what });
const codes = (list: readonly Task[]) => list.map(({ code }) => code);
/** On day 8 cells are open, none is capped and none has emerged. */
const stillOpen = seen(8, { openCells: true, cappedCells: false, emergedCells: false });
const only = (list: readonly Task[], code: Task['code']) => list.find((task) => task.code === code)!;

describe('the tasks after a split', () => {
  it('are: look for cells by day 6, then leave closed, then look for eggs until the give-up day', () => {
    const list = tasks([], 0);
    expect(codes(list)).toEqual(['look-for-cells', 'leave-closed', 'look-for-eggs']);
    expect([list[0]?.from, list[0]?.to]).toEqual([DAY + 5, DAY + 6]);
    expect([list[1]?.from, list[1]?.to]).toEqual([DAY + 7, DAY + 24]);
    expect([list[2]?.from, list[2]?.lastUseful]).toEqual([DAY + 25, DAY + 45]);
  });

  it('never ask for a look while the hive is to be left closed', () => {
    const list = tasks([], 0);
    const closed = only(list, 'leave-closed');
    const looks = list.filter(({ kind }) => kind === 'look');
    expect(looks.every(({ from, to }) => to < closed.from || from > closed.to)).toBe(true);
  });

  it('appear only when they begin within the horizon', () => {
    expect(codes(tasks([], 0, 3))).toEqual([]);
    expect(codes(tasks([], 0, 5))).toEqual(['look-for-cells']);
  });

  it('stand as overdue until they are answered', () => {
    const cells = only(tasks([], 12), 'look-for-cells');
    expect(cells.overdue).toBe(true);
    expect(only(tasks([], 60), 'look-for-eggs').overdue).toBe(true);
    expect(codes(tasks([seen(6, { cappedCells: true })], 12))).not.toContain('look-for-cells');
  });

  it('keep their uid however the window moves', () => {
    const before = only(tasks([], 0), 'look-for-eggs');
    const later = only(tasks([stillOpen], 9), 'look-for-eggs');
    expect(later.uid).toBe(before.uid);
    expect(later.from).not.toBe(before.from);
  });

  it('move later when the cells were seen to be late', () => {
    const late = tasks([stillOpen], 9);
    expect(only(late, 'leave-closed').from).toBe(DAY + 14);
  });

  it('ask for a second look six days after eggs were looked for in vain', () => {
    const again = only(tasks([seen(26, { eggs: false })], 26), 'look-for-eggs');
    expect(again.from).toBe(DAY + 32);
    expect(again.overdue).toBe(false);
  });

  it('turn to her brood and her mark once she lays', () => {
    const list = tasks([seen(27, { eggs: true })], 28);
    expect(codes(list)).toEqual(['look-for-worker-brood', 'mark-queen', 'her-records-begin']);
    const shown = tasks([seen(27, { eggs: true }), seen(39, { cappedWorkerBrood: true })], 40);
    expect(codes(shown)).toEqual(['mark-queen', 'her-records-begin']);
  });
});

describe('the tasks when something is wrong', () => {
  it('offer young brood first where no cells hang on day 6, while it is of use', () => {
    const list = tasks([seen(6, { openCells: false, cappedCells: false })], 6);
    expect(codes(list)).toEqual(['help-queenless']);
    expect(list[0]?.fallbacks[0]).toBe('give-young-brood');
    expect(list[0]?.lastUseful).toBe(DAY + 25);
  });

  it('call for help when no eggs have come by the give-up day', () => {
    const list = tasks([seen(46, { eggs: false })], 46);
    expect(codes(list)).toEqual(['help-queenless']);
  });

  it('ask to find the queen when eggs came too early', () => {
    const list = tasks([seen(7, { eggs: true })], 7);
    expect(codes(list)).toContain('look-for-queen');
    expect(codes(tasks([seen(7, { eggs: true }), seen(8, { queen: 'old' })], 8))).not.toContain(
      'look-for-queen',
    );
  });

  it('name laying workers and a drone layer by their own remedies', () => {
    const workers = tasks([seen(30, { severalEggsInCells: true, droneBroodOnly: true })], 30);
    expect(only(workers, 'end-laying-workers').fallbacks).toEqual(['shake-out', 'join']);
    const drones = tasks([seen(35, { droneBroodOnly: true })], 35);
    expect(only(drones, 'replace-drone-layer').fallbacks[0]).toBe('find-and-remove-her');
  });
});

describe('the tasks after a queen, cells or grafts were given', () => {
  it('leave a caged queen alone, then look whether she is free, then for eggs', () => {
    const list = tasks([], 0, 30, { kind: 'mated-queen-given', day: DAY, caged: true });
    expect(codes(list)).toEqual(['leave-closed', 'look-for-release', 'look-for-eggs']);
  });

  it('ask for taken grafts in the first days', () => {
    const list = tasks([], 0, 10, { kind: 'graft', day: DAY, larvaAgeFrom: 0, larvaAgeTo: 1 });
    expect(codes(list)).toEqual(['look-for-taken-grafts', 'look-for-cells', 'leave-closed']);
  });

  it('do not look for cells where cells were given', () => {
    const list = tasks([], 0, 60, { kind: 'cells-given', day: DAY, age: 'capped' });
    expect(codes(list)).toEqual(['leave-closed', 'look-for-eggs']);
  });
});

describe('the answers offered for a task', () => {
  it('fill the fields of an observation, so that one tap moves the calendar', () => {
    const task = only(tasks([], 25), 'look-for-eggs');
    const eggs = answersFor(task).find(({ finding }) => finding === 'eggs')!;
    expect(eggs).toEqual({ finding: 'eggs', seen: { eggs: true }, records: 'observation' });
    const after = tasks([{ day: DAY + 26, ...eggs.seen }], 26);
    expect(codes(after)).not.toContain('look-for-eggs');
  });

  it('answer every look of the calendar: after any of them the task is gone, or later, or another comes up', () => {
    const on = 26;
    const task = only(tasks([], on), 'look-for-eggs');
    for (const { finding, seen: found, records } of answersFor(task)) {
      expect(records).toBe('observation');
      const then = tasks([{ day: DAY + on, ...found }], on);
      const same = then.find(({ uid }) => uid === task.uid);
      const moved = same === undefined || same.from > task.from;
      expect(moved, finding).toBe(true);
    }
  });

  it('ask for an entry of its own where nothing seen says it all', () => {
    const mark = only(tasks([seen(27, { eggs: true })], 40), 'mark-queen');
    expect(answersFor(mark)).toEqual([{ finding: 'done', seen: {}, records: 'entry' }]);
  });
});
