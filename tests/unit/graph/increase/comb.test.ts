import { describe, expect, it } from 'vitest';
import { contentOf, sideDm2, sumContent } from '../../../../graph/increase/comb.ts';
import { comb } from '../../../helpers/combs.ts';

describe('what a comb holds', () => {
  it('grows with the area of the frame, so that depths can be mixed in one hive', () => {
    const frame = comb('a', [1, 0.5, 0, 0]);
    const half = { ...frame, size: { name: 'half', sideDm2: 4.4 } };
    expect(contentOf(half, 'likely').bees).toBeCloseTo(contentOf(frame, 'likely').bees / 2, 9);
    expect(contentOf(half, 'likely').openBrood).toBeCloseTo(contentOf(frame, 'likely').openBrood / 2, 9);
  });

  it('may be set by the cells of one side: brood is counted in them, area follows', () => {
    const size = { name: 'counted', sideCells: 3000 };
    expect(sideDm2(size)).toBe(7.5);
    expect(contentOf({ ...comb('a', [0, 0.5, 0, 0]), size }, 'low').openBrood).toBe(3000);
  });

  it("takes the keeper's own count of a full frame in every case", () => {
    const size = { name: 'counted', sideDm2: 8.8, fullBees: 2000 };
    const frame = { ...comb('a', [0.5, 0, 0, 0]), size };
    expect([contentOf(frame, 'low').bees, contentOf(frame, 'high').bees]).toEqual([1000, 1000]);
  });

  it('adds up over frames, and an empty list holds nothing', () => {
    const frame = contentOf(comb('a', [1, 0.2, 0.3, 0.4]), 'likely');
    const two = sumContent([frame, frame]);
    expect(two.bees).toBeCloseTo(2 * frame.bees, 9);
    expect(two.storesKg).toBeCloseTo(2 * frame.storesKg, 9);
    expect(sumContent([]).bees).toBe(0);
  });
});
