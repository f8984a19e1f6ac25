import { describe, expect, it } from 'vitest';
import { run } from '../../helpers/table-world.ts';

const PEDIGREE = [
  'queen,dam,drone_mothers,mates,background,mates_background',
  'A,,,12,near,near',
  'B,,,12,near,near',
  'C,A,B:0.5,12,,near',
  'D,A,B:0.5,12,,near',
  'V,C,,,,',
].join('\n');
const RECORDS = [
  'queen,group,value,sampling_variance',
  'A,2021,3,',
  'B,2021,5,0.5',
  'C,2022,4.5,0',
  'C,2022,4,0',
  'D,2022,2,1',
].join('\n');
const FILES = { 'p.csv': PEDIGREE, 'r.csv': RECORDS };
const VARIANCES =
  '--worker-variance 1 --queen-variance 0.6 --covariance -0.4 --permanent-variance 0.3 --residual-variance 2';

function rows(text: string): string[][] {
  return text
    .trimEnd()
    .split('\n')
    .map((line) => line.split(','));
}

describe('merit', () => {
  it('prints worker and queen effect, their sum, and the reliability of each queen', async () => {
    const { code, out, error } = await run(`merit p.csv r.csv ${VARIANCES}`, FILES);
    expect([code, error]).toEqual([0, '']);
    const [header, ...lines] = rows(out);
    expect(header).toEqual(['queen', 'worker_effect', 'queen_effect', 'breeding_value', 'reliability']);
    expect(lines.map(([queen]) => queen)).toEqual(['A', 'B', 'C', 'D', 'V']);
    for (const [, worker, queen, value, reliability] of lines) {
      expect(Number(worker) + Number(queen)).toBeCloseTo(Number(value), 10);
      expect(Number(reliability)).toBeGreaterThanOrEqual(0);
      expect(Number(reliability)).toBeLessThan(1);
    }
    const value = (queen: string) => Number(lines.find(([id]) => id === queen)?.[3]);
    expect(value('C')).toBeGreaterThan(value('D'));
    expect(value('B')).toBeGreaterThan(value('A'));
  });

  it('prints reliabilities only of those asked for, or of none', async () => {
    const some = rows((await run(`merit p.csv r.csv ${VARIANCES} --reliability C,V`, FILES)).out).slice(1);
    expect(some.filter((row) => row[4] !== '').map(([queen]) => queen)).toEqual(['C', 'V']);
    const none = rows((await run(`merit p.csv r.csv ${VARIANCES} --reliability none`, FILES)).out).slice(1);
    expect(none.every((row) => row[4] === '')).toBe(true);
    expect(none.map((row) => row[3])).toEqual(some.map((row) => row[3]));
  });

  it('adds the sampling variance to the residual variance of its record alone', async () => {
    const none = RECORDS.replace('B,2021,5,0.5', 'B,2021,5,');
    const two = (await run(`merit p.csv r.csv ${VARIANCES}`, { ...FILES, 'r.csv': none })).out;
    const one = (await run(`merit p.csv r.csv ${VARIANCES}`, FILES)).out;
    expect(one).not.toBe(two);
    const all = RECORDS.replaceAll(/,(0|0\.5|1)?$/gm, ',0.5');
    const added = (await run(`merit p.csv r.csv ${VARIANCES}`, { ...FILES, 'r.csv': all })).out;
    const larger = VARIANCES.replace('--residual-variance 2', '--residual-variance 2.5');
    const without = RECORDS.replaceAll(/,(0|0\.5|1)?$/gm, ',');
    expect((await run(`merit p.csv r.csv ${larger}`, { ...FILES, 'r.csv': without })).out).toBe(added);
  });

  it('of a table without a record is refused', async () => {
    const files = { ...FILES, 'r.csv': 'queen,group,value,sampling_variance\n' };
    const { code, out, error } = await run(`merit p.csv r.csv ${VARIANCES}`, files);
    expect(error).toContain('r.csv, line 2, column 1 (queen): the table ends without a record.');
    expect([code, out]).toEqual([2, '']);
  });

  it.each([
    ['X,2021,3,', "r.csv, line 2, column 1 (queen): 'X' is no queen of the pedigree."],
    ['V,2021,3,', "r.csv, line 2, column 1 (queen): 'V' has not mated"],
    ['A,,3,', 'r.csv, line 2, column 2 (group): empty'],
    ['A,2021,good,', "r.csv, line 2, column 3 (value): 'good' is no number."],
    ['A,2021,,', 'r.csv, line 2, column 3 (value): empty'],
    ['A,2021,3,-1', 'r.csv, line 2, column 4 (sampling_variance): -1 is below 0'],
    ['A,2021,3,0x1', "r.csv, line 2, column 4 (sampling_variance): '0x1' is no number."],
  ])('the record %s is refused by line and column', async (record, message) => {
    const files = { ...FILES, 'r.csv': `queen,group,value,sampling_variance\n${record}\n` };
    const { code, out, error } = await run(`merit p.csv r.csv ${VARIANCES}`, files);
    expect(error).toContain(message);
    expect([code, out]).toEqual([2, '']);
  });

  it.each([
    ['--covariance -0.4', '--covariance -2', 'covariance'],
    ['--residual-variance 2', '--residual-variance 0', 'residual variance'],
    ['--worker-variance 1', '--worker-variance many', "--worker-variance: 'many' is no number."],
  ])('impossible variances are refused: %s as %s', async (good, bad, message) => {
    const { code, out, error } = await run(`merit p.csv r.csv ${VARIANCES.replace(good, bad)}`, FILES);
    expect(error).toContain(message);
    expect([code, out]).toEqual([2, '']);
  });

  it('tells problems of the pedigree and of the options together', async () => {
    const files = { ...FILES, 'p.csv': PEDIGREE.replace('V,C', 'V,X') };
    const { error } = await run(
      `merit p.csv r.csv ${VARIANCES.replace('--covariance -0.4', '--covariance x')}`,
      files,
    );
    expect(error).toContain("--covariance: 'x' is no number.");
    expect(error).toContain("p.csv, line 6, column 2 (dam): 'X'.");
  });
});
