import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareMiteGroups } from '../../../../../graph/merit/counts/comparison.ts';
import { miteGrowth } from '../../../../../graph/merit/counts/growth.ts';
import { infestation, SUGAR_RECOVERY } from '../../../../../graph/merit/counts/infestation.ts';
import { clopperPearson, poissonInterval, wilson } from '../../../../../graph/merit/counts/intervals.ts';

const wash = (mites: number, bees: number) => ({ method: 'wash', mites, bees }) as const;

describe('intervals of a count', () => {
  it('turn over when successes and failures change places', () => {
    for (const interval of [clopperPearson, wilson]) {
      const few = interval(3, 20);
      const many = interval(17, 20);
      expect(few.low).toBeCloseTo(1 - many.high, 13);
      expect(few.high).toBeCloseTo(1 - many.low, 13);
    }
  });

  it('exclude nothing when nothing was tried', () => {
    expect(clopperPearson(0, 0)).toEqual({ low: 0, high: 1 });
    expect(wilson(0, 0)).toEqual({ low: 0, high: 1 });
  });

  it('of zero events in t days end at -log(0.025)/t', () => {
    expect(poissonInterval(0, 4)).toEqual({ low: 0, high: expect.closeTo(-Math.log(0.025) / 4, 12) });
  });

  it('contain the share found, and Clopper-Pearson covers at least its level', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (n, p) => {
          let covered = 0;
          let chance = (1 - p) ** n;
          for (let x = 0; x <= n; x++) {
            const { low, high } = clopperPearson(x, n);
            expect(low <= x / n && x / n <= high).toBe(true);
            if (low <= p && p <= high) covered += chance;
            chance *= ((n - x) / (x + 1)) * (p / (1 - p));
          }
          expect(covered).toBeGreaterThan(0.95 - 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('refuse more successes than trials', () => {
    expect(() => clopperPearson(5, 4)).toThrow(/5 of 4/);
  });
});

describe('infestation', () => {
  it('of 0 of 300 is below 1.22 % two-sided and 0.99 % one-sided, not nothing', () => {
    const found = infestation(wash(0, 300));
    expect(found.rate).toBe(0);
    expect(found.high).toBeCloseTo(0.012221, 6);
    expect(found.below).toBeCloseTo(0.009936, 6);
    expect(found.corrected).toBeUndefined();
  });

  it('takes the Poisson interval once there are more mites than bees', () => {
    const found = infestation(wash(130, 100));
    expect(found.intervalBy).toBe('poisson');
    expect(found.rate).toBeCloseTo(1.3, 12);
    expect(found.low).toBeLessThan(1.3);
    expect(found.high).toBeGreaterThan(1.3);
  });

  it('of a sugar shake is raised by its recovery and widened by the doubt in it', () => {
    const found = infestation({ method: 'sugar-shake', mites: 6, bees: 300 });
    const corrected = found.corrected!;
    expect(corrected.recovery).toEqual(SUGAR_RECOVERY);
    expect(corrected.rate).toBeCloseTo(0.02 / 0.929, 12);
    expect(corrected.high / corrected.rate).toBeGreaterThan(found.high / found.rate);
    expect(corrected.rate / corrected.low).toBeGreaterThan(found.rate / found.low);
  });

  it('by a certain recovery of 0.9 turns 6 of 300 into 2.2222 %', () => {
    const found = infestation(wash(6, 300), { recovery: { share: 0.9, standardDeviation: 0 } });
    expect(found.corrected!.rate).toBeCloseTo(0.022222, 6);
    expect(found.corrected!.low).toBeCloseTo(found.low / 0.9, 12);
  });

  it('of a drop is per day', () => {
    const found = infestation({ method: 'natural-drop', mites: 30, days: 3 });
    expect(found.unit).toBe('mites per day');
    expect(found.rate).toBe(10);
  });

  it('needs bees', () => {
    expect(() => infestation(wash(3, 0))).toThrow(/above 0/);
  });
});

describe('growth between two counts', () => {
  it('from 6 to 18 of 300 in 90 days doubles in 56.78 days: log 3 / 90 a day', () => {
    const growth = miteGrowth(wash(6, 300), wash(18, 300), 90);
    expect(growth.rate).toBeCloseTo(Math.log(3) / 90, 12);
    expect(growth.doublingDays).toBeCloseTo(56.7837, 4);
    expect(growth.rateInterval.low).toBeLessThan(growth.rate!);
    expect(growth.shows).toBe('growth');
  });

  it('of 0.021, 0.023 and 0.025 a day (Martin 1998, from memory) doubles in 33.0, 30.1 and 27.7 days', () => {
    for (const [rate, days] of [
      [0.021, 33.007],
      [0.023, 30.137],
      [0.025, 27.726],
    ] as const) {
      const growth = miteGrowth(wash(1e5, 1e7), wash(1e5 * Math.exp(rate * 60), 1e7), 60);
      expect(growth.doublingDays).toBeCloseTo(days, 3);
    }
  });

  it('leaves open what a count of zero leaves open', () => {
    const growth = miteGrowth(wash(0, 300), wash(9, 300), 40);
    expect(growth.rate).toBeUndefined();
    expect(growth.rateInterval.high).toBe(Number.POSITIVE_INFINITY);
    expect(growth.rateInterval.low).toBeGreaterThan(0);
    expect(growth.shows).toBe('growth');
    expect(miteGrowth(wash(0, 300), wash(0, 300), 40).shows).toBe('neither');
  });

  it('is not claimed from 2 and 3 mites, and the doubling time then has no upper limit', () => {
    const growth = miteGrowth(wash(2, 300), wash(3, 300), 30);
    expect(growth.shows).toBe('neither');
    expect(growth.doublingInterval!.high).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('two groups of washed colonies', () => {
  const clumped = [0, 0, 1, 30, 2, 27].map((mites) => wash(mites, 300));
  const spread = [2, 4, 3, 1, 2, 3].map((mites) => wash(mites, 300));

  it('that a plain binomial test would tell apart are not, once the clumping is counted', () => {
    const result = compareMiteGroups(spread, clumped)!;
    expect(result.dispersion).toBeGreaterThan(5);
    expect(result.ratioInterval.low).toBeLessThan(1);
    expect(result.ratioInterval.high).toBeGreaterThan(1);
    const plainZ = Math.log(60 / 15) / Math.sqrt(1 / 60 + 1 / 15);
    expect(plainZ).toBeGreaterThan(3);
    expect(result.pValue).toBeGreaterThan(0.05);
  });

  it('come with warnings when small', () => {
    const result = compareMiteGroups([wash(0, 300), wash(2, 300)], [wash(4, 300), wash(310, 300)])!;
    expect(result.warnings).toEqual(['few-colonies', 'few-mites', 'mites-exceed-bees']);
  });

  it('changed over give the inverse ratio and the same p-value', () => {
    const one = compareMiteGroups(spread, clumped)!;
    const other = compareMiteGroups(clumped, spread)!;
    expect(one.ratio * other.ratio).toBeCloseTo(1, 12);
    expect(one.pValue).toBeCloseTo(other.pValue, 12);
  });

  it('of one colony each have no comparison', () => {
    expect(compareMiteGroups([wash(1, 300)], [wash(2, 300)])).toBeUndefined();
  });
});
