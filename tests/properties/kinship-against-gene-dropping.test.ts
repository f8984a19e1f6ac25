import { describe, expect, it } from 'vitest';
import { broodInbreedingOf } from '../../graph/kinship/inbreeding.ts';
import { compiled, inbreedingById, kinshipOf } from '../helpers/compiled.ts';
import { dropGenes, type Estimate, spermShares } from '../helpers/drop-genes.ts';
import { sisters } from '../helpers/pedigrees.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';

const REPLICATES = 10_000;
const QUEENS = 10;

/**
 * Of the about 75 figures of each of 12 pedigrees none should lie further than this many standard errors from its
 * expectation: a chance of about 900 * 6e-7 = 5e-4 with 5, had the seeds not been fixed.
 */
const STANDARD_ERRORS = 5;
/** A figure that never varied in the replicates is known but for events rarer than these: rule of three, doubled. */
const RARE = 6 / REPLICATES;

function expectWithin(name: string, expected: number, { mean, standardError }: Estimate): void {
  const allowed = Math.max(STANDARD_ERRORS * standardError, standardError === 0 ? RARE : 0);
  expect(Math.abs(expected - mean), `${name}: expected ${expected}, dropped ${mean}`).toBeLessThanOrEqual(
    allowed,
  );
}

describe('kinship, inbreeding and brood inbreeding', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])(
    'agree with genes dropped by lot, random pedigree %i',
    (seed) => {
      const input = randomPedigree(seed * 1009, QUEENS);
      const pedigree = compiled(input);
      const dropped = dropGenes(input, REPLICATES, seed);
      pedigree.queenIds.forEach((a, queen) => {
        expectWithin(`F of ${a}`, inbreedingById(pedigree, a), dropped.inbreeding(a));
        const brood = dropped.broodInbreeding(a);
        if (brood) expectWithin(`brood of ${a}`, broodInbreedingOf(pedigree, queen)!, brood);
        else expect(broodInbreedingOf(pedigree, queen)).toBeUndefined();
        for (const b of pedigree.queenIds.slice(queen)) {
          expectWithin(`${a} and ${b}`, kinshipOf(pedigree, a, b), dropped.kinship(a, b));
        }
      });
    },
  );
});

describe('the judge', () => {
  it.each([1, 1.5, 2, 3, 12])('shares sperm so that the sum of squares is 1/%d', (n) => {
    const shares = spermShares(n);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shares.reduce((sum, share) => sum + share * share, 0)).toBeCloseTo(1 / n, 12);
  });

  it('tells sisters by one drone from sisters by twelve', () => {
    const dropped = dropGenes(sisters(1), REPLICATES, 1).kinship('A', 'B');
    const other = kinshipOf(compiled(sisters(12)), 'A', 'B');
    expect(Math.abs(other - dropped.mean)).toBeGreaterThan(STANDARD_ERRORS * dropped.standardError);
  });
});
