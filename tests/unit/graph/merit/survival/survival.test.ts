import { describe, expect, it } from 'vitest';
import { survivalCurve } from '../../../../../graph/merit/survival/kaplan-meier.ts';
import { logRank } from '../../../../../graph/merit/survival/log-rank.ts';
import {
  betaBinomial,
  empiricalPrior,
  marginalLogLikelihood,
} from '../../../../../graph/merit/survival/shrinkage.ts';

const died = (time: number) => ({ time, event: true });
const alive = (time: number) => ({ time, event: false });

describe('the survival curve', () => {
  it('without anyone lost from sight is the share still alive, with the binomial error', () => {
    const { steps, median } = survivalCurve([died(1), died(2), died(3), died(4)]);
    expect(steps.map(({ survival }) => survival)).toEqual(
      [0.75, 0.5, 0.25, 0].map((s) => expect.closeTo(s, 12)),
    );
    expect(steps[0]!.standardError).toBeCloseTo(Math.sqrt((0.75 * 0.25) / 4), 12);
    expect(median).toBe(2);
    expect(steps[3]!.low).toBeUndefined();
  });

  it('of nobody is empty, and of nobody dead stays at one', () => {
    expect(survivalCurve([]).steps).toEqual([]);
    expect(survivalCurve([alive(2), alive(3)]).steps.map(({ survival }) => survival)).toEqual([1, 1]);
  });
});

describe('the log-rank test', () => {
  it('finds nothing between twins and is the same for any order of three groups', () => {
    const group = [died(1), died(3), alive(4)];
    expect(logRank([group, group])!.chiSquare).toBeCloseTo(0, 12);
    const three = [group, [died(1), died(1), alive(2)], [died(5), alive(6), alive(6)]];
    expect(logRank(three)!.chiSquare).toBeCloseTo(logRank([...three].reverse())!.chiSquare, 10);
    expect(logRank(three)!.degrees).toBe(2);
  });

  it('warns of small numbers and gives no verdict where there is none to give', () => {
    expect(logRank([[died(1), alive(2)], [died(2)]])!.smallNumbers).toBe(true);
    expect(logRank([[alive(2)], [alive(3)]])).toBeUndefined();
    expect(logRank([[died(2)], []])).toBeUndefined();
  });
});

/** Beta(8, 2) prior, values by exact beta quantiles of R 4.2.2. */
const KNOWN = [
  { survived: 0, started: 0, mean: 0.8, low: 0.517503, high: 0.971855 },
  { survived: 3, started: 3, mean: 0.846154, low: 0.615204, high: 0.979137 },
  { survived: 5, started: 5, mean: 0.866667, low: 0.661316, high: 0.982205 },
  { survived: 1, started: 5, mean: 0.6, low: 0.35138, high: 0.823389 },
  { survived: 0, started: 1, mean: 0.727273, low: 0.443905, high: 0.93326 },
];

describe('shrinkage of a share', () => {
  it.each(KNOWN)('of $survived of $started towards Beta(8, 2)', ({ survived, started, mean, low, high }) => {
    const posterior = betaBinomial({ a: 8, b: 2 }, { survived, started });
    expect(posterior.mean).toBeCloseTo(mean, 6);
    expect(posterior.low).toBeCloseTo(low, 6);
    expect(posterior.high).toBeCloseTo(high, 6);
  });

  it('falls back to a stated strength of eight for few groups', () => {
    const few = empiricalPrior([{ survived: 3, started: 4 }]);
    expect(few.strengthFrom).toBe('fallback');
    expect(few.a + few.b).toBeCloseTo(8, 12);
    expect(few.a / 8).toBeCloseTo(3.5 / 5, 12);
  });

  it('reads strong likeness from groups that differ no more than luck, weak from groups that differ wholly', () => {
    const alike = empiricalPrior(
      Array.from({ length: 12 }, (_, i) => ({ survived: 14 + (i % 3), started: 20 })),
    );
    const unlike = empiricalPrior(
      Array.from({ length: 12 }, (_, i) => ({ survived: i % 2 ? 19 : 1, started: 20 })),
    );
    expect(alike.a + alike.b).toBeGreaterThan(24);
    expect(unlike.a + unlike.b).toBeLessThan(2.5);
  });

  it('takes the strength at which no neighbouring strength is likelier', () => {
    const groups = [
      [1, 9],
      [5, 6],
      [3, 8],
      [7, 7],
      [2, 5],
    ].map(([survived, started]) => ({ survived: survived!, started: started! }));
    const found = empiricalPrior(groups);
    const height = (factor: number) => {
      const off = Math.log(((found.a + found.b) * factor) / 8);
      return marginalLogLikelihood(groups, { a: found.a * factor, b: found.b * factor }) - 0.5 * off * off;
    };
    expect(height(1)).toBeGreaterThan(height(1.01));
    expect(height(1)).toBeGreaterThan(height(0.99));
  });
});
