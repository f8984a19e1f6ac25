import { describe, expect, it } from 'vitest';
import type { VarianceEstimate } from '../../../../graph/merit/estimate/reml.ts';
import { estimateTraits } from '../../../../graph/merit/index.ts';
import { TRAITS } from '../../../../graph/merit/traits/all-traits.ts';
import { compiled } from '../../../../src/workers/evaluate.ts';
import {
  disagreementWords,
  figure,
  keptVariances,
  neededWords,
  publishedVariances,
  refusedWords,
  varianceRows,
} from '../../../../views/choose/variance-rows.ts';
import { demoEvaluated } from '../../../helpers/demo-choice.ts';

const variances = { worker: 0.0801, queen: 0.04, covariance: -0.0123, permanent: 0.05, residual: 0.4 };
const estimate: Extract<VarianceEstimate, { is: 'estimated' }> = {
  is: 'estimated',
  variances,
  standardErrors: { worker: 0.0312 },
  logLikelihood: -100,
  logLikelihoodAtStart: -101,
  iterations: 9,
  converged: true,
  estimated: 'ratio',
};

describe('variances of the keeper’s own', () => {
  it('stand beside the published ones, with their standard errors where these are known', () => {
    const rows = varianceRows({ ...variances, worker: 0.064 }, estimate);
    expect(rows[0]).toEqual({ component: 'worker', published: '0.064', own: '0.08 ± 0.031' });
    expect(rows[2]).toEqual({ component: 'covariance', published: '−0.012', own: '−0.012' });
    expect(figure(1234)).toBe('1200');
  });

  it('are 0 at the edge of what is possible', () => {
    const edge = { ...estimate, variances: { ...variances, permanent: 3.8e-13 }, standardErrors: {} };
    expect(varianceRows(variances, edge).find(({ component }) => component === 'permanent')?.own).toBe('0');
  });

  it('disagree with the published ones from the 5 % point of chi-square on', () => {
    expect(disagreementWords(estimate)).toMatch(/about as well\.$/);
    // 5 % points of chi-square: 7.81 on three degrees of freedom, 11.07 on five (any table of it).
    const gained = (twice: number) => ({ ...estimate, logLikelihood: -101 + twice / 2 });
    expect(disagreementWords(gained(7.8))).toMatch(/about as well\.$/);
    expect(disagreementWords(gained(7.9))).toMatch(/clearly better than the published/);
    expect(disagreementWords({ ...gained(11), estimated: 'all' })).toMatch(/about as well\.$/);
    expect(disagreementWords({ ...gained(11.1), estimated: 'all' })).toMatch(/clearly better/);
    expect(disagreementWords({ ...estimate, converged: false })).toContain('not offered');
    expect(disagreementWords({ ...estimate, estimated: 'all' })).toMatch(/^All five parts/);
  });

  it('are kept with the day they were estimated on', () => {
    expect(keptVariances(variances, '2026-06-11')).toEqual({ ...variances, on: '2026-06-11' });
  });

  it('are published shares of the spread in the records before they are the keeper’s', () => {
    for (const evaluation of demoEvaluated().answer.evaluation.traits) {
      const trait = TRAITS.find(({ id }) => id === evaluation.trait)!;
      expect(publishedVariances(trait, evaluation)).toEqual(evaluation.variances);
    }
  });
});

describe('too few records', () => {
  const { pedigree, observations } = demoEvaluated().work;
  const { byTrait } = estimateTraits(compiled(pedigree), observations);

  it('are refused in the demo for every trait, with what there is and what is needed', () => {
    const all = [...byTrait.values()];
    expect(all.every(({ is }) => is === 'refused')).toBe(true);
    expect(neededWords(all)).toMatch(/^Too few records to tell: of at least 60 queens, 150 records/);
    const winters = byTrait.get('winter-survival');
    if (winters?.is !== 'refused') throw new Error('They were estimated.');
    expect(refusedWords(winters)).toMatch(/^\d+ records of \d+ queens in \d+ groups$/);
  });

  it('are not what is said where another reason was given', () => {
    const other = { is: 'refused', sentence: 'There are no records.' } as const;
    expect(neededWords([other, estimate])).toBeUndefined();
    expect(refusedWords(other)).toBe('There are no records.');
  });
});
