import type { ColumnMapping } from './columns.ts';
import type { Field } from './fields.ts';
import type { Question } from './questions.ts';
import type { TableRow } from './table.ts';

/** What a merged cell may say of all rows beside it. A queen's name is her own and is never carried down. */
const CARRIED: ReadonlySet<Field> = new Set<Field>(['yard', 'date', 'colony']);

/**
 * Cells that were merged in the sheet come as one full cell over empty ones. Where a column looks so, the keeper is asked
 * whether what stands above holds below; the rows come back with those cells filled.
 */
export function fillDown(
  rows: readonly TableRow[],
  mapping: readonly ColumnMapping[],
  ask: (question: Question) => string | undefined,
): readonly TableRow[] {
  const queen = mapping.find(({ field }) => field === 'queen')?.column;
  return mapping.reduce((filled, each) => {
    if (!CARRIED.has(each.field)) return filled;
    // A box is carried down to rows that name nobody: one who is named may well stand elsewhere.
    const open = (row: TableRow) =>
      each.field !== 'colony' || queen === undefined || (row.cells[queen] ?? '') === '';
    if (!looksMerged(filled, each.column, open)) return filled;
    const answer = ask(questionOf(each, filled));
    return answer === 'above' ? filledDown(filled, each.column, open) : filled;
  }, rows);
}

/** True when no value stands twice running, the first row has one, and empty cells are no rare exception. */
function looksMerged(rows: readonly TableRow[], column: number, open: (row: TableRow) => boolean): boolean {
  const cells = rows.map((row) => row.cells[column] ?? '');
  const full = cells.filter((cell) => cell !== '').length;
  const empty = rows.filter((row, at) => cells[at] === '' && open(row)).length;
  const twice = cells.some((cell, at) => cell !== '' && cell === cells[at - 1]);
  return cells[0] !== '' && !twice && empty > 0 && empty * 2 >= full;
}

function questionOf({ column, header }: ColumnMapping, rows: readonly TableRow[]): Question {
  const first = rows.findIndex((row) => row.cells[column] === '');
  const above = rows[first - 1]?.cells[column] ?? '';
  const name = header === '' ? 'One column' : `"${header}"`;
  return {
    id: `fill-down:${column}`,
    text: `${name} is empty in some rows, such as row ${rows[first]?.line}. What holds there?`,
    options: [
      { value: 'above', words: `What stands above, there ${above}` },
      { value: 'empty', words: 'It is not known' },
    ],
    guess: 'above',
    column,
  };
}

function filledDown(
  rows: readonly TableRow[],
  column: number,
  open: (row: TableRow) => boolean,
): readonly TableRow[] {
  let above = '';
  return rows.map((row) => {
    const cell = row.cells[column] ?? '';
    if (cell !== '') above = cell;
    if (cell !== '' || above === '' || !open(row)) return row;
    return { ...row, cells: row.cells.map((text, at) => (at === column ? above : text)) };
  });
}
