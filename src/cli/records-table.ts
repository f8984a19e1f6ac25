/** The records table of the command line: `queen,group,value,sampling_variance`, one record a row. */
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { ColonyRecords } from '../../graph/merit/solve/colony-model.ts';
import type { World } from './command.ts';
import { numberIn, readTable, tableProblems } from './table.ts';

const COLUMNS = ['queen', 'group', 'value', 'sampling_variance'] as const;
const [QUEEN, GROUP, VALUE, SAMPLING] = [0, 1, 2, 3];

export type ReadRecords =
  | { readonly ok: true; readonly records: ColonyRecords }
  | { readonly ok: false; readonly problems: readonly string[] };

export function readRecords(world: World, file: string, pedigree: Pedigree): ReadRecords {
  const problems = tableProblems();
  const table = readTable(world, file, COLUMNS, problems.texts);
  if (!table) return { ok: false, problems: problems.texts };
  const count = table.rows.length;
  const queen = new Int32Array(count);
  const group = new Int32Array(count);
  const value = new Float64Array(count);
  const samplingVariance = new Float64Array(count);
  const groups = new Map<string, number>();
  table.rows.forEach((fields, row) => {
    const id = fields[QUEEN] ?? '';
    queen[row] = pedigree.queenIndex.get(id) ?? -1;
    if (queen[row] === -1)
      problems.add(table, row, QUEEN, `'${id}' is no queen of the pedigree. Add her, or correct the id.`);
    else if (pedigree.matesNode[queen[row] ?? 0] === -1) {
      problems.add(
        table,
        row,
        QUEEN,
        `'${id}' has not mated in the pedigree, so no workers of hers can have been recorded.`,
      );
    }
    const name = fields[GROUP] ?? '';
    if (name === '')
      problems.add(table, row, GROUP, 'empty; a record is compared within its group, as a yard and season.');
    group[row] = groups.get(name) ?? groups.set(name, groups.size).size - 1;
    value[row] = read(fields[VALUE] ?? '', VALUE, row);
    const sampling = fields[SAMPLING] ?? '';
    samplingVariance[row] = sampling === '' ? 0 : read(sampling, SAMPLING, row);
    if ((samplingVariance[row] ?? 0) < 0)
      problems.add(table, row, SAMPLING, `${sampling} is below 0, which no variance is.`);
  });
  function read(text: string, column: number, row: number): number {
    const number = numberIn(text);
    if (number === undefined && table)
      problems.add(
        table,
        row,
        column,
        text === '' ? 'empty; a number is expected.' : `'${text}' is no number.`,
      );
    return number ?? 0;
  }
  if (problems.texts.length > 0) return { ok: false, problems: problems.texts };
  return { ok: true, records: { queen, group, groups: groups.size, value, samplingVariance } };
}
