import Papa from 'papaparse';
import { FIELD_NAMES, FIELDS, type Field } from './fields.ts';
import { plainWords } from './plain-words.ts';

/** A keeper's table as rows of text, with the rows that name its columns told apart. */
export interface Table {
  readonly delimiter: string;
  /** What stands over each column, all header rows put together; empty where nothing does. */
  readonly header: readonly string[];
  /** Rows below the header, blank ones left out. */
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** Row of the sheet, counted from 1 with every row above it. */
  readonly line: number;
  /** One text a column, trimmed. */
  readonly cells: readonly string[];
}

const DELIMITERS = ['\t', ';', ',', '|'] as const;
/** Rows looked at to find the delimiter and the header. */
const LOOKED_AT = 40;
/** Titles and blank rows may stand above the header, no more than this. */
const DEEPEST_HEADER = 12;

/** Reads pasted cells or CSV text (RFC 4180 quoting), whatever the delimiter. Any text gives a table, if an empty one. */
export function readTable(text: string): Table {
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const delimiter = guessDelimiter(clean);
  const lines = parse(clean, delimiter);
  const width = lines.reduce((widest, cells) => Math.max(widest, cells.length), 0);
  const rows = lines
    .map((cells, index) => ({
      line: index + 1,
      cells: Array.from({ length: width }, (_, column) => (cells[column] ?? '').trim()),
    }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const { from, to } = headerSpan(rows);
  const header = joinHeader(rows.slice(from, to), width);
  const used = usedColumns(header, rows.slice(to));
  return {
    delimiter,
    header: used.map((column) => header[column] ?? ''),
    rows: rows
      .slice(to)
      .map(({ line, cells }) => ({ line, cells: used.map((column) => cells[column] ?? '') })),
  };
}

function parse(text: string, delimiter: string): readonly (readonly string[])[] {
  return Papa.parse<string[]>(text, { delimiter, newline: '\n', skipEmptyLines: false }).data;
}

/** The delimiter that gives the most columns in the most rows alike. A comma inside numbers gives ragged rows. */
function guessDelimiter(text: string): string {
  const head = text.split('\n', LOOKED_AT).join('\n');
  let best: string = ',';
  let bestScore = 0;
  for (const delimiter of DELIMITERS) {
    const widths = parse(head, delimiter)
      .map((cells) => cells.length)
      .filter((width) => width > 1);
    const counts = new Map<number, number>();
    for (const width of widths) counts.set(width, (counts.get(width) ?? 0) + 1);
    const score = Math.max(0, ...[...counts].map(([width, count]) => count * Math.min(width, 30)));
    if (score > bestScore * 1.2) {
      best = delimiter;
      bestScore = score;
    }
  }
  return best;
}

/** The rows that name the columns: the first that reads like names, and those below it that go on with it. */
function headerSpan(rows: readonly TableRow[]): { readonly from: number; readonly to: number } {
  const looked = rows.slice(0, DEEPEST_HEADER);
  let from = looked.findIndex((row) => namesColumns(row, rows, 2));
  if (from < 0) from = looked.findIndex((row) => namesColumns(row, rows, 1));
  if (from < 0) from = looked.findIndex((row) => standsOverNumbers(row, rows));
  if (from < 0) return { from: 0, to: 0 };
  let to = from + 1;
  for (let row = rows[to]; row && to < from + 3 && goesOn(row.cells); row = rows[to]) to += 1;
  return { from, to };
}

/**
 * True for a row of which so many cells are known names of columns, half of all at least, and none is a number or a
 * day. A name that stands again further down in its column is a value and no name.
 */
function namesColumns(row: TableRow, rows: readonly TableRow[], least: number): boolean {
  const full = row.cells.filter((cell) => cell !== '');
  if (full.length < Math.min(2, row.cells.length) || full.some(isData)) return false;
  const known = row.cells.flatMap((cell, column) => (knownHeader(cell) ? [column] : []));
  if (known.length < Math.min(least, row.cells.length) || known.length * 2 < full.length) return false;
  const whole = row.cells.join('\n');
  return !rows.some(
    (other) =>
      other.line > row.line &&
      other.cells.join('\n') !== whole &&
      known.filter((column) => other.cells[column] === row.cells[column]).length * 2 > known.length,
  );
}

/**
 * True for a row of words in a language not known here: each cell another word, all columns of the rows below with one,
 * and numbers or days below at least one of them.
 */
function standsOverNumbers(row: TableRow, rows: readonly TableRow[]): boolean {
  const full = row.cells.filter((cell) => cell !== '');
  if (full.length < 3 || full.length * 3 < row.cells.length * 2) return false;
  if (new Set(full.map(plainWords)).size < full.length) return false;
  if (!full.every((cell) => /^\p{L}/u.test(cell) && cell.length < 40 && !DESCENT.test(plainWords(cell))))
    return false;
  const below = rows.filter(({ line }) => line > row.line);
  return row.cells.some((_, column) => {
    const cells = below.flatMap(({ cells: all }) => all[column] || []);
    return cells.length > 1 && cells.filter((cell) => /^\d/.test(cell)).length * 5 > cells.length * 3;
  });
}

const WINTER_OR_YEAR = /^(19|20)\d\d$|^\d{2,4}\s*[/-]\s*\d{2,4}$/;

function isData(cell: string): boolean {
  return /^[\d.,/\- :%]+$/.test(cell) && !WINTER_OR_YEAR.test(cell);
}

const UNIT =
  /^\(.*\)$|^(kg|lbs?|%|frames?|no|nr|1\s*-\s*\d|yes\/no|y\/n|ja\/nein|name|date|colour|color|dd.*|spring|autumn|fall)$/i;

/** True for a second row of header: every cell a unit, a year, a winter or another name of a column. */
function goesOn(cells: readonly string[]): boolean {
  const full = cells.filter((cell) => cell !== '');
  return (
    full.length > 0 &&
    full.every((cell) => UNIT.test(cell) || WINTER_OR_YEAR.test(cell) || headerMatch(cell) === 1)
  );
}

/** A cell that tells a descent is a value, though its first words may stand over a column too. */
const DESCENT = /^(daughter|d|dtr|tochter|fille|hija|f1)\b.+/;

function knownHeader(cell: string): boolean {
  return headerMatch(cell) >= 0.6;
}

function headerMatch(cell: string): number {
  const words = plainWords(cell);
  if (words.length >= 40) return 0;
  const best = Math.max(...FIELD_NAMES.map((field) => matchHeader(field, words)));
  return best < 1 && DESCENT.test(words) ? 0 : best;
}

/** How well the words over a column name a field, 0 to 1. */
export function matchHeader(field: Field, words: string): number {
  if (words === '') return 0;
  let best = 0;
  for (const synonym of FIELDS[field].synonyms) {
    if (words === synonym) return 1;
    if (` ${words} `.includes(` ${synonym} `)) {
      best = Math.max(best, 0.6 + (0.3 * synonym.length) / words.length);
    }
  }
  return best;
}

/** Header rows put together, an upper name standing over the empty cells to its right. */
function joinHeader(rows: readonly TableRow[], width: number): readonly string[] {
  const above = rows.slice(0, -1).map(({ cells }) => spread(cells));
  const last = rows.at(-1)?.cells ?? [];
  return Array.from({ length: width }, (_, column) =>
    [...above.map((cells) => cells[column] ?? ''), last[column] ?? '']
      .filter((cell, index, all) => cell !== '' && all.indexOf(cell) === index)
      .join(' '),
  );
}

function spread(cells: readonly string[]): readonly string[] {
  let standing = '';
  return cells.map((cell) => {
    if (cell !== '') standing = cell;
    return standing;
  });
}

function usedColumns(header: readonly string[], rows: readonly TableRow[]): readonly number[] {
  return header.flatMap((name, column) =>
    name !== '' || rows.some(({ cells }) => cells[column] !== '') ? [column] : [],
  );
}
