import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withEntries } from '../../../src/journal/layered-map.ts';

describe('a map that grows without being copied', () => {
  it('reads like a plain map after any growth, and leaves every earlier map as it was', () => {
    const start = new Map(Array.from({ length: 600 }, (_, index) => [index, `first ${index}`]));
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.tuple(fc.nat(1200), fc.string()), { maxLength: 80 }), { maxLength: 20 }),
        (growth) => {
          const plain = new Map(start);
          let grown: ReadonlyMap<number, string> = start;
          const earlier: [ReadonlyMap<number, string>, [number, string][]][] = [];
          for (const step of growth) {
            earlier.push([grown, [...grown]]);
            grown = withEntries(grown, step);
            for (const [key, value] of step) plain.set(key, value);
          }
          expect([...grown].sort((a, b) => a[0] - b[0])).toEqual([...plain].sort((a, b) => a[0] - b[0]));
          expect(grown.size).toBe(plain.size);
          for (let key = 0; key <= 1200; key += 7)
            expect([grown.has(key), grown.get(key)]).toEqual([plain.has(key), plain.get(key)]);
          for (const [map, contents] of earlier) expect([...map]).toEqual(contents);
        },
      ),
      { numRuns: 40 },
    );
  });
});
