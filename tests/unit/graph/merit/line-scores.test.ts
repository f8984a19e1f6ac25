import { describe, expect, it } from 'vitest';
import { collectRecords } from '../../../../graph/merit/collect-records.ts';
import { lineScores } from '../../../../graph/merit/survival/line-scores.ts';
import { betaBinomial } from '../../../../graph/merit/survival/shrinkage.ts';
import { winterSurvival } from '../../../../graph/merit/traits/winter-survival.ts';
import { winter } from '../../../helpers/yard-observations.ts';

/** Outcomes of one yard and winter: '+' alive, '-' dead, by line; queens are named after line and place. */
function outcomes(yard: string, season: number, lines: Readonly<Record<string, string>>) {
  return Object.entries(lines).flatMap(([line, marks]) =>
    [...marks].map((mark, k) => winter(`${line} ${k} of ${yard}`, mark === '+', { yard, season })),
  );
}

const scores = (...observations: ReturnType<typeof outcomes>) =>
  lineScores(collectRecords(winterSurvival, observations).records, (queen) => queen.split(' ')[0]);

describe('line scores', () => {
  it('compare a line with the others of its yard and winter, not with another yard', () => {
    const [alder, birch] = scores(
      ...outcomes('harsh', 2024, { alder: '+++---', birch: '------' }),
      ...outcomes('mild', 2024, { birch: '++++++', cedar: '++++++' }),
    );
    expect(alder!.line).toBe('alder');
    expect(alder!.expectedShare).toBeLessThan(0.3);
    expect(alder!.survival!.mean).toBeGreaterThan(alder!.expectedShare!);
    expect(alder!.survival!.mean).toBeLessThan(0.5);
    expect(birch!.started).toBe(6 + 6 - (birch!.line === 'birch' ? 0 : 6));
  });

  it('of three colonies are too few to tell the line from luck', () => {
    const found = scores(...outcomes('mill', 2025, { alder: '+++', birch: '-+-+-+-+' }));
    expect(found.find(({ line }) => line === 'alder')).toMatchObject({
      verdict: 'too-few',
      compared: { started: 3, survived: 3 },
      winters: 1,
      queens: 3,
    });
  });

  it('call a line better only when luck is unlikely, and the others then worse or not told from luck', () => {
    const years = [2021, 2022, 2023, 2024].flatMap((season) =>
      outcomes('mill', season, { alder: '++++++', birch: '+--+--', cedar: '--+--+' }),
    );
    const found = scores(...years);
    expect(found[0]).toMatchObject({ line: 'alder', verdict: 'better' });
    expect(found[0]!.chanceBetter).toBeGreaterThan(0.95);
    expect(found.at(-1)!.chanceBetter).toBeLessThan(0.05);
    expect(found.at(-1)!.verdict).toBe('worse');
  });

  it('have no neighbours where the whole yard is of one line', () => {
    const found = scores(...outcomes('mill', 2025, { alder: '++-+' }));
    expect(found).toMatchObject([{ line: 'alder', started: 4, survived: 3, verdict: 'no-neighbours' }]);
    expect(found[0]!.expectedShare).toBeUndefined();
  });

  it('shrink by the stated formula: Beta(8 m + x, 8 (1 - m) + n - x) with few lines', () => {
    const found = scores(...outcomes('mill', 2025, { alder: '++++++', birch: '+++---' }));
    const alder = found.find(({ line }) => line === 'alder')!;
    const mean = (9 + 0.5) / 13;
    const expected = (3 + 2 * mean) / (6 + 2);
    expect(alder.expectedShare).toBeCloseTo(expected, 12);
    const posterior = betaBinomial({ a: 8 * expected, b: 8 * (1 - expected) }, { survived: 6, started: 6 });
    expect(alder.survival!.mean).toBeCloseTo(posterior.mean, 12);
    expect(alder.survival!.low).toBeCloseTo(posterior.low, 10);
  });

  it('count colonies of unknown line as neighbours only', () => {
    const records = collectRecords(
      winterSurvival,
      outcomes('mill', 2025, { alder: '+++++', stray: '-----' }),
    ).records;
    const found = lineScores(records, (queen) => (queen.startsWith('alder') ? 'alder' : undefined));
    expect(found.map(({ line }) => line)).toEqual(['alder']);
    expect(found[0]!.verdict).toBe('better');
  });
});
