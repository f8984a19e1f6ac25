import type { PlainDay } from '../../journal/day.ts';
import { winterYears } from '../../journal/day-words.ts';
import type { ColumnMapping } from './columns.ts';
import { FIELDS } from './fields.ts';
import { type Answers, answerTo, type Question } from './questions.ts';
import { columnLetter } from './row.ts';
import { skippedBecause } from './skipped.ts';
import type { Table } from './table.ts';
import { type DayOrder, provenOrder, readDay } from './values/day.ts';
import { miteHeader, readMites } from './values/mites.ts';
import { readNumber } from './values/number.ts';

/** How a score is written in a column. */
export type Scale = '1-4' | '1-5' | '5-1' | '1-10' | '10-1' | 'leave-as-note';

/** What holds for all cells of a column: read off the column as a whole, or asked. */
export interface ColumnSettings {
  readonly order?: DayOrder;
  readonly scale?: Scale;
  /** The winter meant, by its spring; or the first of each queen; or the one after or before the season of the row. */
  readonly winter?: number | RelativeWinter;
  readonly miteMethod?: 'wash' | 'sugar-shake';
  /** Bees of a sample, where the cells give a mere number or a percentage. */
  readonly bees?: number;
}

type RelativeWinter = 'after-birth' | 'after-season' | 'before-season';

export interface Settings {
  readonly columns: ReadonlyMap<number, ColumnSettings>;
  /** The day of records that no column dates. */
  readonly recordsDay?: string;
  readonly questions: readonly Question[];
}

type Cells = (column: number) => readonly string[];

export function columnSettings(
  table: Table,
  mapping: readonly ColumnMapping[],
  answers: Answers,
  today: PlainDay,
): Settings {
  const rows = table.rows.filter((row) => skippedBecause(table, row) === undefined);
  const cells: Cells = (column) => rows.map((row) => row.cells[column] ?? '').filter((cell) => cell !== '');
  const questions: Question[] = [];
  const ask = (question: Question | undefined): string | undefined => {
    if (!question) return undefined;
    questions.push(question);
    return answerTo(question, answers);
  };
  const columns = new Map<number, ColumnSettings>();
  for (const each of mapping) {
    const order = ask(orderQuestion(each, cells, mapping, today)) ?? orderOf(each, cells, mapping);
    const scaleAsked = scaleQuestion(each, cells);
    const scale = ask(scaleAsked) ?? (scaleAsked && 'leave-as-note');
    const winter = ask(winterQuestion(each, mapping, today));
    const method = ask(methodQuestion(each, cells));
    const bees = ask(beesQuestion(each, cells));
    columns.set(each.column, {
      ...(order ? { order: order as DayOrder } : {}),
      ...(scale ? { scale: scale as Scale } : {}),
      ...(each.year !== undefined ? { winter: each.year } : {}),
      ...(winter ? { winter: isRelative(winter) ? winter : Number(winter) } : {}),
      ...(method ? { miteMethod: method as 'wash' | 'sugar-shake' } : {}),
      ...(bees && bees !== 'leave-as-note' ? { bees: Number(bees) } : {}),
    });
  }
  const recordsDay = ask(recordsDayQuestion(mapping, cells));
  return { columns, questions, ...(recordsDay ? { recordsDay } : {}) };
}

function named({ column, header }: ColumnMapping): string {
  return header === '' ? `column ${columnLetter(column)}` : `"${header}"`;
}

const DAYS: ReadonlySet<ColumnMapping['field']> = new Set(['date', 'born', 'ended']);

/** The order that the column proves, else that any other column of days proves. */
function orderOf(each: ColumnMapping, cells: Cells, mapping: readonly ColumnMapping[]): DayOrder | undefined {
  if (!DAYS.has(each.field)) return undefined;
  const own = provenOrder(cells(each.column));
  if (own) return own === 'both' ? undefined : own;
  const others = mapping
    .filter(({ field }) => DAYS.has(field))
    .flatMap(({ column }) => provenOrder(cells(column)) ?? []);
  const first = others[0];
  return first !== 'both' && others.every((order) => order === first) ? first : undefined;
}

function orderQuestion(
  each: ColumnMapping,
  cells: Cells,
  mapping: readonly ColumnMapping[],
  today: PlainDay,
): Question | undefined {
  if (!DAYS.has(each.field) || orderOf(each, cells, mapping)) return undefined;
  const open = cells(each.column).find((cell) => readDay(cell, today).is === 'either');
  const read = open === undefined ? undefined : readDay(open, today);
  if (!open || read?.is !== 'either') return undefined;
  return {
    id: `day-order:${each.column}`,
    text: `Which day does ${open} mean in ${named(each)}?`,
    options: [
      { value: 'day-first', words: `${read.dayFirst}: the day comes first` },
      { value: 'month-first', words: `${read.monthFirst}: the month comes first` },
    ],
    guess: 'day-first',
    column: each.column,
  };
}

function isScore({ field }: ColumnMapping): boolean {
  return field === 'gentle' || field === 'calm' || field === 'swarm-tendency';
}

function numbersOf(cells: readonly string[]): readonly number[] {
  return cells.flatMap((cell) => readNumber(cell)?.value ?? []);
}

function outOfScale(cells: readonly string[]): boolean {
  return numbersOf(cells).some((value) => value > 4 || value < 1);
}

/** The highest score that the words over the column name: 4 for "(1-4)". */
function topOver(header: string): number | undefined {
  const top = /\b[01]\s*(?:-|–|to|bis|\.\.)\s*(4|5|10)\b/.exec(header)?.[1];
  return top === undefined ? undefined : Number(top);
}

/** Scores of another scale are asked about: turning them over would turn the choice over. */
function scaleQuestion(each: ColumnMapping, cells: Cells): Question | undefined {
  if (!isScore(each)) return undefined;
  const said = topOver(each.header);
  if (said === 4 || (said === undefined && !outOfScale(cells(each.column)))) return undefined;
  const most = said ?? Math.max(...numbersOf(cells(each.column)));
  const top = most <= 5 ? '5' : '10';
  return {
    id: `scale:${each.column}`,
    text: `The scores in ${named(each)} do not run from 1 to 4. How do they run? They are turned into 1 to 4, in half points.`,
    options: [
      { value: `1-${top}`, words: `from 1, the worst, to ${top}, the best` },
      { value: `${top}-1`, words: `from 1, the best, to ${top}, the worst` },
      { value: 'leave-as-note', words: 'Keep them as notes' },
    ],
    column: each.column,
  };
}

function winterQuestion(
  each: ColumnMapping,
  mapping: readonly ColumnMapping[],
  today: PlainDay,
): Question | undefined {
  if (each.field !== 'winter' || each.year !== undefined) return undefined;
  const year = Number(today.slice(0, 4));
  const last = today.slice(5) >= '02-15' ? year : year - 1;
  const has = (field: ColumnMapping['field']) => mapping.some((other) => other.field === field);
  const winters = [last, last - 1, last - 2, last - 3].map((winter) => ({
    value: String(winter),
    words: `the winter ${winterYears(winter)}`,
  }));
  const first = { value: 'after-birth', words: 'the first winter of each queen' };
  const whose = has('season') ? 'the season of the row' : 'the day of the row';
  const byRow = [
    { value: 'after-season', words: `the winter after ${whose}` },
    { value: 'before-season', words: `the winter before ${whose}` },
  ];
  return {
    id: `winter:${each.column}`,
    text: `Which winter does ${named(each)} speak of?`,
    options: [...(has('season') || has('date') ? byRow : []), ...(has('born') ? [first] : []), ...winters],
    guess: has('season') ? 'after-season' : String(last),
    column: each.column,
  };
}

function isRelative(winter: string): winter is RelativeWinter {
  return winter === 'after-birth' || winter === 'after-season' || winter === 'before-season';
}

/** Of how many bees a mere number or a percentage is: often the same sample every time, and said nowhere. */
function beesQuestion(each: ColumnMapping, cells: Cells): Question | undefined {
  if (each.field !== 'mites') return undefined;
  const header = miteHeader(each.header);
  const open = cells(each.column).find((cell) => readMites(cell, header).is === 'sample-unsaid');
  if (open === undefined) return undefined;
  const sizes = ['300', '200', '100'].map((bees) => ({ value: bees, words: `${bees} bees` }));
  return {
    id: `mite-bees:${each.column}`,
    text: `${named(each)} holds numbers that do not say of how many bees, such as ${open}. How many bees was a sample?`,
    options: [...sizes, { value: 'leave-as-note', words: 'Keep them as notes' }],
    column: each.column,
  };
}

function methodQuestion(each: ColumnMapping, cells: Cells): Question | undefined {
  if (each.field !== 'mites') return undefined;
  const header = miteHeader(each.header);
  const open = cells(each.column).some((cell) => {
    const read = readMites(cell, header);
    return read.is === 'count' && !read.methodSaid;
  });
  if (!open) return undefined;
  return {
    id: `mite-method:${each.column}`,
    text: `How were the bees in ${named(each)} sampled?`,
    options: [
      { value: 'wash', words: 'washed' },
      { value: 'sugar-shake', words: 'shaken in sugar' },
    ],
    guess: 'wash',
    column: each.column,
  };
}

const DATED: ReadonlySet<ColumnMapping['field']> = new Set([
  'gentle',
  'calm',
  'swarm-tendency',
  'frames-of-bees',
  'frames-of-brood',
  'frames-of-stores',
  'brood-pattern',
  'mites',
  'honey',
]);

/** Scores and counts without a date: nobody but the keeper knows when they were taken. */
function recordsDayQuestion(mapping: readonly ColumnMapping[], cells: Cells): Question | undefined {
  if (mapping.some(({ field }) => field === 'date' || field === 'season')) return undefined;
  const undated = mapping.filter(
    ({ field, year, column }) => DATED.has(field) && year === undefined && cells(column).length > 0,
  );
  if (undated.length === 0) return undefined;
  return {
    id: 'records-day',
    text: `When was this recorded: ${undated.map(({ field }) => FIELDS[field].title.toLowerCase()).join(', ')}? A day, a month or a year. Until then it is kept as notes.`,
    options: [],
    free: 'day',
  };
}

/** A score turned into 1 to 4 in half points; nothing when it is none of its scale. */
export function scaled(value: number, scale: Scale): number | undefined {
  if (scale === 'leave-as-note') return undefined;
  if (scale === '1-4') return value >= 1 && value <= 4 && Number.isInteger(value * 2) ? value : undefined;
  const top = scale.includes('10') ? 10 : 5;
  if (value < 1 || value > top) return undefined;
  const best = scale.startsWith('1-') ? value : top + 1 - value;
  return Math.round((1 + ((best - 1) * 3) / (top - 1)) * 2) / 2;
}
