import { describe, expect, it } from 'vitest';
import type { SeasonOutlook } from '../../../../graph/choice/look-ahead/look-ahead.ts';
import { endWords, rangeWords } from '../../../../views/choose/outlook-words.ts';
import { percents } from '../../../../views/parts/percents.ts';

const bands = (low: number, median: number, high: number) => ({ mean: median, low, median, high });
const end: SeasonOutlook = {
  season: 10,
  gain: bands(-0.6, 0.5, 1.5),
  inbreeding: bands(0.03, 0.07, 0.15),
  alleles: bands(6, 8, 10),
  lines: bands(1, 1, 2),
  colonies: bands(8, 9, 9),
  lost: 0,
};
const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('where it leads, in a sentence', () => {
  it('says every figure with its band, each unit once', () => {
    expect(plain(endWords(end))).toBe(
      'After 10 seasons: gain +0.5 (−0.6 to +1.5), inbreeding 7 % (3 to 15 %), sex alleles 8 (6 to 10), lines 1 (1 to 2).',
    );
    expect(plain(rangeWords({ low: 0.03, high: 0.15 }, percents))).toBe('3 to 15 %');
  });

  it('says how often every colony is lost', () => {
    expect(endWords({ ...end, lost: 0.1 })).toMatch(
      /In one history of 10 every colony was lost on the way\.$/,
    );
    const { gain: _, inbreeding: __, ...gone } = end;
    expect(endWords({ ...gone, lost: 1 })).toBe('After 10 seasons no history has a colony left.');
  });
});
