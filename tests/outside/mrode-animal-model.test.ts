import { describe, expect, it } from 'vitest';
import { explainedAtNode, makeSolver, solveModel } from '../../graph/merit/solve/solve-model.ts';
import {
  diploidDescent,
  type Parents,
  tabularRelationship,
  textbookModel,
} from '../helpers/diploid-descent.ts';
import fromR from './data/blup-mrode.json' with { type: 'json' };

/**
 * Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd ed., CABI. The worked examples run
 * through the solver that serves queens: a pedigree is parents and coefficients, whatever animal it is of.
 */
const TIGHT = { tolerance: 1e-13 };

function solved<T extends { is: string }>(result: T) {
  if (result.is !== 'solved') throw new Error(JSON.stringify(result));
  return result as Extract<T, { is: 'solved' }>;
}

const firstEffects = (effects: Float64Array, animals: number) =>
  Array.from({ length: animals }, (_, i) => effects[2 * i]!);
const secondEffects = (effects: Float64Array, animals: number) =>
  Array.from({ length: animals }, (_, i) => effects[2 * i + 1]!);

function near(ours: readonly number[], theirs: readonly number[], within: number) {
  expect(ours).toHaveLength(theirs.length);
  ours.forEach((value, i) => {
    expect(Math.abs(value - theirs[i]!), `position ${i + 1}: ${value} against ${theirs[i]}`).toBeLessThan(
      within,
    );
  });
}

/** Example 2.1, six animals (data from memory; the matrix follows from the tabular rules, worked by hand). */
describe('example 2.1: relationship and Mendelian variances', () => {
  const parents: Parents = [
    [0, 0],
    [0, 0],
    [1, 2],
    [1, 0],
    [4, 3],
    [5, 2],
  ];

  it('has F = 1/8 for animals 5 and 6 and the Mendelian variances 1, 1, 1/2, 3/4, 1/2, 15/32', () => {
    const A = tabularRelationship(parents);
    expect([A[4]![4], A[5]![5]]).toEqual([1.125, 1.125]);
    expect([...diploidDescent(parents).mendelian]).toEqual([1, 1, 0.5, 0.75, 0.5, 0.46875]);
  });
});

const WEANING: Parents = [
  [0, 0],
  [0, 0],
  [0, 0],
  [1, 0],
  [3, 2],
  [1, 2],
  [4, 5],
  [3, 6],
];
const GAINS = [
  { animal: 3, male: true, value: 4.5 },
  { animal: 4, male: false, value: 2.9 },
  { animal: 5, male: false, value: 3.9 },
  { animal: 6, male: true, value: 3.5 },
  { animal: 7, male: true, value: 5.0 },
];

/**
 * Example 3.1, animal model (data and some solutions read in the 3rd edition; all solutions by direct matrix algebra
 * in R 4.2.2, data/blup-mrode.json).
 */
describe('example 3.1: animal model, pre-weaning gain of calves', () => {
  const records = GAINS.map(({ animal, male, value }) => ({
    animal,
    value,
    level: animal,
    columns: [male ? 0 : 1],
  }));
  const solver = makeSolver(
    textbookModel(diploidDescent(WEANING), records, {
      effects: { first: 20, second: 0, both: 0 },
      levels: 8,
      levelVariance: 0,
      residual: 40,
      columns: 2,
    }),
  );

  it('has the solutions of the direct algebra', () => {
    const { effects, columns } = solved(solveModel(solver, TIGHT));
    near(firstEffects(effects, 8), Object.values(fromR.ebv), 1e-9);
    near([...columns], [fromR.fixed.M, fromR.fixed.F], 1e-9);
  });

  it('has the printed male mean 4.358 and the printed values of animals 4, 7 and 8', () => {
    const { effects, columns } = solved(solveModel(solver, TIGHT));
    near([columns[0]!], [4.358], 6e-4);
    near([effects[6]!, effects[12]!, effects[14]!], [-0.009, -0.249, 0.183], 5.1e-4);
  });

  it('has the reliabilities of the direct algebra', () => {
    const reliability = WEANING.map((_, node) => {
      const { variance, explained } = solved(explainedAtNode(solver, node, TIGHT));
      return explained / variance;
    });
    near(reliability, Object.values(fromR.reliability), 1e-9);
  });
});

/**
 * Example 3.4, unknown-parent groups (pedigree and A*^-1 read). Groups are fixed there; here two populations of very
 * large variance, which is the same in the limit, re-based to the group of the sires. Expected: the exact solution
 * with that group at zero (the printed unconstrained solution of chapter 17, re-based, agrees to 0.001; the printed
 * constrained one is itself 0.02 off).
 */
describe('example 3.4: unknown parents in two groups', () => {
  const HUGE = 1e9;
  const descent = {
    size: 10,
    parentStart: Int32Array.from([0, 0, 0, 2, 4, 6, 8, 10, 12, 14, 16]),
    // 0 sires' group, 1 dams' group, then animals 1 to 8 as nodes 2 to 9.
    parent: Int32Array.from([0, 1, 0, 1, 0, 1, 2, 1, 4, 3, 2, 3, 5, 6, 4, 7]),
    coefficient: new Float64Array(16).fill(0.5),
    mendelian: Float64Array.from([HUGE, HUGE, 1, 1, 1, 0.75, 0.5, 0.5, 0.5, 0.5]),
  };
  const records = GAINS.map(({ animal, male, value }) => ({
    animal: animal + 2,
    value,
    level: animal,
    columns: [male ? 0 : 1],
  }));
  const model = textbookModel(descent, records, {
    effects: { first: 20, second: 0, both: 0 },
    levels: 8,
    levelVariance: 0,
    residual: 40,
    columns: 2,
  });
  const exact = [-0.76706, -0.92311, -0.96296, -1.26791, -1.09908, -0.72777, -1.33841, -0.76791];
  /** Chapter 17, unconstrained and printed to three decimals: males, females, animals 1 to 8, groups. */
  const printed = [4.509, 3.364, 0.182, 0.026, -0.014, -0.319, -0.15, 0.221, -0.389, 0.181, 0.949, -0.82];

  it('has the exact solution, and the printed one re-based to the group of the sires', () => {
    const { effects, columns } = solved(
      solveModel(makeSolver(model), { tolerance: 1e-14, mostIterations: 500 }),
    );
    const base = effects[0]!;
    const ours = [
      ...columns.map((mean) => mean + base),
      ...firstEffects(effects, 10)
        .slice(2)
        .map((value) => value - base),
      effects[2]! - base,
    ];
    near(ours, [5.45807, 4.31342, ...exact, -1.76875], 1e-4);
    const rebased = [
      printed[0]! + printed[10]!,
      printed[1]! + printed[10]!,
      ...printed.slice(2, 10).map((value) => value - printed[10]!),
      printed[11]! - printed[10]!,
    ];
    near(ours, rebased, 1.6e-3);
  });
});

/** Example 4.1, repeated records (yields from memory; herd-year-seasons recovered from the printed solutions). */
describe('example 4.1: repeatability model, fat yield of cows in two parities', () => {
  const parents: Parents = [
    [0, 0],
    [0, 0],
    [0, 0],
    [1, 2],
    [3, 2],
    [1, 5],
    [3, 4],
    [1, 7],
  ];
  const yields = [
    [201, 280],
    [150, 200],
    [160, 190],
    [180, 250],
    [285, 300],
  ];
  // Herd-year-season of each record; the first of each parity is held at zero.
  const season = [
    [-1, -1, 2, -1, 2],
    [-1, 3, -1, -1, 3],
  ];
  const records = yields.flatMap((pair, cow) =>
    pair.map((value, parity) => ({
      animal: cow + 3,
      value,
      level: cow,
      columns: [parity, season[parity]![cow]!],
    })),
  );
  const solver = makeSolver(
    textbookModel(diploidDescent(parents), records, {
      effects: { first: 20, second: 0, both: 0 },
      levels: 5,
      levelVariance: 12,
      residual: 28,
      columns: 4,
    }),
  );

  it('has the printed solutions for parities, seasons, animals and permanent environments', () => {
    const { effects, columns, levels } = solved(solveModel(solver, TIGHT));
    near([...columns], [175.472, 241.893, 44.065, 0.013], 6e-4);
    near(firstEffects(effects, 8), [10.148, -3.084, -7.063, 13.581, -18.207, -18.387, 9.328, 24.194], 6e-4);
    near([...levels], [8.417, -7.146, -17.229, -1.39, 17.347], 6e-4);
  });
});

/**
 * Example 7.1, direct and maternal effects with a permanent effect of the dam: the nearest textbook analogue to worker
 * and queen effects (data from memory; the solve reproduces the recalled solutions to their three decimals).
 */
describe('example 7.1: direct and maternal effects on birth weight', () => {
  const parents: Parents = [
    [0, 0],
    [0, 0],
    [0, 0],
    [0, 0],
    [1, 2],
    [3, 2],
    [4, 6],
    [3, 5],
    [1, 6],
    [3, 2],
    [3, 7],
    [8, 7],
    [9, 2],
    [3, 6],
  ];
  const weights = [
    [5, 1, 0, 35],
    [6, 1, 1, 20],
    [7, 1, 1, 25],
    [8, 1, 0, 40],
    [9, 2, 0, 42],
    [10, 2, 1, 22],
    [11, 2, 1, 35],
    [12, 3, 1, 34],
    [13, 3, 0, 20],
    [14, 3, 1, 40],
  ] as const;
  const dams = [2, 5, 6, 7];
  const records = weights.map(([calf, herd, sex, value]) => {
    const dam = parents[calf - 1]![1];
    return {
      animal: calf - 1,
      dam: dam - 1,
      value,
      level: dams.indexOf(dam),
      columns: [sex, herd === 1 ? -1 : herd],
    };
  });
  const solver = makeSolver(
    textbookModel(diploidDescent(parents), records, {
      effects: { first: 150, second: 90, both: -40 },
      levels: 4,
      levelVariance: 40,
      residual: 350,
      columns: 4,
    }),
  );

  it('has the solutions for sexes, herds, both effects of all animals and the dams', () => {
    const { effects, columns, levels } = solved(solveModel(solver, TIGHT));
    near([...columns], [34.53994, 27.69094, 3.38646, 1.43378], 1e-5);
    near(
      firstEffects(effects, 14),
      [
        0.56389, -1.24439, 1.16494, -0.48444, 0.62953, -0.85863, -1.15597, 1.9174, -0.55326, -1.05508,
        0.38536, 0.86332, -2.97957, 1.7513,
      ],
      1e-5,
    );
    near(
      secondEffects(effects, 14),
      [
        0.26157, -1.58316, 0.73573, 0.58586, -0.50747, 0.84104, 1.29932, -0.15791, 0.65954, -0.15295, 0.91596,
        0.44201, 0.09306, 0.36221,
      ],
      1e-5,
    );
    near([...levels], [-1.70083, 0.4154, 0.82492, 0.46052], 1e-5);
  });
});
