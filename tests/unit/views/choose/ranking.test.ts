import { describe, expect, it } from 'vitest';
import type { TraitId } from '../../../../graph/merit/traits/trait.ts';
import { evaluationWork } from '../../../../src/registry/evaluation.ts';
import { project } from '../../../../src/registry/project.ts';
import { SUGGESTED_WEIGHTS } from '../../../../src/store/trait-weights.ts';
import { evaluateWork } from '../../../../src/workers/evaluate.ts';
import { meritOfAll, rankingOf, standingOf, unitWeights } from '../../../../views/choose/ranking.ts';
import { reliabilityWords } from '../../../../views/choose/words.ts';
import { demoEvaluated, demoKeeper, demoRanking, demoRow } from '../../../helpers/demo-choice.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('the merit of a queen', () => {
  const { answer } = demoEvaluated();

  for (const name of ['Brook', 'Ford', 'Vetch']) {
    it(`is weight times breeding value over its spread, summed, over the root of the squared weights: ${name}`, () => {
      const row = demoRow(name);
      const at = answer.evaluation.queens.indexOf(row.id);
      const weighed = answer.evaluation.traits.map(({ trait, better, breedingValue, variances }) => {
        const { worker, queen, covariance } = variances;
        const spread = Math.sqrt(worker + queen + 2 * covariance);
        const value = (breedingValue?.[at] ?? 0) / spread;
        return SUGGESTED_WEIGHTS[trait] * (better === 'higher' ? value : -value);
      });
      const root = Math.sqrt(sum(Object.values(SUGGESTED_WEIGHTS).map((weight) => weight ** 2)));
      expect(row.merit).toBeCloseTo(sum(weighed) / root, 10);
      expect(row.merit).toBeCloseTo(sum(row.contributions.map(({ points }) => points)), 10);
    });

    it(`has the error of its traits, none of which tells of another: ${name}`, () => {
      const row = demoRow(name);
      const at = answer.evaluation.queens.indexOf(row.id);
      const { weights } = demoRanking();
      const open = answer.evaluation.traits.map(
        ({ trait, reliability }) => (weights[trait] ?? 0) ** 2 * (1 - (reliability?.[at] ?? 0)),
      );
      expect(row.error ** 2).toBeCloseTo((answer.diagonal[at] ?? 1) * sum(open), 6);
    });
  }

  it('does not change when all weights are doubled', () => {
    const doubled = Object.fromEntries(
      Object.entries(SUGGESTED_WEIGHTS).map(([trait, weight]) => [trait, 2 * weight]),
    ) as typeof SUGGESTED_WEIGHTS;
    const before = demoRanking().rows.map(({ merit }) => merit);
    demoRanking(doubled).rows.forEach(({ merit }, at) => {
      expect(merit).toBeCloseTo(before[at] ?? 0, 12);
    });
  });

  it('is told for every evaluated queen in the same unit', () => {
    const { weights } = demoRanking();
    const all = meritOfAll(demoEvaluated(), weights);
    expect(all.get(demoRow('Gale').id)).toBeCloseTo(demoRow('Gale').merit, 12);
    expect(all.size).toBe(answer.evaluation.queens.length);
  });
});

describe('the order of the list', () => {
  it('follows the breeding values of the one trait that is weighed', () => {
    const only = { calm: 3 } as Record<TraitId, number>;
    const { rows, weights } = demoRanking(only);
    expect(weights).toEqual({ calm: 1 });
    const ranked = rows.filter(({ standing }) => standing !== 'unranked');
    const merits = ranked.map(({ merit }) => merit);
    expect(merits).toEqual([...merits].sort((a, b) => b - a));
    expect(ranked[0]?.queen.name).toBe('Ford');
  });

  it('ends with those compared with fewer than five, by name, whatever their merit', () => {
    const { rows } = demoRanking();
    expect(rows.slice(-2).map(({ queen, standing }) => [queen.name, standing])).toEqual([
      ['Sable', 'unranked'],
      ['Umber', 'unranked'],
    ]);
    expect(demoRow('Umber').merit).toBeGreaterThan(demoRow('Clover').merit);
    expect(rows[0]?.standing).toBe('first');
  });

  it('ranks a queen by one score in a group of six, and says that next to nothing is known of her', () => {
    const story = new Story();
    const hives = { '1': 'Ash', '2': 'Beech', '3': 'Cedar', '4': 'Elm', '5': 'Fir', '6': 'Hazel' };
    story.begin('Mill', '2024-05-01', hives);
    for (const [at, label] of Object.keys(hives).entries()) {
      const gentle = at === 0 ? 4 : 3;
      story.write({ kind: 'inspection', day: rough('2025-06-10'), colony: story.colony(label), gentle });
    }
    const registry = project(story.journal());
    const work = evaluationWork(registry, day('2025-06-11'), { sexAlleles: 20 });
    const scored = evaluateWork(work);
    if (!scored) throw new Error('Nobody stopped it.');
    const evaluated = { registry, on: day('2025-06-11'), assumed: '', work, answer: scored };
    const [first] = rankingOf(evaluated, SUGGESTED_WEIGHTS, demoKeeper()).rows;
    expect(first).toMatchObject({ id: story.queen('Ash'), standing: 'first' });
    expect(reliabilityWords(first?.reliability ?? 1)).toBe('next to nothing known');
  });

  it('ranks nobody when every trait is left out', () => {
    const nothing = Object.fromEntries(Object.keys(SUGGESTED_WEIGHTS).map((trait) => [trait, 0]));
    const ranking = demoRanking(nothing as typeof SUGGESTED_WEIGHTS);
    expect(ranking.weighed).toBe(false);
    expect(new Set(ranking.rows.map(({ standing }) => standing))).toEqual(new Set(['unranked']));
  });

  it('calls a queen behind from 19 in 20, probably behind from 3 in 4, and close below', () => {
    expect([0.5, 0.74, 0.75, 0.94, 0.95, 1].map(standingOf)).toEqual([
      'close',
      'close',
      'probably-behind',
      'probably-behind',
      'behind',
      'behind',
    ]);
  });

  it('shares out the places among the best: the chances sum to their number', () => {
    const { rows, best, amongBest } = demoRanking();
    expect(sum(rows.map(amongBest))).toBeCloseTo(best, 9);
  });
});

describe('weights in the unit of merit', () => {
  it('have squares that sum to 1, so that a merit of 1 is one spread of the stock', () => {
    const { weights } = unitWeights({ gentle: 3, honey: 4 });
    expect(weights).toEqual({ gentle: 0.6, honey: 0.8 });
  });
});
