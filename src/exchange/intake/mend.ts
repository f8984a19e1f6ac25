import type { Table } from './table.ts';

/** Cells that the keeper wrote anew, by `cellKey`. */
export type Mended = ReadonlyMap<string, string>;

export function cellKey(line: number, column: number): string {
  return `${line}:${column}`;
}

/** The table with those cells in place of its own. */
export function mendTable(table: Table, mended: Mended): Table {
  if (mended.size === 0) return table;
  const rows = table.rows.map((row) => ({
    ...row,
    cells: row.cells.map((cell, column) => (mended.get(cellKey(row.line, column)) ?? cell).trim()),
  }));
  return { ...table, rows };
}
