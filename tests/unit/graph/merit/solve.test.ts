import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../../../graph/kinship/compile.ts';
import type { Pedigree } from '../../../../graph/kinship/pedigree.ts';
import {
  choleskyInPlace,
  choleskySolveInPlace,
  semiDefiniteInPlace,
  times,
  transposeTimes,
} from '../../../../graph/merit/dense.ts';
import { type ColonyRecords, colonyModel } from '../../../../graph/merit/solve/colony-model.ts';
import { conjugateGradients } from '../../../../graph/merit/solve/conjugate-gradients.ts';
import { solveMerit } from '../../../../graph/merit/solve/merit.ts';
import { effectFactor } from '../../../../graph/merit/solve/mixed-model.ts';
import { makeOperator, multiply } from '../../../../graph/merit/solve/operator.ts';
import { packRecords } from '../../../../graph/merit/solve/pack-records.ts';
import { prepareModel } from '../../../../graph/merit/solve/prepare-model.ts';
import { reduceDescent } from '../../../../graph/merit/solve/reduced-descent.ts';
import { reliabilities } from '../../../../graph/merit/solve/reliability.ts';
import { gatherUp, spreadDown } from '../../../../graph/merit/solve/two-sweeps.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';
import { randomPedigree } from '../../../helpers/random-pedigrees.ts';
import { smallPedigree } from '../../../helpers/small-pedigrees.ts';

const VARIANCES = { worker: 1, queen: 0.8, covariance: -0.3, permanent: 0.4, residual: 2 };

function compiled(seed: number, queens = 20): Pedigree {
  const result = compilePedigree(randomPedigree(seed, queens));
  if (!result.ok) throw new Error('the helper makes valid pedigrees');
  return result.pedigree;
}

function recordsOf(pedigree: Pedigree, seed: number, perQueen = 2): ColonyRecords {
  const random = randomGenerator(seed);
  const mated = pedigree.queenIds.flatMap((_, q) => (pedigree.matesNode[q]! >= 0 ? [q] : []));
  const queen = mated.flatMap((q) => new Array<number>(perQueen).fill(q));
  return {
    queen: Int32Array.from(queen),
    group: Int32Array.from(queen, (_, r) => r % 3),
    groups: 3,
    value: Float64Array.from(queen, () => 100 + random.normal()),
    samplingVariance: new Float64Array(queen.length),
  };
}

const normals = (random: ReturnType<typeof randomGenerator>, count: number) =>
  Float64Array.from({ length: count }, () => random.normal());
const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, i) => sum + value * b[i]!, 0);

describe('the two sweeps', () => {
  it('are transposes of each other', () => {
    const pedigree = compiled(5);
    const root = pedigree.mendelian.map(Math.sqrt);
    const random = randomGenerator(1);
    const [z, v] = [normals(random, 2 * pedigree.size), normals(random, 2 * pedigree.size)];
    const down = new Float64Array(z.length);
    const up = new Float64Array(z.length);
    spreadDown(pedigree, root, z, down);
    gatherUp(pedigree, root, v.slice(), up);
    expect(dot(down, v)).toBeCloseTo(dot(z, up), 10);
  });
});

describe('the coefficient matrix', () => {
  it('is symmetric and positive definite', () => {
    const pedigree = compiled(9);
    const operator = makeOperator(
      prepareModel(colonyModel(pedigree, recordsOf(pedigree, 2), VARIANCES).model),
    );
    const random = randomGenerator(3);
    for (let trial = 0; trial < 5; trial++) {
      const [x, y] = [normals(random, operator.unknowns), normals(random, operator.unknowns)];
      const [Kx, Ky] = [new Float64Array(x.length), new Float64Array(x.length)];
      multiply(operator, x, Kx);
      multiply(operator, y, Ky);
      expect(dot(y, Kx)).toBeCloseTo(dot(x, Ky), 9);
      expect(dot(x, Kx)).toBeGreaterThan(0);
    }
  });
});

describe('the reduced descent', () => {
  it('leaves out queens and mates nobody descends from, and keeps those asked for', () => {
    const pedigree = smallPedigree({
      queens: [
        { id: 'Ash', met: 'base' },
        { id: 'Beech', dam: 'Ash', met: 'base' },
      ],
    });
    const beech = pedigree.queenNode[1]!;
    const { kept, descent } = reduceDescent(pedigree);
    expect(kept[pedigree.queenNode[0]!]).toBeGreaterThanOrEqual(0);
    expect([kept[beech], kept[pedigree.matesNode[1]!]]).toEqual([-1, -1]);
    expect(descent.size).toBe(pedigree.size - 2);
    expect(reduceDescent(pedigree, [beech]).kept[beech]).toBeGreaterThanOrEqual(0);
  });
});

describe('records made ready', () => {
  it('of one run and group are merged into their weighted mean, which changes no value', () => {
    const pedigree = compiled(4);
    const twice = recordsOf(pedigree, 8, 6);
    const model = prepareModel(colonyModel(pedigree, twice, VARIANCES).model);
    expect(model.value.length).toBe(twice.queen.length / 2);
    expect(model.weight.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(twice.queen.length / 2, 10);
  });

  it('of queens who are not in the pedigree are told, each with its line', () => {
    const pedigree = smallPedigree({ queens: [{ id: 'Ash', met: 'base' }] });
    const row = (queen: string) => ({ queen, group: 'mill 2025', value: 1, samplingVariance: 0 });
    const { records, problems, groupNames } = packRecords(pedigree, [row('Ash'), row('Oak')]);
    expect(records.queen.length).toBe(1);
    expect(groupNames).toEqual(['mill 2025']);
    expect(problems).toMatchObject([{ code: 'unknown-queen', queen: 'Oak', record: 1 }]);
  });
});

describe('conjugate gradients', () => {
  const diagonal = Float64Array.from({ length: 50 }, (_, i) => 1 + i * i);
  const product = (x: Float64Array, out: Float64Array) => out.set(x.map((value, i) => diagonal[i]! * value));
  const plain = (r: Float64Array, out: Float64Array) => out.set(r);

  it('reach the residual asked for and say in how many steps', () => {
    const x = new Float64Array(50);
    const outcome = conjugateGradients(product, plain, new Float64Array(50).fill(1), x, { tolerance: 1e-10 });
    expect(outcome.converged).toBe(true);
    expect(outcome.residual).toBeLessThanOrEqual(1e-10);
    x.forEach((value, i) => {
      expect(value).toBeCloseTo(1 / diagonal[i]!, 8);
    });
  });

  it('say so when they do not arrive, and when they are stopped', () => {
    const run = (options: object) =>
      conjugateGradients(product, plain, new Float64Array(50).fill(1), new Float64Array(50), options);
    expect(run({ mostIterations: 3 })).toMatchObject({ converged: false, iterations: 3, stopped: false });
    expect(run({ shouldStop: () => true })).toMatchObject({ converged: false, stopped: true });
  });

  it('start from a guess', () => {
    const exact = diagonal.map((value) => 1 / value);
    const outcome = conjugateGradients(product, plain, new Float64Array(50).fill(1), exact);
    expect(outcome).toMatchObject({ converged: true, iterations: 0 });
  });
});

describe('small dense algebra', () => {
  const random = randomGenerator(12);
  const n = 9;
  const square = normals(random, n * n);
  const gram = Float64Array.from({ length: n * n }, (_, k) => {
    let sum = Math.floor(k / n) === k % n ? 1 : 0;
    for (let j = 0; j < n; j++) sum += square[Math.floor(k / n) * n + j]! * square[(k % n) * n + j]!;
    return sum;
  });

  it("factors: L L' is the matrix, and its solve undoes the product", () => {
    const factor = gram.slice();
    expect(choleskyInPlace(factor, n)).toBe(true);
    const x = normals(random, n);
    const image = times(gram, n, x);
    times(factor, n, transposeTimes(factor, n, x)).forEach((value, i) => {
      expect(value).toBeCloseTo(image[i]!, 9);
    });
    choleskySolveInPlace(factor, n, image);
    image.forEach((value, i) => {
      expect(value).toBeCloseTo(x[i]!, 9);
    });
  });

  it('says so when a matrix is not positive definite, and factors a singular one all the same', () => {
    const singular = Float64Array.from([1, 1, 0, 1, 1, 0, 0, 0, 4]);
    expect(choleskyInPlace(singular.slice(), 3)).toBe(false);
    semiDefiniteInPlace(singular, 3);
    expect([...singular]).toEqual([1, 0, 0, 1, 0, 0, 0, 0, 2]);
  });
});

describe('what cannot be solved', () => {
  const pedigree = smallPedigree({ queens: [{ id: 'Ash', met: 'base' }, { id: 'Virgin' }] });
  const records = (queen: number, value = 1, sampling = 0): ColonyRecords => ({
    queen: Int32Array.from([0, queen]),
    group: new Int32Array(2),
    groups: 1,
    value: Float64Array.from([2, value]),
    samplingVariance: Float64Array.from([0, sampling]),
  });
  const problemsOf = (...input: [ColonyRecords, typeof VARIANCES]) => {
    const result = solveMerit(pedigree, ...input);
    return result.is === 'refused' ? result.problems : [];
  };

  it('is refused with a sentence each: a queen without mates, a value that is no number, impossible variances', () => {
    expect(problemsOf(records(1), VARIANCES)).toMatchObject([{ code: 'mating-unknown', queen: 'Virgin' }]);
    expect(problemsOf(records(0, Number.NaN), VARIANCES)).toMatchObject([
      { code: 'impossible-record', record: 1 },
    ]);
    expect(problemsOf(records(0, 1, -1), VARIANCES)).toMatchObject([{ code: 'impossible-record' }]);
    const wrong = problemsOf(records(0), { ...VARIANCES, covariance: 2, residual: 1 });
    expect(wrong).toMatchObject([
      { code: 'impossible-variances', sentence: expect.stringMatching(/between -0\.894427 and/) },
    ]);
    const all = problemsOf(records(1, Number.NaN), { ...VARIANCES, worker: -1, residual: 0 });
    expect(all.map(({ code }) => code).sort()).toEqual([
      'impossible-record',
      'impossible-variances',
      'impossible-variances',
      'mating-unknown',
    ]);
  });

  it('is refused for reliabilities too', () => {
    expect(reliabilities(pedigree, records(1), VARIANCES, Int32Array.from([0])).is).toBe('refused');
  });

  it('in the iterations given is a result that says so', () => {
    const large = compiled(3, 40);
    const result = solveMerit(large, recordsOf(large, 1), VARIANCES, { method: 'sweeps', mostIterations: 2 });
    expect(result).toMatchObject({ is: 'not-converged', iterations: 2, stopped: false });
  });
});

describe('the covariance of the two effects', () => {
  it('has a factor as long as no correlation exceeds 1, also at exactly -1 and at a variance of 0', () => {
    for (const G0 of [
      { first: 2, second: 3, both: -1 },
      { first: 4, second: 1, both: -2 },
      { first: 0, second: 5, both: 0 },
      { first: 5, second: 0, both: 0 },
    ]) {
      const [c11, c21, c22] = effectFactor(G0)!;
      expect(c11 * c11).toBeCloseTo(G0.first, 12);
      expect(c11 * c21).toBeCloseTo(G0.both, 12);
      expect(c21 * c21 + c22 * c22).toBeCloseTo(G0.second, 12);
    }
    expect(effectFactor({ first: 1, second: 1, both: 1.1 })).toBeUndefined();
    expect(effectFactor({ first: 0, second: 1, both: 0.5 })).toBeUndefined();
  });
});
