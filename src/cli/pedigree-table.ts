/**
 * The pedigree table and the pools table of the command line, as facts of a pedigree.
 *   queen,dam,drone_mothers,mates,background,mates_background
 *   pool,drone_mothers,background
 * Every problem is told by file, line and column; none stops the reading of the rest.
 */
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { DronePoolInput, MatingInput, QueenInput, Share } from '../../graph/kinship/pedigree-input.ts';
import type { PedigreeProblem } from '../../graph/kinship/problems.ts';
import { BACKGROUND_OPTION, type Backgrounds, readBackgrounds } from './backgrounds.ts';
import type { Arguments, Option, World } from './command.ts';
import { parseMothers, parseShares } from './shares.ts';
import { numberIn, readTable, type Table, type TableProblems, tableProblems } from './table.ts';

export const PEDIGREE_OPTIONS: readonly Option[] = [
  BACKGROUND_OPTION,
  {
    name: 'pools',
    value: 'FILE',
    help: 'Table of drone pools (pool,drone_mothers,background) that the pedigree names as pool:NAME.',
  },
];

export const PEDIGREE_NOTES: readonly string[] = [
  'PEDIGREE.csv has the columns queen,dam,drone_mothers,mates,background,mates_background, rows in any order. ' +
    'dam: empty for a founder out of background, a queen, or several with probabilities, as A:0.7;B:0.3. ' +
    'drone_mothers: the mothers of the drones she met with their shares, as A:0.3;K:0.2, the rest of the weight ' +
    'going to mates_background; or pool:NAME. mates: her effective number of mates, 1 or more; empty while she ' +
    'has not mated.',
  'Backgrounds are populations nobody recorded; bees out of the same background are related by its kinship.',
];

const QUEEN_COLUMNS = ['queen', 'dam', 'drone_mothers', 'mates', 'background', 'mates_background'] as const;
const [QUEEN, DAM, MOTHERS, MATES, BACKGROUND, MATES_BACKGROUND] = [0, 1, 2, 3, 4, 5];
const POOL_COLUMNS = ['pool', 'drone_mothers', 'background'] as const;
const [POOL, POOL_MOTHERS, POOL_BACKGROUND] = [0, 1, 2];
const POOL_PREFIX = 'pool:';

export type ReadPedigree =
  | { readonly ok: true; readonly pedigree: Pedigree; readonly table: Table }
  | { readonly ok: false; readonly problems: readonly string[] };

interface Reading {
  readonly problems: TableProblems;
  readonly backgrounds: Backgrounds;
  readonly hasPools: boolean;
  /** Matings by their text: equal fields are read once. */
  readonly matings: Map<string, MatingInput | undefined>;
}

/**
 * Reads and compiles a pedigree table with its pools and backgrounds. All problems come back, by file, line and
 * column.
 */
export function readPedigree(world: World, file: string, { options }: Arguments): ReadPedigree {
  const problems = tableProblems();
  const backgrounds = readBackgrounds(options.get('background'), problems.texts);
  const queenTable = readTable(world, file, QUEEN_COLUMNS, problems.texts);
  const poolFile = options.get('pools');
  const poolTable =
    poolFile === undefined ? undefined : readTable(world, poolFile, POOL_COLUMNS, problems.texts);
  if (!queenTable || problems.texts.length > 0) return { ok: false, problems: problems.texts };
  const reading: Reading = { problems, backgrounds, hasPools: poolTable !== undefined, matings: new Map() };
  const pools = poolTable ? rowsOf(poolTable, (row) => poolOf(reading, poolTable, row)) : [];
  const queens = rowsOf(queenTable, (row) => queenOf(reading, queenTable, row));
  if (problems.texts.length > 0) return { ok: false, problems: problems.texts };
  const compiled = compilePedigree({ backgrounds: backgrounds.used(), pools, drones: [], queens });
  if (compiled.ok) return { ok: true, pedigree: compiled.pedigree, table: queenTable };
  return { ok: false, problems: compiled.problems.map((problem) => placed(problem, queenTable, poolTable)) };
}

const rowsOf = <Row>({ rows }: Table, read: (row: number) => Row): Row[] =>
  Array.from({ length: rows }, (_, row) => read(row));

/** The shares of drone mothers in a field and the background that takes their rest. */
function motherLists(
  { problems, backgrounds }: Reading,
  table: Table,
  row: number,
  mothersColumn: number,
  backgroundColumn: number,
) {
  const parsed = parseMothers(table.cell(row, mothersColumn));
  if (!parsed.ok) {
    problems.add(table, row, mothersColumn, parsed.because);
    return undefined;
  }
  const background = table.cell(row, backgroundColumn);
  if (parsed.rest === 0) return { droneMothers: parsed.mothers, backgrounds: [] };
  const refused = backgrounds.use(background);
  if (refused) problems.add(table, row, backgroundColumn, refused);
  return { droneMothers: parsed.mothers, backgrounds: [{ of: background, share: parsed.rest }] };
}

function poolOf(reading: Reading, table: Table, row: number): DronePoolInput {
  const id = table.cell(row, POOL);
  if (id === '') reading.problems.add(table, row, POOL, 'the pool has no name.');
  const lists = motherLists(reading, table, row, POOL_MOTHERS, POOL_BACKGROUND);
  return { id, droneMothers: lists?.droneMothers ?? [], backgrounds: lists?.backgrounds ?? [] };
}

function queenOf(reading: Reading, table: Table, row: number): QueenInput {
  const id = table.cell(row, QUEEN);
  if (id === '') reading.problems.add(table, row, QUEEN, 'the queen has no name.');
  const dams = damsOf(reading, table, row);
  const background = table.cell(row, BACKGROUND);
  if (dams.length === 0) {
    const refused = reading.backgrounds.use(background);
    if (refused) reading.problems.add(table, row, BACKGROUND, refused);
  }
  const mates = table.cell(row, MATES);
  if (mates === '') {
    if (table.cell(row, MOTHERS))
      reading.problems.add(
        table,
        row,
        MATES,
        'empty, though drone_mothers says whom she met. Give her effective number of mates.',
      );
    return { id, dams, background, effectiveMates: 1 };
  }
  const effectiveMates = numberIn(mates);
  if (effectiveMates === undefined) reading.problems.add(table, row, MATES, `'${mates}' is no number.`);
  const mating = matingOf(reading, table, row);
  return { id, dams, background, effectiveMates: effectiveMates ?? 1, ...(mating ? { mating } : {}) };
}

function damsOf({ problems }: Reading, table: Table, row: number): readonly Share[] {
  const parsed = parseShares(table.cell(row, DAM));
  if (parsed.ok) return parsed.shares;
  problems.add(table, row, DAM, parsed.because);
  return [];
}

function matingOf(reading: Reading, table: Table, row: number): MatingInput | undefined {
  const mothers = table.cell(row, MOTHERS);
  const isPool = mothers.startsWith(POOL_PREFIX);
  const key = isPool ? mothers : `${mothers}\n${table.cell(row, MATES_BACKGROUND)}`;
  if (reading.matings.has(key)) return reading.matings.get(key);
  if (isPool && !reading.hasPools) {
    const text = `'${mothers}' names a drone pool, but no table of pools is given. Give it with --pools FILE.`;
    reading.problems.add(table, row, MOTHERS, text);
  }
  const lists = isPool ? undefined : motherLists(reading, table, row, MOTHERS, MATES_BACKGROUND);
  const mating: MatingInput | undefined = isPool
    ? { kind: 'pool', pool: mothers.slice(POOL_PREFIX.length).trim() }
    : lists && { kind: 'drone-mothers', ...lists };
  reading.matings.set(key, mating);
  return mating;
}

const QUEEN_FIELDS: Readonly<Record<string, number>> = {
  id: QUEEN,
  dams: DAM,
  mating: MOTHERS,
  effectiveMates: MATES,
  background: BACKGROUND,
};
const POOL_FIELDS: Readonly<Record<string, number>> = {
  id: POOL,
  droneMothers: POOL_MOTHERS,
  backgrounds: POOL_BACKGROUND,
};

/** A problem of the compiled pedigree at its place in the tables. */
function placed(problem: PedigreeProblem, queens: Table, pools: Table | undefined): string {
  const { texts, add } = tableProblems();
  const text = `${problem.found}. ${problem.because} ${problem.remedy}`;
  const isPool = problem.list === 'pools' && pools;
  const table = isPool ? pools : queens;
  const fields = isPool ? POOL_FIELDS : QUEEN_FIELDS;
  const column = problem.code === 'dam-without-mating' ? MATES : (fields[problem.field] ?? QUEEN);
  add(table, problem.index, column, text);
  return texts[0] ?? text;
}
