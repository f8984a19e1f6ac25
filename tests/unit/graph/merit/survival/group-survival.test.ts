import { describe, expect, it } from 'vitest';
import {
  survivalByGroup,
  winterLifetimes,
  winterShares,
} from '../../../../../graph/merit/survival/group-survival.ts';
import { winter } from '../../../../helpers/yard-observations.ts';

/** Outcomes of one queen's colony from 2021 on: '+' alive, '-' dead, 'x' lost to an animal. */
const winters = (queen: string, marks: string) =>
  [...marks].map((mark, k) =>
    winter(queen, mark === '+', {
      season: 2021 + k,
      ...(mark === 'x' ? { cause: 'animal-or-weather' } : {}),
    }),
  );

describe('winters faced', () => {
  it('count to the loss, or to the last she came through; one that an animal ended does not count', () => {
    const lifetimes = winterLifetimes([
      ...winters('Ash', '++-'),
      ...winters('Beech', '++'),
      ...winters('Cedar', '+x'),
      ...winters('Elm', 'x'),
    ]);
    expect(lifetimes).toEqual([
      { queen: 'Ash', time: 3, event: true },
      { queen: 'Beech', time: 2, event: false },
      { queen: 'Cedar', time: 1, event: false },
    ]);
  });

  it('end with the first loss, whatever is on record after it', () => {
    expect(winterLifetimes(winters('Ash', '-+'))).toEqual([{ queen: 'Ash', time: 1, event: true }]);
  });

  it('do not depend on the order of the records, and leave out unknown queens', () => {
    const unknown = winter('Dill', false, { workers: { known: false, because: 'nobody-known' } });
    expect(winterLifetimes([...winters('Ash', '++-').reverse(), unknown])).toEqual([
      { queen: 'Ash', time: 3, event: true },
    ]);
  });
});

describe('survival of lines over winters', () => {
  const yard = [
    ...winters('alder 1', '+++'),
    ...winters('alder 2', '++-'),
    ...winters('alder 3', '+++'),
    ...winters('birch 1', '-'),
    ...winters('birch 2', '+-'),
    ...winters('birch 3', '-'),
  ];
  const lineOf = (queen: string) => (queen === 'alder 3' ? undefined : queen.split(' ')[0]);

  it('is a curve a line: of two alder colonies one dies in the third winter, of three birches two in the first', () => {
    const { groups, all } = survivalByGroup(yard, lineOf);
    expect(groups.map(({ group }) => group)).toEqual(['birch', 'alder']);
    expect(groups[1]!.curve.steps).toMatchObject([{ time: 3, atRisk: 2, deaths: 1, survival: 0.5 }]);
    expect(groups[0]!.curve.steps.map(({ survival }) => survival)).toEqual([expect.closeTo(1 / 3, 12), 0]);
    // She of no known line is among all.
    expect(all.subjects).toBe(6);
  });

  it('is tested between lines with a warning of small numbers, and not at all for one line', () => {
    expect(survivalByGroup(yard, lineOf).test).toMatchObject({ degrees: 1, smallNumbers: true });
    expect(survivalByGroup(yard.slice(0, 3), lineOf).test).toBeUndefined();
  });

  it('is, as a share of winters, drawn from each line towards the share of all', () => {
    const { shares, towards } = winterShares([...yard, ...winters('birch 4', 'x')], lineOf);
    expect(shares).toMatchObject([
      { group: 'alder', started: 6, survived: 5 },
      { group: 'birch', started: 4, survived: 1 },
    ]);
    // Six of ten survived, with a half of each outcome added; two groups say nothing of the strength, which is eight.
    expect(towards).toBeCloseTo(6.5 / 11, 12);
    expect(shares[0]!.drawn.mean).toBeCloseTo((5 + 8 * towards) / 14, 12);
    expect(shares[1]!.drawn.mean).toBeCloseTo((1 + 8 * towards) / 12, 12);
  });
});
