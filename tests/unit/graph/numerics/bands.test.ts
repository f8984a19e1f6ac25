import { describe, expect, it } from 'vitest';
import { bandsOf, sortedQuantile } from '../../../../graph/numerics/bands.ts';

describe('bands', () => {
  it('of 0 to 100 are 5, 50 and 95, whatever the order, and the values are left alone', () => {
    const values = Float64Array.from({ length: 101 }, (_, k) => (k * 37) % 101);
    expect(bandsOf(values)).toEqual({ mean: 50, low: 5, median: 50, high: 95 });
    expect(values[1]).toBe(37);
  });

  it('lie between two values in proportion', () => {
    expect(sortedQuantile([10, 20], 0.25)).toBe(12.5);
    expect(sortedQuantile([10, 20], 1)).toBe(20);
  });

  it('of nothing are refused', () => {
    expect(() => sortedQuantile([], 0.5)).toThrow(/undefined/);
  });
});
