/**
 * Evaluates a batch of forms c' A c, and c' A e at the queens who ask for it, by blocks of columns.
 * Two ways, whichever needs less work: one column for each form (A c), or one for each distinct row that
 * the forms hold (A e_row), whose values are then put together with the coefficients. The second serves a
 * registry in which every queen has a list of drone mothers of her own, out of far fewer drone mothers.
 * Cost: O(columns / 8 * (rows + parents)), and for the second way the squares of the list lengths.
 */
import { COLUMNS, type KnownRows, sweepBlock } from './column-kernel.ts';
import { compactRows } from './compact-rows.ts';
import type { MendelianState } from './mendelian-state.ts';
import { listOfItems, type NumberLists, numberLists } from './number-lists.ts';
import { ensureForm, readingRows } from './row-forms.ts';
import { type RowSums, rowSums } from './row-sums.ts';

/** One pair of a sweep costs about as much as this many products of a form with a column. */
const SWEEP_PAIR_COST = 3;

export interface Batch {
  /** Tasks to evaluate: drone sources and family tasks. */
  readonly tasks: readonly number[];
  /** Matings at whose queen task k of the batch is read: list k. */
  readonly readers: NumberLists;
}

export interface BatchResult {
  /** c' A c of each task of the batch. */
  readonly squares: Float64Array;
  /** c' A e for each reader, aligned with `readers.item`. */
  readonly readings: Float64Array;
}

interface Work {
  readonly rows: KnownRows;
  readonly block: Float64Array;
  /** One sum for each task, one for each reader. */
  readonly forms: RowSums;
  readonly readings: RowSums;
  /** Readers of task k: firstReader[k] .. firstReader[k + 1] - 1. */
  readonly firstReader: Int32Array;
}

/** Squares and readings of every column asked for in the batch. Cost: the cheaper of its two ways. */
export function evaluateBatch(state: MendelianState, batch: Batch): BatchResult {
  for (const task of batch.tasks) ensureForm(state, task);
  const result = {
    squares: Float64Array.from(batch.tasks, (task) => state.forms.folded[task]!),
    readings: new Float64Array(batch.readers.item.length),
  };
  const work = prepare(state, batch);
  const distinct = Int32Array.from(new Set(work.forms.row)).sort();
  if (byRowIsCheaper(work, distinct.length)) byRow(work, distinct, result);
  else byForm(work, result);
  return result;
}

/** The forms and readings of a batch over the rows that matter to it. */
function prepare(state: MendelianState, { tasks, readers }: Batch): Work {
  const written = state.forms;
  const { queenOfMating } = state.resolved;
  const forms = rowSums(tasks.length, (place, take) => {
    const task = tasks[place]!;
    for (let k = written.start[task]!; k < written.end[task]!; k++)
      take(written.row[k]!, written.coefficient[k]!);
  });
  const readings = rowSums(readers.item.length, (k, take) =>
    readingRows(state, queenOfMating[readers.item[k]!]!, take),
  );
  const targets = new Int32Array(forms.row.length + readings.row.length);
  targets.set(forms.row);
  targets.set(readings.row, forms.row.length);
  const { rows, placeOf } = compactRows(state.known, targets);
  for (const { row } of [forms, readings]) for (let k = 0; k < row.length; k++) row[k] = placeOf[row[k]!]!;
  const block = new Float64Array(rows.count * COLUMNS);
  return { rows, block, forms, readings, firstReader: readers.start };
}

function byRowIsCheaper({ rows, forms, firstReader }: Work, distinct: number): boolean {
  const tasks = firstReader.length - 1;
  if (distinct >= tasks) return false;
  let products = 0;
  for (let k = 0; k < tasks; k++) products += (forms.start[k + 1]! - forms.start[k]!) ** 2;
  const sweep = (rows.count + rows.start[rows.count]!) / COLUMNS;
  return (tasks - distinct) * sweep * SWEEP_PAIR_COST > products;
}

/** Sum number `sum` over column b. */
function sumOf({ start, row, coefficient }: RowSums, sum: number, block: Float64Array, b: number): number {
  let value = 0;
  for (let k = start[sum]!; k < start[sum + 1]!; k++)
    value += coefficient[k]! * block[row[k]! * COLUMNS + b]!;
  return value;
}

function byForm({ rows, block, forms, readings, firstReader }: Work, result: BatchResult): void {
  const tasks = firstReader.length - 1;
  for (let first = 0; first < tasks; first += COLUMNS) {
    const width = Math.min(COLUMNS, tasks - first);
    block.fill(0);
    let top = 0;
    for (let b = 0; b < width; b++) {
      for (let k = forms.start[first + b]!; k < forms.start[first + b + 1]!; k++) {
        block[forms.row[k]! * COLUMNS + b]! += forms.coefficient[k]!;
        top = Math.max(top, forms.row[k]! + 1);
      }
    }
    sweepBlock(rows, block, top);
    for (let b = 0; b < width; b++) {
      const task = first + b;
      result.squares[task]! += sumOf(forms, task, block, b);
      for (let k = firstReader[task]!; k < firstReader[task + 1]!; k++) {
        result.readings[k] = sumOf(readings, k, block, b);
      }
    }
  }
}

function byRow(
  { rows, block, forms, readings, firstReader }: Work,
  distinct: Int32Array,
  result: BatchResult,
): void {
  const taskOf = listOfItems(forms);
  const uses = numberLists(rows.count, forms.row);
  for (let first = 0; first < distinct.length; first += COLUMNS) {
    const width = Math.min(COLUMNS, distinct.length - first);
    block.fill(0);
    for (let b = 0; b < width; b++) block[distinct[first + b]! * COLUMNS + b] = 1;
    sweepBlock(rows, block, distinct[first + width - 1]! + 1);
    for (let b = 0; b < width; b++) {
      const row = distinct[first + b]!;
      for (let use = uses.start[row]!; use < uses.start[row + 1]!; use++) {
        const task = taskOf[uses.item[use]!]!;
        const coefficient = forms.coefficient[uses.item[use]!]!;
        result.squares[task]! += coefficient * sumOf(forms, task, block, b);
        for (let k = firstReader[task]!; k < firstReader[task + 1]!; k++) {
          result.readings[k]! += coefficient * sumOf(readings, k, block, b);
        }
      }
    }
  }
}
