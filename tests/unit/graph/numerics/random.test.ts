import { describe, expect, it } from 'vitest';
import { randomGenerator } from '../../../../graph/numerics/random.ts';

const DRAWS = 40_000;
/** Fixed seeds; with others, a mean this far off would come about once in 1.7 million times. */
const STANDARD_ERRORS = 5;

function moments(draw: () => number) {
  let sum = 0;
  let squares = 0;
  for (let k = 0; k < DRAWS; k++) {
    const value = draw();
    sum += value;
    squares += value * value;
  }
  const mean = sum / DRAWS;
  return { mean, variance: squares / DRAWS - mean * mean };
}

function expectMean(found: number, expected: number, variance: number): void {
  expect(Math.abs(found - expected)).toBeLessThan(STANDARD_ERRORS * Math.sqrt(variance / DRAWS));
}

describe('the seeded generator', () => {
  it('gives the same draws for the same seed, others for another', () => {
    const draws = (seed: number) => {
      const random = randomGenerator(seed);
      return Array.from({ length: 20 }, () => random.bits());
    };
    expect(draws(7)).toEqual(draws(7));
    expect(draws(7)).not.toEqual(draws(8));
    expect(new Set(draws(0)).size).toBe(20);
  });

  it('draws uniform numbers in [0, 1) with mean 1/2 and variance 1/12', () => {
    const random = randomGenerator(1);
    const { mean, variance } = moments(() => {
      const value = random.uniform();
      expect(value >= 0 && value < 1).toBe(true);
      return value;
    });
    expectMean(mean, 1 / 2, 1 / 12);
    /** The variance of a squared deviation of a uniform number is 1/180. */
    expectMean(variance, 1 / 12, 1 / 180);
  });

  it('fills sixteen bins evenly, chi-square within what chance allows (15 degrees, 1 in a million: 55)', () => {
    const random = randomGenerator(2);
    const bins = new Int32Array(16);
    for (let k = 0; k < DRAWS; k++) bins[random.integer(16)]!++;
    const expected = DRAWS / 16;
    expect(bins.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0)).toBeLessThan(55);
  });

  it('draws normal numbers with mean 0, variance 1 and the tail beyond 1.96 of 5 %', () => {
    const random = randomGenerator(3);
    let tail = 0;
    const { mean, variance } = moments(() => {
      const value = random.normal();
      if (Math.abs(value) > 1.959964) tail++;
      return value;
    });
    expectMean(mean, 0, 1);
    expectMean(variance, 1, 2);
    expectMean(tail / DRAWS, 0.05, 0.05 * 0.95);
  });

  it.each([
    [1, 0.3],
    [12, 0.5],
    [300, 0.02],
    [300, 0.98],
    [5000, 0.4],
  ])('draws binomial numbers of %i trials at %d with mean n p and variance n p (1 - p)', (n, p) => {
    const random = randomGenerator(4);
    const { mean, variance } = moments(() => random.binomial(n, p));
    const expected = n * p * (1 - p);
    expectMean(mean, n * p, expected);
    expectMean(variance, expected, expected * (1 + (2 - 6 / n) * expected));
  });

  it('knows the certain cases: no trials, no chance, every chance', () => {
    const random = randomGenerator(5);
    expect([random.binomial(0, 0.5), random.binomial(9, 0), random.binomial(9, 1)]).toEqual([0, 0, 9]);
  });

  it('draws by weight, never one of weight 0', () => {
    const random = randomGenerator(6);
    const counts = [0, 0, 0];
    for (let k = 0; k < DRAWS; k++) counts[random.weighted([1, 0, 3])]!++;
    expect(counts[1]).toBe(0);
    expectMean(counts[0]! / DRAWS, 0.25, 0.25 * 0.75);
  });

  it('chooses among items, and refuses an empty list', () => {
    const random = randomGenerator(9);
    const seen = new Set(Array.from({ length: 100 }, () => random.choice(['a', 'b', 'c'])));
    expect([...seen].sort()).toEqual(['a', 'b', 'c']);
    expect(() => random.choice([])).toThrow('empty');
    expect(() => random.weighted([0, 0])).toThrow('all 0');
  });

  it('forks a stream that does not depend on what the parent draws later', () => {
    const one = randomGenerator(10);
    const other = randomGenerator(10);
    const fork = one.fork();
    const twin = other.fork();
    one.uniform();
    expect([fork.bits(), fork.bits()]).toEqual([twin.bits(), twin.bits()]);
  });
});
