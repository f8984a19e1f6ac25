import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EVENTS } from '../../graph/calendar/events.ts';
import { inferQueenCalendar } from '../../graph/calendar/infer.ts';
import type { Observation } from '../../graph/calendar/observation.ts';
import { between, colonyTruth, seeded, type Truth, twoHopes } from '../helpers/colony-truth.ts';

const RUNS = 600;

/** A colony, honest visits to it on random days, and a day after all of them. */
const history = fc.record({
  seed: fc.integer({ min: 0, max: 2 ** 31 }),
  visits: fc.array(fc.tuple(fc.integer({ min: 0, max: 70 }), fc.integer({ min: 0, max: 2 ** 31 })), {
    maxLength: 9,
  }),
});

function lived({ seed, visits }: { seed: number; visits: readonly (readonly [number, number])[] }): {
  truth: Truth;
  observations: readonly Observation[];
} {
  const truth = colonyTruth(seed);
  const observations = visits.map(([after, hour]) => {
    const chance = seeded(hour);
    return truth.see(truth.making.day + after + chance(), chance);
  });
  return { truth, observations };
}

const calendarOf = (truth: Truth, observations: readonly Observation[]) =>
  inferQueenCalendar({ making: truth.making, observations, on: truth.making.day + 100 });

describe('the queen calendar, over invented colonies whose truth is known', () => {
  it('holds the true day of every event, whatever is honestly seen', () => {
    fc.assert(
      fc.property(history, (drawn) => {
        const { truth, observations } = lived(drawn);
        const { windows, contradictions, evidence } = calendarOf(truth, observations);
        expect(contradictions).toEqual([]);
        expect(evidence.hersSince ?? truth.days.laying).toBeGreaterThanOrEqual(truth.days.laying);
        for (const event of EVENTS) {
          const window = windows[event];
          if (!window) continue;
          expect(truth.days[event], event).toBeGreaterThanOrEqual(window.earliest);
          expect(truth.days[event], event).toBeLessThanOrEqual(window.latest);
          expect(window.likely).toBeGreaterThanOrEqual(window.earliest);
          expect(window.likely).toBeLessThanOrEqual(window.latest);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('never widens a window when an observation is added', () => {
    fc.assert(
      fc.property(history, fc.integer(), (drawn, pick) => {
        const { truth, observations } = lived(drawn);
        fc.pre(observations.length > 0);
        const left = between(seeded(pick), 0, observations.length - 1);
        const fewer = calendarOf(
          truth,
          observations.filter((_, index) => index !== left),
        ).windows;
        const all = calendarOf(truth, observations).windows;
        for (const event of EVENTS) {
          if (!all[event]) continue;
          expect(all[event].earliest, event).toBeGreaterThanOrEqual(fewer[event]!.earliest);
          expect(all[event].latest, event).toBeLessThanOrEqual(fewer[event]!.latest);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('holds the truth of whichever queen came first, where cells were given to a colony with brood of its own', () => {
    fc.assert(
      fc.property(history, ({ seed, visits }) => {
        const truth = twoHopes(seed);
        const observations = visits.map(([after, hour]) => {
          const chance = seeded(hour);
          return truth.see(truth.making.day + after + chance(), chance);
        });
        const { windows, contradictions } = inferQueenCalendar({
          making: truth.makings,
          observations,
          on: truth.making.day + 100,
        });
        expect(contradictions).toEqual([]);
        for (const event of EVENTS) {
          expect(truth.days[event], event).toBeGreaterThanOrEqual(windows[event]!.earliest);
          expect(truth.days[event], event).toBeLessThanOrEqual(windows[event]!.latest);
        }
      }),
      { numRuns: RUNS },
    );
  });

  it('does not depend on the order in which observations are given', () => {
    fc.assert(
      fc.property(history, (drawn) => {
        const { truth, observations } = lived(drawn);
        const backwards = calendarOf(truth, [...observations].reverse());
        expect(backwards.windows).toEqual(calendarOf(truth, observations).windows);
      }),
      { numRuns: 300 },
    );
  });
});
