import { describe, expect, it } from 'vitest';
import { estimateTraits } from '../../../../graph/merit/estimate/estimate-traits.ts';
import type { Evaluation } from '../../../../graph/merit/evaluate.ts';
import { allSetAside, evaluate, reweigh } from '../../../../graph/merit/evaluate.ts';
import { weightedIndex } from '../../../../graph/merit/index-of-traits.ts';
import type { TraitObservation } from '../../../../graph/merit/observations.ts';
import { solveMerit } from '../../../../graph/merit/solve/merit.ts';
import { packRecords } from '../../../../graph/merit/solve/pack-records.ts';
import { TRAITS } from '../../../../graph/merit/traits/all-traits.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';
import { smallPedigree } from '../../../helpers/small-pedigrees.ts';
import {
  FIRST_OF_MAY,
  harvest,
  hygienicTest,
  inspection,
  wash,
  winter,
} from '../../../helpers/yard-observations.ts';

/** Eighty queens of six seasons at two yards: every eighth of a season is dam of the next. Invented. */
function demoSized() {
  const random = randomGenerator(7);
  const perSeason = 13;
  const queens = Array.from({ length: 80 }, (_, k) => {
    const season = Math.floor(k / perSeason);
    const yard = k % 2 ? 'mill' : 'hill';
    const before = (season - 1) * perSeason;
    return { id: `Q${k}`, season, yard, ...(season > 0 ? { dam: `Q${before + random.integer(4)}` } : {}) };
  });
  const pools = Object.fromEntries(
    [0, 1, 2, 3, 4, 5, 6].flatMap((season) =>
      ['mill', 'hill'].map((yard) => {
        const mothers = queens.filter((queen) => queen.season === season - 1 && queen.yard === yard);
        const share = mothers.length > 0 ? 0.6 / mothers.length : 0;
        const shares = Object.fromEntries(mothers.map(({ id }) => [id, share]));
        return [`${yard}${season}`, { ...shares, local: mothers.length > 0 ? 0.4 : 1 }];
      }),
    ),
  );
  const pedigree = smallPedigree({
    queens: queens.map(({ id, dam, season, yard }) => ({
      id,
      ...(dam ? { dam } : {}),
      pool: `${yard}${season}`,
      background: 'local',
    })),
    pools,
    backgrounds: { local: 0.03 },
  });
  const observations: TraitObservation[] = queens.flatMap(({ id, season: born, yard }) =>
    [born, born + 1].flatMap((year) => {
      const season = 2018 + year;
      const given = (days: number) => ({ yard, season, day: FIRST_OF_MAY + 365 * year + days });
      const score = () => 2 + random.integer(5) / 2;
      return [
        winter(id, random.uniform() < 0.8, {
          ...given(-60),
          autumnFramesOfBees: 8 + random.integer(4),
          springFramesOfBees: 4 + random.integer(5),
        }),
        ...[0, 20, 45].map((days) =>
          inspection(
            id,
            {
              gentle: score(),
              calm: score(),
              swarmTendency: score(),
              framesOfBees: 6 + days / 6,
              broodPattern: 80 + random.integer(20),
            },
            given(days),
          ),
        ),
        wash(id, random.integer(10), 300, given(30)),
        wash(id, random.integer(20), 300, given(110)),
        hygienicTest(id, random.integer(25), 24, given(50)),
        harvest(id, 10 + random.integer(20), given(90)),
      ];
    }),
  );
  return { pedigree, observations, ids: queens.map(({ id }) => id) };
}

function done(evaluation: Evaluation) {
  if (evaluation.is !== 'done') throw new Error('stopped');
  return evaluation;
}

const { pedigree, observations, ids } = demoSized();
const weights = { 'winter-survival': 3, gentle: 1, 'mite-level': 2 } as const;
const lineOf = (queen: string) => `line ${Number(queen.slice(1)) % 4}`;

describe('the evaluation of a yard', () => {
  const evaluation = done(evaluate({ pedigree, observations, queens: ids, weights, lineOf }));

  it('has values and reliabilities between 0 and 1 for every trait and queen', () => {
    for (const trait of evaluation.traits) {
      expect(trait.breedingValue, trait.trait).toHaveLength(80);
      expect(trait.reliability!.every((value) => value >= 0 && value < 1)).toBe(true);
      expect(
        trait.reliability!.some((value) => value > 0.05),
        trait.trait,
      ).toBe(true);
    }
  });

  it('gives each trait the values that its records alone give', () => {
    const gentle = evaluation.traits.find(({ trait }) => trait === 'gentle')!;
    const { records } = packRecords(pedigree, gentle.records);
    const alone = solveMerit(pedigree, records, gentle.variances, { method: 'sweeps', tolerance: 1e-12 });
    if (alone.is !== 'solved') throw new Error(alone.is);
    gentle.breedingValue!.forEach((value, q) => {
      expect(value).toBeCloseTo(alone.breedingValue[q]!, 8);
      expect(value).toBeCloseTo(gentle.workerEffect![q]! + gentle.queenEffect![q]!, 12);
    });
  });

  it('adds its contributions up to the index, with mites counting the other way', () => {
    const mites = evaluation.traits.find(({ trait }) => trait === 'mite-level')!;
    evaluation.index.forEach(({ index, contributions, reliability, standardError }, q) => {
      expect(contributions.reduce((sum, { points }) => sum + points, 0)).toBeCloseTo(index, 12);
      const part = contributions.find(({ trait }) => trait === 'mite-level')!;
      expect(part.points).toBeCloseTo((-2 * mites.breedingValue![q]!) / mites.sigma, 12);
      expect(contributions.map(({ trait }) => trait).sort()).toEqual([
        'gentle',
        'mite-level',
        'winter-survival',
      ]);
      expect(reliability).toBeGreaterThan(0);
      expect(standardError).toBeGreaterThan(0);
    });
  });

  it('follows new weights without a new solve', () => {
    const other = { honey: 1 };
    const again = done(evaluate({ pedigree, observations, queens: ids, weights: other }));
    expect(reweigh(pedigree, evaluation, other)).toEqual(again.index);
  });

  it('scores the lines over winters', () => {
    expect(evaluation.lines.map(({ line }) => line).sort()).toEqual(['line 0', 'line 1', 'line 2', 'line 3']);
  });

  it("tells what it stands on: published or assumed variances, scaled to the yard's own spread", () => {
    const honey = evaluation.traits.find(({ trait }) => trait === 'honey')!;
    expect(honey.variancesFrom).toBe('published-scaled');
    expect(honey.source).toMatch(/Bienefeld & Pirchner 1990/);
    expect(honey.groupMeans!.size).toBe(honey.groups.length);
  });

  it('uses variances that are given', () => {
    const own = { worker: 2, queen: 1, covariance: 0, permanent: 0, residual: 5 };
    const honey = done(
      evaluate({ pedigree, observations, queens: ids, weights, variances: { honey: own } }),
    ).traits.at(-1)!;
    expect([honey.variances, honey.variancesFrom]).toEqual([own, 'own']);
  });
});

describe('variances of all traits from the yard itself', () => {
  it('are estimated where the records suffice and refused with a sentence where not, and serve the evaluation', () => {
    const { byTrait, variances } = estimateTraits(pedigree, observations, {
      traits: TRAITS.filter(({ id }) => id === 'mite-level'),
    });
    const estimate = byTrait.get('mite-level')!;
    if (estimate.is !== 'estimated') throw new Error(estimate.sentence);
    expect(estimate.estimated).toBe('ratio');
    const again = done(evaluate({ pedigree, observations, queens: ids, weights, variances }));
    expect(again.traits.find(({ trait }) => trait === 'mite-level')!.variancesFrom).toBe('own');
    const few = estimateTraits(pedigree, observations.slice(0, 90)).byTrait.get('honey')!;
    expect(few).toMatchObject({ is: 'refused', sentence: expect.stringMatching(/published ones stay/) });
  });
});

describe('an evaluation with gaps', () => {
  it('sets aside records of queens without a mating or a place in the pedigree', () => {
    const small = smallPedigree({
      queens: [{ id: 'Ash', met: 'base' }, { id: 'Beech', met: 'base' }, { id: 'Virgin' }],
    });
    const evaluation = done(
      evaluate({
        pedigree: small,
        observations: ['Ash', 'Beech', 'Virgin', 'Nobody'].map((queen) => harvest(queen, 9)),
        queens: ['Ash', 'Nobody'],
        weights: {},
      }),
    );
    expect(
      allSetAside(evaluation)
        .map(({ code }) => code)
        .sort(),
    ).toEqual(['mating-unknown', 'not-in-pedigree']);
    expect(evaluation.queens).toEqual(['Ash']);
  });

  it('says where there is nothing to go by, and leaves the values out', () => {
    const evaluation = done(evaluate({ pedigree, observations: [], queens: ids, weights }));
    for (const { warnings, breedingValue } of evaluation.traits) {
      expect(warnings).toContain('no-records');
      expect(breedingValue).toBeUndefined();
    }
    expect(evaluation.index.every(({ index, reliability }) => index === 0 && reliability === 0)).toBe(true);
  });

  it('ends when told to, and tells how far it is', () => {
    expect(evaluate({ pedigree, observations, queens: ids, weights }, { shouldStop: () => true })).toEqual({
      is: 'stopped',
    });
    const seen: number[] = [];
    evaluate(
      { pedigree, observations, queens: ids, weights },
      { onProgress: (fraction) => seen.push(fraction) },
    );
    expect(seen.at(-1)).toBe(1);
    expect(seen.every((fraction, k) => k === 0 || fraction >= seen[k - 1]!)).toBe(true);
  });
});

describe('the weighted index', () => {
  it('of traits without values is 0 with the whole doubt', () => {
    const [value] = weightedIndex(
      [{ trait: 'calm', better: 'higher', sigma: 2 }],
      { calm: 3 },
      Float64Array.from([1.25]),
    );
    expect(value).toMatchObject({ index: 0, reliability: 0 });
    expect(value!.standardError).toBeCloseTo(3 * Math.sqrt(1.25), 12);
  });
});
