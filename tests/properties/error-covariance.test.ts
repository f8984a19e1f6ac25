import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import type { ColonyRecords, ColonyVariances } from '../../graph/merit/solve/colony-model.ts';
import { type Combination, errorCovariance } from '../../graph/merit/solve/error-covariance.ts';
import type { MeritOptions } from '../../graph/merit/solve/merit.ts';
import { reliabilities } from '../../graph/merit/solve/reliability.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';
import { denseRelationship } from '../helpers/dense-relationship.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';
import { predictByDefinition, zeros } from '../helpers/textbook-mixed-model.ts';

const VARIANCES: ColonyVariances = {
  worker: 0.9,
  queen: 0.7,
  covariance: -0.3,
  permanent: 0.4,
  residual: 1.3,
};
const SEEDS = Array.from({ length: 12 }, (_, seed) => seed + 1);
const WAYS: readonly MeritOptions[] = [
  { method: 'dense' },
  { method: 'sweeps', tolerance: 1e-12, reliabilityTolerance: 1e-10 },
];

function world(seed: number) {
  const random = randomGenerator(seed);
  const input = randomPedigree(seed, 8 + random.integer(8));
  const result = compilePedigree(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const { pedigree } = result;
  const mated = pedigree.queenIds.flatMap((_, q) => (pedigree.matesNode[q]! >= 0 ? [q] : []));
  const rows = Array.from({ length: 2 * mated.length }, (_, r) => mated[r % mated.length]!);
  const records: ColonyRecords = {
    queen: Int32Array.from(rows),
    group: Int32Array.from(rows, (_, r) => r % 2),
    groups: 2,
    value: Float64Array.from(rows, () => random.normal()),
    samplingVariance: Float64Array.from(rows, () => random.uniform()),
  };
  return { input, pedigree, records, mated };
}

/** G - G Z'P Z G of u_w + u_q at every queen and her mates, by the definition of BLUP over a dense A. */
function textbook(input: PedigreeInput, pedigree: Pedigree, records: ColonyRecords) {
  const { at } = denseRelationship(input);
  const names = pedigree.queenIds.flatMap((id, q) =>
    pedigree.matesNode[q]! >= 0 ? [`queen:${id}`, `mates:${id}`] : [`queen:${id}`],
  );
  const n = names.length;
  const G0 = [
    [VARIANCES.worker, VARIANCES.covariance],
    [VARIANCES.covariance, VARIANCES.queen],
  ];
  const G = zeros(2 * n, 2 * n).map((row, i) =>
    row.map((_, j) => G0[Math.floor(i / n)]![Math.floor(j / n)]! * at(names[i % n]!, names[j % n]!)),
  );
  const Z = Array.from(records.queen, (q) => {
    const row = new Array<number>(2 * n).fill(0);
    row[names.indexOf(`queen:${pedigree.queenIds[q]!}`)] = 0.5;
    row[names.indexOf(`mates:${pedigree.queenIds[q]!}`)] = 0.5;
    row[n + names.indexOf(`queen:${pedigree.queenIds[q]!}`)] = 1;
    return row;
  });
  const R = Array.from(records.queen, (q, r) =>
    Array.from(records.queen, (other, s) => {
      const own = r === s ? VARIANCES.residual + records.samplingVariance[r]! : 0;
      return own + (q === other ? VARIANCES.permanent : 0);
    }),
  );
  const X = Array.from(records.group, (g) => [0, 1].map((k) => (k === g ? 1 : 0)));
  const { explained } = predictByDefinition({ G, Z, R, X, y: [...records.value] });
  const left = (i: number, j: number) => G[i]![j]! - explained[i]![j]!;
  const sum = (i: number, j: number) => left(i, j) + left(n + i, j) + left(i, n + j) + left(n + i, n + j);
  return (a: string, b: string) => sum(names.indexOf(a), names.indexOf(b));
}

describe.each(WAYS)('the errors of breeding values by $method', (way) => {
  it.each(SEEDS)('go together as the definition of BLUP has it (seed %i)', (seed) => {
    const { input, pedigree, records, mated } = world(seed);
    const error = textbook(input, pedigree, records);
    const queens: Combination[] = mated.map((q) => ({ nodes: [pedigree.queenNode[q]!], weights: [1] }));
    const daughters: Combination[] = mated.map((q) => ({
      nodes: [pedigree.queenNode[q]!, pedigree.matesNode[q]!],
      weights: [0.5, 0.5],
    }));
    const found = errorCovariance(pedigree, records, VARIANCES, [...queens, ...daughters], way);
    if (found.is !== 'solved') throw new Error(JSON.stringify(found));
    const all = 2 * mated.length;
    for (const [i, q] of mated.entries()) {
      for (const [j, other] of mated.entries()) {
        const [dam, mates] = [`queen:${pedigree.queenIds[q]!}`, `mates:${pedigree.queenIds[q]!}`];
        const [name, itsMates] = [`queen:${pedigree.queenIds[other]!}`, `mates:${pedigree.queenIds[other]!}`];
        expect(found.covariance[i * all + j]).toBeCloseTo(error(dam, name), 8);
        const mean =
          (error(dam, name) + error(dam, itsMates) + error(mates, name) + error(mates, itsMates)) / 4;
        expect(found.covariance[(mated.length + i) * all + mated.length + j]).toBeCloseTo(mean, 8);
      }
    }
  });

  it('are, for one queen, the prediction error variance behind her reliability', () => {
    const { pedigree, records, mated } = world(3);
    const known = reliabilities(pedigree, records, VARIANCES, Int32Array.from(mated), way);
    const found = errorCovariance(
      pedigree,
      records,
      VARIANCES,
      mated.map((q) => ({ nodes: [pedigree.queenNode[q]!], weights: [1] })),
      way,
    );
    if (found.is !== 'solved' || known.is !== 'solved') throw new Error('both are solved');
    mated.forEach((_, i) => {
      expect(found.covariance[i * mated.length + i]).toBeCloseTo(known.predictionErrorVariance[i]!, 8);
    });
  });
});
