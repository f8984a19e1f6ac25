/** The records table of the command line: `queen,group,value,sampling_variance`, one record a row. */
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { ColonyRecords } from '../../graph/merit/solve/colony-model.ts';
import type { World } from './command.ts';
import { numberIn, readTable, type Table, type TableProblems, tableProblems } from './table.ts';

const COLUMNS = ['queen', 'group', 'value', 'sampling_variance'] as const;
const [QUEEN, GROUP, VALUE, SAMPLING] = [0, 1, 2, 3];

export type ReadRecords =
  | { readonly ok: true; readonly records: ColonyRecords }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Reads a table of records of one trait. All problems come back, by file, line and column. */
export function readRecords(world: World, file: string, pedigree: Pedigree): ReadRecords {
  const problems = tableProblems();
  const table = readTable(world, file, COLUMNS, problems.texts);
  if (!table) return { ok: false, problems: problems.texts };
  const { rows } = table;
  if (rows === 0)
    return { ok: false, problems: [`${file}, line 2, column 1 (queen): the table ends without a record.`] };
  const queen = new Int32Array(rows);
  const group = new Int32Array(rows);
  const value = new Float64Array(rows);
  const samplingVariance = new Float64Array(rows);
  const groups = new Map<string, number>();
  for (let row = 0; row < rows; row++) {
    queen[row] = queenAt(table, row, pedigree, problems);
    const name = table.cell(row, GROUP);
    if (name === '')
      problems.add(table, row, GROUP, 'empty; a record is compared within its group, as a yard and season.');
    group[row] = groups.get(name) ?? groups.set(name, groups.size).size - 1;
    value[row] = numberAt(table, row, VALUE, problems);
    if (table.cell(row, SAMPLING) === '') continue;
    const sampling = numberAt(table, row, SAMPLING, problems);
    samplingVariance[row] = sampling;
    if (sampling < 0) problems.add(table, row, SAMPLING, `${sampling} is below 0, which no variance is.`);
  }
  if (problems.texts.length > 0) return { ok: false, problems: problems.texts };
  return { ok: true, records: { queen, group, groups: groups.size, value, samplingVariance } };
}

function queenAt(table: Table, row: number, pedigree: Pedigree, problems: TableProblems): number {
  const id = table.cell(row, QUEEN);
  const queen = pedigree.queenIndex.get(id);
  if (queen === undefined) {
    problems.add(table, row, QUEEN, `'${id}' is no queen of the pedigree. Add her, or correct the id.`);
    return -1;
  }
  if (pedigree.matesNode[queen] === -1) {
    problems.add(
      table,
      row,
      QUEEN,
      `'${id}' has not mated in the pedigree, so no workers of hers can have been recorded.`,
    );
  }
  return queen;
}

function numberAt(table: Table, row: number, column: number, problems: TableProblems): number {
  const text = table.cell(row, column);
  const number = numberIn(text);
  if (number === undefined) {
    problems.add(
      table,
      row,
      column,
      text === '' ? 'empty; a number is expected.' : `'${text}' is no number.`,
    );
  }
  return number ?? 0;
}
