import { describe, expect, it } from 'vitest';
import { winterLifetimes } from '../../../../graph/merit/survival/group-survival.ts';
import { survivalCurve } from '../../../../graph/merit/survival/kaplan-meier.ts';
import { project } from '../../../../src/registry/project.ts';
import { atRisk, bandPath, levels, stepPath } from '../../../../views/winter/curve-path.ts';
import {
  lossesByCause,
  shareOf,
  type WinterOutcome,
  winterOutcomes,
  wintersKnown,
} from '../../../../views/winter/outcomes.ts';
import { autumnOf, missingOf, readiness } from '../../../../views/winter/ready.ts';
import { firstYards, winterObservations } from '../../../../views/winter/survival.ts';
import {
  numberWord,
  scoreWords,
  shareWords,
  testFigures,
  testWords,
} from '../../../../views/winter/words.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Three hives and two winters: 1 comes through both, 2 dies of mites, 3 falls over in a storm. */
function yard() {
  const story = new Story();
  story.begin('Mill', '2024-05-01', { '1': 'Alder', '2': 'Rowan', '3': 'Hazel' });
  const outcome = (label: string, winter: number, alive: boolean, cause?: 'mites' | 'animal-or-weather') =>
    story.write({
      kind: 'winter-outcome',
      day: rough(`${winter}-03-20`),
      colony: story.colony(label),
      winter,
      alive,
      ...(cause ? { cause } : {}),
    });
  outcome('1', 2025, true);
  outcome('2', 2025, true);
  outcome('3', 2025, false, 'animal-or-weather');
  outcome('1', 2026, true);
  outcome('2', 2026, false, 'mites');
  return { story, registry: project(story.journal()) };
}

const of = (outcomes: readonly WinterOutcome[], winter: number) =>
  outcomes.filter((each) => each.winter === winter);

describe('the outcomes of winters', () => {
  it('name who headed the colony when winter began, and leave losses from outside out of the share', () => {
    const { registry, story } = yard();
    const outcomes = winterOutcomes(registry);
    expect(wintersKnown(outcomes)).toEqual([2026, 2025]);
    expect(of(outcomes, 2026).map(({ head }) => head?.id)).toEqual([
      story.queen('Alder'),
      story.queen('Rowan'),
    ]);
    expect(shareOf(of(outcomes, 2025))).toEqual({ alive: 2, dead: 0, outside: 1 });
    expect(lossesByCause(of(outcomes, 2026)).map(({ cause }) => cause)).toEqual(['mites']);
  });

  it('are said with their limits: 13 of 20 is 65 %, 41 to 85 (exact binomial limits)', () => {
    expect(shareWords({ alive: 13, dead: 7, outside: 0 })).toBe(
      '13 of 20 came through: 65\u00a0% (41 to 85)',
    );
    expect(shareWords({ alive: 1, dead: 1, outside: 1 })).toContain('and 1 lost from outside');
  });
});

describe('lines over winters', () => {
  it('take each winter with the queen whose bees faced it, and her first yard', () => {
    const { registry, story } = yard();
    const seen = winterObservations(registry);
    expect(seen).toHaveLength(5);
    expect(firstYards(seen).get(story.queen('Alder'))).toBe(story.yard('Mill'));
    expect(winterLifetimes(seen)).toEqual([
      { queen: story.queen('Alder'), time: 2, event: false },
      { queen: story.queen('Rowan'), time: 2, event: true },
    ]);
  });

  it('are drawn in steps: level until a winter took some, then down to the share left', () => {
    const curve = survivalCurve([
      { time: 1, event: true },
      { time: 1, event: false },
      { time: 2, event: true },
      { time: 3, event: false },
    ]);
    const scale = { x: (winters: number) => 10 * winters, y: (share: number) => 100 * (1 - share) };
    // Four at risk, one lost: three quarters left; then one of two: three eighths.
    expect(stepPath(curve, scale)).toBe('M0 0V0H10V25H20V62.5H30V62.5');
    expect(levels(curve).map(({ survival }) => survival)).toEqual([1, 0.75, 0.375]);
    expect(atRisk(curve)).toEqual([4, 2, 1]);
    expect(bandPath(curve, scale).match(/M/g)).toHaveLength(2);
  });
});

describe('the words for a line', () => {
  const base = { line: 'A', winters: 2, queens: 3, started: 3, survived: 3 };

  it('say plainly that few colonies tell nothing', () => {
    const compared = { started: 3, survived: 3 };
    expect(scoreWords({ ...base, compared, expectedShare: 0.7, chanceBetter: 0.8, verdict: 'too-few' })).toBe(
      'Three colony-winters beside neighbours: too few to tell the line from luck.',
    );
    expect(
      scoreWords({ ...base, compared: { started: 0, survived: 0 }, verdict: 'no-neighbours' }),
    ).toContain('nothing to compare with');
  });

  it('name the share of the neighbours beside the line’s own', () => {
    const compared = { started: 24, survived: 20 };
    const said = scoreWords({
      ...base,
      compared,
      expectedShare: 0.65,
      chanceBetter: 0.96,
      verdict: 'better',
    });
    expect(said).toContain("20 of 24 came through; at its neighbours' share it would be about 16.");
    expect(said).toContain('96\u00a0% sure');
  });

  it('write small numbers as words', () => {
    expect([0, 3, 10, 11].map(numberWord)).toEqual(['no', 'three', 'ten', '11']);
  });
});

describe('the words for the test between groups', () => {
  const test = { chiSquare: 4.7, degrees: 3, pValue: 0.19, smallNumbers: false, observed: [], expected: [] };

  it('give the answer first and the figures apart', () => {
    expect(testWords({ ...test }, 'yards')).toBe(
      'Taken all together, the yards cannot be told apart yet. Were they all alike, differences such as these would come up about 19 times in 100.',
    );
    expect(testWords({ ...test, pValue: 0.02 }, 'lines')).toMatch(
      /^Taken all together, the lines differ by more than luck/,
    );
    expect(testWords({ ...test, smallNumbers: true }, 'lines')).toContain(
      'rough: read it as a hint and no more',
    );
    expect(testFigures({ ...test })).toBe(
      'Log-rank chi-square 4.7 on 3 degrees of freedom, p\u00a0=\u00a00.19',
    );
  });
});

describe('getting ready for winter', () => {
  it('takes what was seen from August on, and names what is missing', () => {
    const { story } = yard();
    const colony = story.colony('1');
    story.write(
      { kind: 'inspection', day: rough('2026-06-10'), colony, framesOfStores: 3 },
      { kind: 'inspection', day: rough('2026-09-10'), colony, framesOfBees: 8, eggs: true },
      {
        kind: 'mite-count',
        day: rough('2026-09-12'),
        colony,
        sample: { method: 'wash', mites: 2, bees: 300 },
      },
    );
    const [mill] = readiness(project(story.journal()), day('2026-09-20'), { miteThresholds: [] });
    const one = mill?.colonies.find((each) => each.colony.id === colony);
    if (!one) throw new Error('Colony 1 lives.');
    expect(one.bees?.value).toBe(8);
    expect(one.queen).toMatchObject({ value: 'eggs', day: '2026-09-10' });
    expect(missingOf(one)).toEqual(['stores']);
  });

  it('speaks of the autumn under way from August, of the last one before', () => {
    expect([day('2026-07-31'), day('2026-08-01')].map(autumnOf)).toEqual([2025, 2026]);
  });
});
