import { describe, expect, it } from 'vitest';
import { betaBinomial, betaWithMoments, empiricalPrior } from '../../graph/merit/survival/shrinkage.ts';

/**
 * Tumours in control rats: Tarone 1982, Biometrics 38:215, as used by Gelman et al., Bayesian Data Analysis, chapter 5
 * (both from memory, not re-read). Seventy earlier experiments: mean share 0.136, standard deviation 0.103; the
 * current one 4 of 14. The book's prior by moments is Beta(1.4, 8.6), its posterior mean 0.223.
 */
const EARLIER_MEAN = 0.136;
const EARLIER_DEVIATION = 0.103;

describe('the beta-binomial of the rat tumour experiments', () => {
  it('has the prior Beta(1.4, 8.6) by moments', () => {
    const prior = betaWithMoments(EARLIER_MEAN, EARLIER_DEVIATION)!;
    expect(prior.a).toBeCloseTo(1.4, 1);
    expect(prior.b).toBeCloseTo(8.6, 0);
  });

  it('gives the current experiment the posterior Beta(5.4, 18.6), mean 0.225 and deviation 0.0835', () => {
    const posterior = betaBinomial({ a: 1.4, b: 8.6 }, { survived: 4, started: 14 });
    expect([posterior.a, posterior.b]).toEqual([5.4, 18.6]);
    expect(posterior.mean).toBeCloseTo(0.225, 12);
    expect(posterior.standardDeviation).toBeCloseTo(0.083516, 6);
  });

  it('gives the book mean 0.223 from the unrounded prior', () => {
    const prior = betaWithMoments(EARLIER_MEAN, EARLIER_DEVIATION)!;
    expect(Math.abs(betaBinomial(prior, { survived: 4, started: 14 }).mean - 0.223)).toBeLessThan(6e-4);
  });
});

/** The seventy earlier experiments, tumours/rats (Tarone 1982; from memory, not re-read). */
const EARLIER = `0/20 0/20 0/20 0/20 0/20 0/20 0/20 0/19 0/19 0/19 0/19 0/18 0/18 0/17 1/20 1/20 1/20 1/20 1/19 1/19
 1/18 1/18 2/25 2/24 2/23 2/20 2/20 2/20 2/20 2/20 2/20 1/10 5/49 2/19 5/46 3/27 2/17 7/49 7/47 3/20 3/20 2/13 9/48
 10/50 4/20 4/20 4/20 4/20 4/20 4/20 4/20 10/48 4/19 4/19 4/19 5/22 11/46 12/49 5/20 5/20 6/23 5/19 6/22 6/20 6/20
 6/20 16/52 15/47 15/46 9/24`;

describe('the prior read from the seventy earlier experiments', () => {
  const groups = EARLIER.split(/\s+/).map((text) => {
    const [survived, started] = text.split('/').map(Number);
    return { survived: survived!, started: started! };
  });

  it('starts from the published raw mean and deviation of the shares', () => {
    const shares = groups.map(({ survived, started }) => survived / started);
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    const deviation = Math.sqrt(
      shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (shares.length - 1),
    );
    expect(shares).toHaveLength(70);
    expect(mean).toBeCloseTo(EARLIER_MEAN, 3);
    expect(deviation).toBeCloseTo(EARLIER_DEVIATION, 3);
  });

  it('with the fallback set aside lies near the full posterior of the book, Beta(2.4, 14.3)', () => {
    const prior = empiricalPrior(groups, { logSpread: 10 });
    expect(prior.strengthFrom).toBe('groups');
    expect(Math.abs(prior.a / 2.4 - 1)).toBeLessThan(0.2);
    expect(Math.abs(prior.b / 14.3 - 1)).toBeLessThan(0.2);
  });
});
