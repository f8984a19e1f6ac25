import { describe, expect, it } from 'vitest';
import { miteGrowth } from '../../../../graph/merit/counts/growth.ts';
import type { Count, Threshold, TwoCounts } from '../../../../views/mites/counts.ts';
import { isTaken, PUBLISHED_THRESHOLDS, taken } from '../../../../views/mites/published-thresholds.ts';
import { besideWords, effectWords, growthWords } from '../../../../views/mites/words.ts';
import { miteFigure } from '../../../../views/parts/entries/mite-words.ts';
import { day, rough } from '../../../helpers/story.ts';

const wash = (mites: number, bees = 300) => ({ method: 'wash' as const, mites, bees });
const count = (mites: number, on = '2026-08-01') =>
  ({ kind: 'mite-count', day: rough(on), sample: wash(mites) }) as Count;
const threshold = (value: number): Threshold => ({
  id: String(value),
  months: [8],
  method: 'wash',
  value,
  jurisdiction: 'here',
  source: 'the club',
});

function beside(mites: number, ...values: number[]): string {
  const entry = count(mites);
  return besideWords({ entry, figure: miteFigure(entry.sample), thresholds: values.map(threshold) });
}

function two(first: number, second: number, days: number): TwoCounts {
  return {
    ...miteGrowth(wash(first), wash(second), days),
    earlier: count(first),
    later: count(second),
    days,
  };
}

describe('the words for a count', () => {
  it('say how far the sample can tell, and never a bare verdict', () => {
    expect(beside(0, 3)).toBe('Below your 3 % as far as 300 bees can tell.');
    expect(beside(12, 2)).toBe('Above your 2 % as far as 300 bees can tell.');
    expect(beside(6, 3)).toBe('Found below your 3 %; 300 bees cannot tell that for certain.');
  });

  it('put what is certain before what is not, where several thresholds apply', () => {
    expect(beside(2, 2, 3)).toBe(
      'Below your 3 % as far as 300 bees can tell; found below your 2 %, not for certain.',
    );
    expect(beside(0, 2, 3)).toBe('Below your 2 % and 3 % as far as 300 bees can tell.');
  });

  it('say nothing where the keeper goes by no threshold', () => {
    expect(beside(6)).toBe('');
  });
});

describe('the words for two counts', () => {
  it('say a doubling with its limits only where growth is shown', () => {
    expect(growthWords(two(6, 36, 60))).toMatch(
      /^×\u00a06\.0 in 60 days .* Doubling in 23 days \(\d+ to \d+\)\.$/,
    );
    expect(growthWords(two(6, 9, 60))).toMatch(/the counts allow \d+ days as well as hardly any growth\.$/);
  });

  it('say nothing of growth where no mite was found either time', () => {
    expect(growthWords(two(0, 0, 60))).toBe(
      'No mite found either time, 60 days apart: growth cannot be told.',
    );
  });

  it('say a decline only where the counts show one, and never that the treatment made it', () => {
    const on = day('2026-09-01');
    expect(effectWords(two(30, 3, 31), on)).toContain('down by 90\u00a0% (');
    expect(effectWords(two(30, 0, 31), on)).toContain('down by at least');
    expect(effectWords(two(3, 1, 31), on)).toContain('too few mites were counted');
    expect(effectWords(two(3, 30, 31), on)).toContain('there are more mites.');
    for (const [first, second] of [
      [30, 3],
      [30, 0],
      [3, 30],
    ] as const) {
      const words = effectWords(two(first, second, 31), on);
      expect(words).toContain('two counts cannot tell');
      expect(words).not.toMatch(/worked|because|thanks/);
    }
  });
});

describe('a published threshold', () => {
  it('keeps saying that it is from memory once it is taken', () => {
    const fromMemory = PUBLISHED_THRESHOLDS.filter(({ basis }) => basis === 'from memory');
    expect(fromMemory.length).toBeGreaterThan(0);
    for (const published of fromMemory)
      expect(taken(published, 'x').source).toContain('from memory, look it up');
  });

  it('is known as taken afterwards, and only then', () => {
    const [first, second] = PUBLISHED_THRESHOLDS;
    if (!first || !second) throw new Error('There are published thresholds.');
    const mine = [taken(first, 'x')];
    expect([isTaken(first, mine), isTaken(second, mine), isTaken(first, [])]).toEqual([true, false, false]);
  });

  it('names its source, and lies above nought', () => {
    for (const { source, value, upTo, months } of PUBLISHED_THRESHOLDS) {
      expect(source).not.toBe('');
      expect(value).toBeGreaterThan(0);
      expect(upTo ?? value).toBeGreaterThanOrEqual(value);
      expect(months.length).toBeGreaterThan(0);
    }
  });
});
