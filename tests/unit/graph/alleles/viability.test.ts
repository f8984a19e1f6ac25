import { describe, expect, it } from 'vitest';
import { wholeMates } from '../../../../graph/alleles/gene-drop.ts';
import {
  backgroundShares,
  broodViabilities,
  broodViability,
  droneSource,
  mixSources,
  retainedAlleles,
  unrelatedLoss,
} from '../../../../graph/alleles/index.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';
import { RELATIVES, smallPedigree } from '../../../helpers/small-pedigrees.ts';

const pedigree = smallPedigree(RELATIVES);
const motherSource = (of: string) =>
  droneSource(pedigree, { kind: 'drone-mothers', droneMothers: [{ of, share: 1 }], backgrounds: [] });
const baseSource = droneSource(pedigree, {
  kind: 'drone-mothers',
  droneMothers: [],
  backgrounds: [{ of: 'base', share: 1 }],
});
const TEN = new Map([['base', { count: 10 }]]);

/** Spread of viability between queens who met so many unrelated drones, each matching with chance twice the loss. */
const binomialSpread = (loss: number, mates: number) => Math.sqrt((2 * loss * (1 - 2 * loss)) / (4 * mates));

describe('brood viability', () => {
  it('with unrelated drones of 10 alleles has the mean, spread and chance of no match of the binomial', () => {
    const found = broodViability(
      pedigree,
      { of: { queen: 'V' }, drones: baseSource, mates: 12, alleles: TEN },
      { histories: 20_000 },
    );
    expect(Math.abs(found.mean - 0.9)).toBeLessThan(4 * found.standardError);
    expect(found.standardDeviation).toBeCloseTo(binomialSpread(0.1, 12), 2);
    expect(found.noMatch).toBeCloseTo(0.8 ** 12, 2);
    expect(found.firstOrder.loss).toBeCloseTo(0.1, 12);
  });

  it('with drones of one mother spreads more than with as many unrelated ones that match as often', () => {
    const found = broodViability(pedigree, {
      of: { queen: 'V' },
      drones: motherSource('D'),
      mates: 12,
      alleles: TEN,
    });
    expect(found.standardDeviation).toBeGreaterThan(1.2 * binomialSpread(found.loss, 12));
  });

  it('of a list is that of each mating by itself, within Monte Carlo error', () => {
    const of = [{ queen: 'V' }, { daughterOf: 'D' }] as const;
    const drones = [baseSource, motherSource('D'), motherSource('super')];
    const rest = { mates: 12, alleles: TEN };
    const list = broodViabilities(pedigree, { ...rest, of, drones }, { histories: 20_000 });
    drones.forEach((source, s) => {
      of.forEach((queen, q) => {
        const alone = broodViability(
          pedigree,
          { ...rest, of: queen, drones: source },
          { histories: 20_000, seed: 2 },
        );
        const listed = list[s]![q]!;
        expect(Math.abs(listed.mean - alone.mean)).toBeLessThan(
          4 * Math.hypot(listed.standardError, alone.standardError),
        );
        expect(listed.standardDeviation).toBeCloseTo(alone.standardDeviation, 2);
        expect(listed.noMatch).toBeCloseTo(alone.noMatch, 1);
        expect(listed.firstOrder).toEqual(alone.firstOrder);
      });
    });
  });

  it('of a daughter to come is that of a recorded daughter whose sisters are told nothing', () => {
    const query = { drones: motherSource('super'), mates: 12, alleles: TEN };
    const coming = broodViability(pedigree, { ...query, of: { daughterOf: 'D' } }, { histories: 20_000 });
    const recorded = broodViability(
      pedigree,
      { ...query, of: { queen: 'V' } },
      { histories: 20_000, seed: 2 },
    );
    expect(Math.abs(coming.loss - recorded.loss)).toBeLessThan(
      4 * Math.hypot(coming.standardError, recorded.standardError),
    );
    expect(coming.firstOrder.kinship).toBeCloseTo(recorded.firstOrder.kinship, 12);
  });

  it('of a queen mated to her own sons is one half, however long it goes on, while first order says more', () => {
    const selfed = smallPedigree({
      queens: [
        { id: '0', met: '0' },
        { id: '1', dam: '0', met: '1' },
        { id: '2', dam: '1', met: '2' },
        { id: '3', dam: '2' },
      ],
    });
    const drones = droneSource(selfed, {
      kind: 'drone-mothers',
      droneMothers: [{ of: '3', share: 1 }],
      backgrounds: [],
    });
    const alleles = new Map([['base', { count: Infinity }]]);
    const found = broodViability(
      selfed,
      { of: { queen: '3' }, drones, mates: 12, alleles },
      { histories: 4_000 },
    );
    expect(Math.abs(found.loss - 0.5)).toBeLessThan(1e-12);
    // F of successive selfed queens: 0, 1/2, 3/4, 7/8; kinship with own drones (1 + F)/2 = 15/16, capped at 1/2.
    expect(found.firstOrder.kinship).toBeCloseTo(15 / 16, 12);
    expect(found.firstOrder.loss).toBe(0.5);
  });

  it('with single known drones weighs them by their shares and draws nothing', () => {
    const drones = droneSource(pedigree, { kind: 'drones', drones: [{ of: 'd', share: 1 }] });
    const found = broodViability(
      pedigree,
      { of: { queen: 'V' }, drones, mates: 1, alleles: new Map([['base', { count: Infinity }]]) },
      { histories: 500 },
    );
    // V got the one allele of her father d for certain: the same drone again always matches.
    expect(found.mean).toBe(0.5);
    expect(found.standardDeviation).toBe(0);
  });

  it('is the same for the same seed and another for another', () => {
    const query = { of: { queen: 'V' }, drones: motherSource('G'), mates: 12, alleles: TEN } as const;
    const once = broodViability(pedigree, query, { histories: 200, seed: 7 });
    expect(broodViability(pedigree, query, { histories: 200, seed: 7 })).toEqual(once);
    expect(broodViability(pedigree, query, { histories: 200, seed: 8 })).not.toEqual(once);
  });

  it('needs a number of alleles for every background and says which lacks it', () => {
    const query = { of: { queen: 'V' }, drones: baseSource, mates: 12, alleles: new Map() } as const;
    expect(() => broodViability(pedigree, query)).toThrow(/background 'base'/);
  });
});

describe('parts of brood viability', () => {
  it('shares of backgrounds follow dams and drones', () => {
    const two = smallPedigree({
      queens: [{ id: 'a', met: { b: 0.5, bought: 0.5 } }, { id: 'b' }, { id: 'c', dam: 'a' }],
      backgrounds: { base: 0.1, bought: 0 },
    });
    const c = droneSource(two, {
      kind: 'drone-mothers',
      droneMothers: [{ of: 'c', share: 1 }],
      backgrounds: [],
    });
    expect(Object.fromEntries(backgroundShares(two, c))).toEqual({ base: 0.75, bought: 0.25 });
  });

  it('unrelated queens and drones of nested sets match by the larger set, and never where no two genes are alike', () => {
    expect(unrelatedLoss({ count: 10 }, { count: 20 })).toBeCloseTo(1 / 20, 12);
    expect(unrelatedLoss({ count: 10 }, { count: Infinity })).toBe(0);
    expect(unrelatedLoss({ frequencies: [0.5, 0.5] }, { count: Infinity })).toBe(0);
  });

  it('one allele alone, half an allele, or frequencies beyond 1 are refused', () => {
    expect(() => unrelatedLoss({ count: 1 }, { count: 10 })).toThrow(/2 or more/);
    expect(() => unrelatedLoss({ count: 10.5 }, { count: 10 })).toThrow(/2 or more/);
    expect(() => unrelatedLoss({ frequencies: [0.5, 0.6] }, { count: 10 })).toThrow(/sum to 1/);
  });

  it('mixed sources add the shares of the same node', () => {
    const mixed = mixSources([
      { source: motherSource('D'), share: 0.25 },
      { source: baseSource, share: 0.5 },
      { source: motherSource('D'), share: 0.25 },
    ]);
    expect([...mixed.weights].sort()).toEqual([0.5, 0.5]);
  });

  it('a number of mates that is not whole keeps the mean chance of two daughters sharing a father', () => {
    const random = randomGenerator(3);
    let sum = 0;
    for (let k = 0; k < 40_000; k++) sum += 1 / wholeMates(1.5, random);
    expect(sum / 40_000).toBeCloseTo(1 / 1.5, 2);
    expect(wholeMates(12, random)).toBe(12);
  });
});

describe('alleles retained', () => {
  it('by one queen are two, by her and an unrelated one four where no two founder genes are alike', () => {
    const [one, two] = retainedAlleles(
      pedigree,
      [
        { name: 'one', queens: ['V'] },
        { name: 'two', queens: ['V', 'H'] },
      ],
      new Map([['base', { count: Infinity }]]),
    );
    expect(one).toEqual({ name: 'one', mean: 2, low: 2, median: 2, high: 2 });
    expect(two!.mean).toBe(4);
  });

  it('by super-sisters are three, or two when they got the same one of their dam (half of the time)', () => {
    const [sisters] = retainedAlleles(
      pedigree,
      [{ name: 'sisters', queens: ['V', 'super'] }],
      new Map([['base', { count: Infinity }]]),
      { histories: 10_000 },
    );
    // Both have the father's allele; the dam gives each one of two: alike with chance 1/2, so the mean is 2.5.
    expect(sisters!.mean).toBeCloseTo(2.5, 1);
  });
});
