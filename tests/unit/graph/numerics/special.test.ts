import { describe, expect, it } from 'vitest';
import {
  betaQuantile,
  chiSquareTail,
  gammaQuantile,
  incompleteBeta,
  logBeta,
  logGamma,
  lowerGamma,
  normalBelow,
  normalQuantile,
  studentLimit,
  studentTail,
  upperGamma,
} from '../../../../graph/numerics/special.ts';

const CLOSE = 1e-12;

describe('special functions', () => {
  it('log gamma is the log of the factorial and of the square root of pi', () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      expect(Math.abs(logGamma(n) - Math.log(factorial))).toBeLessThan(CLOSE);
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(0.5 * Math.log(Math.PI), 13);
  });

  it('log beta agrees with log gammas on both sides of where its arrangement changes', () => {
    for (const [a, b] of [
      [0.5, 0.5],
      [3, 11.9],
      [3, 40],
      [12, 12],
      [25, 300],
    ] as const) {
      const plain = logGamma(a) + logGamma(b) - logGamma(a + b);
      expect(Math.abs(logBeta(a, b) - plain)).toBeLessThan(1e-11);
      expect(logBeta(b, a)).toBe(logBeta(a, b));
    }
  });

  it('the incomplete beta of whole numbers is the binomial tail', () => {
    const tail = (x: number, a: number, b: number) => {
      let sum = 0;
      for (let j = a; j <= a + b - 1; j++) {
        sum +=
          Math.exp(logGamma(a + b) - logGamma(j + 1) - logGamma(a + b - j)) *
          x ** j *
          (1 - x) ** (a + b - 1 - j);
      }
      return sum;
    };
    for (const x of [0.01, 0.3, 0.5, 0.9]) {
      for (const [a, b] of [
        [1, 1],
        [2, 3],
        [5, 20],
        [40, 8],
      ] as const) {
        expect(Math.abs(incompleteBeta(x, a, b) - tail(x, a, b))).toBeLessThan(CLOSE);
      }
    }
  });

  it('quantiles undo their distribution functions', () => {
    for (const p of [1e-8, 0.025, 0.5, 0.8, 0.999]) {
      expect(incompleteBeta(betaQuantile(p, 3, 0.7), 3, 0.7)).toBeCloseTo(p, 12);
      expect(lowerGamma(4.5, gammaQuantile(p, 4.5))).toBeCloseTo(p, 12);
      expect(normalBelow(normalQuantile(p))).toBeCloseTo(p, 13);
    }
  });

  it('the two incomplete gammas sum to one and a whole shape gives the Poisson tail', () => {
    for (const x of [0.1, 2, 7, 30]) {
      expect(lowerGamma(3, x) + upperGamma(3, x)).toBeCloseTo(1, 14);
      expect(upperGamma(3, x)).toBeCloseTo(Math.exp(-x) * (1 + x + (x * x) / 2), 13);
    }
  });

  it('chi-square with two degrees has the tail exp(-x/2), and with one that of a squared normal', () => {
    expect(chiSquareTail(5, 2)).toBeCloseTo(Math.exp(-2.5), 14);
    expect(chiSquareTail(normalQuantile(0.975) ** 2, 1)).toBeCloseTo(0.05, 13);
  });

  it('Student with one degree is Cauchy, and its limit undoes its tail', () => {
    expect(studentTail(1, 1)).toBeCloseTo(0.5, 13);
    expect(studentLimit(0.5, 1)).toBeCloseTo(1, 12);
    expect(studentTail(studentLimit(0.05, 7), 7)).toBeCloseTo(0.05, 12);
  });

  it('throws on arguments that have no value', () => {
    expect(() => logGamma(0)).toThrow(/x > 0/);
    expect(() => incompleteBeta(1.5, 1, 1)).toThrow(/undefined/);
    expect(() => normalQuantile(0)).toThrow(/0 < p < 1/);
  });
});
