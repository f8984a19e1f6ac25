/** A table with named columns, read from a file, and problems told by file, line and column. */
import type { World } from './command.ts';
import { readCsv } from './csv-read.ts';

export interface Table {
  readonly file: string;
  /** Fields of each row in the order of the columns asked for. */
  readonly rows: readonly (readonly string[])[];
  /** Line of each row in the file, from 1. */
  readonly lines: Int32Array;
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

export function tableProblems(): TableProblems {
  const texts: string[] = [];
  return {
    texts,
    add({ file, lines, places, columns }, row, column, text) {
      texts.push(`${file}, line ${lines[row]}, column ${places[column]} (${columns[column]}): ${text}`);
    },
  };
}

/** Reads a table that must have these columns, in any order; others are passed over. */
export function readTable<Column extends string>(
  world: World,
  file: string,
  columns: readonly Column[],
  problems: string[],
): Table | undefined {
  const text = textOf(world, file, problems);
  if (text === undefined) return undefined;
  const { records, openQuoteLine } = readCsv(text);
  if (openQuoteLine !== undefined)
    problems.push(`${file}, line ${openQuoteLine}: a quote is opened and never closed.`);
  const [header, ...rows] = records;
  if (!header) {
    problems.push(`${file}, line 1: the file is empty; the first line should be ${columns.join(',')}.`);
    return undefined;
  }
  const found = columns.map((column) => header.fields.indexOf(column));
  columns.forEach((column, k) => {
    if (found[k] === -1) {
      problems.push(
        `${file}, line ${header.line}: the column '${column}' is missing; columns are ${columns.join(',')}.`,
      );
    } else if (header.fields.indexOf(column, (found[k] ?? 0) + 1) >= 0) {
      problems.push(`${file}, line ${header.line}: the column '${column}' stands twice.`);
    }
  });
  const width = header.fields.length;
  for (const { fields, line } of rows) {
    if (fields.length === width) continue;
    problems.push(
      `${file}, line ${line}, column ${Math.min(fields.length, width + 1)}: ${fields.length} fields, but the first line has ${width}.`,
    );
  }
  if (problems.length > 0) return undefined;
  const isInPlace = found.every((place, k) => place === k);
  return {
    file,
    rows: rows.map(({ fields }) => (isInPlace ? fields : found.map((place) => fields[place] ?? ''))),
    lines: Int32Array.from(rows, ({ line }) => line),
    places: found.map((place) => place + 1),
    columns,
  };
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

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** The number a field says, or undefined where it says none. */
export function numberIn(text: string): number | undefined {
  if (!NUMBER.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
