import { describe, expect, it } from 'vitest';
import { ASSUMPTIONS } from '../../graph/increase/assumptions.ts';
import { contentOf, FRAME_SIZES, sideDm2, sumContent } from '../../graph/increase/comb.ts';
import { type Bees, layingRate, nextDay } from '../../graph/increase/population.ts';
import { comb } from '../helpers/combs.ts';

/**
 * Burgett & Burikam 1985, J. Econ. Entomol. 78:1154 (opening read): bees on a comb at full holding capacity. Their own
 * figure of about 2430 on both sides of a Langstroth deep is from memory, not re-read. Quoted there and read: 1400 as
 * the mean of occupied deep combs (Simpson 1969), 1900 for a single layer on both sides (Kauffeld 1975).
 */
describe('published numbers of bees on a deep comb', () => {
  const size = { name: 'deep, counted', sideDm2: 8.8, fullBees: 2430 };
  const bees = (frames: number): number =>
    sumContent(
      Array.from({ length: frames }, (_, at) =>
        contentOf({ ...comb(`${at}`, [1, 0, 0, 0]), size }, 'likely'),
      ),
    ).bees;

  it('make 8 full combs 19,440 bees and 10 full combs 24,300', () => {
    expect([bees(8), bees(10)]).toEqual([19_440, 24_300]);
  });

  it('lie, for the full capacity, within the range assumed for bees on a dm2', () => {
    const perDm2 = 2430 / (2 * sideDm2(FRAME_SIZES[0]!));
    expect(perDm2).toBeGreaterThanOrEqual(ASSUMPTIONS.beesPerDm2.low);
    expect(perDm2).toBeLessThanOrEqual(ASSUMPTIONS.beesPerDm2.high);
  });

  it('are above the mean of combs that are merely occupied, as a fully covered comb must be', () => {
    const full = contentOf(comb('a', [1, 0, 0, 0]), 'low').bees;
    expect(full).toBeGreaterThan(1400);
    expect(full).toBeGreaterThan(1900);
  });
});

/**
 * Betts 1938, Bee World 19(9):106 (second-hand, in a later reprint): worker cells on both sides of a dm2 of comb = 2.309 n^2, with
 * n the cells that go into 10 cm. A deep comb holds 3300 to 3500 cells a side (from memory).
 */
describe('published numbers of cells on comb', () => {
  it('give, at 5.4 mm a cell, the assumed 400 cells a dm2 of one side to within 1 in 40', () => {
    const oneSide = (2.309 * (100 / 5.4) ** 2) / 2;
    expect(Math.abs(oneSide - ASSUMPTIONS.cellsPerDm2.likely) / 400).toBeLessThan(1 / 40);
    expect(oneSide).toBeGreaterThanOrEqual(ASSUMPTIONS.cellsPerDm2.low);
  });

  it('give a deep comb some 3300 to 3600 cells a side', () => {
    const side = contentOf(comb('a', [0, 1, 0, 0]), 'likely').openBrood / 2;
    expect(side).toBeGreaterThanOrEqual(3300);
    expect(side).toBeLessThanOrEqual(3600);
  });
});

/**
 * Khoury, Myerscough & Barron 2011, PLoS ONE 6:e18491: with L = 2000, w = 27,000, a = 0.25 and s = 0.75 colonies collapse
 * when more than 0.355 of the foragers are lost a day (values from memory; that there is such a limit was read in
 * the abstract). The closed form of the limit and of the colony at rest is derived from the paper's equations:
 *   u = F / N,  m u = L / (w + N),  (a - s u)(1 - u) = L / (w + N)
 */
describe('the published population model', () => {
  const [most, half, first, held] = [2000, 27_000, 0.25, 0.75];

  /** House bees and foragers after very many days with brood emerging at once, as in the paper. */
  function atRest(foragerLoss: number): number {
    let bees: Bees = { house: 16_000, foragers: 8000 };
    for (let day = 0; day < 20_000; day++) {
      const all = bees.house + bees.foragers;
      const rates = { firstForaging: first, foragingHeldBack: held, foragerLoss };
      bees = nextDay(bees, layingRate(all, most, half), rates);
    }
    return bees.house + bees.foragers;
  }

  it('keeps a colony below a loss of 0.355 a day and lets it die out above', () => {
    expect(atRest(0.345)).toBeGreaterThan(300);
    expect(atRest(0.365)).toBeLessThan(1);
  });

  it('has the limit where its equations put it: 0.355', () => {
    const ratio = most / half;
    // s u^2 - (a + s) u + a - L / w = 0 at N = 0, the smaller root; then m = (L / w) / u.
    const root = (first + held - Math.sqrt((first + held) ** 2 - 4 * held * (first - ratio))) / (2 * held);
    expect(ratio / root).toBeCloseTo(0.355, 3);
  });

  it('comes to rest at the size that solves its equations', () => {
    const loss = 0.154;
    const foragersPerHouseBee =
      (-(loss + held - first) + Math.sqrt((loss + held - first) ** 2 + 4 * loss * first)) / (2 * loss);
    const size = (most * (1 + foragersPerHouseBee)) / (loss * foragersPerHouseBee) - half;
    expect(atRest(loss)).toBeCloseTo(size, 0);
  });

  it('has, at rest, a share of foragers within the range assumed to fly home from a split', () => {
    for (const loss of [0.05, 0.1, 0.154, 0.2]) {
      const perHouse =
        (-(loss + held - first) + Math.sqrt((loss + held - first) ** 2 + 4 * loss * first)) / (2 * loss);
      const share = perHouse / (1 + perHouse);
      expect(share).toBeGreaterThanOrEqual(ASSUMPTIONS.foragerShare.low);
      expect(share).toBeLessThanOrEqual(ASSUMPTIONS.foragerShare.high);
    }
  });
});
