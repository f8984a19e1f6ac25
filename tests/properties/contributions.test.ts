import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ContributionProblem,
  type Contributions,
  leastKinContributions,
  optimalContributions,
  tradeOffCurve,
} from '../../graph/choice/index.ts';
import { solveQuadratic } from '../../graph/choice/quadratic-program.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';

interface Case {
  readonly problem: ContributionProblem;
  readonly lambda: number;
  readonly seed: number;
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
      seed,
      problem: {
        merit: rows.map(() => (random.uniform() < 0.2 ? 1 : random.normal())),
        kinship,
        ...(capped ? { caps: rows.map(() => cap) } : {}),
        ...(limited ? { poolKinship, poolKinshipLimit: capped ? 0.2 : lowest + 0.03 } : {}),
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
          if (allowed(shares) && value(problem, shares, lambda) > best + 1e-9) return true;
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

describe('the quadratic program', () => {
  it('meets G x - a = C u with u >= 0 on inequalities in force and 0 on the others', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const random = randomGenerator(seed);
        const size = 1 + random.integer(7);
        const root = Array.from({ length: size }, () => Array.from({ length: size }, () => random.normal()));
        const curvature = Float64Array.from({ length: size * size }, (_, at) => {
          const [i, j] = [Math.floor(at / size), at % size];
          return root[i]!.reduce((sum, each, k) => sum + each * root[j]![k]!, 0) + (i === j ? 0.1 : 0);
        });
        const slope = Float64Array.from({ length: size }, () => random.normal());
        const inside = Float64Array.from({ length: size }, () => random.normal());
        const normals = Array.from({ length: 2 * size }, () =>
          Float64Array.from({ length: size }, () => random.normal()),
        );
        const bounds = normals.map((normal, k) =>
          normal.reduce((sum, each, i) => sum + each * inside[i]!, k === 0 ? 0 : -random.uniform()),
        );
        const found = solveQuadratic({ size, curvature, slope, normals, bounds, equalities: 1 });
        if (!found.ok) throw new Error(found.reason);
        for (let i = 0; i < size; i++) {
          let rest = -slope[i]!;
          for (let j = 0; j < size; j++) rest += curvature[i * size + j]! * found.x[j]!;
          normals.forEach((normal, k) => {
            rest -= found.multipliers[k]! * normal[i]!;
          });
          expect(rest).toBeCloseTo(0, 7);
        }
        normals.forEach((normal, k) => {
          const room = normal.reduce((sum, each, i) => sum + each * found.x[i]!, -bounds[k]!);
          if (k === 0) expect(room).toBeCloseTo(0, 8);
          else {
            expect(room).toBeGreaterThan(-1e-8);
            expect(found.multipliers[k]).toBeGreaterThanOrEqual(0);
            expect(room * found.multipliers[k]!).toBeCloseTo(0, 7);
          }
        });
      }),
      { numRuns: 500 },
    );
  });
});
