import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../../graph/kinship/compile.ts';
import { csvField, csvNumber } from '../../../src/cli/csv-write.ts';
import { numberIn } from '../../../src/cli/table.ts';
import { run } from '../../helpers/table-world.ts';

const HEADER = 'queen,dam,drone_mothers,mates,background,mates_background';

/** Q1 and K are founders; Q2 and Q3 are sisters; Q2 met K's sons, some of her own mother's, and unrecorded ones. */
const PEDIGREE = [
  HEADER,
  'Q2,Q1,K:0.5;Q1:0.25,4,,far',
  'Q1,,pool:hill,2,near,',
  'K,,,,near,',
  'Q3,Q1,,,,',
  'Q4,Q2:0.75;Q1:0.25,,,,',
  '',
].join('\n');
const POOLS = 'pool,drone_mothers,background\nhill,K:0.5,near\n';
const FILES = { 'p.csv': PEDIGREE, 'pools.csv': POOLS };
const OPTIONS = '--pools pools.csv --background near=0.04,far=0';

/** theta = 0.04; hill = K/2 + near/2. */
const THETA = 0.04;
/** A[hill][hill] = 1/4 (1 + theta) + 1/2 2 theta + 1/4 2 theta. */
const HILL = (1 + THETA) / 4 + THETA + THETA / 2;
/** Founders of one background have kinship theta, and with hill too: A = 2 theta with both halves. */
const F_OF_DAUGHTERS = THETA;
const SISTERS = (1 + THETA + 2 * 2 * THETA + (1 + HILL / 2)) / 4 / 2;

function rows(text: string): string[][] {
  return text
    .trimEnd()
    .split('\n')
    .map((line) => line.split(','));
}

describe('inbreeding', () => {
  it('prints each queen with her inbreeding and that of her brood, in the order of the table', async () => {
    const { code, out, error } = await run(`inbreeding p.csv ${OPTIONS}`, FILES);
    expect([code, error]).toEqual([0, '']);
    const [header, ...lines] = rows(out);
    expect(header).toEqual(['queen', 'inbreeding', 'brood_inbreeding']);
    expect(lines.map(([queen]) => queen)).toEqual(['Q2', 'Q1', 'K', 'Q3', 'Q4']);
    const figure = (queen: string, column: number) => Number(lines.find(([id]) => id === queen)?.[column]);
    expect(figure('Q1', 1)).toBeCloseTo(THETA, 12);
    expect(figure('Q1', 2)).toBeCloseTo(F_OF_DAUGHTERS, 12);
    expect(figure('Q2', 1)).toBeCloseTo(F_OF_DAUGHTERS, 12);
    /** f(Q2, K) = theta/2 + (1 + theta)/2/2/2 + theta/2/2; f(Q2, Q1) = (1 + theta)/4 + theta/2. */
    const withK = THETA / 2 + (1 + THETA) / 8 + THETA / 4;
    const withDam = (1 + THETA) / 4 + THETA / 2;
    expect(figure('Q2', 2)).toBeCloseTo(0.5 * withK + 0.25 * withDam, 12);
    expect(figure('Q4', 1)).toBeCloseTo(0.75 * figure('Q2', 2) + 0.25 * F_OF_DAUGHTERS, 11);
  });

  it('leaves the brood of queens who have not mated empty', async () => {
    const { out } = await run(`inbreeding p.csv ${OPTIONS}`, FILES);
    expect(
      rows(out)
        .filter(([queen]) => ['K', 'Q3', 'Q4'].includes(queen!))
        .map((row) => row[2]),
    ).toEqual(['', '', '']);
  });
});

describe('kinship', () => {
  it('prints every unordered pair once, with itself, unless told which', async () => {
    const { code, out } = await run(`kinship p.csv ${OPTIONS}`, FILES);
    expect(code).toBe(0);
    const [header, ...lines] = rows(out);
    expect(header).toEqual(['queen_a', 'queen_b', 'kinship']);
    expect(lines).toHaveLength(15);
    expect(new Set(lines.map(([a, b]) => [a, b].sort().join())).size).toBe(15);
    const of = (a: string, b: string) => Number(lines.find((row) => row[0] === a && row[1] === b)?.[2]);
    expect(of('Q1', 'Q1')).toBeCloseTo((1 + THETA) / 2, 12);
    expect(of('Q1', 'K')).toBeCloseTo(THETA, 12);
    expect(of('Q2', 'Q3')).toBeCloseTo(SISTERS, 12);
  });

  it('takes an id that holds a comma in quotes, as a table does', async () => {
    const table = `${HEADER}\n"A,old",,,3,,\nB,"A,old",,3,,\n`;
    const { out, error } = await run('kinship p.csv --pairs B,"A,old"', { 'p.csv': table });
    expect(error).toBe('');
    expect(out).toBe('queen_a,queen_b,kinship\nB,B,0.5\nB,"A,old",0.25\n"A,old","A,old",0.5\n');
    const open = await run('kinship p.csv --pairs B,"A', { 'p.csv': table });
    expect([open.code, open.out]).toEqual([2, '']);
    expect(open.error).toContain('--pairs: a quote is opened and never closed');
  });

  it('prints the pairs of those named, in their order', async () => {
    const { out } = await run(`kinship p.csv --pairs Q3,Q1 ${OPTIONS}`, FILES);
    expect(
      rows(out)
        .slice(1)
        .map(([a, b]) => `${a} ${b}`),
    ).toEqual(['Q3 Q3', 'Q3 Q1', 'Q1 Q1']);
  });

  it('is the same in whatever order the rows and columns of the table stand', async () => {
    const [header, ...lines] = PEDIGREE.trimEnd().split('\n');
    const turned = [header!, ...lines.reverse()]
      .map((line) => line.split(',').reverse().join(','))
      .join('\n');
    const pairs = async (text: string) => {
      const { out } = await run(`kinship p.csv --pairs Q1,Q2,Q3,Q4,K ${OPTIONS}`, {
        ...FILES,
        'p.csv': text,
      });
      return out;
    };
    expect(await pairs(turned)).toBe(await pairs(PEDIGREE));
  });

  it('reads quotes, a byte order mark, CRLF, blank lines and blanks around fields', async () => {
    const quoted = `\ufeff${HEADER}\r\n"Old ""Red"", hill", ,"K:0.5 ; M:0.5", 3 ,near,\r\n\r\nK,,,,near,\r\nM,,,,near,\r\nV,"Old ""Red"", hill",,,,\r\n`;
    const { code, out, error } = await run('inbreeding p.csv --background near=0', { 'p.csv': quoted });
    expect([code, error]).toEqual([0, '']);
    expect(out.split('\n')[1]).toBe('"Old ""Red"", hill",0,0');
    expect(out.split('\n')[4]).toBe('V,0,');
  });

  it('writes to a file with --out, and then nothing to standard output', async () => {
    const ran = await run(`kinship p.csv --pairs K --out k.csv ${OPTIONS}`, FILES);
    expect([ran.code, ran.out]).toEqual([0, '']);
    expect(ran.written.get('k.csv')).toBe('queen_a,queen_b,kinship\nK,K,0.52\n');
  });

  it('takes an empty background as unrelated bees, and all backgrounds so without --background', async () => {
    const table = `${HEADER}\nA,,,,,\nB,,,,somewhere,\nC,,,,somewhere,\n`;
    const { out } = await run('kinship p.csv', { 'p.csv': table });
    expect(
      rows(out)
        .slice(1)
        .map(([a, b, f]) => `${a}${b} ${f}`),
    ).toEqual(['AA 0.5', 'AB 0', 'AC 0', 'BB 0.5', 'BC 0', 'CC 0.5']);
  });
});

describe('a table that is wrong', () => {
  const refused: readonly (readonly [what: string, table: readonly string[], message: string])[] = [
    [
      'an unknown dam',
      ['A,,,,near,', 'B,X,,,,'],
      "p.csv, line 3, column 2 (dam): 'X'. No queen has that id.",
    ],
    ['an unknown drone mother', ['A,,Z:0.5,3,near,near'], "p.csv, line 2, column 3 (drone_mothers): 'Z'."],
    [
      'an unknown pool',
      ['A,,pool:Z,3,near,near'],
      "p.csv, line 2, column 3 (drone_mothers): 'pool:Z' names a drone pool, but no table of pools is given.",
    ],
    [
      'a share under 0',
      ['A,,,3,near,near', 'B,,A:-0.2,3,near,near'],
      "p.csv, line 3, column 3 (drone_mothers): 'A:-0.2': a share is more than 0 and at most 1.",
    ],
    [
      'an unknown background',
      ['A,,,,nowhere,'],
      "p.csv, line 2, column 5 (background): 'nowhere' is no background",
    ],
    [
      'weights over 1',
      ['A,,,,near,', 'B,,A:0.7;A:0.5,3,near,near'],
      'p.csv, line 3, column 3 (drone_mothers): the shares sum to 1.2',
    ],
    [
      'probabilities of dams under 1',
      ['A,,,3,near,near', 'B,A:0.7,,,,'],
      'p.csv, line 3, column 2 (dam): shares that sum to 0.7.',
    ],
    [
      'a share that is no number',
      ['A,,K:many,3,near,near'],
      "p.csv, line 2, column 3 (drone_mothers): 'K:many' is not NAME:SHARE",
    ],
    [
      'mates that are no number',
      ['A,,,a dozen,near,near'],
      "p.csv, line 2, column 4 (mates): 'a dozen' is no number.",
    ],
    [
      'mates under 1',
      ['A,,,0.5,near,near'],
      'p.csv, line 2, column 4 (mates): 0.5. The effective number of mates is at least 1.',
    ],
    [
      'drone mothers without mates',
      ['A,,,,near,', 'B,,A:1,,near,'],
      'p.csv, line 3, column 4 (mates): empty',
    ],
    [
      'a doubled row',
      ['A,,,,near,', 'B,,,,near,', 'A,,,,near,'],
      "p.csv, line 4, column 1 (queen): 'A' a second time.",
    ],
    ['a queen without a name', [',,,,near,'], 'p.csv, line 2, column 1 (queen): the queen has no name.'],
    [
      'a dam who is her own descendant',
      ['A,B,,3,,near', 'B,A,,3,,near'],
      "p.csv, line 2, column 2 (dam): a loop of descent through 'A', 'B'.",
    ],
    [
      'a loop through drones',
      ['A,,B:1,3,near,', 'B,A,,,,'],
      "p.csv, line 2, column 3 (drone_mothers): a loop of descent through 'B', 'A'.",
    ],
    [
      'a dam who has not mated',
      ['A,,,,near,', 'B,A,,,,'],
      "p.csv, line 2, column 4 (mates): nothing, though she is a dam of 'B'.",
    ],
    [
      'a row with a field too many',
      ['A,,,,near,,x'],
      'p.csv, line 2, column 7: 7 fields, but the first line has 6.',
    ],
    ['a row with a field missing', ['A,,,,near'], 'p.csv, line 2, column 5: 5 fields'],
    [
      'a quote never closed',
      ['A,"B,,,near,'],
      'p.csv, line 2, column 2: a quote is opened and never closed.',
    ],
  ];

  it.each(refused)(
    '%s: told by file, line and column, code 2, nothing on standard output',
    async (_, lines, message) => {
      const files = { 'p.csv': [HEADER, ...lines].join('\n') };
      const { code, out, error } = await run('inbreeding p.csv --background near=0.03', files);
      expect(error).toContain(message);
      expect([code, out]).toEqual([2, '']);
    },
  );

  it('is told whole: every wrong line', async () => {
    const files = { 'p.csv': [HEADER, 'A,,,x,near,', 'B,,A:2,3,near,', 'C,,,,far,'].join('\n') };
    const { error } = await run('inbreeding p.csv --background near=0.03', files);
    expect(
      error
        .trimEnd()
        .split('\n')
        .map((line) => line.split(':')[0]),
    ).toEqual([
      'p.csv, line 2, column 4 (mates)',
      'p.csv, line 3, column 3 (drone_mothers)',
      'p.csv, line 4, column 5 (background)',
    ]);
  });

  it('a table of pools is placed in its own file', async () => {
    const files = {
      'p.csv': `${HEADER}\nA,,pool:hill,3,,\n`,
      'pools.csv': 'pool,drone_mothers,background\nhill,X:0.5,\n\nhill,A:1,\n',
    };
    const { error, code } = await run('inbreeding p.csv --pools pools.csv', files);
    expect(code).toBe(2);
    expect(error).toContain("pools.csv, line 2, column 2 (drone_mothers): 'X'.");
    expect(error).toContain("pools.csv, line 4, column 1 (pool): 'hill' a second time.");
  });

  it('a missing file, a missing column and an empty file are told', async () => {
    expect((await run('inbreeding none.csv', {})).error).toBe(
      'none.csv: the file cannot be read (no such file).\n',
    );
    const { error } = await run('inbreeding p.csv', { 'p.csv': 'queen,dam\nA,\n' });
    expect(error).toContain("p.csv, line 1: the column 'drone_mothers' is missing");
    expect((await run('inbreeding p.csv', { 'p.csv': '' })).error).toContain(
      'p.csv, line 1: the file is empty',
    );
  });
});

describe('options and commands that are wrong', () => {
  it.each([
    ['inbreeding', "'inbreeding' needs PEDIGREE.csv."],
    ['inbreeding p.csv q.csv', "'q.csv' is one file too many"],
    ['inbreeding p.csv --pool x', "--pool is no option of 'inbreeding'."],
    ['inbreeding p.csv --background', '--background has no value.'],
    ['inbreeding p.csv --background near', "--background: 'near' is not NAME=KINSHIP"],
    ['inbreeding p.csv --background near=2', "--background: the kinship of 'near' is 2"],
    ['inbreeding p.csv --background near=0,near=0', "--background: 'near' stands twice."],
    ['kinship p.csv --pairs Q1,X --pools pools.csv', "--pairs: 'X' is no queen of the pedigree."],
    ['merit p.csv r.csv --worker-variance 1', "'merit' needs --queen-variance V."],
    ['rankings p.csv', "'rankings' is no command."],
    ['toString p.csv', "'toString' is no command."],
    ['help rankings', "'rankings' is no command."],
  ])('%s: code 2, a sentence, nothing on standard output', async (line, message) => {
    const { code, out, error } = await run(line, FILES);
    expect(error).toContain(message);
    expect([code, out]).toEqual([2, '']);
  });
});

describe('help', () => {
  it('is printed with code 0 for the whole and for each command', async () => {
    const all = await run('--help', {});
    expect(all.code).toBe(0);
    for (const command of ['kinship', 'inbreeding', 'merit', 'check', 'rank', 'trace']) {
      expect(all.out).toContain(command);
      const one = await run(`${command} --help`, {});
      expect([one.code, one.error]).toEqual([0, '']);
      expect(one.out).toContain(`npm run -s damline -- ${command} `);
    }
  });

  it('of a command on tables tells the options and columns of the pedigree', async () => {
    for (const command of ['kinship', 'inbreeding', 'merit']) {
      const { out } = await run(`${command} --help`, {});
      expect(out).toContain('--background NAME=KINSHIP,...');
      expect(out).toContain('queen,dam,drone_mothers,mates,background,mates_background');
    }
  });

  it('without any word goes to standard error with code 2', async () => {
    const { code, out, error } = await run('', {});
    expect([code, out]).toEqual([2, '']);
    expect(error).toContain('Commands:');
  });
});

describe('written numbers', () => {
  it.each([
    [0, '0'],
    [1, '1'],
    [0.25, '0.25'],
    [1 / 3, '0.333333333333'],
    [-2 / 3, '-0.666666666667'],
    [1 / 1024, '0.0009765625'],
    [1.23456789012345e-9, '1.23456789012e-9'],
    [123456.789012345, '123456.789012'],
    [100, '100'],
    [undefined, ''],
  ])('%d has 12 significant digits and no idle zeros', (value, text) => {
    expect(csvNumber(value)).toBe(text);
  });

  it('are quoted where a comma or quote is in a name', () => {
    expect([csvField('plain'), csvField('a,b'), csvField('a "b"')]).toEqual(['plain', '"a,b"', '"a ""b"""']);
  });
});

describe('the tables and the engine', () => {
  it('agree: the table compiles to what the same facts do', async () => {
    const direct = compilePedigree({
      backgrounds: [
        { id: 'near', kinship: THETA },
        { id: 'far', kinship: 0 },
      ],
      pools: [
        { id: 'hill', droneMothers: [{ of: 'K', share: 0.5 }], backgrounds: [{ of: 'near', share: 0.5 }] },
      ],
      drones: [],
      queens: [
        {
          id: 'Q2',
          dams: [{ of: 'Q1', share: 1 }],
          background: '',
          effectiveMates: 4,
          mating: {
            kind: 'drone-mothers',
            droneMothers: [
              { of: 'K', share: 0.5 },
              { of: 'Q1', share: 0.25 },
            ],
            backgrounds: [{ of: 'far', share: 0.25 }],
          },
        },
        { id: 'Q1', dams: [], background: 'near', effectiveMates: 2, mating: { kind: 'pool', pool: 'hill' } },
        { id: 'K', dams: [], background: 'near', effectiveMates: 1 },
      ],
    });
    if (!direct.ok) throw new Error('These facts are in order.');
    const { out } = await run(`inbreeding p.csv ${OPTIONS}`, FILES);
    expect(Number(rows(out)[1]?.[2])).toBeCloseTo(direct.pedigree.relationToMates[0]! / 2, 12);
  });
});

describe('numbers in a field', () => {
  it.each([
    ['0.25', 0.25],
    ['.5', 0.5],
    ['3.', 3],
    ['-1.5', -1.5],
    ['+2', 2],
    ['1e-3', 0.001],
    ['2E2', 200],
    ['', undefined],
    ['0x10', undefined],
    ['0b1', undefined],
    ['1,5', undefined],
    ['1 5', undefined],
    ['Infinity', undefined],
    ['NaN', undefined],
    ['twelve', undefined],
    ['1e999', undefined],
  ])('%s', (text, value) => {
    expect(numberIn(text)).toBe(value);
  });
});
