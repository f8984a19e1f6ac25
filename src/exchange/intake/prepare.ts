import { firstDay, type PlainDay } from '../../journal/day.ts';
import { winterYears } from '../../journal/day-words.ts';
import { colonyOfQueen } from '../../registry/queries.ts';
import { type Cast, type CastContext, yearOfRow } from './cast.ts';
import { type ReadRow, rowProblem } from './row.ts';
import { sampleWords } from './summary.ts';
import { readDay } from './values/day.ts';
import { labelKey } from './values/name.ts';
import { lostWords } from './values/outcome.ts';

/** Settles what the cells of a row leave open before boxes are told apart: labels that are missing, days of losses. */
export function prepareRows(
  rows: readonly ReadRow[],
  cast: Cast,
  context: CastContext,
  today: PlainDay,
): void {
  for (const row of rows) {
    settleLoss(row, rows, cast.ofRow.has(row.line), context, today);
    settleLabel(row, cast, context, today);
    if (row.colony === undefined) recordsToNotes(row);
  }
}

/** True when the row says something that only a colony can have. */
function needsBox(row: ReadRow): boolean {
  const records = row.inspections.length + row.mites.length + row.harvests.length + row.winters.length;
  return (
    records > 0 || row.outcome?.is === 'alive' || (row.outcome?.is === 'dead' && row.ended !== undefined)
  );
}

/** A row without a label: the box its queen heads by the records, else one named after her if the keeper wants that. */
function settleLabel(row: ReadRow, cast: Cast, { registry, ask }: CastContext, today: PlainDay): void {
  if (row.colony !== undefined || !needsBox(row)) return;
  const queen = cast.ofRow.get(row.line);
  const sibling = queen?.rows.find((other) => other.colony !== undefined)?.colony;
  const headed = queen?.known && colonyOfQueen(registry, queen.known, row.date ? firstDay(row.date) : today);
  const label = sibling ?? headed?.label;
  if (label !== undefined) {
    row.colony = label;
    return;
  }
  if (!queen?.name) return;
  const answer = ask({
    id: 'labels-from-names',
    text: 'Some rows have records and no label of a box. May the name of the queen stand on the box? It is a label only: the box keeps it when another queen comes.',
    options: [
      { value: 'yes', words: 'Yes, label those boxes so' },
      { value: 'no', words: 'No, keep those records as notes of the queen' },
    ],
    guess: 'yes',
  });
  if (answer !== 'no') row.colony = queen.name;
}

/** A loss needs a day. Without one she is entered without a box, and what the row says is kept as a note. */
function settleLoss(
  row: ReadRow,
  rows: readonly ReadRow[],
  ofQueen: boolean,
  context: CastContext,
  today: PlainDay,
): void {
  const { outcome } = row;
  if (row.ended && outcome === undefined) row.outcome = endedMeans(context);
  if (!outcome || outcome.is === 'alive' || outcome.is === 'joined' || row.ended) return;
  if (outcome.is === 'dead' && row.winters.some((winter) => winter.outcome.is === 'dead')) return;
  if (outcome.is === 'queen-lost' && hasSuccessor(row, rows)) {
    delete row.outcome;
    return;
  }
  const answer = context.ask({
    id: `lost-day:${row.line}`,
    text: `When was ${row.queen?.name ?? row.colony ?? 'the queen'} of row ${row.line} lost? A day, a month or a year.`,
    options: [],
    free: 'day',
    line: row.line,
  });
  const day = answer === undefined ? undefined : readDay(answer, today, 'day-first');
  if (day?.is === 'day' && firstDay(day.day) <= today) {
    row.ended = day.day;
    return;
  }
  row.problems.push(
    rowProblem(row.line, undefined, {
      found: outcome.is === 'dead' ? 'dead' : lostWords(outcome.cause),
      because: ofQueen
        ? 'The day of the loss is not known, so she is entered without a box and her records as notes.'
        : 'The day of the loss is not known.',
      remedy: 'Say above when it was; a year is enough.',
      blocks: !ofQueen,
    }),
  );
  row.notes.push(
    outcome.is === 'dead'
      ? 'Lost; the day is not known.'
      : `Queen ${lostWords(outcome.cause)}; the day is not known.`,
  );
  delete row.outcome;
  delete row.colony;
  recordsToNotes(row);
}

function endedMeans({ ask }: CastContext): NonNullable<ReadRow['outcome']> {
  const answer = ask({
    id: 'ended-means',
    text: 'Some rows give a day of a loss and do not say of what. What was lost on these days?',
    options: [
      { value: 'colony', words: 'The colony with its queen' },
      { value: 'queen', words: 'The queen; the colony went on' },
    ],
    guess: 'colony',
  });
  return answer === 'queen' ? { is: 'queen-lost', cause: 'unknown' } : { is: 'dead' };
}

/** Another, younger queen stands in the same box: her coming ends the first one. */
function hasSuccessor(row: ReadRow, rows: readonly ReadRow[]): boolean {
  const year = yearOfRow(row);
  if (row.colony === undefined || year === undefined) return false;
  const key = labelKey(row.colony);
  return rows.some(
    (other) => other !== row && labelKey(other.colony ?? '') === key && (yearOfRow(other) ?? 0) > year,
  );
}

/** Records of no box are kept as words. */
function recordsToNotes(row: ReadRow): void {
  for (const { day, field, value } of row.inspections.splice(0)) row.notes.push(`${day}: ${field} ${value}`);
  for (const { day, sample } of row.mites.splice(0)) {
    row.notes.push(`${day}: ${sampleWords(sample)}`);
  }
  for (const { day, kilograms } of row.harvests.splice(0)) row.notes.push(`${day}: ${kilograms} kg of honey`);
  for (const { winter, outcome } of row.winters.splice(0)) {
    row.notes.push(`Winter ${winterYears(winter)}: ${outcome.is === 'alive' ? 'alive' : 'lost'}`);
  }
}
