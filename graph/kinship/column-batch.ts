/**
 * Evaluates a batch of forms c' A c, and c' A e at the queens who ask for it, by blocks of columns.
 * Two ways, whichever needs less work: one column for each form (A c), or one for each distinct row that
 * the forms hold (A e_row), whose values are then put together with the coefficients. The second serves a
 * registry in which every queen has a list of drone mothers of her own, out of far fewer drone mothers.
 * Cost: O(columns / 8 * (rows + parents)), and for the second way the squares of the list lengths.
 */
import { COLUMNS, clearBlock, sweepBlock } from './column-kernel.ts';
import type { MendelianState } from './mendelian-state.ts';
import { type NumberLists, numberLists } from './number-lists.ts';
import { columnAtQueen, ensureForm, lastRowOfQueen } from './row-forms.ts';

/** One pair of a sweep costs about as much as this many products of a form with a column. */
const SWEEP_PAIR_COST = 3;

export interface Batch {
  /** Tasks to evaluate: drone sources and family tasks. */
  readonly tasks: readonly number[];
  /** Queens at whom task k of the batch is read: list k. */
  readonly readers: NumberLists;
}

export interface BatchResult {
  /** c' A c of each task of the batch. */
  readonly squares: Float64Array;
  /** c' A e for each reader, aligned with `readers.item`. */
  readonly readings: Float64Array;
}

export function evaluateBatch(state: MendelianState, batch: Batch): BatchResult {
  for (const task of batch.tasks) ensureForm(state, task);
  const result = {
    squares: Float64Array.from(batch.tasks, (task) => state.forms.folded[task]!),
    readings: new Float64Array(batch.readers.item.length),
  };
  const rows = distinctRows(state, batch);
  if (byRowIsCheaper(state, batch, rows.length)) byRow(state, batch, rows, result);
  else byForm(state, batch, result);
  return result;
}

/** All rows that the batch's forms hold, ascending. */
function distinctRows({ forms }: MendelianState, { tasks }: Batch): Int32Array {
  const rows = new Set<number>();
  for (const task of tasks) {
    for (let k = forms.start[task]!; k < forms.end[task]!; k++) rows.add(forms.row[k]!);
  }
  return Int32Array.from(rows).sort();
}

function byRowIsCheaper({ forms, known }: MendelianState, { tasks }: Batch, rows: number): boolean {
  if (rows >= tasks.length) return false;
  let products = 0;
  for (const task of tasks) products += (forms.end[task]! - forms.start[task]!) ** 2;
  const sweep = (known.count + known.start[known.count]!) / COLUMNS;
  return (tasks.length - rows) * sweep * SWEEP_PAIR_COST > products;
}

/** The rows before which a forward sweep may stop: all that the readers need. */
function endFor(state: MendelianState, { readers }: Batch): number {
  let last = -1;
  for (const queen of readers.item) last = Math.max(last, lastRowOfQueen(state, queen));
  return last + 1;
}

/** c' y for column b. */
function formProduct({ forms, known }: MendelianState, task: number, b: number): number {
  let sum = 0;
  for (let k = forms.start[task]!; k < forms.end[task]!; k++) {
    sum += forms.coefficient[k]! * known.block[forms.row[k]! * COLUMNS + b]!;
  }
  return sum;
}

function byForm(state: MendelianState, batch: Batch, result: BatchResult): void {
  const { forms, known } = state;
  const { tasks, readers } = batch;
  const endOfReaders = endFor(state, batch);
  for (let first = 0; first < tasks.length; first += COLUMNS) {
    const here = tasks.slice(first, first + COLUMNS);
    let top = 0;
    for (const task of here) {
      for (let k = forms.start[task]!; k < forms.end[task]!; k++) top = Math.max(top, forms.row[k]! + 1);
    }
    const end = Math.max(top, endOfReaders);
    clearBlock(known, end);
    here.forEach((task, b) => {
      for (let k = forms.start[task]!; k < forms.end[task]!; k++) {
        known.block[forms.row[k]! * COLUMNS + b]! += forms.coefficient[k]!;
      }
    });
    sweepBlock(known, top, end);
    here.forEach((task, b) => {
      result.squares[first + b]! += formProduct(state, task, b);
      readAt(state, readers, first + b, b, 1, result.readings);
    });
  }
}

function readAt(
  state: MendelianState,
  { start, item }: NumberLists,
  place: number,
  b: number,
  scale: number,
  readings: Float64Array,
): void {
  for (let k = start[place]!; k < start[place + 1]!; k++) {
    readings[k]! += scale * columnAtQueen(state, item[k]!, b, COLUMNS);
  }
}

/** For each distinct row, the places in the batch whose form holds it, and with which coefficient. */
function usesOf({ forms }: MendelianState, { tasks }: Batch, rows: Int32Array) {
  const placeOfRow = new Map<number, number>();
  for (const [place, row] of rows.entries()) placeOfRow.set(row, place);
  const places: number[] = [];
  const coefficients: number[] = [];
  const rowPlaces: number[] = [];
  tasks.forEach((task, place) => {
    for (let k = forms.start[task]!; k < forms.end[task]!; k++) {
      places.push(place);
      coefficients.push(forms.coefficient[k]!);
      rowPlaces.push(placeOfRow.get(forms.row[k]!)!);
    }
  });
  return { places, coefficients, lists: numberLists(rows.length, rowPlaces) };
}

function byRow(state: MendelianState, batch: Batch, rows: Int32Array, result: BatchResult): void {
  const { known } = state;
  const { places, coefficients, lists } = usesOf(state, batch, rows);
  const end = Math.max(endFor(state, batch), rows[rows.length - 1]! + 1);
  for (let first = 0; first < rows.length; first += COLUMNS) {
    const width = Math.min(COLUMNS, rows.length - first);
    clearBlock(known, end);
    for (let b = 0; b < width; b++) known.block[rows[first + b]! * COLUMNS + b] = 1;
    sweepBlock(known, rows[first + width - 1]! + 1, end);
    for (let b = 0; b < width; b++) {
      for (let use = lists.start[first + b]!; use < lists.start[first + b + 1]!; use++) {
        const place = places[lists.item[use]!]!;
        const coefficient = coefficients[lists.item[use]!]!;
        result.squares[place]! += coefficient * formProduct(state, batch.tasks[place]!, b);
        readAt(state, batch.readers, place, b, coefficient, result.readings);
      }
    }
  }
}
