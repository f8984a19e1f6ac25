import { describe, expect, it } from 'vitest';
import { solveMerit } from '../../../graph/merit/solve/merit.ts';
import { reliabilities } from '../../../graph/merit/solve/reliability.ts';
import { randomGenerator } from '../../../graph/numerics/random.ts';
import { compiled } from '../../helpers/compiled.ts';
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

/** More queens with records than are solved directly: the command goes by sweeps. */
const MANY = 400;

/** One registry twice: as tables, and as what they say. */
function manyQueens() {
  const random = randomGenerator(3);
  const ids = Array.from({ length: MANY }, (_, k) => `Q${k}`);
  const damOf = (k: number) => (k < 10 ? '' : `Q${Math.floor(k / 3)}`);
  const share = (k: number) => ({ of: `Q${k % 7}`, share: 0.3 });
  const pedigree = compiled({
    backgrounds: [{ id: 'near', kinship: 0.03 }],
    pools: [],
    drones: [],
    queens: ids.map((id, k) => ({
      id,
      dams: k < 10 ? [] : [{ of: damOf(k), share: 1 }],
      background: k < 10 ? 'near' : '',
      mating: {
        kind: 'drone-mothers',
        droneMothers: k < 10 ? [] : [share(k)],
        backgrounds: [{ of: 'near', share: k < 10 ? 1 : 0.7 }],
      },
      effectiveMates: 12,
    })),
  });
  const values = ids.map(() => Number((10 + random.normal()).toFixed(3)));
  const records = {
    queen: Int32Array.from(ids.keys()),
    group: Int32Array.from(ids, (_, k) => k % 20),
    groups: 20,
    value: Float64Array.from(values),
    samplingVariance: new Float64Array(MANY),
  };
  const rowsOfTable = ids.map(
    (id, k) => `${id},${damOf(k)},${k < 10 ? '' : `${share(k).of}:0.3`},12,near,near`,
  );
  const rowsOfRecords = ids.map((id, k) => `${id},G${k % 20},${values[k]},`);
  const files = {
    'p.csv': ['queen,dam,drone_mothers,mates,background,mates_background', ...rowsOfTable].join('\n'),
    'r.csv': ['queen,group,value,sampling_variance', ...rowsOfRecords].join('\n'),
  };
  return { pedigree, records, files };
}

describe('merit of a large table', () => {
  it('prints the digits of the direct solution, not those of a search cut short', async () => {
    const { pedigree, records, files } = manyQueens();
    const variances = { worker: 1, queen: 0.6, covariance: -0.4, permanent: 0.3, residual: 2 };
    const direct = solveMerit(pedigree, records, variances, { method: 'dense' });
    const asked = Int32Array.of(0, 150, 399);
    const known = reliabilities(pedigree, records, variances, asked, { method: 'dense' });
    if (direct.is !== 'solved' || known.is !== 'solved') throw new Error('The direct way always solves.');
    const line = `merit p.csv r.csv ${VARIANCES} --background near=0.03 --reliability Q0,Q150,Q399`;
    const printed = rows((await run(line, files)).out).slice(1);
    expect(printed).toHaveLength(MANY);
    printed.forEach(([, worker, queen, value], k) => {
      expect(Math.abs(Number(worker) - direct.worker[k]!)).toBeLessThan(1e-11);
      expect(Math.abs(Number(queen) - direct.queen[k]!)).toBeLessThan(1e-11);
      expect(Math.abs(Number(value) - direct.breedingValue[k]!)).toBeLessThan(1e-11);
    });
    asked.forEach((queen, place) => {
      expect(Math.abs(Number(printed[queen]![4]) - known.reliability[place]!)).toBeLessThan(1e-11);
    });
  });
});
