/**
 * Published facts of the sex locus.
 *
 * - 1/k of the brood lost with k equally frequent alleles, half of a matching drone's brood lost: Mackensen 1951,
 *   J. Econ. Entomol. 44:640; Adams et al. 1977, Genetics 86:583; Page 1980, Genetics 96:263 (from memory, not
 *   re-read); half of the brood surviving after brother-sister mating: Woyke 1963, J. Apic. Res. 2:19 (abstract).
 * - 28 alleles in Western Australia, 32 in New South Wales, 9 in both, 51 in all: report of AgriFutures Australia
 *   on sex alleles of its honey bees (read).
 * - Kinship of the named matings of single inseminations: F of one-off inbreeding matings, the tabular method for
 *   haplodiploids; the classic series are Crow & Roberts 1950, Genetics 35:612 and Polhemus, Lush & Rothenbuhler
 *   1950, J. Hered. 41:151, whose tables were not found, so these values are derived.
 */
import { describe, expect, it } from 'vitest';
import { broodViability, droneSource, lossFromKinship, unrelatedLoss } from '../../graph/alleles/index.ts';
import { RELATIVES, smallPedigree } from '../helpers/small-pedigrees.ts';

describe('sex alleles, against published values', () => {
  it.each([2, 3, 6, 10, 12, 19, 20, 28, 32, 51, 121])(
    '%i equally frequent alleles lose 1/k of the brood',
    (k) => {
      expect(unrelatedLoss({ count: k }, { count: k })).toBeCloseTo(1 / k, 12);
      const listed = { frequencies: new Array<number>(k).fill(1 / k) };
      expect(unrelatedLoss(listed, listed)).toBeCloseTo(1 / k, 12);
    },
  );

  it('one drone that matches leaves half of the brood, one that does not leaves all (Woyke 1963)', () => {
    const pedigree = smallPedigree(RELATIVES);
    const brother = droneSource(pedigree, {
      kind: 'drone-mothers',
      droneMothers: [{ of: 'D', share: 1 }],
      backgrounds: [],
    });
    const alleles = new Map([['base', { count: Infinity }]]);
    const found = broodViability(
      pedigree,
      { of: { queen: 'V' }, drones: brother, mates: 1, alleles },
      { histories: 20_000 },
    );
    // A brother carries the allele that both got of their dam half of the time.
    expect([found.low, found.high]).toEqual([0.5, 1]);
    expect(found.noMatch).toBeCloseTo(0.5, 1);
  });

  describe('10 alleles and 12 unrelated drones: matched drones are binomial, each costs half of his own brood', () => {
    const pedigree = smallPedigree(RELATIVES);
    const drones = droneSource(pedigree, {
      kind: 'drone-mothers',
      droneMothers: [],
      backgrounds: [{ of: 'base', share: 1 }],
    });
    const alleles = new Map([['base', { count: 10 }]]);
    const found = broodViability(
      pedigree,
      { of: { queen: 'V' }, drones, mates: 12, alleles },
      { histories: 40_000 },
    );

    it('mean 0.9, variance 1/300, no match 0.8^12', () => {
      expect(Math.abs(found.mean - 0.9)).toBeLessThan(4 * found.standardError);
      expect(found.standardDeviation).toBeCloseTo(Math.sqrt(1 / 300), 3);
      expect(found.noMatch).toBeCloseTo(0.0687195, 2);
    });

    it('half of the queens stay at or below 22/24, the middle of the binomial; nine in ten between 19/24 and 1', () => {
      // C(12, m) 0.2^m 0.8^(12 - m): P(m >= 3) = 0.4417, P(m >= 2) = 0.7251; P(m >= 5) = 0.0726, P(m >= 6) = 0.0194.
      expect(found.median).toBeCloseTo(22 / 24, 12);
      expect(found.low).toBeCloseTo(19 / 24, 12);
      expect(found.high).toBe(1);
    });
  });

  it('unequal frequencies are conditioned on the queen being heterozygous', () => {
    const three = { frequencies: [0.5, 0.3, 0.2] };
    expect(unrelatedLoss(three, three)).toBeCloseTo(0.354839, 6);
    const five = { frequencies: [0.3, 0.3, 0.2, 0.1, 0.1] };
    expect(unrelatedLoss(five, five)).toBeCloseTo(0.231579, 6);
  });

  it('28 alleles in Western Australia and 32 in New South Wales, 9 of them in both, cost 9/(28 x 32) of a cross', () => {
    const western = Array.from({ length: 51 }, (_, allele) => (allele < 28 ? 1 / 28 : 0));
    const eastern = Array.from({ length: 51 }, (_, allele) => (allele >= 51 - 32 ? 1 / 32 : 0));
    const loss = unrelatedLoss({ frequencies: western }, { frequencies: eastern });
    expect(loss).toBeCloseTo(9 / (28 * 32), 12);
  });

  it.each([
    ['V', 0.5, 'her own sons'],
    ['super', 0.375, 'sons of a super-sister'],
    ['D', 0.25, 'sons of her dam'],
    ['S', 0.25, 'sons of the queen who bore her father'],
    ['G', 0.125, 'sons of her granddam'],
  ])('with every founder gene its own allele, drones of %s cost the kinship %d (%s)', (mother, kinship) => {
    const pedigree = smallPedigree(RELATIVES);
    const drones = droneSource(pedigree, {
      kind: 'drone-mothers',
      droneMothers: [{ of: mother, share: 1 }],
      backgrounds: [],
    });
    const alleles = new Map([['base', { count: Infinity }]]);
    const result = broodViability(
      pedigree,
      { of: { queen: 'V' }, drones, mates: 12, alleles },
      { histories: 20_000 },
    );
    expect(result.firstOrder.kinship).toBeCloseTo(kinship, 12);
    expect(Math.abs(result.loss - kinship)).toBeLessThan(4 * result.standardError + 1e-12);
  });

  it('half-sisters of unrelated drones cost 1/8', () => {
    const pedigree = smallPedigree(RELATIVES);
    const drones = droneSource(pedigree, {
      kind: 'drone-mothers',
      droneMothers: [{ of: 'half', share: 1 }],
      backgrounds: [],
    });
    const alleles = new Map([['base', { count: Infinity }]]);
    const result = broodViability(
      pedigree,
      { of: { queen: 'H' }, drones, mates: 12, alleles },
      { histories: 20_000 },
    );
    expect(Math.abs(result.loss - 1 / 8)).toBeLessThan(4 * result.standardError);
  });

  it('with kinship f and k alleles the loss is f + (1 - f)/k to first order', () => {
    expect(lossFromKinship(0.25, 1 / 10)).toBeCloseTo(0.325, 12);
    expect(lossFromKinship(0, 1 / 20)).toBeCloseTo(0.05, 12);
  });
});
