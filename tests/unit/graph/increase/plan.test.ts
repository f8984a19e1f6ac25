import { describe, expect, it } from 'vitest';
import { DAYS_TO_RAISED_EGGS, planSplit, type SplitPlan } from '../../../../graph/increase/plan.ts';
import { STRONG, WEAK } from '../../../helpers/combs.ts';

const ids = (plan: SplitPlan): readonly string[][] =>
  plan.parts.map(({ frames }) => frames.map(({ id }) => id));

describe('a proposed split', () => {
  for (const parts of [2, 3, 4] as const) {
    it(`puts every frame of a strong colony into one of ${parts} parts, none of them weak`, () => {
      const plan = planSplit({ frames: STRONG, parts });
      expect(ids(plan).flat().sort()).toEqual(STRONG.map(({ id }) => id).sort());
      expect(plan.parts).toHaveLength(parts);
      expect(plan.weak).toEqual([]);
    });

    it(`gives eggs or larvae to every part of ${parts} that is to raise a queen`, () => {
      const raising = planSplit({ frames: STRONG, parts }).parts.filter(({ queen }) => queen === 'raises');
      expect(raising).toHaveLength(parts - 1);
      expect(raising.every(({ frames }) => frames.some(({ eggs }) => eggs))).toBe(true);
    });
  }

  it('takes the old queen off the old stand with the frame she is on, as a nucleus smaller than what stays', () => {
    const { parts } = planSplit({ frames: STRONG, parts: 2 });
    const nucleus = parts.find(({ queen }) => queen === 'old-queen')!;
    expect(nucleus.stand).toBe('moved');
    expect(nucleus.frames.some(({ queen }) => queen)).toBe(true);
    expect(nucleus.frames.length).toBeLessThan(STRONG.length / 2);
  });

  it('leaves the old queen on the old stand when asked', () => {
    const { parts } = planSplit({ frames: STRONG, parts: 2, queenStays: true });
    expect([parts[0]?.queen, parts[0]?.stand]).toEqual(['old-queen', 'old-stand']);
  });

  it('shakes bees only from frames that stay in another part, and each frame once', () => {
    const { parts } = planSplit({ frames: STRONG, parts: 4 });
    const off = parts.flatMap(({ shakenOff }) => shakenOff ?? []).map(({ id }) => id);
    const into = parts.flatMap(({ shakenFrom }) => shakenFrom ?? []).map(({ id }) => id);
    expect(off.sort()).toEqual(into.sort());
    expect(new Set(off).size).toBe(off.length);
  });

  it('says that a weak colony is too small, whatever the partition', () => {
    const { weak } = planSplit({ frames: WEAK, parts: 2 });
    expect(weak.map(({ code }) => code)).toContain('too-few-bees');
  });

  it('follows wished shares', () => {
    const size = (shares: readonly number[]) =>
      planSplit({ frames: STRONG, parts: 2, shares }).parts[1]!.frames.reduce(
        (sum, { bees }) => sum + bees,
        0,
      );
    expect(size([0.3, 0.7])).toBeGreaterThan(size([0.7, 0.3]));
  });

  it('is the same every time', () => {
    const wish = { frames: STRONG, parts: 3 } as const;
    expect(planSplit(wish)).toEqual(planSplit(wish));
  });

  it('counts on eggs of a raised queen 25 days after the split: 13 to emergence and 12 more', () => {
    expect(DAYS_TO_RAISED_EGGS).toBe(13 + 12);
  });
});
