import type { PlainDay } from '../../journal/day.ts';
import { FIELD_NAMES, type Field } from './fields.ts';
import { plainWords } from './plain-words.ts';
import { skippedBecause } from './skipped.ts';
import { matchHeader, type Table } from './table.ts';
import { readDay } from './values/day.ts';
import { readMark } from './values/mark.ts';
import { readMites } from './values/mites.ts';
import { descentFrom, nameKey } from './values/name.ts';
import { readOutcome, readWinter } from './values/outcome.ts';

/** What a column is taken to hold. The keeper may change `field`. */
export interface ColumnMapping {
  readonly column: number;
  readonly header: string;
  readonly field: Field;
  /** The year that the words over the column name: of a winter, or of the records in it. */
  readonly year?: number;
  /** How sure the guess is, 0 to 1. */
  readonly confidence: number;
  /** Why it was guessed so, in words for the keeper. */
  readonly because: string;
  /** A few of the values, for the keeper to judge by. */
  readonly samples: readonly string[];
}

interface Guess {
  readonly field: Field;
  readonly confidence: number;
  readonly because: string;
}

/** Fields of which a table has one column; the surest keeps it. */
const ONCE: ReadonlySet<Field> = new Set([
  'queen',
  'dam',
  'colony',
  'yard',
  'born',
  'season',
  'date',
  'mark',
  'origin',
  'background',
  'ended',
  'status',
]);

/** A guess for every column, by the words over it and by what stands in it. */
export function guessColumns(table: Table, today: PlainDay): readonly ColumnMapping[] {
  const rows = table.rows.filter((row) => skippedBecause(table, row) === undefined);
  const mappings = table.header.map((header, column): ColumnMapping => {
    const cells = rows.map(({ cells: all }) => all[column] ?? '').filter((cell) => cell !== '');
    const guess = guessColumn(header, cells, today);
    const year = yearOver(header, guess.field);
    return {
      column,
      header,
      ...guess,
      samples: [...new Set(cells)].slice(0, 4),
      ...(year === undefined ? {} : { year }),
    };
  });
  return onlyOnce(
    mappings.map((mapping) => (isSeason(mapping, mappings, rows) ? asSeason(mapping) : mapping)),
  );
}

/** A year is that of the row, and not of her birth, where the same queens stand in rows of several years. */
function isSeason(
  { field, column }: ColumnMapping,
  mappings: readonly ColumnMapping[],
  rows: Table['rows'],
): boolean {
  const queen = mappings.find((mapping) => mapping.field === 'queen')?.column;
  if (field !== 'born' || queen === undefined) return false;
  const years = new Map<string, Set<string>>();
  for (const { cells } of rows) {
    const [name = '', year = ''] = [cells[queen], cells[column]];
    if (name === '' || !/^(19|20)\d\d$/.test(year)) continue;
    years.set(nameKey(name), (years.get(nameKey(name)) ?? new Set()).add(year));
  }
  const several = [...years.values()].filter((set) => set.size > 1).length;
  return several >= 2 && several * 4 >= years.size;
}

function asSeason(mapping: ColumnMapping): ColumnMapping {
  const because = 'The same queens stand in it with several years.';
  return { ...mapping, field: 'season', confidence: 0.7, because };
}

function guessColumn(header: string, cells: readonly string[], today: PlainDay): Guess {
  const words = plainWords(header);
  const named = FIELD_NAMES.map((field) => ({ field, confidence: matchHeader(field, words) })).reduce(
    (best, each) => (each.confidence > best.confidence ? each : best),
  );
  const seen = guessByCells(cells, today);
  if (named.confidence < 0.6 && isWinter(words, cells))
    return {
      field: 'winter',
      confidence: 0.8,
      because: 'A winter stands over it, and its cells say who lived.',
    };
  if (named.confidence < 0.6)
    return seen ?? { field: 'note', confidence: 0.2, because: 'Nothing tells what it is; kept as a note.' };
  if (seen && named.field === seen.field)
    return { ...named, confidence: 1, because: `"${header}" stands over it, and its cells agree.` };
  const plain = named.field === 'born' && BIRTH.test(words);
  const swapped = seen && !plain && WITHIN[named.field]?.includes(seen.field) ? seen : undefined;
  if (swapped)
    return {
      ...swapped,
      because: `"${header}" stands over it; its cells tell which kind. ${swapped.because}`,
    };
  return { ...named, because: `"${header}" stands over it.` };
}

/** Words that mean a birth, whatever days stand below them. */
const BIRTH =
  /\b(born|birth|hatched|emerged|geburtsjahr|geb|geboren|geschlupft|narozeni|fodt|fodd|syntymavuosi)\b/;

/** "2022/23" over cells that say alive or dead. */
function isWinter(header: string, cells: readonly string[]): boolean {
  const told = cells.filter((cell) => readOutcome(cell) !== undefined).length;
  return /^(\d\d)?\d\d (\d\d)?\d\d$/.test(header) && told > 0 && told * 2 >= cells.length;
}

/** Words that stand over columns of several kinds, which only the cells tell apart. */
const WITHIN: Partial<Record<Field, readonly Field[]>> = {
  ended: ['status', 'winter'],
  status: ['ended'],
  born: ['date'],
  'frames-of-brood': ['brood-pattern'],
  dam: ['origin'],
  origin: ['dam'],
};

const YES_NO = /^(yes|no|y|n|ja|nein|oui|non|si|1|0|ok)$/i;

function guessByCells(cells: readonly string[], today: PlainDay): Guess | undefined {
  if (cells.length === 0) return undefined;
  const share = (test: (cell: string) => boolean) => cells.filter(test).length / cells.length;
  const kinds: readonly (readonly [Field, number, string])[] = [
    ['dam', share((cell) => descentFrom(cell) !== undefined), 'Its cells read like descents.'],
    [
      'mites',
      share((cell) => /\d\s*(\/|of|in)\s*\d|%/.test(cell) && readMites(cell, {}).is === 'count'),
      'Its cells read like mite counts.',
    ],
    [
      'date',
      share((cell) => /\D/.test(cell) && readDay(cell, today).is !== 'unreadable'),
      'Its cells are days.',
    ],
    ['born', share((cell) => /^(19|20)\d\d$/.test(cell)), 'Its cells are years.'],
    [
      'status',
      share((cell) => !YES_NO.test(cell) && readOutcome(cell) !== undefined),
      'Its cells say what became of something.',
    ],
    ['mark', share((cell) => cell.length > 2 && readMark(cell).is === 'marked'), 'Its cells are colours.'],
  ];
  const best = kinds.reduce((top, each) => (each[1] > top[1] ? each : top));
  return best[1] >= 0.6 ? { field: best[0], confidence: 0.4 + 0.2 * best[1], because: best[2] } : undefined;
}

/** Only winters and records are of a year that stands over the column. */
function yearOver(header: string, field: Field): number | undefined {
  return field === 'queen' || field === 'colony' || field === 'dam' ? undefined : readWinter(header);
}

function onlyOnce(mappings: readonly ColumnMapping[]): readonly ColumnMapping[] {
  const keepers = new Map<Field, ColumnMapping>();
  for (const mapping of mappings) {
    const other = keepers.get(mapping.field);
    if (!other || mapping.confidence > other.confidence) keepers.set(mapping.field, mapping);
  }
  return mappings.map((mapping) =>
    ONCE.has(mapping.field) && keepers.get(mapping.field) !== mapping
      ? {
          ...mapping,
          field: 'note',
          confidence: 0.3,
          because: 'Another column fits this better; kept as a note.',
        }
      : mapping,
  );
}
