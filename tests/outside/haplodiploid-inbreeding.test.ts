/**
 * Inbreeding in a closed, randomly mating haplodiploid population, against theory.
 *
 * - Effective size with Nf females and Nm males where males are haploid: Ne = 9 Nf Nm / (4 Nm + 2 Nf), inbreeding
 *   rising by about 1/(2 Ne) a generation: Wright 1933, Proc. Natl. Acad. Sci. 19:411; Crow & Kimura 1970, An
 *   Introduction to Population Genetics Theory (both from memory, not re-read).
 * - The exact expectation for the look-ahead's own mating plan is derived below from the rules of kinship.
 */
import { describe, expect, it } from 'vitest';
import { type LookAheadInput, lookAhead } from '../../graph/choice/index.ts';

const QUEENS = 10;
const DAUGHTERS_EACH = 20;
const MATES = 12;
const SEASONS = 20;

const CLOSED: LookAheadInput = {
  policy: {
    colonies: QUEENS,
    breeders: QUEENS,
    daughtersEach: DAUGHTERS_EACH,
    success: 1,
    requeened: 1,
    ownDrones: 1,
    droneMothers: 'all',
    mates: MATES,
    winterLoss: 0,
    winterOnMerit: 0,
    reliability: 0,
  },
  founders: Array.from({ length: QUEENS }, (_, k) => ({ line: String(k) })),
  background: { merit: 0, kinship: 0, sexAlleles: 20 },
  variance: 1,
  seasons: SEASONS,
  replicates: 2_000,
  seed: 20,
};

/**
 * Expected F of each generation t of N queens, all replaced each season by daughters taken by lot out of N x d begun:
 *   s(t) = (1 + F(t))/2;  a(t): kinship of two queens of t;  c(t): of a queen of t + 1 with a random queen of t
 *   m(t) = s(t)/N + (1 - 1/N) a(t): of two random queens of t, drawn with replacement
 *   queens of t met drones of random queens of t - 1 (founders: of founders), so that
 *   F(t + 1) = c(t - 1),  c(t) = (m(t) + c(t - 1))/2,  c(-1) = m(0), m(-1) = m(0)
 *   p = (d - 1)/(N d - 1): two queens are sisters; two sisters share a father with chance 1/n
 *   a(t + 1) = (1 - p)(a(t) + 2 c(t - 1) + m(t - 1))/4 + p (s(t) + 2 c(t - 1) + 1/n + (1 - 1/n) m(t - 1))/4
 */
function expectedInbreeding(queens: number, daughtersEach: number, mates: number, seasons: number): number[] {
  const p = (daughtersEach - 1) / (queens * daughtersEach - 1);
  const m = (self: number, pair: number): number => self / queens + (1 - 1 / queens) * pair;
  let [self, pair] = [0.5, 0];
  let before = m(self, pair);
  let across = before;
  const series = [0];
  for (let season = 1; season <= seasons; season++) {
    const now = m(self, pair);
    const sisters = (self + 2 * across + 1 / mates + (1 - 1 / mates) * before) / 4;
    pair = ((1 - p) * (pair + 2 * across + before)) / 4 + p * sisters;
    self = (1 + across) / 2;
    series.push(across);
    across = (now + across) / 2;
    before = now;
  }
  return series;
}

/** Rise of inbreeding over one generation, late in the series, as a share of what is left to lose. */
function lateRise(series: readonly number[]): number {
  return 1 - (1 - series.at(-1)!) / (1 - series.at(-2)!);
}

function effectiveSize(females: number, males: number): number {
  return (9 * females * males) / (4 * males + 2 * females);
}

describe('inbreeding of a closed yard', () => {
  it('rises as the rules of kinship say, season by season, within Monte Carlo error', () => {
    const found = lookAhead(CLOSED, { viable: false });
    if (!found.ok) throw new Error('The policy is playable.');
    expectedInbreeding(QUEENS, DAUGHTERS_EACH, MATES, SEASONS).forEach((expected, season) => {
      const { mean, low, high } = found.seasons[season]!.inbreeding!;
      // The 90 % band is 3.29 standard deviations wide; 4 standard errors of the mean of 2,000 histories.
      const error = (high - low) / 3.29 / Math.sqrt(CLOSED.replicates);
      expect(Math.abs(mean - expected)).toBeLessThan(4 * error + 1e-12);
    });
  });

  it.each([
    [100, 12],
    [1_000, 12],
    [1_000, 1],
  ])(
    'is expected to rise by 1/(2 Ne) a generation (%i queens of %i mates, daughters by lot)',
    (queens, mates) => {
      const rise = lateRise(expectedInbreeding(queens, 1_000_000, mates, 100));
      expect(rise * 2 * effectiveSize(queens, queens * mates)).toBeCloseTo(1, 2);
    },
  );

  it('rises more slowly when only heterozygous eggs become queens', () => {
    const plain = lookAhead({ ...CLOSED, replicates: 300 }, { viable: false });
    const viable = lookAhead({ ...CLOSED, replicates: 300 });
    if (!plain.ok || !viable.ok) throw new Error('The policy is playable.');
    expect(viable.seasons.at(-1)!.inbreeding!.mean).toBeLessThan(plain.seasons.at(-1)!.inbreeding!.mean);
  });
});
