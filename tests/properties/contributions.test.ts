import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ContributionProblem,
  type Contributions,
  leastKinContributions,
  optimalContributions,
  tradeOffCurve,
} from '../../graph/choice/index.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';

interface Case {
  readonly problem: ContributionProblem;
  readonly lambda: number;
}

/** Kinship as products of random founder shares (so a true kinship), some candidates twins of others. */
const cases: fc.Arbitrary<Case> = fc
  .record({
    seed: fc.integer({ min: 1, max: 1_000_000 }),
    count: fc.integer({ min: 1, max: 9 }),
    lambda: fc.constantFrom(0, 0.001, 0.1, 1, 5, 100),
    twins: fc.boolean(),
    capped: fc.boolean(),
    limited: fc.boolean(),
  })
  .map(({ seed, count, lambda, twins, capped, limited }) => {
    const random = randomGenerator(seed);
    const rows = Array.from({ length: count }, () => Array.from({ length: 5 }, () => random.uniform()));
    if (twins && count > 1) rows[1] = rows[0]!;
    const own = twins ? 0 : 0.2;
    const kinship = rows.flatMap((a, i) =>
      rows.map((b, j) => 0.1 * a.reduce((sum, each, k) => sum + each * b[k]!, 0) + (i === j ? own : 0)),
    );
    const poolKinship = rows.map(() => 0.2 * random.uniform());
    const cap = Math.max(1 / count, 0.4);
    const lowest = Math.min(...poolKinship);
    return {
      lambda,
      problem: {
        merit: rows.map(() => (random.uniform() < 0.2 ? 1 : random.normal())),
        kinship,
        ...(capped ? { caps: rows.map(() => cap) } : {}),
        ...(limited ? { poolKinship, poolKinshipLimit: capped ? 0.2 : lowest + 0.03 } : {}),
      },
    };
  });

/**
 * Choices that hang by a thread: many twins, queens alike in index, kinship without or nearly without weight, caps that
 * leave one choice alone, a limit at the very least that can be reached.
 */
const tightCases: fc.Arbitrary<Case> = fc.integer({ min: 1, max: 1_000_000 }).map((seed) => {
  const random = randomGenerator(seed);
  const count = 2 + random.integer(14);
  const shares = 1 + random.integer(6);
  const rows = Array.from({ length: count }, () =>
    Array.from({ length: shares }, () => (random.uniform() < 0.3 ? 0 : random.uniform())),
  );
  for (let k = 1; k < count; k++) if (random.uniform() < 0.3) rows[k] = rows[random.integer(k)]!;
  const own = random.choice([0, 0, 1e-10, 1e-6, 0.2]);
  const kinship = rows.flatMap((a, i) =>
    rows.map((b, j) => 0.1 * a.reduce((sum, each, k) => sum + each * b[k]!, 0) + (i === j ? own : 0)),
  );
  const cap = random.choice([1 / count, Math.min(1, 1.5 / count), Math.max(1 / count, 0.4), 1]);
  const poolKinship = rows.map(() => random.choice([0, 0.1, 0.2 * random.uniform()]));
  let left = 1;
  const least = poolKinship
    .toSorted((a, b) => a - b)
    .reduce((sum, each) => {
      const share = Math.min(left, cap);
      left -= share;
      return sum + share * each;
    }, 0);
  return {
    lambda: random.choice([0, 1e-6, 0.001, 0.1, 1, 100, 1e6]),
    problem: {
      merit: rows.map(() => (random.uniform() < 0.3 ? 1 : random.normal())),
      kinship,
      caps: rows.map(() => cap),
      ...(random.uniform() < 0.7
        ? { poolKinship, poolKinshipLimit: least + random.choice([0, 1e-6, 0.01]) }
        : {}),
    },
  };
});

function value({ merit, kinship }: ContributionProblem, shares: ArrayLike<number>, lambda: number): number {
  let sum = 0;
  for (let i = 0; i < merit.length; i++) {
    sum += merit[i]! * shares[i]!;
    for (let j = 0; j < merit.length; j++)
      sum -= 2 * lambda * kinship[i * merit.length + j]! * shares[i]! * shares[j]!;
  }
  return sum;
}

/** Every way of moving share from one candidate to another, or between three, that stays allowed. */
function improves({ problem, lambda }: Case, found: Contributions): boolean {
  const { merit, caps, poolKinship, poolKinshipLimit } = problem;
  const best = value(problem, found.shares, lambda);
  const allowed = (shares: Float64Array): boolean =>
    shares.every((share, k) => share >= 0 && share <= (caps?.[k] ?? 1)) &&
    (poolKinshipLimit === undefined ||
      shares.reduce((sum, share, k) => sum + share * poolKinship![k]!, 0) <= poolKinshipLimit);
  for (const size of [0.1, 1e-3]) {
    for (let from = 0; from < merit.length; from++) {
      for (let to = 0; to < merit.length; to++) {
        for (let other = 0; other < merit.length; other++) {
          const shares = new Float64Array(found.shares);
          shares[from]! -= size;
          shares[to]! += size / 2;
          shares[other]! += size / 2;
          if (allowed(shares) && value(problem, shares, lambda) > best + 1e-9 * (1 + lambda)) return true;
        }
      }
    }
  }
  return false;
}

describe('optimal contributions', () => {
  it('keep every rule, meet the optimality conditions, and cannot be improved by moving shares', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const found = optimalContributions(each.problem, each.lambda);
        if (!found.ok) throw new Error(found.found);
        expect(found.residual).toBeLessThan(1e-8);
        expect(found.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        for (const share of found.shares) expect(share).toBeGreaterThanOrEqual(0);
        expect(improves(each, found)).toBe(false);
      }),
      { numRuns: 400 },
    );
  });

  it('are found, and cannot be improved, where caps, limits and twins leave hardly a choice', () => {
    fc.assert(
      fc.property(tightCases, (each) => {
        const found = optimalContributions(each.problem, each.lambda);
        if (!found.ok) throw new Error(found.found);
        expect(found.residual).toBeLessThan(1e-8);
        expect(improves(each, found)).toBe(false);
      }),
      { numRuns: 400 },
    );
  });

  it('gain no more and share no more kinship as lambda grows, along the whole curve', () => {
    fc.assert(
      fc.property(cases, ({ problem }) => {
        const curve = tradeOffCurve(problem, { points: 15 });
        if (!curve.ok) throw new Error(curve.found);
        for (let k = 1; k < curve.points.length; k++) {
          expect(curve.points[k]!.gain).toBeLessThanOrEqual(curve.points[k - 1]!.gain + 1e-7);
          expect(curve.points[k]!.groupKinship).toBeLessThanOrEqual(curve.points[k - 1]!.groupKinship + 1e-7);
          expect(curve.points[k]!.converged).toBe(true);
        }
        const least = leastKinContributions(problem);
        if (least.ok) expect(curve.points.at(-1)!.groupKinship).toBeCloseTo(least.groupKinship, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('do not depend on the order of the candidates', () => {
    fc.assert(
      fc.property(cases, ({ problem, lambda }) => {
        if (lambda < 0.1) return;
        const count = problem.merit.length;
        const turn = (values: ArrayLike<number>): number[] => Array.from(values).reverse();
        const turned: ContributionProblem = {
          merit: turn(problem.merit),
          kinship: turn(problem.kinship),
          ...(problem.caps ? { caps: turn(problem.caps) } : {}),
          ...(problem.poolKinship ? { poolKinship: turn(problem.poolKinship) } : {}),
          ...(problem.poolKinshipLimit === undefined ? {} : { poolKinshipLimit: problem.poolKinshipLimit }),
        };
        const one = optimalContributions(problem, lambda);
        const two = optimalContributions(turned, lambda);
        if (!one.ok || !two.ok) throw new Error('Both have a solution.');
        expect(value(problem, one.shares, lambda)).toBeCloseTo(value(turned, two.shares, lambda), 8);
        expect(count).toBe(two.shares.length);
      }),
    );
  });
});
