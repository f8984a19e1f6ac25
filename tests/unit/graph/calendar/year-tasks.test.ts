import { describe, expect, it } from 'vitest';
import { type YearSettings, type YearState, yearTasksFor } from '../../../../graph/calendar/year-tasks.ts';

/** First day of an invented year. */
const YEAR = 20_000;
const settings: YearSettings = {
  swarmSeason: { from: YEAR + 110, to: YEAR + 190 },
  miteSeason: { from: YEAR + 90, to: YEAR + 280, everyDays: 30 },
  autumnPreparation: { from: YEAR + 230, to: YEAR + 270 },
  winterOutcome: { from: YEAR + 60, to: YEAR + 100 },
  springStrength: { from: YEAR + 80, to: YEAR + 115 },
};
const colony: YearState = { colony: 'colony-1', queen: 'laying' };
const due = (state: Partial<YearState>, on: number, horizon = 0) =>
  yearTasksFor({ ...colony, ...state }, settings, YEAR + on, horizon);
const codes = (...input: Parameters<typeof due>) => due(...input).map(({ code }) => code);

describe('the tasks of the year', () => {
  it('ask once for the winter outcome, and go on asking until it is recorded', () => {
    expect(codes({}, 60)).toEqual(['winter-outcome']);
    expect(due({}, 105).find(({ code }) => code === 'winter-outcome')?.overdue).toBe(true);
    expect(codes({ winterRecorded: YEAR + 70 }, 75)).toEqual([]);
  });

  it('do not go on asking whether a colony lives that was looked into since, once the days for it are over', () => {
    expect(codes({ lastLook: YEAR + 95 }, 98)).toContain('winter-outcome');
    expect(codes({ lastLook: YEAR + 95 }, 105)).not.toContain('winter-outcome');
    expect(codes({ lastLook: YEAR + 40 }, 105)).toContain('winter-outcome');
  });

  it('are not answered by what was recorded a year before', () => {
    expect(codes({ winterRecorded: YEAR - 290 }, 60)).toEqual(['winter-outcome']);
  });

  it('check for swarming every 9 days, every 7 where there were signs', () => {
    const done = { winterRecorded: YEAR + 70, springRecorded: YEAR + 90, lastMiteCount: YEAR + 120 };
    const calm = due({ ...done, lastLook: YEAR + 120 }, 120, 10);
    expect([calm[0]?.code, calm[0]?.from, calm[0]?.to]).toEqual(['swarm-check', YEAR + 127, YEAR + 129]);
    const signs = due({ ...done, lastLook: YEAR + 120, swarmSigns: true }, 120, 10);
    expect([signs[0]?.to, signs[0]?.lastUseful]).toEqual([YEAR + 127, YEAR + 127]);
  });

  it('leave a colony that awaits a queen to its calendar, and stop with the season', () => {
    const done = { winterRecorded: YEAR + 70, springRecorded: YEAR + 90, lastMiteCount: YEAR + 120 };
    expect(codes({ ...done, queen: 'awaiting', lastLook: YEAR + 110 }, 130)).toEqual([]);
    expect(codes({ ...done, lastLook: YEAR + 188, lastMiteCount: YEAR + 188 }, 200)).toEqual([]);
  });

  it('drop what has become of no use: a swarm check after the season, the strength of spring in summer', () => {
    const done = { winterRecorded: YEAR + 70, lastMiteCount: YEAR + 200 };
    expect(codes(done, 136)).toContain('spring-strength');
    expect(codes(done, 137)).not.toContain('spring-strength');
    expect(codes(done, 190)).toContain('swarm-check');
    expect(codes(done, 191)).toEqual([]);
  });

  it('make a mite count due after the interval that the keeper set', () => {
    const done = { winterRecorded: YEAR + 70, springRecorded: YEAR + 90, lastLook: YEAR + 125 };
    const [count] = due({ ...done, lastMiteCount: YEAR + 100 }, 125, 5).filter(
      ({ code }) => code === 'mite-count',
    );
    expect(count?.from).toBe(YEAR + 130);
  });

  it('give each round of a repeated task a uid of its own, and the same one as long as it stands', () => {
    const uid = (lastMiteCount: number, on: number) =>
      due({ lastMiteCount: YEAR + lastMiteCount }, on, 60).find(({ code }) => code === 'mite-count')?.uid;
    expect(uid(100, 110)).toBe(uid(100, 150));
    expect(uid(130, 150)).not.toBe(uid(100, 150));
  });

  it('end a treatment on the planned day, and name the day from which honey may be taken', () => {
    const treatment = { id: 't1', plannedEnd: YEAR + 240, ended: false, honeyFrom: YEAR + 245 };
    const state = { autumnPrepared: YEAR + 231, lastMiteCount: YEAR + 235, treatments: [treatment] };
    expect(
      codes(
        { ...state, winterRecorded: YEAR + 70, springRecorded: YEAR + 90, lastLook: YEAR + 189 },
        238,
        10,
      ),
    ).toEqual(['end-treatment', 'honey-wait']);
    const over = { ...state, treatments: [{ ...treatment, ended: true }] };
    expect(
      codes({ ...over, winterRecorded: YEAR + 70, springRecorded: YEAR + 90, lastLook: YEAR + 189 }, 250),
    ).toEqual([]);
  });

  it('are none where the keeper has set no spans', () => {
    expect(yearTasksFor(colony, {}, YEAR + 120, 365)).toEqual([]);
  });
});
