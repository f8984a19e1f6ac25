import betaQuantileOfStdlib from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { clopperPearson, exactUpperLimit, wilson } from '../../graph/merit/counts/intervals.ts';
import { betaQuantile } from '../../graph/numerics/special.ts';
import fromR from './data/binom.json' with { type: 'json' };

/** R 4.2.2, binom.test and prop.test (data/binom.json names the calls): fourteen digits as printed. */
const R_DIGITS = 1e-12;

describe('binomial limits against R 4.2.2', () => {
  it.each(fromR.rows)('the exact limits of $x of $n are those of binom.test', ({ x, n, cpLow, cpHigh }) => {
    const { low, high } = clopperPearson(x, n);
    expect(Math.abs(low - cpLow)).toBeLessThan(R_DIGITS);
    expect(Math.abs(high - cpHigh)).toBeLessThan(R_DIGITS);
  });

  it.each(fromR.rows)('the score limits of $x of $n are those of prop.test without correction', (row) => {
    const { low, high } = wilson(row.x, row.n);
    expect(Math.abs(low - row.wilsonLow)).toBeLessThan(R_DIGITS);
    expect(Math.abs(high - row.wilsonHigh)).toBeLessThan(R_DIGITS);
  });
});

describe('the beta quantile against the @stdlib package', () => {
  const shapes = [0.5, 1, 2, 6, 30, 295, 4000];
  const chances = [1e-6, 0.025, 0.3, 0.5, 0.95, 0.975];
  const cases = shapes.flatMap((a) => shapes.flatMap((b) => chances.map((p) => ({ a, b, p }))));

  it.each(cases)('of p = $p, a = $a, b = $b is the same to ten digits', ({ a, b, p }) => {
    const theirs = betaQuantileOfStdlib(p, a, b);
    expect(Math.abs(betaQuantile(p, a, b) - theirs)).toBeLessThan(1e-10 * theirs);
  });
});

/** Newcombe 1998, Stat. Med. 17:857, table I (from memory, not re-read), printed to four decimals. */
const NEWCOMBE = [
  { x: 81, n: 263, score: [0.2553, 0.3662], exact: [0.2527, 0.3676] },
  { x: 15, n: 148, score: [0.0624, 0.1605], exact: [0.0578, 0.1617] },
  { x: 0, n: 20, score: [0, 0.1611], exact: [0, 0.1684] },
  { x: 1, n: 29, score: [0.0061, 0.1718], exact: [0.0009, 0.1776] },
] as const;

describe('binomial limits against the table of Newcombe 1998', () => {
  it.each(NEWCOMBE)('$x of $n', ({ x, n, score, exact }) => {
    const byScore = wilson(x, n);
    const byBeta = clopperPearson(x, n);
    expect(Math.abs(byScore.low - score[0])).toBeLessThan(5.1e-5);
    expect(Math.abs(byScore.high - score[1])).toBeLessThan(5.1e-5);
    expect(Math.abs(byBeta.low - exact[0])).toBeLessThan(5.1e-5);
    expect(Math.abs(byBeta.high - exact[1])).toBeLessThan(5.1e-5);
  });
});

describe('a wash of 300 bees without a mite', () => {
  it('has the closed-form limits 1 - 0.05^(1/300) one-sided and 1 - 0.025^(1/300) two-sided', () => {
    expect(exactUpperLimit(0, 300)).toBeCloseTo(1 - 0.05 ** (1 / 300), 13);
    expect(clopperPearson(0, 300).high).toBeCloseTo(1 - 0.025 ** (1 / 300), 13);
  });
});
