import { describe, expect, it } from 'vitest';
import {
  type ContributionProblem,
  type ContributionResult,
  contributionsWithinKinship,
  leastKinContributions,
  optimalContributions,
  tradeOffCurve,
  wholeDaughters,
} from '../../../../graph/choice/index.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';

function solved(result: ContributionResult) {
  if (!result.ok) throw new Error(result.found);
  return result;
}

/** Two unrelated queens and the better one's sister: kinship 1/2 with self, 1/8 between the sisters. */
const THREE: ContributionProblem = {
  merit: [10, 9, 4],
  kinship: [0.5, 0.125, 0, 0.125, 0.5, 0, 0, 0, 0.5],
};

describe('optimal contributions', () => {
  it('put everything on the best queen when kinship costs nothing', () => {
    expect([...solved(optimalContributions(THREE, 0)).shares]).toEqual([1, 0, 0]);
  });

  it('fill the best queens up to their caps when kinship costs nothing', () => {
    const found = solved(optimalContributions({ ...THREE, caps: [0.5, 0.3, 1] }, 0));
    expect([...found.shares].map((share) => Number(share.toFixed(9)))).toEqual([0.5, 0.3, 0.2]);
  });

  it('share alike between equal unrelated queens, and halve the lone kinship', () => {
    const found = solved(optimalContributions({ merit: [5, 5], kinship: [0.5, 0, 0, 0.5] }, 1));
    for (const share of found.shares) expect(share).toBeCloseTo(0.5, 12);
    expect(found.groupKinship).toBeCloseTo(0.25, 12);
  });

  it('of least kinship give two sisters less than half as much as an unrelated pair would get', () => {
    // Sisters alike: c = (s, s, 1 - 2s), kinship 2 s^2 (1/2 + 1/8) + (1 - 2s)^2/2, least at s = 4/13.
    const found = solved(leastKinContributions(THREE));
    expect(found.shares[0]).toBeCloseTo(4 / 13, 10);
    expect(found.shares[1]).toBeCloseTo(4 / 13, 10);
    expect(found.converged).toBe(true);
  });

  it('hold the kinship with the drones under its limit and tell what the limit costs', () => {
    const problem = { ...THREE, poolKinship: [0.2, 0, 0], poolKinshipLimit: 0.1 };
    const found = solved(optimalContributions(problem, 0));
    expect(found.shares[0]).toBeCloseTo(0.5, 9);
    expect(found.poolKinship).toBeCloseTo(0.1, 9);
    // One unit of kinship is 1/0.2 = 5 shares moved between queens one index point apart.
    expect(found.limitPrice).toBeCloseTo(5, 6);
    expect(solved(optimalContributions({ ...problem, poolKinshipLimit: 0.3 }, 0)).limitPrice).toBe(0);
  });

  it('say in words which limit cannot be met and the least that can', () => {
    const low = optimalContributions({ ...THREE, poolKinship: [0.2, 0.1, 0.15], poolKinshipLimit: 0.05 }, 1);
    expect(low).toMatchObject({ ok: false, code: 'pool-limit-too-low', least: 0.1 });
    if (!low.ok) expect(low.found).toContain('the least these candidates can reach is 10 %');
    expect(optimalContributions({ ...THREE, caps: [0.2, 0.2, 0.2] }, 1)).toMatchObject({
      code: 'caps-too-small',
    });
    expect(optimalContributions({ merit: [], kinship: [] }, 1)).toMatchObject({ code: 'no-candidates' });
    expect(contributionsWithinKinship(THREE, 0.1)).toMatchObject({ code: 'kinship-limit-too-low' });
  });

  it('within a limit that the best queen alone keeps are the best queen alone', () => {
    expect([...solved(contributionsWithinKinship(THREE, 0.5)).shares]).toEqual([1, 0, 0]);
  });

  it('within a limit are a point of the whole curve, before which every point is beyond it', () => {
    const curve = tradeOffCurve(THREE, { points: 12, kinshipLimit: 0.3 });
    if (!curve.ok) throw new Error(curve.found);
    const { points, within } = curve;
    expect(within).toBeGreaterThan(0);
    expect(points[within]?.groupKinship).toBeCloseTo(0.3, 9);
    expect([...points[within]!.shares]).toEqual([...solved(contributionsWithinKinship(THREE, 0.3)).shares]);
    expect(points.slice(0, within).every(({ groupKinship }) => groupKinship > 0.3)).toBe(true);
    const kinships = points.map(({ groupKinship }) => groupKinship);
    expect(kinships).toEqual([...kinships].sort((a, b) => b - a));
  });

  it('within a limit that all keep leave the curve as it is; within one that none keeps there is no curve', () => {
    const whole = tradeOffCurve(THREE, { points: 12 });
    expect(tradeOffCurve(THREE, { points: 12, kinshipLimit: 0.5 })).toEqual(whole);
    expect(tradeOffCurve(THREE, { points: 12, kinshipLimit: 0.1 })).toMatchObject({
      code: 'kinship-limit-too-low',
    });
  });

  it('of twins are found although their kinship matrix is singular', () => {
    const twins = { merit: [2, 2, 1], kinship: [0.5, 0.5, 0, 0.5, 0.5, 0, 0, 0, 0.5] };
    const found = solved(optimalContributions(twins, 1));
    expect(found.converged).toBe(true);
    // As one queen: c = t + (2 - 1)/(4 lambda) with t = 1/2.
    expect(found.shares[0]! + found.shares[1]!).toBeCloseTo(0.75, 8);
  });

  it('of twins that hardly differ in index are found at every weight on kinship', () => {
    const twins = {
      merit: [0.4536, 0.4566, -0.6308],
      kinship: [0.2, 0.2, 0.16, 0.2, 0.2, 0.16, 0.16, 0.16, 0.23],
    };
    for (const lambda of [0, 0.001, 1, 1_000, 100_000]) {
      const found = solved(optimalContributions(twins, lambda));
      expect(found.converged).toBe(true);
      expect(found.shares[0]).toBe(0);
    }
  });

  it('are forced where the caps leave one choice alone', () => {
    const found = solved(
      optimalContributions({ merit: [1, 0.993], kinship: [0.41, 0.11, 0.11, 0.3], caps: [0.5, 0.5] }, 0),
    );
    expect([...found.shares].map((share) => Number(share.toFixed(9)))).toEqual([0.5, 0.5]);
  });

  it('of 60 candidates give a whole curve of converged points', () => {
    const random = randomGenerator(5);
    const count = 60;
    const rows = Array.from({ length: count }, () => Array.from({ length: 12 }, () => random.uniform()));
    const kinship = rows.flatMap((a, i) =>
      rows.map((b, j) => 0.02 * a.reduce((sum, each, k) => sum + each * b[k]!, 0) + (i === j ? 0.4 : 0)),
    );
    const problem = { merit: rows.map(() => random.normal()), kinship, caps: rows.map(() => 0.3) };
    const curve = tradeOffCurve(problem);
    if (!curve.ok) throw new Error(curve.found);
    expect(curve.points.length).toBeGreaterThan(15);
    expect(curve.points.every(({ converged }) => converged)).toBe(true);
  });
});

describe('whole daughters', () => {
  it('sum to the number wanted and stay within one of their share', () => {
    expect([...wholeDaughters([0.5, 0.3, 0.2], 7)]).toEqual([4, 2, 1]);
    expect([...wholeDaughters([1 / 3, 1 / 3, 1 / 3], 10)]).toEqual([4, 3, 3]);
    expect([...wholeDaughters([0.7, 0.2, 0.1], 10)]).toEqual([7, 2, 1]);
  });

  it('are none of a queen without a share', () => {
    expect([...wholeDaughters([0.55, 0.45, 0], 3)]).toEqual([2, 1, 0]);
  });

  it('keep to the most that each queen may raise', () => {
    expect([...wholeDaughters([0.9, 0.1], 10, [5, 10])]).toEqual([5, 5]);
    expect([...wholeDaughters([0.9, 0.1], 10, [5, 2])]).toEqual([5, 2]);
  });

  it('of half a queen are refused', () => {
    expect(() => wholeDaughters([1], 2.5)).toThrow(/no number of daughters/);
  });
});
