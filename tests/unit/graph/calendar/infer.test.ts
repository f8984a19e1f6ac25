import { describe, expect, it } from 'vitest';
import { inferQueenCalendar } from '../../../../graph/calendar/infer.ts';
import type { Making } from '../../../../graph/calendar/making.ts';
import type { Observation } from '../../../../graph/calendar/observation.ts';

/** Day on which the colony was made queenless; every other day below is counted from it. */
const DAY = 20_000;
const queenless: Making = { kind: 'made-queenless', day: DAY };

const seen = (later: number, what: Omit<Observation, 'day'>): Observation => ({ day: DAY + later, ...what });

function infer(making: Making | readonly Making[], observations: readonly Observation[], on = 100) {
  const calendar = inferQueenCalendar({ making, observations, on: DAY + on });
  const codes = calendar.scenarios.map(({ code }) => code);
  return { ...calendar, codes };
}

const days = (earliest: number, likely: number, latest: number) => ({
  earliest: DAY + earliest,
  likely: DAY + likely,
  latest: DAY + latest,
});

describe('the calendar of a colony made queenless', () => {
  it('spans every larva young enough and every egg, with the rules of development added', () => {
    const { windows, state, giveUp } = infer(queenless, [], 1);
    expect(windows.laid).toEqual(days(-7, -3, 0));
    expect(windows.capped).toEqual(days(1, 5, 9));
    expect(windows.emerged).toEqual(days(8, 13, 17));
    expect(windows.laying).toEqual(days(15, 25, 45));
    expect(giveUp).toBe(DAY + 45);
    expect(state).toEqual({ code: 'cells', sure: false });
  });

  it('moves every later window when the cells were still open on a day', () => {
    const { windows } = infer(queenless, [seen(6, { openCells: true, cappedCells: false })], 6);
    expect(windows.capped?.earliest).toBe(DAY + 6);
    expect(windows.emerged?.earliest).toBe(DAY + 13);
    expect(windows.laying?.earliest).toBe(DAY + 20);
  });

  it('knows that no capped cells late on means that she has emerged, not that she is still open', () => {
    const { windows } = infer(queenless, [seen(6, { cappedCells: true }), seen(14, { cappedCells: false })]);
    expect(windows.emerged?.latest).toBe(DAY + 14);
  });

  it('takes eggs of the first four days for those of the queen who left', () => {
    const { contradictions, evidence } = infer(queenless, [seen(4, { eggs: true })]);
    expect(contradictions).toEqual([]);
    expect(evidence.hersSince).toBeUndefined();
  });

  it('lets the old queen, and drone brood alone, be seen on the day of the work: it came before she was taken out', () => {
    const { contradictions, codes } = infer(queenless, [seen(0, { queen: 'old', droneBroodOnly: true })], 1);
    expect(contradictions).toEqual([]);
    expect(codes).toEqual(['as-recorded']);
  });

  it('is laying once eggs are seen in her time, and then has no give-up day', () => {
    const { state, evidence, giveUp, windows } = infer(queenless, [
      seen(24, { eggs: false }),
      seen(28, { eggs: true }),
    ]);
    expect(state).toEqual({ code: 'laying', sure: true });
    expect(evidence.hersSince).toBe(DAY + 28);
    expect(giveUp).toBeUndefined();
    expect([windows.laying?.earliest, windows.laying?.latest]).toEqual([DAY + 24, DAY + 28]);
  });

  it('remarks that no cells hang on day 6 and holds the colony queenless until some are seen', () => {
    const none = seen(6, { openCells: false, cappedCells: false });
    expect(infer(queenless, [none], 6)).toMatchObject({
      state: { code: 'queenless', sure: false },
      remarks: [{ code: 'no-cells', day: DAY + 6 }],
      contradictions: [],
    });
    expect(infer(queenless, [none, seen(8, { cappedCells: true })], 8).state.code).toBe('capped-cells');
  });

  it('goes through its stages as the days pass unobserved', () => {
    const stages = [1, 8, 14, 21, 30, 50].map((on) => infer(queenless, [], on).state.code);
    expect(stages).toEqual(['cells', 'capped-cells', 'virgin', 'mating', 'eggs-due', 'overdue']);
  });
});

describe('what contradicts the record', () => {
  it('reads a capped cell on the day of the split as cells older than the split', () => {
    const { codes, contradictions, windows } = infer(queenless, [seen(0, { cappedCells: true })], 1);
    expect(codes[0]).toBe('cells-older');
    expect(contradictions[0]).toMatchObject({ code: 'cells-too-early', field: 'cappedCells', found: true });
    expect(windows.emerged?.earliest).toBe(DAY);
  });

  it('reads eggs a week on, with no cells seen, as a queen overlooked', () => {
    const { codes, state, contradictions } = infer(queenless, [seen(7, { eggs: true })], 7);
    expect(codes[0]).toBe('queen-overlooked');
    expect(contradictions[0]?.code).toBe('eggs-too-early');
    expect(state.code).toBe('old-queen');
  });

  it('thinks of older cells first where cells were seen before the early eggs', () => {
    const { codes } = infer(queenless, [seen(3, { openCells: true }), seen(10, { eggs: true })], 10);
    expect(codes.slice(0, 2)).toEqual(['cells-older', 'queen-overlooked']);
  });

  it('reads the marked old queen as overlooked', () => {
    const { codes, contradictions } = infer(queenless, [seen(6, { queen: 'old' })], 6);
    expect(codes).toEqual(['queen-overlooked']);
    expect(contradictions[0]?.code).toBe('old-queen-seen');
  });

  it('reads no eggs after the give-up day as a queen lost, or one very late', () => {
    const { codes, state } = infer(
      queenless,
      [seen(6, { cappedCells: true }), seen(50, { eggs: false })],
      50,
    );
    expect(codes).toEqual(['lost', 'late-start']);
    expect(state.code).toBe('queenless');
  });

  it('drops the reading of a lost queen when eggs come after all', () => {
    const { codes, state } = infer(queenless, [seen(46, { eggs: false }), seen(55, { eggs: true })], 56);
    expect(codes).toEqual(['late-start']);
    expect(state.code).toBe('laying');
  });

  it('reads several eggs a cell and drone brood only as laying workers first, then as a failed queen', () => {
    const { codes, state } = infer(
      queenless,
      [seen(30, { severalEggsInCells: true, droneBroodOnly: true })],
      30,
    );
    expect(codes).toEqual(['laying-workers', 'drone-layer']);
    expect(state.code).toBe('laying-workers');
  });

  it('reads drone brood only, an egg a cell, as a queen who failed to mate', () => {
    const { codes } = infer(queenless, [seen(35, { droneBroodOnly: true })], 35);
    expect(codes[0]).toBe('drone-layer');
  });

  it('lets a young queen put several eggs in a cell in her first days, with a remark', () => {
    const { contradictions, remarks } = infer(queenless, [
      seen(27, { severalEggsInCells: true, eggs: true }),
    ]);
    expect(contradictions).toEqual([]);
    expect(remarks.map(({ code }) => code)).toEqual(['several-eggs']);
  });

  it('reads cells weeks after her first eggs as supersedure or swarm preparation, with days of their own', () => {
    const { codes, windows, state } = infer(
      queenless,
      [
        seen(6, { cappedCells: true }),
        seen(28, { eggs: true }),
        seen(60, { openCells: true, cappedCells: false, eggs: true }),
      ],
      61,
    );
    expect(codes).toEqual(['replaced-since']);
    expect(windows.emerged?.earliest).toBe(DAY + 60 + 7);
    expect(state.code).toBe('cells');
  });

  it('reads brood that comes to an end after eggs were seen as a queen gone since', () => {
    const { codes, state } = infer(queenless, [
      seen(28, { eggs: true }),
      seen(45, { eggs: false, openBrood: false }),
    ]);
    expect(codes).toEqual(['gone-since']);
    expect(state.code).toBe('queenless');
  });

  it('finds a second emergence later than the first explained by a swarm with the first virgin', () => {
    const { codes } = infer(queenless, [
      seen(9, { emergedCells: true, cappedCells: true }),
      seen(40, { eggs: false }),
      seen(44, { eggs: true }),
    ]);
    expect(codes[0]).toBe('first-virgin-left');
  });
});

describe('other ways to a queen', () => {
  it('dates a queen from a graft by the age of the larvae', () => {
    const graft: Making = { kind: 'graft', day: DAY, larvaAgeFrom: 1, larvaAgeTo: 1 };
    expect(infer(graft, [], 0).windows.emerged).toEqual(days(10, 12, 13));
  });

  it('dates cells exactly when the day of their eggs is known', () => {
    const cells: Making = { kind: 'cells-given', day: DAY, age: 'capped', eggsLaid: DAY - 10 };
    expect(infer(cells, [], 0).windows.emerged).toEqual(days(5, 6, 7));
  });

  it('lets a colony have no cells on the day on which capped ones are hung', () => {
    const cells: Making = { kind: 'cells-given', day: DAY, age: 'capped' };
    const none = seen(0, { cappedCells: false, openCells: false, emergedCells: false });
    expect(infer(cells, [none], 0).windows).toEqual(infer(cells, [], 0).windows);
  });

  it('shows no cell days for a virgin given, and none before laying for a mated queen', () => {
    const virgin = infer({ kind: 'virgin-given', day: DAY, emerged: DAY - 2 }, [], 0).windows;
    expect(Object.keys(virgin)[0]).toBe('emerged');
    expect(virgin.mated).toEqual(days(3, 5, 19));
    const mated = infer({ kind: 'mated-queen-given', day: DAY, caged: true }, [], 0).windows;
    expect(Object.keys(mated)).toEqual(['laying', 'cappedBrood', 'firstWorkers', 'allHers']);
  });

  it('reads cells a week after a queen was given as that she was not accepted', () => {
    const { codes, windows } = infer(
      { kind: 'mated-queen-given', day: DAY, caged: true },
      [seen(8, { openCells: true })],
      9,
    );
    expect(codes[0]).toBe('not-accepted');
    expect(windows.capped?.latest).toBe(DAY + 17);
  });

  it('follows the later hope where cells are built on brood given to a colony without eggs', () => {
    const { codes, scenarios, windows } = infer(
      [queenless, { kind: 'brood-given', day: DAY + 30 }],
      [seen(30, { eggs: false }), seen(36, { cappedCells: true })],
      36,
    );
    expect(codes).toEqual(['as-recorded']);
    expect(scenarios[0]?.making).toBe(1);
    expect(windows.emerged).toEqual(days(38, 43, 45));
  });

  it('keeps both hopes where nothing speaks against either', () => {
    const { scenarios, windows } = infer(
      [queenless, { kind: 'cells-given', day: DAY + 2, age: 'capped' }],
      [],
    );
    expect(scenarios.map(({ making }) => making)).toEqual([1, 0]);
    expect(windows.emerged?.earliest).toBe(DAY + 2);
    expect(windows.emerged?.latest).toBe(DAY + 17);
  });

  it('does not count what is recorded for days after the one asked for', () => {
    expect(infer(queenless, [seen(28, { eggs: true })], 20).state.code).toBe('mating');
  });

  it('refuses, as a fault of ours, to infer from no making at all', () => {
    expect(() => infer([], [])).toThrow(/at least one making/);
  });
});
