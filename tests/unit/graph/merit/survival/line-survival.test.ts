import { describe, expect, it } from 'vitest';
import { lineSurvival, winterLifetimes } from '../../../../../graph/merit/survival/line-survival.ts';
import { winter } from '../../../../helpers/yard-observations.ts';

/** Outcomes of one queen's colony from 2021 on: '+' alive, '-' dead, 'x' lost to an animal. */
const winters = (queen: string, marks: string) =>
  [...marks].map((mark, k) =>
    winter(queen, mark === '+', {
      season: 2021 + k,
      ...(mark === 'x' ? { cause: 'animal-or-weather' } : {}),
    }),
  );

describe('winters crossed', () => {
  it('count to the loss, or to the last time she was seen alive', () => {
    const lifetimes = winterLifetimes([
      ...winters('Ash', '++-'),
      ...winters('Beech', '++'),
      ...winters('Cedar', '+x'),
    ]);
    expect(lifetimes).toEqual([
      { queen: 'Ash', time: 3, event: true },
      { queen: 'Beech', time: 2, event: false },
      { queen: 'Cedar', time: 2, event: false },
    ]);
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
    const { lines } = lineSurvival(yard, lineOf);
    expect(lines.map(({ line }) => line)).toEqual(['alder', 'birch']);
    expect(lines[0]!.curve.steps).toMatchObject([{ time: 3, atRisk: 2, deaths: 1, survival: 0.5 }]);
    expect(lines[1]!.curve.steps.map(({ survival }) => survival)).toEqual([expect.closeTo(1 / 3, 12), 0]);
  });

  it('is tested between lines with a warning of small numbers, and not at all for one line', () => {
    expect(lineSurvival(yard, lineOf).test).toMatchObject({ degrees: 1, smallNumbers: true });
    expect(lineSurvival(yard.slice(0, 3), lineOf).test).toBeUndefined();
  });
});
