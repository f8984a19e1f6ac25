import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BIOLOGY, type BiologyName } from '../../graph/calendar/biology.ts';
import { type EventName, VARIABLE } from '../../graph/calendar/events.ts';
import { historyOf, statementsAbout, windowsOf } from '../../graph/calendar/history.ts';
import type { Observation } from '../../graph/calendar/observation.ts';
import type { Statement } from '../../graph/calendar/statements.ts';

const EVENTS: readonly EventName[] = ['laid', 'hatched', 'capped', 'emerged', 'mated', 'laying'];

/** Every whole-day history from egg to first eggs of a colony made queenless on day 0, tried one by one. */
function allHistories(): number[][] {
  const found: number[][] = [];
  const steps = (name: BiologyName): number[] => {
    const { earliest, latest } = BIOLOGY[name];
    return Array.from({ length: latest - earliest + 1 }, (_, index) => earliest + index);
  };
  const inside = (value: number, name: BiologyName): boolean =>
    value >= BIOLOGY[name].earliest && value <= BIOLOGY[name].latest;
  for (let laid = -10; laid <= 0; laid++)
    for (const hatch of steps('eggHatch')) {
      if (laid + hatch < -BIOLOGY.oldestLarva.latest) continue;
      for (const fed of steps('queenLarvaFed'))
        for (const closed of steps('queenCappedToEmergence')) {
          const [hatched, capped, emerged] = [laid + hatch, laid + hatch + fed, laid + hatch + fed + closed];
          if (!inside(capped - laid, 'queenCapped') || !inside(emerged - laid, 'queenEmergence')) continue;
          for (const flight of steps('matingFlight'))
            for (const wait of steps('flightToEggs')) {
              if (!inside(flight + wait, 'firstEggs')) continue;
              found.push([laid, hatched, capped, emerged, emerged + flight, emerged + flight + wait]);
            }
        }
    }
  return found;
}

function holds(history: readonly number[], { anyOf }: Statement): boolean {
  const value = (variable: number): number =>
    variable === 0 ? 0 : history[EVENTS.findIndex((event) => VARIABLE[event] === variable)]!;
  return anyOf.some((bounds) => bounds.every(({ from, to, max }) => value(to) - value(from) <= max));
}

const sight = fc.record(
  {
    day: fc.integer({ min: 0, max: 40 }),
    eggs: fc.boolean(),
    cappedCells: fc.boolean(),
    emergedCells: fc.boolean(),
  },
  { requiredKeys: ['day'] },
);

describe('the windows of one history', () => {
  const histories = allHistories();

  it('are the exact hull of every whole-day history that agrees, or none when no history does', () => {
    const history = historyOf([{ kind: 'made-queenless', day: 0 }], 0);
    fc.assert(
      fc.property(fc.array(sight, { maxLength: 5 }), (observations) => {
        const statements = statementsAbout(history, observations as readonly Observation[]);
        const agreeing = histories.filter((days) => statements.every((statement) => holds(days, statement)));
        const windows = windowsOf(history, statements);
        expect(windows === undefined).toBe(agreeing.length === 0);
        EVENTS.forEach((event, index) => {
          if (!windows) return;
          const days = agreeing.map((found) => found[index]!);
          const { earliest, latest } = windows[event]!;
          const least = days.reduce((a, b) => Math.min(a, b));
          const most = days.reduce((a, b) => Math.max(a, b));
          expect([event, earliest, latest]).toEqual([event, least, most]);
        });
      }),
      { numRuns: 150 },
    );
  });

  it('have likely days that are together a history that can happen', () => {
    const history = historyOf([{ kind: 'made-queenless', day: 0 }], 0);
    fc.assert(
      fc.property(fc.array(sight, { maxLength: 4 }), (observations) => {
        const statements = statementsAbout(history, observations as readonly Observation[]);
        const windows = windowsOf(history, statements);
        if (!windows) return;
        const likely = EVENTS.map((event) => windows[event]!.likely);
        const known = histories.some((days) => days.every((day, index) => day === likely[index]));
        expect(known).toBe(true);
        expect(statements.every((statement) => holds(likely, statement))).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});
