import { firstDay, type PlainDay, type RoughDay, yearOf } from '../../journal/day.ts';
import { asNote, block, type Cell, keepAsNote, type Reader } from './cell.ts';
import type { ColumnMapping } from './columns.ts';
import type { Field } from './fields.ts';
import {
  readCount,
  readHoney,
  readMiteCell,
  readScore,
  readStatusCell,
  readWinterCell,
} from './read-records.ts';
import { emptyRow, type ReadRow } from './row.ts';
import type { Settings } from './settings.ts';
import type { TableRow } from './table.ts';
import { readDay } from './values/day.ts';
import { readMark } from './values/mark.ts';
import { readDam, readQueen, saysUnknown } from './values/name.ts';

/** Reads one row, cell by cell: names and days first, since what the other cells say is of them. */
export function readRow(
  row: TableRow,
  mapping: readonly ColumnMapping[],
  settings: Settings,
  today: PlainDay,
): ReadRow {
  const read = emptyRow(row.line);
  const ordered = [...mapping].sort((a, b) => turnOf(a.field) - turnOf(b.field) || a.column - b.column);
  for (const column of ordered) {
    const text = row.cells[column.column] ?? '';
    if (text === '' || column.field === 'ignore') continue;
    const cell: Cell = {
      text,
      column,
      settings: settings.columns.get(column.column) ?? {},
      all: settings,
      today,
    };
    READERS[column.field](read, cell);
  }
  return read;
}

const FIRST: ReadonlySet<Field> = new Set<Field>(['queen', 'date', 'born', 'season']);

function turnOf(field: Field): number {
  return FIRST.has(field) ? 0 : 1;
}

const READERS: Readonly<Record<Field, Reader>> = {
  queen: (row, { text }) => {
    const { queen, dam, remark } = readQueen(text);
    if (queen) row.queen = queen;
    if (dam) row.dam = dam;
    if (remark) row.notes.push(remark);
  },
  dam: readDamCell,
  mates: asNote,
  colony: (row, { text }) => {
    if (!saysUnknown(text)) row.colony = text;
  },
  yard: (row, { text }) => {
    row.yard = text;
  },
  born: (row, cell) => {
    const day = dayIn(row, cell);
    if (day) row.born = day;
  },
  season: (row, cell) => {
    const day = dayIn(row, cell);
    if (day) row.season = yearOf(day);
  },
  date: (row, cell) => {
    const day = dayIn(row, cell);
    if (day) row.date = day;
  },
  ended: (row, cell) => {
    if (saysUnknown(cell.text)) return;
    const day = dayIn(row, cell);
    if (day) row.ended = day;
  },
  mark: (row, cell) => {
    const mark = readMark(cell.text);
    if (mark.is === 'unreadable')
      keepAsNote(
        row,
        cell,
        'This is no colour of a mark.',
        'Write a colour, and a number if there is one: blue 23.',
      );
    else row.mark = mark;
  },
  origin: (row, { text }) => {
    if (!saysUnknown(text)) row.origin = text;
  },
  background: (row, { text }) => {
    if (!saysUnknown(text)) row.background = text;
  },
  winter: readWinterCell,
  status: readStatusCell,
  gentle: readScore('gentle'),
  calm: readScore('calm'),
  'swarm-tendency': readScore('swarmTendency'),
  'frames-of-bees': readCount('framesOfBees', 60),
  'frames-of-brood': readCount('framesOfBrood', 60),
  'frames-of-stores': readCount('framesOfStores', 60),
  'brood-pattern': readCount('broodPattern', 100),
  mites: readMiteCell,
  honey: readHoney,
  note: asNote,
  ignore: () => undefined,
};

function readDamCell(row: ReadRow, cell: Cell): void {
  const dam = readDam(cell.text);
  if (dam.is === 'unclear') {
    keepAsNote(row, cell, dam.because, 'Write her dam by name; until then her dam is unknown.');
    return;
  }
  if (row.dam === undefined || row.dam.is === 'unknown') row.dam = dam;
  if (dam.is === 'named' && dam.remark) row.notes.push(dam.remark);
}

function dayIn(row: ReadRow, cell: Cell): RoughDay | undefined {
  if (saysUnknown(cell.text) && cell.column.field === 'born') return undefined;
  const read = readDay(cell.text, cell.today, cell.settings.order);
  if (read.is === 'either') {
    block(row, cell, 'Day and month could be either way round.', 'Write the day as 2024-05-14.');
    return undefined;
  }
  if (read.is === 'unreadable') {
    block(row, cell, read.because, 'Write a day as 2024-05-14, a month as 2024-05 or a year as 2024.');
    return undefined;
  }
  if (firstDay(read.day) > cell.today) {
    block(
      row,
      cell,
      `This day has not come yet; today is ${cell.today}.`,
      'Give the day on which it happened.',
    );
    return undefined;
  }
  if (read.remark)
    row.notes.push(`${cell.column.header === '' ? 'Day' : cell.column.header}: ${read.remark}`);
  return read.day;
}
