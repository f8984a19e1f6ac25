import { describe, expect, it } from 'vitest';
import { collectRecords } from '../../../../graph/merit/collect-records.ts';
import type { TraitObservation } from '../../../../graph/merit/observations.ts';
import { TRAITS } from '../../../../graph/merit/traits/all-traits.ts';
import { defaultVariances, phenotypicVariance } from '../../../../graph/merit/traits/default-variances.ts';
import type { TraitId } from '../../../../graph/merit/traits/trait.ts';
import {
  FIRST_OF_MAY,
  harvest,
  hygienicTest,
  inspection,
  wash,
  winter,
} from '../../../helpers/yard-observations.ts';

const trait = (id: TraitId) => TRAITS.find((one) => one.id === id)!;
const collect = (id: TraitId, ...observations: TraitObservation[]) => collectRecords(trait(id), observations);
const valuesOf = (id: TraitId, ...observations: TraitObservation[]) =>
  collect(id, ...observations).records.map(({ queen, value }) => [queen, value]);
const codesOf = (id: TraitId, ...observations: TraitObservation[]) =>
  collect(id, ...observations).setAside.map(({ code }) => code);

describe('temper and swarming by the published protocol (Büchler et al. 2013, sections 3.3.2 and 3.3.3)', () => {
  const scored = (queen: string, scores: readonly number[]) =>
    scores.map((score, k) =>
      inspection(queen, { gentle: score, swarmTendency: score }, { day: FIRST_OF_MAY + 14 * k }),
    );

  it('gentleness 3, 4, 3.5, 4 over a season is their mean 3.625', () => {
    expect(valuesOf('gentle', ...scored('Ash', [3, 4, 3.5, 4]), ...scored('Beech', [3]))).toContainEqual([
      'Ash',
      3.625,
    ]);
  });

  it('swarming 4, 4, 3, 4 over a season is its lowest score 3', () => {
    const values = valuesOf('swarm-tendency', ...scored('Ash', [4, 4, 3, 4]), ...scored('Beech', [4]));
    expect(values).toContainEqual(['Ash', 3]);
  });

  it('more evaluations weigh more, and fewer than the protocol asks for are marked', () => {
    const { records } = collect('gentle', ...scored('Ash', [3, 4, 3]), ...scored('Beech', [3]));
    const [ash, beech] = records;
    expect(ash!.samplingVariance * 3).toBeCloseTo(beech!.samplingVariance, 12);
    expect([ash!.belowProtocol, beech!.belowProtocol]).toEqual([false, true]);
  });

  it('an inspection without the score does not speak of the trait', () => {
    expect(collect('calm', inspection('Ash', { gentle: 3 }))).toEqual({
      records: [],
      setAside: [],
      groups: [],
    });
  });
});

describe('a mite count', () => {
  const other = wash('Beech', 5);

  it('is a record: log of mites per bee with half a mite added, and a larger sample weighs more', () => {
    const { records } = collect('mite-level', wash('Ash', 6), other);
    const ash = records.find(({ queen }) => queen === 'Ash')!;
    expect(ash.value).toBeCloseTo(Math.log(6.5 / 300), 12);
    const variance = (mites: number, bees: number) =>
      collect('mite-level', wash('Ash', mites, bees), other).records.find(({ queen }) => queen === 'Ash')!
        .samplingVariance;
    expect(variance(2, 100)).toBeGreaterThan(variance(6, 300));
  });

  it('while a treatment acts is set aside, with a sentence', () => {
    const acting = { acting: true, active: 'thymol' } as const;
    const { records, setAside } = collect(
      'mite-level',
      wash('Ash', 0, 300, { treatment: acting }),
      other,
      wash('Cedar', 3),
    );
    expect(records.map(({ queen }) => queen)).toEqual(['Beech', 'Cedar']);
    expect(setAside).toMatchObject([
      { code: 'treatment-acting', queen: 'Ash', sentence: expect.stringMatching(/thymol/) },
    ]);
  });

  it('within 42 days of the end of a treatment is set aside, and from day 42 on counts', () => {
    const codesAfter = (daysSinceEnd: number) =>
      codesOf(
        'mite-level',
        wash('Ash', 0, 300, { treatment: { acting: false, active: 'oxalic acid', daysSinceEnd } }),
        other,
      );
    expect(codesAfter(0)).toContain('after-treatment');
    expect(codesAfter(41)).toContain('after-treatment');
    expect(codesAfter(42)).toEqual([]);
  });

  it('is compared with counts of the same method only', () => {
    const drop: TraitObservation = {
      ...wash('Cedar', 3),
      sample: { method: 'natural-drop', mites: 9, days: 3 },
    };
    expect(codesOf('mite-level', wash('Ash', 1), other, drop)).toEqual(['group-of-one']);
  });

  it('needs its day', () => {
    expect(codesOf('mite-level', wash('Ash', 1, 300, { dayExact: false }), other, wash('Cedar', 3))).toEqual([
      'day-not-exact',
    ]);
  });
});

describe('mite growth', () => {
  const pair = (
    queen: string,
    first: number,
    last: number,
    days: number,
    treatment?: { daysSinceEnd: number },
  ) => [
    wash(queen, first),
    wash(queen, last, 300, {
      day: FIRST_OF_MAY + days,
      ...(treatment ? { treatment: { acting: false, active: 'formic acid', ...treatment } as const } : {}),
    }),
  ];

  it('is the log ratio of last over first count a month', () => {
    const { records } = collect('mite-growth', ...pair('Ash', 6, 18, 90), ...pair('Beech', 6, 6, 60));
    expect(records[0]!.value).toBeCloseTo((Math.log(18.5 / 6.5) * 30) / 90, 12);
    expect(records[1]!.value).toBe(0);
    expect(records[0]!.observations).toHaveLength(2);
  });

  it('is set aside when a treatment ended between the two counts', () => {
    const setAside = codesOf(
      'mite-growth',
      ...pair('Ash', 6, 1, 90, { daysSinceEnd: 50 }),
      ...pair('Beech', 6, 6, 60),
    );
    expect(setAside).toContain('treatment-between');
  });

  it('stands when the last treatment ended before the first count', () => {
    const { records } = collect(
      'mite-growth',
      ...pair('Ash', 6, 18, 90, { daysSinceEnd: 140 }),
      ...pair('Beech', 6, 6, 60),
    );
    expect(records.map(({ queen }) => queen)).toEqual(['Ash', 'Beech']);
  });

  it('is no record from counts two weeks apart', () => {
    expect(collect('mite-growth', ...pair('Ash', 1, 5, 14), ...pair('Beech', 2, 2, 14)).records).toEqual([]);
  });
});

describe('winter', () => {
  it('alive is 1 and dead is 0, in the group of its yard and winter', () => {
    const { records, groups } = collect(
      'winter-survival',
      winter('Ash', true),
      winter('Beech', false, { cause: 'mites' }),
    );
    expect(records.map(({ value }) => value)).toEqual([1, 0]);
    expect(groups).toMatchObject([{ yard: 'mill', season: 2025, queens: 2, records: 2, small: true }]);
  });

  it('lost to an animal or sold says nothing of the bees', () => {
    const outcomes = [
      winter('Ash', false, { cause: 'animal-or-weather' }),
      winter('Beech', true),
      winter('Cedar', true),
    ];
    expect(codesOf('winter-survival', ...outcomes)).toEqual(['loss-from-outside']);
  });

  it('strength of 8 spring frames after 10 in autumn is the log of 0.8 (overwintering index, section 3.3.7)', () => {
    const frames = { autumnFramesOfBees: 10, springFramesOfBees: 8 };
    const values = valuesOf('winter-strength', winter('Ash', true, frames), winter('Beech', true, frames));
    expect(values[0]).toEqual(['Ash', expect.closeTo(Math.log(0.8), 12)]);
  });

  it('strength of a colony with one frame in autumn is too weak to tell', () => {
    const weak = winter('Ash', true, { autumnFramesOfBees: 1, springFramesOfBees: 1 });
    expect(codesOf('winter-strength', weak)).toEqual(['too-weak-to-tell']);
  });
});

describe('the other traits', () => {
  it('spring build-up from 4 to 8 frames in four weeks is a quarter of log 2 a week', () => {
    const spring = (queen: string) => [
      winter(queen, true, { springFramesOfBees: 4 }),
      inspection(queen, { framesOfBees: 8 }, { day: FIRST_OF_MAY + 28 }),
    ];
    const values = valuesOf('spring-build-up', ...spring('Ash'), ...spring('Beech'));
    expect(values[0]).toEqual(['Ash', expect.closeTo(Math.LN2 / 4, 12)]);
  });

  it('a pin test with 12 of 50 cells left (76 % cleared) is compared within equal hours only', () => {
    const tests = [hygienicTest('Ash', 12), hygienicTest('Beech', 20), hygienicTest('Cedar', 5, 12)];
    const { records, setAside } = collect('hygienic', ...tests);
    expect(records[0]!.value).toBeCloseTo(Math.log(38.5 / 12.5), 12);
    expect(setAside.map(({ code, queen }) => [code, queen])).toEqual([['group-of-one', 'Cedar']]);
  });

  it('harvests of a season add up', () => {
    expect(valuesOf('honey', harvest('Ash', 8), harvest('Ash', 5), harvest('Beech', 2))).toContainEqual([
      'Ash',
      13,
    ]);
  });
});

describe('attribution', () => {
  const neighbours = [winter('Beech', true), winter('Cedar', true)];

  it.each(['changing-over', 'nobody-known', 'day-not-exact'] as const)(
    'of workers %s sets the record aside',
    (because) => {
      const observation = winter('Ash', true, { workers: { known: false, because } });
      const { setAside } = collect('winter-survival', observation, ...neighbours);
      expect(setAside).toMatchObject([{ code: because, observations: [observation.id] }]);
      expect(setAside[0]!.queen).toBeUndefined();
    },
  );

  it('without a known yard has nothing to compare with', () => {
    const { yard: _, ...homeless } = winter('Ash', true);
    expect(codesOf('winter-survival', homeless, ...neighbours)).toEqual(['yard-unknown']);
  });

  it('alone in her group is set aside, also with two records of her own', () => {
    const alone = [
      inspection('Ash', { gentle: 3 }, { yard: 'hill' }),
      inspection('Ash', { gentle: 4 }, { yard: 'hill' }),
    ];
    expect(codesOf('gentle', ...alone)).toEqual(['group-of-one']);
  });

  it('loses nothing: every observation that speaks is in a record or set aside', () => {
    const all = [winter('Ash', true), winter('Beech', false, { yard: 'hill' }), ...neighbours];
    const { records, setAside } = collect('winter-survival', ...all);
    const told = [...records, ...setAside].flatMap(({ observations }) => observations);
    expect(told.sort()).toEqual(all.map(({ id }) => id).sort());
  });
});

describe('default variances', () => {
  it.each(TRAITS)(
    'of $id are possible, and add up to the phenotypic variance of a colony of an unrelated queen',
    ({ variances }) => {
      const { worker, queen, covariance, permanent, residual } = defaultVariances(variances);
      expect(residual).toBeGreaterThan(0);
      expect(worker * queen).toBeGreaterThanOrEqual(covariance ** 2);
      // A of a worker group with 12 mates is (1 + 2/12)/4, with its queen 1/2 on each side.
      const sum = worker * ((1 + 2 / 12) / 4) + queen + covariance + permanent + residual;
      expect(sum).toBeCloseTo(variances.phenotypic, 12);
      expect(variances.source.length).toBeGreaterThan(10);
    },
  );

  it("take the spread of the keeper's own records once there are enough, less what sampling adds", () => {
    const record = (value: number) => ({ group: 'one', value, samplingVariance: 1 });
    const few = phenotypicVariance([record(1), record(2)], 9);
    expect(few).toEqual({ phenotypic: 9, from: 'assumed' });
    const many = phenotypicVariance(
      Array.from({ length: 40 }, (_, k) => record(k % 2 ? 3 : -3)),
      5,
    );
    expect(many.from).toBe('records');
    expect(many.phenotypic).toBeCloseTo((9 * 40) / 39 - 1, 10);
  });
});
