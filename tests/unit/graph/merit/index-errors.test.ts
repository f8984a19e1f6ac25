import { describe, expect, it } from 'vitest';
import {
  chanceAbove,
  chancesAmongBest,
  differenceError,
  indexErrors,
} from '../../../../graph/merit/index-errors.ts';

const UNRELATED = Float64Array.from([1, 0, 0, 1]);

describe('the error of an index', () => {
  it('sums the traits by their squared weights, each in its own spread', () => {
    const gentle = {
      trait: 'gentle',
      better: 'higher',
      sigma: 2,
      errorCovariance: Float64Array.from([3, 1, 1, 2]),
    } as const;
    const honey = { trait: 'honey', better: 'higher', sigma: 5 } as const;
    // gentle: 2^2 / 2^2 of its own; honey has no solution, so all of its relationship is open, times 3^2.
    const errors = indexErrors([gentle, honey], { gentle: 2, honey: 3 }, UNRELATED);
    expect([...errors]).toEqual([3 + 9, 1, 1, 2 + 9]);
    expect(indexErrors([gentle, honey], {}, UNRELATED)).toEqual(new Float64Array(4));
  });

  it('is taken as independent where only reliabilities are known', () => {
    const calm = {
      trait: 'calm',
      better: 'higher',
      sigma: 2,
      reliability: Float64Array.from([0.25, 0.5]),
    } as const;
    const kin = Float64Array.from([1, 0.5, 0.5, 1.2]);
    expect([...indexErrors([calm], { calm: 1 }, kin)]).toEqual([0.75, 0, 0, 0.6]);
  });

  it('of a difference is smaller between kin whose errors go together', () => {
    const apart = Float64Array.from([1, 0, 0, 1]);
    const kin = Float64Array.from([1, 0.75, 0.75, 1]);
    expect(differenceError(apart, 0, 1)).toBeCloseTo(Math.SQRT2, 12);
    expect(differenceError(kin, 0, 1)).toBeCloseTo(Math.sqrt(0.5), 12);
  });
});

describe('the chance that one is above another', () => {
  it('is a half for equals, and the two ways round sum to one', () => {
    expect(chanceAbove([1, 1], UNRELATED, 0, 1)).toBe(0.5);
    const chance = chanceAbove([1, 0], UNRELATED, 0, 1);
    expect(chance + chanceAbove([1, 0], UNRELATED, 1, 0)).toBeCloseTo(1, 12);
  });

  it('is that of the standard normal: 0.975 at 1.96 errors (table of the normal distribution, from memory)', () => {
    expect(chanceAbove([1.959964 * Math.SQRT2, 0], UNRELATED, 0, 1)).toBeCloseTo(0.975, 6);
  });

  it('is certain where there is no error left', () => {
    const known = new Float64Array(4);
    expect(chanceAbove([2, 1], known, 0, 1)).toBe(1);
    expect(chanceAbove([1, 2], known, 0, 1)).toBe(0);
  });
});

describe('the chance to be among the best', () => {
  it('is alike for equals, and sums to the places there are', () => {
    const errors = Float64Array.from([1, 0, 0, 0, 1, 0, 0, 0, 1]);
    const chances = chancesAmongBest([0, 0, 0], errors, 1, { draws: 30_000 });
    // Three standard errors of a share of 1/3 in 30,000 draws are 0.008.
    for (const chance of chances) expect(Math.abs(chance - 1 / 3)).toBeLessThan(0.008);
    expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  });

  it('of two is the chance that one is above the other', () => {
    const errors = Float64Array.from([1, 0.4, 0.4, 2]);
    const chances = chancesAmongBest([1, 0], errors, 1, { draws: 40_000 });
    expect(Math.abs(chances[0]! - chanceAbove([1, 0], errors, 0, 1))).toBeLessThan(0.008);
  });

  it('is the same for the same seed', () => {
    const draw = () => chancesAmongBest([1, 0], UNRELATED, 1, { draws: 100, seed: 4 });
    expect(draw()).toEqual(draw());
  });
});
