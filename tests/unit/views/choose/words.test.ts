import { describe, expect, it } from 'vitest';
import type { Contribution } from '../../../../graph/merit/index-of-traits.ts';
import type { Candidate, Ranking, Standing } from '../../../../views/choose/ranking.ts';
import {
  chanceWords,
  daughtersWords,
  markDigits,
  oneIn,
  planLead,
  planWords,
  rankingLead,
  reliabilityWords,
  smallNumber,
  someOf,
  spreads,
  whyWords,
} from '../../../../views/choose/words.ts';
import { percents } from '../../../../views/parts/percents.ts';

const part = (trait: Contribution['trait'], points: number): Contribution => ({
  trait,
  points,
  standardised: points,
  reliability: 0.2,
});

describe('figures in words', () => {
  it('are spreads to one decimal with a true sign, and 0 for what rounds to it', () => {
    expect([1, 0.04, -0.04, 0.06, -1.25, -0.96].map((value) => spreads(value))).toEqual([
      '+1.0',
      '0',
      '0',
      '+0.1',
      '−1.3',
      '−1.0',
    ]);
  });

  it('have as many decimals as tell the marks of an axis apart', () => {
    expect(markDigits([0, 0.2, 0.4], 1)).toBe(1);
    expect(markDigits([0.05, 0.1], 1)).toBe(2);
    expect(markDigits([13.5, 14], 0)).toBe(1);
    expect(markDigits([10, 15], 0)).toBe(0);
    expect(markDigits([0.1], 1)).toBe(1);
    expect(spreads(0.05, 2)).toBe('+0.05');
  });

  it('are whole percents, and under 1 % for what is there and rounds to none', () => {
    expect([0, 0.004, 0.005, 0.0625, 1].map(percents)).toEqual([
      '0\u00a0%',
      'under 1\u00a0%',
      '1\u00a0%',
      '6\u00a0%',
      '100\u00a0%',
    ]);
  });

  it('are chances in ten, never surer than 19 in 20', () => {
    const plain = (chance: number) => chanceWords(chance).replaceAll('\u00a0', ' ');
    expect([0, 0.049, 0.06, 0.5, 0.94, 0.951].map(plain)).toEqual([
      'less than 1 in 20',
      'less than 1 in 20',
      '1 in 10',
      '5 in 10',
      '9 in 10',
      'more than 19 in 20',
    ]);
  });

  it('are shares as one in so many, and small numbers in letters', () => {
    expect([0.25, 0.0763, 1].map(oneIn)).toEqual(['1 in 4', '1 in 13', '1 in 1']);
    expect([0, 2, 10, 11].map(smallNumber)).toEqual(['no', 'two', 'ten', '11']);
  });

  it('are degrees of knowing, from next to nothing on', () => {
    expect([0.01, 0.05, 0.2, 0.4, 0.6, 0.8].map(reliabilityWords)).toEqual([
      'next to nothing known',
      'hardly known',
      'little known',
      'partly known',
      'well known',
      'very well known',
    ]);
  });
});

describe('why she stands where she stands', () => {
  it('names the two traits that move her most, for and against', () => {
    const parts = [part('mite-level', -0.4), part('gentle', 0.3), part('honey', 0.2), part('calm', 0.15)];
    expect(whyWords(parts)).toBe('For her: gentleness and honey. Against: many mites.');
    expect(whyWords([part('gentle', -0.3)])).toBe('Against her: temper.');
    expect(whyWords([part('gentle', 0.3)])).toBe('For her: gentleness.');
  });

  it('names nothing that moves her by less than a tenth of a spread', () => {
    expect(whyWords([part('gentle', 0.09)])).toBe('Nothing on record speaks much for or against her.');
  });
});

describe('many names', () => {
  it('are cut where more than one would be left out', () => {
    expect(someOf(['A', 'B', 'C'], 2)).toBe('A, B and C');
    expect(someOf(['A', 'B', 'C', 'D'], 2)).toBe('A, B and two more');
  });
});

describe('the plan in a sentence', () => {
  it('puts queens with equally many daughters together', () => {
    const parts = [
      { name: 'Brook', daughters: 3 },
      { name: 'Gale', daughters: 3 },
      { name: 'Ford', daughters: 2 },
      { name: 'Tansy', daughters: 1 },
    ];
    expect(planLead(parts)).toBe('3 daughters each from Brook and Gale; 2 from Ford; 1 from Tansy.');
    expect(planLead([{ name: 'Brook', daughters: 1 }])).toBe('1 daughter from Brook.');
    expect(planWords(parts.slice(1, 3))).toBe('3 from Gale and 2 from Ford');
    expect([0, 1, 2].map(daughtersWords)).toEqual(['no daughter', '1 daughter', '2 daughters']);
  });
});

describe('the ranking in a sentence', () => {
  const ranking = (standings: readonly Standing[], weighed = true) =>
    ({
      rows: standings.map((standing, at) => ({ id: `Queen ${at + 1}`, standing, reliability: 0.3 })),
      weighed,
    }) as unknown as Ranking;
  const lead = (standings: readonly Standing[], weighed = true) =>
    rankingLead(ranking(standings, weighed), ({ id }: Candidate) => id);

  it('says who cannot be told apart from the first', () => {
    expect(lead(['first', 'close', 'close', 'close', 'close', 'behind'])).toBe(
      'Queen 1 stands first. Queen 2, Queen 3 and two more cannot be told apart from her on these records.',
    );
  });

  it('says that the first is hardly known herself, where so little stands behind her merit', () => {
    const rows = [
      { id: 'Queen 1', standing: 'first', reliability: 0.09 },
      { id: 'Queen 2', standing: 'close', reliability: 0.3 },
    ];
    const said = rankingLead({ rows, weighed: true } as unknown as Ranking, ({ id }: Candidate) => id);
    expect(said).toMatch(/ Even her own merit is hardly known\.$/);
  });

  it('says when the records set her apart', () => {
    expect(lead(['first', 'behind'])).toBe(
      'Queen 1 stands first, and the records set her apart from all others ranked.',
    );
  });

  it('says when only one, or nobody, can be ranked', () => {
    expect(lead(['first', 'unranked'])).toBe('Queen 1 stands first, the only one who can be ranked.');
    expect(lead(['unranked', 'unranked'])).toMatch(/^Every comparison group has fewer than five queens/);
    expect(lead(['first'])).toBe('Queen 1 is the only laying queen alive.');
    expect(lead([])).toBe('No laying queen is alive today.');
    expect(lead(['unranked', 'unranked'], false)).toMatch(/^Every trait is left out/);
  });
});
