import { firstDay, type PlainDay, type RoughDay, yearOf } from '../../journal/day.ts';
import type { ColumnMapping } from './columns.ts';
import { type ReadRow, rowProblem } from './row.ts';
import type { ColumnSettings, Settings } from './settings.ts';
import { monthIn, readDay } from './values/day.ts';

/** One cell with what is known of its column and its table. */
export interface Cell {
  readonly text: string;
  readonly column: ColumnMapping;
  readonly settings: ColumnSettings;
  readonly all: Settings;
  readonly today: PlainDay;
}

/** Reads a cell into its row. */
export type Reader = (row: ReadRow, cell: Cell) => void;

export function asNote(row: ReadRow, { text, column }: Cell): void {
  row.notes.push(
    column.header === '' ||
      (column.field === 'note' && /note|remark|comment|bemerk|notiz/i.test(column.header))
      ? text
      : `${column.header}: ${text}`,
  );
}

/** The cell says something that cannot be used: it is kept as a note, and the keeper is told. */
export function keepAsNote(row: ReadRow, cell: Cell, because: string, remedy: string): void {
  const note = cell.column.header === '' ? cell.text : `${cell.column.header}: ${cell.text}`;
  row.notes.push(note);
  row.problems.push(rowProblem(row.line, cell.column, { found: cell.text, because, remedy, blocks: false }));
}

export function block(row: ReadRow, cell: Cell, because: string, remedy: string): void {
  row.problems.push(rowProblem(row.line, cell.column, { found: cell.text, because, remedy, blocks: true }));
}

/** The day of a record in a cell: of the year or month over the column, of the row or its season, or as the keeper answered. */
export function recordDay(row: ReadRow, cell: Cell): RoughDay | undefined {
  const own = cell.column.field === 'winter' ? undefined : cell.column.year;
  const year = own ?? row.season ?? (row.date && yearOf(row.date));
  const month = monthIn(cell.column.header);
  if (month !== undefined && year !== undefined) return inMonth(row.date, year, month);
  if (own !== undefined) return String(own) as RoughDay;
  if (row.date) return row.date;
  if (row.season !== undefined) return String(row.season) as RoughDay;
  if (!cell.all.recordsDay) return undefined;
  const read = readDay(cell.all.recordsDay, cell.today, 'day-first');
  return read.is === 'day' && firstDay(read.day) <= cell.today ? read.day : undefined;
}

/** The day of the row where it lies in the month that stands over the column, else that month. */
function inMonth(date: RoughDay | undefined, year: number, month: number): RoughDay {
  const named = `${year}-${String(month).padStart(2, '0')}`;
  return date?.startsWith(named) ? date : (named as RoughDay);
}

export function undated(row: ReadRow, cell: Cell): void {
  // A row that stays out for its date need not say so once more for each of its cells.
  if (row.problems.some(({ blocks }) => blocks)) return;
  keepAsNote(
    row,
    cell,
    'There is no day for this record.',
    'Give the row a date, or say above when it was recorded.',
  );
}
