import { describe, expect, it } from 'vitest';
import { survivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { logRank } from '../../graph/merit/survival/log-rank.ts';
import aml from './data/km-aml.json' with { type: 'json' };

/** survival::aml (Miller 1981), R survival 3.5-3 on R 4.2.2; data/km-aml.json names the calls. */
const R_DIGITS = 1e-11;
const arms = ['Maintained', 'Nonmaintained'] as const;
const lifetimesOf = (arm: string) =>
  aml.data.filter(({ x }) => x === arm).map(({ time, status }) => ({ time, event: status === 1 }));

const near = (ours: number | undefined, theirs: number | string | null) => {
  if (typeof theirs !== 'number') return expect(ours).toBeUndefined();
  return expect(Math.abs(ours! - theirs)).toBeLessThan(R_DIGITS);
};

describe.each(arms)('Kaplan-Meier of the %s arm of the leukaemia trial against R survival', (arm) => {
  const theirs = aml.table.filter(({ group }) => group === `x=${arm}`);

  it.each([
    ['log-log', 'lowLogLog', 'highLogLog'],
    ['log', 'lowLog', 'highLog'],
    ['plain', 'lowPlain', 'highPlain'],
  ] as const)('has the same steps, errors and %s limits', (limits, lowKey, highKey) => {
    const { steps } = survivalCurve(lifetimesOf(arm), { limits });
    expect(steps).toHaveLength(theirs.length);
    for (const [index, row] of theirs.entries()) {
      const step = steps[index]!;
      expect([step.time, step.atRisk, step.deaths, step.lastSeen]).toEqual([
        row.time,
        row.nRisk,
        row.nEvent,
        row.nCensor,
      ]);
      near(step.survival, row.surv);
      if (step.survival === 0) continue;
      near(step.standardError, row.stdErr);
      near(step.low, row[lowKey] as number | string | null);
      near(step.high, row[highKey] as number | string | null);
    }
  });

  it('has the same median', () => {
    const row = aml.medians.find(({ group }) => group === `x=${arm}`)!;
    expect(survivalCurve(lifetimesOf(arm)).median).toBe(row.median);
  });
});

describe('the log-rank test of the leukaemia trial against R survdiff', () => {
  it('has the same chi-square, p-value and expected deaths', () => {
    const ours = logRank(arms.map(lifetimesOf))!;
    near(ours.chiSquare, aml.logrank.chisq);
    near(ours.pValue, aml.logrank.p);
    expect(ours.observed).toEqual(aml.logrank.obs);
    ours.expected.forEach((deaths, arm) => {
      near(deaths, aml.logrank.exp[arm]!);
    });
  });
});

/**
 * Freireich et al. 1963, Blood 21:699, weeks in remission on 6-MP (data from memory, not re-read); the survival column
 * is the one printed in most textbooks, to four decimals; the last error from R survival 3.5-3.
 */
const SIX_MP = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+';
const PRINTED = { 6: 0.8571, 7: 0.8067, 10: 0.7529, 13: 0.6902, 16: 0.6275, 22: 0.5378, 23: 0.4482 };

describe('Kaplan-Meier of the 6-MP arm of Freireich et al. 1963', () => {
  const lifetimes = SIX_MP.split(' ').map((text) => ({
    time: Number.parseInt(text, 10),
    event: !text.endsWith('+'),
  }));

  it('has the textbook survival at each death and its standard errors', () => {
    const deaths = survivalCurve(lifetimes).steps.filter((step) => step.deaths > 0);
    expect(deaths.map(({ time }) => time)).toEqual(Object.keys(PRINTED).map(Number));
    deaths.forEach((step, index) => {
      expect(Math.abs(step.survival - Object.values(PRINTED)[index]!)).toBeLessThan(5.1e-5);
    });
    expect(deaths[0]!.standardError).toBeCloseTo(0.0763604, 6);
    expect(deaths.at(-1)!.standardError).toBeCloseTo(0.1345915, 6);
  });
});
