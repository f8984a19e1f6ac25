import { describe, expect, it } from 'vitest';
import { miteGrowth } from '../../graph/merit/counts/growth.ts';
import { infestation } from '../../graph/merit/counts/infestation.ts';

const wash = (mites: number, bees: number) => ({ method: 'wash', mites, bees }) as const;

/**
 * Macedo, Wu & Ellis 2002, J. Apic. Res. 41:3 (abstract read): powdered sugar brought down 92.9 +- 5.5 % of the mites.
 */
describe('the sugar shake of Macedo, Wu & Ellis 2002', () => {
  it('is corrected by 0.929, with the published 0.055 added to its doubt', () => {
    const { corrected, high } = infestation({ method: 'sugar-shake', mites: 929, bees: 100_000 });
    expect(corrected!.rate).toBeCloseTo(0.01, 12);
    // The share of mites found is 0.929 +- 0.055; at 95 % that alone is a factor exp(1.96 * 0.055 / 0.929) = 1.123.
    expect(corrected!.rate / corrected!.low).toBeGreaterThan(Math.exp((1.96 * 0.055) / 0.929));
    expect(corrected!.high).toBeGreaterThan(high / 0.929);
  });
});

/**
 * Martin 1998, Ecol. Model. 109:267 (from memory, not re-read): mites grow by 0.021 to 0.025 a day while there is brood;
 * bee-health advice (read): they double about every month.
 */
describe('the growth of mites in Martin 1998', () => {
  it.each([0.021, 0.025])('at %f a day doubles in about a month', (rate) => {
    const grown = miteGrowth(wash(1000, 1e5), wash(1000 * Math.exp(rate * 30), 1e5), 30);
    expect(grown.rate).toBeCloseTo(rate, 10);
    expect(grown.doublingDays).toBeGreaterThan(27);
    expect(grown.doublingDays).toBeLessThan(34);
  });
});

/**
 * The "rule of three" (Hanley & Lippman-Hand 1983, J. Am. Med. Assoc. 249:1743, from memory): none in n is below 3/n at
 * 95 %, one-sided.
 */
describe('the rule of three', () => {
  it.each([100, 300, 600])('none in %i bees is below 3/n, and not far below', (bees) => {
    const { below } = infestation(wash(0, bees));
    expect(below).toBeLessThan(3 / bees);
    expect(below).toBeGreaterThan((3 / bees) * 0.98);
  });
});
