import { describe, expect, it } from 'vitest';
import { runTask } from '../../../../src/workers/run-task.ts';
import { genesKeptWork, genesLead, genesRows } from '../../../../views/lines/genes-kept.ts';
import { demoEvaluated } from '../../../helpers/demo-choice.ts';

const bands = (name: string, median: number, low = median, high = median) => ({
  name,
  mean: median,
  low,
  median,
  high,
});

describe('the genes carried into each winter', () => {
  const work = genesKeptWork(demoEvaluated());
  const answer = runTask('genes-kept', work);
  if (!answer) throw new Error('Nobody stopped it.');

  it('are asked of those who went into each of the last winters, and of the laying queens of now', () => {
    expect(work.groups.map(({ name }) => name)).toEqual([
      '2020/21',
      '2021/22',
      '2022/23',
      '2023/24',
      '2024/25',
      '2025/26',
      'now',
    ]);
    expect(work.groups.at(-1)?.queens).toEqual(demoEvaluated().answer.candidates);
  });

  it('are at most two a queen and at most the sex alleles there are, and at least two', () => {
    work.groups.forEach(({ queens }, at) => {
      const [sex, founders] = [answer.sex[at], answer.founders[at]];
      expect(founders?.high).toBeLessThanOrEqual(2 * queens.length);
      expect(sex?.high).toBeLessThanOrEqual(Math.min(20, founders?.high ?? 0));
      expect(sex?.low).toBeGreaterThanOrEqual(2);
    });
  });

  it('are said with the middle history and what nine in ten lie between, once where they agree', () => {
    const groups = [
      { name: '2025/26', queens: ['a'] },
      { name: 'now', queens: ['a', 'b'] },
    ];
    const rows = genesRows(
      { groups },
      { sex: [bands('', 2), bands('', 3, 3, 4)], founders: [bands('', 2), bands('', 4)] },
    );
    expect(rows).toEqual([
      { when: '2025/26', queens: 1, sex: '2', founders: '2' },
      { when: 'now', queens: 2, sex: '3 (3\u00a0to\u00a04)', founders: '4' },
    ]);
    expect(genesLead(rows)).toBe(
      'The 2 queens who lay now carry 3 (3\u00a0to\u00a04) different sex alleles and 4 different genes of founders at any other place, of 4 at most.',
    );
    expect(genesLead([])).toBe('');
  });
});
