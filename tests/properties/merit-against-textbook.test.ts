import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import type { ColonyRecords, ColonyVariances } from '../../graph/merit/solve/colony-model.ts';
import { type MeritOptions, solveMerit } from '../../graph/merit/solve/merit.ts';
import { reliabilities } from '../../graph/merit/solve/reliability.ts';
import { type Random, randomGenerator } from '../../graph/numerics/random.ts';
import { denseRelationship } from '../helpers/dense-relationship.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';
import { predictByDefinition, zeros } from '../helpers/textbook-mixed-model.ts';

const AGREE = 1e-8;
const SEEDS = Array.from({ length: 24 }, (_, seed) => seed + 1);

function compiled(input: PedigreeInput): Pedigree {
  const result = compilePedigree(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.pedigree;
}

function randomRecords(random: Random, pedigree: Pedigree, groups: number): ColonyRecords {
  const mated = pedigree.queenIds.flatMap((_, q) => (pedigree.matesNode[q]! >= 0 ? [q] : []));
  const count = 3 * mated.length;
  const rows = Array.from({ length: count }, () => random.choice(mated));
  return {
    queen: Int32Array.from(rows),
    // The first records fill every group once, so that no fixed column is empty.
    group: Int32Array.from(rows, (_, r) => (r < groups ? r : random.integer(groups))),
    groups,
    value: Float64Array.from(rows, () => 50 + 10 * random.normal()),
    samplingVariance: Float64Array.from(rows, () => (random.uniform() < 0.5 ? 0 : 3 * random.uniform())),
  };
}

function randomVariances(random: Random): ColonyVariances {
  const worker = 0.2 + random.uniform();
  const queen = random.choice([0, 0.2 + random.uniform()]);
  // A correlation of -1 now and then: G0 of rank one must be no obstacle.
  const correlation = random.choice([-1, -0.5, 0.3]);
  return {
    worker,
    queen,
    covariance: correlation * Math.sqrt(worker * queen),
    permanent: random.choice([0, 0.4]),
    residual: 0.5 + random.uniform(),
  };
}

/** All queens' (u_w, u_q) by the definition of BLUP, from the dense A of the facts. */
function textbook(
  input: PedigreeInput,
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
) {
  const { at } = denseRelationship(input);
  const names = pedigree.queenIds.flatMap((id, q) =>
    pedigree.matesNode[q]! >= 0 ? [`queen:${id}`, `mates:${id}`] : [`queen:${id}`],
  );
  const n = names.length;
  const { worker, queen, covariance, permanent, residual } = variances;
  const G0 = [
    [worker, covariance],
    [covariance, queen],
  ];
  const G = zeros(2 * n, 2 * n).map((row, i) =>
    row.map((_, j) => G0[Math.floor(i / n)]![Math.floor(j / n)]! * at(names[i % n]!, names[j % n]!)),
  );
  const Z = Array.from(records.queen, (q) => {
    const row = new Array<number>(2 * n).fill(0);
    const id = pedigree.queenIds[q]!;
    row[names.indexOf(`queen:${id}`)] = 0.5;
    row[names.indexOf(`mates:${id}`)] = 0.5;
    row[n + names.indexOf(`queen:${id}`)] = 1;
    return row;
  });
  const R = Array.from(records.queen, (q, r) =>
    Array.from(records.queen, (other, s) => {
      const own = r === s ? residual + records.samplingVariance[r]! : 0;
      return own + (q === other ? permanent : 0);
    }),
  );
  const X = Array.from(records.group, (g) =>
    Array.from({ length: records.groups }, (_, k) => (k === g ? 1 : 0)),
  );
  const { u, b, explained } = predictByDefinition({ G, Z, R, X, y: [...records.value] });
  const place = pedigree.queenIds.map((id) => names.indexOf(`queen:${id}`));
  return {
    worker: place.map((k) => u[k]!),
    queen: place.map((k) => u[n + k]!),
    groups: b,
    reliability: place.map((k) => {
      const known = explained[k]![k]! + 2 * explained[k]![n + k]! + explained[n + k]![n + k]!;
      return known / (at(names[k]!, names[k]!) * (worker + queen + 2 * covariance));
    }),
  };
}

function near(ours: ArrayLike<number>, theirs: readonly number[]) {
  const scale = Math.max(1, ...theirs.map(Math.abs));
  expect(ours.length).toBe(theirs.length);
  for (let i = 0; i < theirs.length; i++) expect(Math.abs(ours[i]! - theirs[i]!)).toBeLessThan(AGREE * scale);
}

const WAYS: readonly MeritOptions[] = [
  { method: 'dense' },
  { method: 'sweeps', tolerance: 1e-12, reliabilityTolerance: 1e-10 },
];

describe.each(WAYS)('breeding values of random pedigrees solved by $method', (way) => {
  it.each(SEEDS)('are those of the definition of BLUP over a dense A (seed %i)', (seed) => {
    const random = randomGenerator(seed);
    const input = randomPedigree(seed, 8 + random.integer(10));
    const pedigree = compiled(input);
    const records = randomRecords(random, pedigree, 1 + random.integer(4));
    const variances = randomVariances(random);
    const expected = textbook(input, pedigree, records, variances);
    const solved = solveMerit(pedigree, records, variances, way);
    if (solved.is !== 'solved') throw new Error(JSON.stringify(solved));
    near(solved.worker, expected.worker);
    near(solved.queen, expected.queen);
    near(solved.groups, expected.groups);
    near(
      solved.breedingValue,
      expected.worker.map((value, q) => value + expected.queen[q]!),
    );
  });

  it.each(SEEDS)('have the reliability of the definition, fixed effects unknown (seed %i)', (seed) => {
    const random = randomGenerator(seed);
    const input = randomPedigree(seed, 8 + random.integer(10));
    const pedigree = compiled(input);
    const records = randomRecords(random, pedigree, 1 + random.integer(4));
    const variances = { ...randomVariances(random), queen: 0.7, covariance: -0.2 };
    const expected = textbook(input, pedigree, records, variances);
    const all = Int32Array.from(pedigree.queenIds, (_, q) => q);
    const result = reliabilities(pedigree, records, variances, all, way);
    if (result.is !== 'solved') throw new Error(JSON.stringify(result));
    near(result.reliability, expected.reliability);
  });
});
