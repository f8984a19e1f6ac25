import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignLanes, type Span } from '../../../../views/lines/lanes.ts';

/**
 * One line. Days run to the right.
 *
 *   a  0 ================ 400
 *        |         |- c  200 ======= 400
 *        |- b  40 == 90
 */
const FAMILY: readonly Span[] = [
  { id: 'a', line: 'a', from: 0, until: 400 },
  { id: 'b', line: 'a', dam: 'a', from: 40, until: 90 },
  { id: 'c', line: 'a', dam: 'a', from: 200, until: 400 },
];

describe('the lanes of the drawing', () => {
  it('run a dam above her daughters', () => {
    const { lane } = assignLanes(FAMILY);
    expect(lane.get('a')).toBe(0);
    expect(lane.get('b')).toBeGreaterThan(0);
    expect(lane.get('c')).toBeGreaterThan(0);
  });

  it('are used again once a queen is gone', () => {
    const { lane, lanes } = assignLanes(FAMILY);
    expect(lane.get('b')).toBe(lane.get('c'));
    expect(lanes).toBe(2);
  });

  it('stand line by line, each line in a strip of its own', () => {
    const { strips, lane } = assignLanes([...FAMILY, { id: 'x', line: 'x', from: 10, until: 50 }]);
    expect(strips).toEqual([
      { line: 'a', first: 0, lanes: 2 },
      { line: 'x', first: 2, lanes: 1 },
    ]);
    expect(lane.get('x')).toBe(2);
  });

  it('keep the lane of a dam free until her last daughter is born, though she died before', () => {
    const { lane } = assignLanes([
      { id: 'a', line: 'a', from: 0, until: 1000 },
      { id: 'b', line: 'a', dam: 'a', from: 100, until: 150 },
      { id: 'late', line: 'a', dam: 'b', from: 300, until: 350 },
      { id: 'sister', line: 'a', dam: 'a', from: 90, until: 260 },
    ]);
    expect(lane.get('sister')).not.toBe(lane.get('b'));
  });

  it('give a queen whose dam is left out a place in the strip of her line', () => {
    const { strips } = assignLanes([{ id: 'b', line: 'a', dam: 'a', from: 0, until: 10 }]);
    expect(strips).toEqual([{ line: 'a', first: 0, lanes: 1 }]);
  });
});

/** Families of up to 40 queens: each is a daughter of an earlier one, born in her days, or a founder. */
const families = fc
  .array(
    fc.record({
      dam: fc.nat(50),
      age: fc.integer({ min: 0, max: 600 }),
      days: fc.integer({ min: 5, max: 900 }),
    }),
    {
      minLength: 1,
      maxLength: 40,
    },
  )
  .map((rows) => {
    const spans: Span[] = [];
    for (const [index, { dam, age, days }] of rows.entries()) {
      const mother = spans[dam];
      // Whole multiples of four days, so that the rounding of the lanes' days is exact.
      const from = 4 * (mother ? mother.from / 4 + Math.floor(age / 8) : Math.floor(age / 4));
      const until = from + 4 * Math.ceil(days / 4);
      spans.push({ id: `q${index}`, line: mother?.line ?? `q${index}`, dam: mother?.id, from, until });
    }
    return spans;
  });

describe('for any family', () => {
  it('no two lives share a lane on the same day', () => {
    fc.assert(
      fc.property(families, (spans) => {
        const { lane } = assignLanes(spans);
        for (const [k, a] of spans.entries()) {
          for (const b of spans.slice(k + 1)) {
            if (lane.get(a.id) !== lane.get(b.id)) continue;
            expect(a.until < b.from || b.until < a.from).toBe(true);
          }
        }
      }),
    );
  });

  it('no line from a dam down to a daughter crosses a life', () => {
    fc.assert(
      fc.property(families, (spans) => {
        const { lane } = assignLanes(spans);
        const at = (id: string) => lane.get(id)!;
        for (const daughter of spans) {
          if (daughter.dam === undefined) continue;
          const between = spans.filter(({ id }) => at(id) > at(daughter.dam!) && at(id) < at(daughter.id));
          // A life that begins on that very day hangs on the same line and is no crossing.
          const crossed = between.filter(({ from, until }) => from < daughter.from && until >= daughter.from);
          expect(crossed).toEqual([]);
        }
      }),
    );
  });

  it('a daughter always runs below her dam', () => {
    fc.assert(
      fc.property(families, (spans) => {
        const { lane } = assignLanes(spans);
        for (const { id, dam } of spans)
          if (dam !== undefined) expect(lane.get(id)!).toBeGreaterThan(lane.get(dam)!);
      }),
    );
  });
});
