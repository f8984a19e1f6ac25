import { describe, expect, it } from 'vitest';
import type { Pedigree } from '../../../../../graph/kinship/pedigree.ts';
import {
  COMPONENTS,
  estimationData,
  likelihoodAt,
  logLikelihoodAt,
} from '../../../../../graph/merit/estimate/likelihood.ts';
import type { ColonyRecords, ColonyVariances } from '../../../../../graph/merit/solve/colony-model.ts';
import { unitColumns, unitKernels } from '../../../../../graph/merit/solve/unit-columns.ts';
import { randomGenerator } from '../../../../../graph/numerics/random.ts';
import { smallPedigree } from '../../../../helpers/small-pedigrees.ts';
import {
  inverse,
  type Matrix,
  multiply,
  predictByDefinition,
  transpose,
  zeros,
} from '../../../../helpers/textbook-mixed-model.ts';

/*  Ash      Beech        founders, all flown among the sons of Beech and unrecorded bees
 *   |  \      |
 *  Cedar Dill Elm         daughters
 *   |
 *  Fir                                                                                                          */
const pedigree: Pedigree = smallPedigree({
  queens: [
    { id: 'Ash', pool: 'mill' },
    { id: 'Beech', pool: 'mill' },
    { id: 'Cedar', dam: 'Ash', pool: 'mill' },
    { id: 'Dill', dam: 'Ash', met: 'Beech', mates: 3 },
    { id: 'Elm', dam: 'Beech', pool: 'mill' },
    { id: 'Fir', dam: 'Cedar', pool: 'mill' },
  ],
  pools: { mill: { Beech: 0.6, base: 0.4 } },
  backgrounds: { base: 0.05 },
});

function someRecords(count: number, seed: number): ColonyRecords {
  const random = randomGenerator(seed);
  return {
    queen: Int32Array.from({ length: count }, (_, r) => (r < 6 ? r : random.integer(6))),
    group: Int32Array.from({ length: count }, (_, r) => r % 3),
    groups: 3,
    value: Float64Array.from({ length: count }, () => 4 * random.normal()),
    samplingVariance: Float64Array.from({ length: count }, () => random.uniform()),
  };
}

const records = someRecords(20, 4);
const data = estimationData(pedigree, records);
const points: readonly ColonyVariances[] = [
  { worker: 2, covariance: -0.8, queen: 1.5, permanent: 0.7, residual: 3 },
  { worker: 0.5, covariance: 0.4, queen: 0.6, permanent: 0, residual: 8 },
  { worker: 1, covariance: -1, queen: 1, permanent: 0.2, residual: 1 },
];

/** The five derivative matrices of V and V itself, record by record. */
function plainMatrices(variances: ColonyVariances) {
  const unitQueen = Int32Array.from([...new Set(records.queen)]);
  const kernels = unitKernels(pedigree, unitColumns(pedigree, unitQueen));
  const m = unitQueen.length;
  const unit = Array.from(records.queen, (q) => unitQueen.indexOf(q));
  const spread = (kernel: Float64Array): Matrix => unit.map((i) => unit.map((j) => kernel[i * m + j]!));
  const eye = unit.map((_, r) => unit.map((_, s) => (r === s ? 1 : 0)));
  const parts = [
    spread(kernels.workers),
    spread(kernels.across),
    spread(kernels.own),
    unit.map((i) => unit.map((j) => (i === j ? 1 : 0))),
    eye,
  ];
  const V = eye.map((row, r) =>
    row.map(
      (_, s) =>
        COMPONENTS.reduce((sum, name, k) => sum + variances[name] * parts[k]![r]![s]!, 0) +
        (r === s ? records.samplingVariance[r]! : 0),
    ),
  );
  const X = Array.from(records.group, (g) => [0, 1, 2].map((k) => (k === g ? 1 : 0)));
  return { parts, V, X, y: [...records.value] };
}

describe('the restricted likelihood', () => {
  it('is that of the definition up to one constant', () => {
    const plain = points.map((variances) => {
      const { V, X, y } = plainMatrices(variances);
      return predictByDefinition({ G: zeros(1, 1), Z: y.map(() => [0]), R: V, X, y }).logLikelihood;
    });
    const ours = points.map((variances) => logLikelihoodAt(data, variances));
    for (let i = 1; i < points.length; i++) {
      expect(ours[i]! - ours[0]!).toBeCloseTo(plain[i]! - plain[0]!, 9);
    }
  });

  it('has the slope that small steps show', () => {
    const at = points[0]!;
    const { slope, logLikelihood } = likelihoodAt(data, at);
    expect(logLikelihood).toBeCloseTo(logLikelihoodAt(data, at), 10);
    COMPONENTS.forEach((component, i) => {
      const step = 1e-5;
      const up = logLikelihoodAt(data, { ...at, [component]: at[component] + step });
      const down = logLikelihoodAt(data, { ...at, [component]: at[component] - step });
      expect(slope[i]).toBeCloseTo((up - down) / (2 * step), 6);
    });
  });

  it.each(points)("has the average information 1/2 y'P V_i P V_j P y of the definition", (variances) => {
    const { parts, V, X, y } = plainMatrices(variances);
    const Vi = inverse(V).inverse;
    const ViX = multiply(Vi, X);
    const P = multiply(multiply(ViX, inverse(multiply(transpose(X), ViX)).inverse), transpose(ViX)).map(
      (row, i) => row.map((value, j) => Vi[i]![j]! - value),
    );
    const Py = multiply(
      P,
      y.map((value) => [value]),
    );
    const images = parts.map((part) => multiply(part, Py));
    const { information } = likelihoodAt(data, variances);
    for (let i = 0; i < 5; i++) {
      const Pf = multiply(P, images[i]!);
      for (let j = 0; j < 5; j++) {
        const plain = 0.5 * images[j]!.reduce((sum, [value], r) => sum + value! * Pf[r]![0]!, 0);
        expect(information[5 * i + j]).toBeCloseTo(plain, 8);
      }
    }
  });
});
