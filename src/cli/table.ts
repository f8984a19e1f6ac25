/** A table with named columns, read from a file, and problems told by file, line and column. */
import type { World } from './command.ts';
import { type CsvText, readCsv } from './csv-read.ts';

export interface Table {
  readonly file: string;
  /** Number of rows below the header. */
  readonly rows: number;
  /** A field, `column` being an index into `columns`. */
  readonly cell: (row: number, column: number) => string;
  /** Line of each row in the file, from 1. */
  readonly lineOf: (row: number) => number;
  /** Place of each column asked for in the file, from 1. */
  readonly places: readonly number[];
  readonly columns: readonly string[];
}

/** Collects problems, and stops the flood of a table that is wrong in every line. */
export interface TableProblems {
  readonly texts: string[];
  /** `column` is an index into the table's columns. */
  readonly add: (table: Table, row: number, column: number, text: string) => void;
}

/** Gathers the problems of a table, each with its file, line and column. */
export function tableProblems(): TableProblems {
  const texts: string[] = [];
  return {
    texts,
    add({ file, lineOf, places, columns }, row, column, text) {
      texts.push(`${file}, line ${lineOf(row)}, column ${places[column]} (${columns[column]}): ${text}`);
    },
  };
}

/** Reads a table that must have these columns, in any order; others are passed over. */
export function readTable(
  world: World,
  file: string,
  columns: readonly string[],
  problems: string[],
): Table | undefined {
  const text = textOf(world, file, problems);
  if (text === undefined) return undefined;
  const csv = readCsv(text);
  const before = problems.length;
  const { openQuote } = csv;
  if (openQuote) {
    const { line, column } = openQuote;
    problems.push(`${file}, line ${line}, column ${column}: a quote is opened and never closed.`);
  } else checkShape(csv, file, columns, problems);
  if (problems.length > before) return undefined;
  const { fields, lines, starts } = csv;
  const width = starts[1] ?? 0;
  const found = columns.map((column) => fields.indexOf(column));
  return {
    file,
    rows: lines.length - 1,
    cell: (row, column) => fields[(row + 1) * width + (found[column] ?? 0)] ?? '',
    lineOf: (row) => lines[row + 1] ?? 0,
    places: found.map((place) => place + 1),
    columns,
  };
}

/** A header with each column once, and rows of its width. */
function checkShape(
  { fields, starts, lines }: CsvText,
  file: string,
  columns: readonly string[],
  problems: string[],
): void {
  const [line] = lines;
  if (line === undefined) {
    problems.push(`${file}, line 1: the file is empty; its first line should be ${columns.join(',')}.`);
    return;
  }
  const width = starts[1] ?? 0;
  const header = fields.slice(0, width);
  for (const column of columns) {
    const times = header.filter((name) => name === column).length;
    if (times === 1) continue;
    const found = times === 0 ? 'is missing' : 'stands twice';
    problems.push(
      `${file}, line ${line}: the column '${column}' ${found}; the columns are ${columns.join(',')}.`,
    );
  }
  for (let row = 1; row < lines.length; row++) {
    const own = (starts[row + 1] ?? 0) - (starts[row] ?? 0);
    if (own === width) continue;
    const place = Math.min(own, width) + (own > width ? 1 : 0);
    problems.push(
      `${file}, line ${lines[row]}, column ${place}: ${own} fields, but the first line has ${width}.`,
    );
  }
}

function textOf(world: World, file: string, problems: string[]): string | undefined {
  try {
    return world.readText(file);
  } catch (error) {
    problems.push(
      `${file}: the file cannot be read (${error instanceof Error ? error.message : String(error)}).`,
    );
    return undefined;
  }
}

const LETTERS = 64;
const EXPONENTS = [69, 101];

/** The number a field says in decimals, or undefined where it says none. */
export function numberIn(text: string): number | undefined {
  const value = Number(text);
  if (text === '' || !Number.isFinite(value)) return undefined;
  /** `Number` reads 0x, 0b and 0o too, which no keeper means. */
  const second = text.charCodeAt(1);
  return second > LETTERS && !EXPONENTS.includes(second) ? undefined : value;
}
