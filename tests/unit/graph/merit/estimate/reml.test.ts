import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../../../../graph/kinship/compile.ts';
import type { Pedigree } from '../../../../../graph/kinship/pedigree.ts';
import {
  COMPONENTS,
  estimationData,
  logLikelihoodAt,
} from '../../../../../graph/merit/estimate/likelihood.ts';
import { estimateVariances, type VarianceEstimate } from '../../../../../graph/merit/estimate/reml.ts';
import type { ColonyRecords, ColonyVariances } from '../../../../../graph/merit/solve/colony-model.ts';
import { randomGenerator } from '../../../../../graph/numerics/random.ts';
import { chiSquareTail } from '../../../../../graph/numerics/special.ts';

/** Seasons of queens, each a daughter of an earlier one, flown at one of two yards; kept small enough for dense algebra. */
function seasons(count: number, each: number, seed: number): Pedigree {
  const random = randomGenerator(seed);
  const pools = [];
  const queens = [];
  for (let season = 0; season < count; season++) {
    const older = Array.from({ length: season === 0 ? 0 : each }, (_, k) => `q${(season - 1) * each + k}`);
    for (const yard of ['mill', 'hill']) {
      const mothers = older.slice(0, 4).map((of) => ({ of, share: 0.2 }));
      pools.push({
        id: `${yard}${season}`,
        droneMothers: mothers,
        backgrounds: [{ of: 'local', share: 1 - 0.2 * mothers.length }],
      });
    }
    for (let k = 0; k < each; k++) {
      queens.push({
        id: `q${season * each + k}`,
        dams: older.length > 0 ? [{ of: older[random.integer(Math.ceil(each / 4))]!, share: 1 }] : [],
        background: 'local',
        mating: { kind: 'pool' as const, pool: `${random.choice(['mill', 'hill'])}${season}` },
        effectiveMates: 12,
      });
    }
  }
  const compiled = compilePedigree({
    backgrounds: [{ id: 'local', kinship: 0.02 }],
    pools,
    drones: [],
    queens,
  });
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  return compiled.pedigree;
}

/** Records drawn from the model itself. */
function simulated(
  pedigree: Pedigree,
  variances: ColonyVariances,
  perQueen: number,
  seed: number,
): ColonyRecords {
  const random = randomGenerator(seed);
  const { size, parentStart, parent, coefficient, mendelian } = pedigree;
  const worker = new Float64Array(size);
  const queen = new Float64Array(size);
  const a = Math.sqrt(variances.worker);
  const b = variances.covariance / a;
  const c = Math.sqrt(variances.queen - b * b);
  for (let node = 0; node < size; node++) {
    const [one, two] = [random.normal(), random.normal()];
    const root = Math.sqrt(mendelian[node]!);
    worker[node] = root * a * one;
    queen[node] = root * (b * one + c * two);
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      worker[node]! += coefficient[k]! * worker[parent[k]!]!;
      queen[node]! += coefficient[k]! * queen[parent[k]!]!;
    }
  }
  const rows = pedigree.queenIds.flatMap((_, q) => {
    const own =
      (worker[pedigree.queenNode[q]!]! + worker[pedigree.matesNode[q]!]!) / 2 +
      queen[pedigree.queenNode[q]!]!;
    const colony = own + Math.sqrt(variances.permanent) * random.normal();
    return Array.from({ length: perQueen }, () => ({
      queen: q,
      value: colony + Math.sqrt(variances.residual) * random.normal(),
      group: random.integer(12),
    }));
  });
  return {
    queen: Int32Array.from(rows, (row) => row.queen),
    group: Int32Array.from(rows, (row) => row.group),
    groups: 12,
    value: Float64Array.from(rows, (row) => row.value + 3 * row.group),
    samplingVariance: new Float64Array(rows.length),
  };
}

function estimated(result: VarianceEstimate) {
  if (result.is !== 'estimated') throw new Error(result.sentence);
  return result;
}

const TRUE: ColonyVariances = { worker: 6, covariance: -1.5, queen: 3, permanent: 1, residual: 2 };

describe("variances from the keeper's own records", () => {
  const pedigree = seasons(5, 34, 3);
  const records = simulated(pedigree, TRUE, 3, 11);

  it('leave the true ones unrejected: the gain over them stays under the chi-square limit (seed 11)', () => {
    const start = { worker: 1, covariance: 0, queen: 1, permanent: 1, residual: 6 };
    const result = estimated(estimateVariances(pedigree, records, start));
    expect(result.converged).toBe(true);
    expect(result.estimated).toBe('all');
    expect(result.logLikelihood).toBeGreaterThan(result.logLikelihoodAtStart);
    const gain = 2 * (result.logLikelihood - logLikelihoodAt(estimationData(pedigree, records), TRUE));
    expect(gain).toBeGreaterThanOrEqual(0);
    expect(chiSquareTail(gain, 5)).toBeGreaterThan(0.001);
  });

  it('tell the residual and the permanent variance within three of their standard errors', () => {
    const { variances, standardErrors } = estimated(estimateVariances(pedigree, records, TRUE));
    for (const component of ['residual', 'permanent'] as const) {
      expect(Math.abs(variances[component] - TRUE[component])).toBeLessThan(3 * standardErrors[component]!);
      expect(standardErrors[component]).toBeLessThan(1);
    }
  });

  it('do not depend on the start', () => {
    const one = estimated(estimateVariances(pedigree, records, TRUE));
    const other = estimated(
      estimateVariances(pedigree, records, {
        worker: 20,
        covariance: 5,
        queen: 9,
        permanent: 0,
        residual: 1,
      }),
    );
    for (const component of COMPONENTS)
      expect(one.variances[component]).toBeCloseTo(other.variances[component], 2);
  });

  it('stand where no small change is likelier', () => {
    const { variances, logLikelihood } = estimated(estimateVariances(pedigree, records, TRUE));
    const data = estimationData(pedigree, records);
    for (const component of COMPONENTS) {
      for (const factor of [0.9, 1.1]) {
        const moved = { ...variances, [component]: variances[component] * factor };
        if (moved.worker * moved.queen < moved.covariance ** 2) continue;
        expect(logLikelihoodAt(data, moved)).toBeLessThan(logLikelihood);
      }
    }
  });
});

describe('the ratio estimate of a small registry', () => {
  const pedigree = seasons(3, 14, 5);
  const records = simulated(pedigree, TRUE, 3, 8);

  it('finds the highest point of a grid over genetic scale, permanent and residual variance', () => {
    const result = estimated(
      estimateVariances(pedigree, records, TRUE, { estimate: 'ratio', checkNumbers: false }),
    );
    expect(result.converged).toBe(true);
    const data = estimationData(pedigree, records);
    let best = Number.NEGATIVE_INFINITY;
    for (const scale of [0.2, 0.5, 1, 1.5, 2, 3]) {
      for (const permanent of [0, 0.3, 0.8, 1.5, 2.5]) {
        for (const residual of [1, 1.6, 2, 2.4, 3]) {
          const variances = {
            worker: scale * TRUE.worker,
            covariance: scale * TRUE.covariance,
            queen: scale * TRUE.queen,
            permanent,
            residual,
          };
          best = Math.max(best, logLikelihoodAt(data, variances));
        }
      }
    }
    expect(result.logLikelihood).toBeGreaterThanOrEqual(best);
    expect(result.logLikelihood - best).toBeLessThan(1);
    expect(result.variances.covariance / result.variances.worker).toBeCloseTo(-0.25, 10);
  });
});

describe('an estimate that cannot be had', () => {
  const pedigree = seasons(2, 6, 1);

  it('is refused with a sentence that says how many records are needed', () => {
    const result = estimateVariances(pedigree, simulated(pedigree, TRUE, 1, 2), TRUE);
    expect(result).toMatchObject({
      is: 'refused',
      sentence: expect.stringMatching(/12 records of 12 queens.*too few/),
    });
  });

  it('is refused from impossible variances', () => {
    const result = estimateVariances(pedigree, simulated(pedigree, TRUE, 1, 2), { ...TRUE, residual: 0 });
    expect(result).toMatchObject({
      is: 'refused',
      sentence: expect.stringMatching(/residual variance is 0/),
    });
  });
});
