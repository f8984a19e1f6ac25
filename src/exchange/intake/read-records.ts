import { yearOf } from '../../journal/day.ts';
import { asNote, type Cell, keepAsNote, type Reader, recordDay, undated } from './cell.ts';
import { readMixed } from './mixed.ts';
import type { InspectionField, ReadRow } from './row.ts';
import { scaled } from './settings.ts';
import { miteHeader, readMites } from './values/mites.ts';
import { saysUnknown } from './values/name.ts';
import { readNumber } from './values/number.ts';
import { readOutcome, readWinter } from './values/outcome.ts';

/** Cells that hold what was seen and counted: winters, fates, scores, frames, mites, honey. */

export function readWinterCell(row: ReadRow, cell: Cell): void {
  const winter = winterOf(row, cell);
  const whole = severalMeanings(cell.text) ? undefined : readOutcome(cell.text);
  if (winter === undefined) {
    keepAsNote(
      row,
      cell,
      'It is not known which winter is meant.',
      'Give the year of the winter over the column or in the cell.',
    );
    return;
  }
  if (whole) {
    row.winters.push({ winter, outcome: whole });
    // A word such as "strong" says more than that the colony lived.
    if (whole.is !== 'dead' && !/^(alive|ok|yes|y|1|ja|oui|\+|✓|survived)$/i.test(cell.text))
      asNote(row, cell);
    return;
  }
  const mixed = readMixed(cell.text);
  if (!mixed.outcome) {
    keepAsNote(
      row,
      cell,
      'This says neither alive nor dead.',
      'Write alive or dead, with the cause if it is known.',
    );
    return;
  }
  row.winters.push({ winter, outcome: mixed.outcome });
  takeMixed(row, cell, mixed);
}

/** True for a cell with signs between words, in which each part may mean something of its own. */
function severalMeanings(text: string): boolean {
  return /[;\n]|,(?!\d)/.test(text);
}

function winterOf(row: ReadRow, cell: Cell): number | undefined {
  const said = readWinter(cell.text) ?? cell.settings.winter;
  if (said === 'after-season' || said === 'before-season') {
    const season = row.season ?? (row.date && yearOf(row.date));
    return season === undefined ? undefined : said === 'after-season' ? season + 1 : season;
  }
  if (said !== 'after-birth') return said;
  const born = row.born ?? row.queen?.year;
  return born === undefined ? undefined : Number(String(born).slice(0, 4)) + 1;
}

export function readStatusCell(row: ReadRow, cell: Cell): void {
  const outcome = severalMeanings(cell.text) ? undefined : readOutcome(cell.text);
  if (outcome) {
    row.outcome = outcome;
    if (!/^(alive|ok|yes|ja|oui|dead|died|tot|lost|no|nein)$/i.test(cell.text)) asNote(row, cell);
    return;
  }
  const mixed = readMixed(cell.text);
  if (mixed.outcome) row.outcome = mixed.outcome;
  if (!mixed.outcome && mixed.inspections.length === 0) asNote(row, cell);
  else takeMixed(row, cell, mixed);
}

function takeMixed(row: ReadRow, cell: Cell, mixed: ReturnType<typeof readMixed>): void {
  const day = recordDay(row, cell);
  for (const { field, value, text } of mixed.inspections) {
    if (day) row.inspections.push({ day, field, value });
    else undated(row, { ...cell, text });
  }
  if (mixed.rest !== '') asNote(row, { ...cell, text: mixed.rest });
}

export function readScore(field: InspectionField): Reader {
  return (row, cell) => {
    const apart = numberWithWords(cell.text);
    const number = readNumber(apart?.number ?? cell.text);
    if (number?.unit !== '') {
      readAsMixed(row, cell, 'This is no score.', 'Write a score from 1 to 4, half points allowed.');
      return;
    }
    const scale = cell.settings.scale ?? '1-4';
    const value = scaled(number.value, scale);
    if (value === undefined) {
      if (scale === '1-4')
        keepAsNote(row, cell, 'Scores run from 1 to 4 in half points.', 'Write a score from 1 to 4.');
      else
        keepAsNote(
          row,
          cell,
          'Scores of another scale wait for an answer.',
          'Say above how the scores run, or write them from 1 to 4.',
        );
      return;
    }
    if (apart) asNote(row, { ...cell, text: apart.words });
    const day = recordDay(row, cell);
    if (day) row.inspections.push({ day, field, value });
    else undated(row, cell);
  };
}

/** A number with words behind it: "3; runny", "3.5 (windy)". */
function numberWithWords(text: string): { readonly number: string; readonly words: string } | undefined {
  const groups = /^(?<number>\d[\d.,½]*)\s*(?:[;(]|,\s|\s-\s)\s*(?<words>\p{L}[^)]*)\)?$/u.exec(text)?.groups;
  return groups?.number && groups.words ? { number: groups.number, words: groups.words.trim() } : undefined;
}

export function readCount(field: InspectionField, most: number): Reader {
  return (row, cell) => {
    const number = readNumber(cell.text);
    const fits =
      number && /^(%|fr|frames?|fob|seams?|waben|w|cadres)?$/.test(number.unit) && number.value <= most;
    if (!number || !fits) {
      readAsMixed(row, cell, `This is no number from 0 to ${most}.`, 'Write one number.');
      return;
    }
    const day = recordDay(row, cell);
    if (day) row.inspections.push({ day, field, value: number.value });
    else undated(row, cell);
  };
}

/** A cell with several meanings under the name of one: what can be told apart is taken, else it is a note. */
function readAsMixed(row: ReadRow, cell: Cell, because: string, remedy: string): void {
  const mixed = readMixed(cell.text);
  if (mixed.inspections.length === 0) keepAsNote(row, cell, because, remedy);
  else takeMixed(row, cell, mixed);
}

export function readMiteCell(row: ReadRow, cell: Cell): void {
  if (saysUnknown(cell.text)) return;
  const { bees } = cell.settings;
  const read = readMites(cell.text, { ...(bees ? { bees } : {}), ...miteHeader(cell.column.header) });
  if (read.is !== 'count') {
    keepAsNote(row, cell, read.because, read.remedy);
    return;
  }
  const day = recordDay(row, cell);
  if (!day) {
    undated(row, cell);
    return;
  }
  const { sample } = read;
  const method = read.methodSaid ? undefined : cell.settings.miteMethod;
  row.mites.push({
    day,
    sample: method && sample.method !== 'natural-drop' ? { ...sample, method } : sample,
  });
}

const POUND = 0.45359237;

export function readHoney(row: ReadRow, cell: Cell): void {
  const number = readNumber(cell.text);
  const unit = number?.unit || (/\b(lbs?|pounds)\b/i.test(cell.column.header) ? 'lb' : 'kg');
  const kilograms =
    number && (/^(lbs?|pounds?)$/.test(unit) ? Math.round(number.value * POUND * 10) / 10 : number.value);
  if (kilograms === undefined || !/^(kg|kilo|kilos|lbs?|pounds?)$/.test(unit) || kilograms > 500) {
    keepAsNote(row, cell, 'This is no weight of honey.', 'Write kilograms, as 12.5.');
    return;
  }
  const day = recordDay(row, cell);
  if (day) row.harvests.push({ day, kilograms });
  else undated(row, cell);
}
