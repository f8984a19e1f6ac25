/**
 * Distances of matings: Jensen et al. 2005, Conserv. Genet. 6:527 (abstract read): 50 % within 2.5 km, 90 % within 7.5 km,
 * maximum 15 km. The other values are derived from the two kernels through those quantiles.
 */
import { describe, expect, it } from 'vitest';
import { LOGNORMAL_KERNEL, WEIBULL_KERNEL } from '../../graph/choice/index.ts';

describe('the share of matings within a distance', () => {
  it.each([
    ['Weibull', WEIBULL_KERNEL],
    ['lognormal', LOGNORMAL_KERNEL],
  ])('is one half at 2.5 km and nine tenths at 7.5 km (%s)', (_, { within }) => {
    expect(within(2.5)).toBeCloseTo(0.5, 9);
    expect(within(7.5)).toBeCloseTo(0.9, 9);
    expect(within(0)).toBe(0);
  });

  it.each([
    ['Weibull', WEIBULL_KERNEL, [0.224821, 0.771993, 0.957283, 0.992635]],
    ['lognormal', LOGNORMAL_KERNEL, [0.142564, 0.790618, 0.947076, 0.981697]],
  ] as const)('leaves next to nothing beyond 15 km (%s)', (_, { within }, expected) => {
    [1, 5, 10, 15].forEach((kilometres, k) => {
      expect(within(kilometres)).toBeCloseTo(expected[k]!, 6);
    });
  });
});
