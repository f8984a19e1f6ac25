import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type QuadraticProgram, solveQuadratic } from '../../graph/choice/quadratic-program.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';

/** A random program: curvature of any rank, a box, a weighted sum held fast, sometimes a limit. */
function randomProgram(seed: number): QuadraticProgram {
  const random = randomGenerator(seed);
  const size = 2 + random.integer(8);
  const numbers = (count: number, draw: () => number) => Float64Array.from({ length: count }, draw);
  const rank = random.integer(size + 1);
  const root = Array.from({ length: rank }, () => numbers(size, random.normal));
  const curvature = numbers(size * size, () => 0).map((_, at) =>
    root.reduce((sum, row) => sum + row[Math.floor(at / size)]! * row[at % size]!, 0),
  );
  const low = numbers(size, () => -random.integer(3));
  const high = low.map((each) => each + random.integer(3));
  const weights = numbers(size, () => 0.5 + random.uniform());
  const prices = numbers(size, () => random.choice([0, 1, random.uniform()]));
  // Filled from the lowest price for its weight, so that the start keeps the limit.
  const order = [...low.keys()].sort((a, b) => prices[a]! / weights[a]! - prices[b]! / weights[b]!);
  const start = low.slice();
  const filled = random.integer(size);
  for (const k of order.slice(0, filled)) start[k] = high[k]!;
  const last = order[filled]!;
  start[last] = low[last]! + random.uniform() * (high[last]! - low[last]!);
  const dot = (a: Float64Array) => a.reduce((sum, each, k) => sum + each * start[k]!, 0);
  return {
    size,
    curvature,
    slope: numbers(size, random.normal),
    low,
    high,
    equality: { normal: weights, bound: dot(weights) },
    ...(random.uniform() < 0.6
      ? { limit: { normal: prices, bound: dot(prices) + random.integer(2) / 3 } }
      : {}),
    start,
  };
}

describe('the quadratic program', () => {
  it('keeps its rules, and what is left of the gradient pulls only where a bound holds it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const program = randomProgram(seed);
        const { size, curvature, slope, low, high, equality, limit } = program;
        const found = solveQuadratic(program);
        if (!found.ok) throw new Error(found.reason);
        const { x, equalityMultiplier, limitMultiplier } = found;
        const along = (normal: Float64Array): number =>
          normal.reduce((sum, each, k) => sum + each * x[k]!, 0);
        expect(along(equality.normal)).toBeCloseTo(equality.bound, 9);
        if (limit) {
          expect(along(limit.normal)).toBeLessThan(limit.bound + 1e-9);
          expect(limitMultiplier).toBeLessThan(1e-9);
          expect(limitMultiplier * (limit.bound - along(limit.normal))).toBeCloseTo(0, 8);
        }
        for (let i = 0; i < size; i++) {
          expect(x[i]).toBeGreaterThanOrEqual(low[i]!);
          expect(x[i]).toBeLessThanOrEqual(high[i]!);
          let pull = -slope[i]! - equalityMultiplier * equality.normal[i]!;
          if (limit) pull -= limitMultiplier * limit.normal[i]!;
          for (let j = 0; j < size; j++) pull += curvature[i * size + j]! * x[j]!;
          if (x[i]! > low[i]!) expect(pull).toBeLessThan(1e-8);
          if (x[i]! < high[i]!) expect(pull).toBeGreaterThan(-1e-8);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
