/**
 * The rows of the column kernel: only what somebody descends from, and of that only what cannot be folded into
 * the row of its one child.
 *   family row of a dam E, W_E = (E + mates of E)/2: the mean of all her daughters. A daughter with one dam is
 *     W_E plus her own Mendelian term, so A[daughter][x] = A[W_E][x] for every x that does not descend from her.
 *   a node with one child, coefficient c, is folded into it exactly: the child takes over c times its parents,
 *     and c^2 d on top of its own variance.
 * So mates are folded into their dam's family, a dam who gave no drones too, and a drone mother without daughters
 * who flew drones at one place only into that place. Rows remain for backgrounds, families, drone sources that two
 * or more dams met, and queens and drones with two or more uses.
 * A form is a sum of rows, and a variance that was folded into it. Cost: O(parents).
 */
import { closeRow, type KnownRows, linkRow } from './column-kernel.ts';
import type { MendelianState } from './mendelian-state.ts';

/** Receives the rows of a form one by one. */
export type Take = (row: number, coefficient: number) => void;

/** Rows that stand for the mean of what a queen with these dams may be: her families, or her background. */
function familyRows(state: MendelianState, queen: number, scale: number, take: Take): void {
  const { resolved, rowOf, rowOfFamily } = state;
  const background = resolved.founderBackground[queen]!;
  if (background >= 0) {
    take(rowOf[background]!, scale);
    return;
  }
  const { start, item, share } = resolved.dams;
  for (let k = start[queen]!; k < start[queen + 1]!; k++) take(rowOfFamily[item[k]!]!, scale * share[k]!);
}

/** The form of a queen; returns the variance folded in (scale^2 d without a row of her own, otherwise 0). */
function queenForm(state: MendelianState, queen: number, scale: number, take: Take): number {
  const row = state.rowOf[state.resolved.firstQueen + queen]!;
  if (row >= 0) {
    take(row, scale);
    return 0;
  }
  familyRows(state, queen, scale, take);
  return scale * scale * state.mendelian[state.layout.nodes.queenNode[queen]!]!;
}

/** The form of a background, queen or single drone. */
function entityForm(state: MendelianState, entity: number, scale: number, take: Take): number {
  const { firstQueen, firstDrone, droneMother } = state.resolved;
  const row = state.rowOf[entity]!;
  if (row >= 0) {
    take(row, scale);
    return 0;
  }
  if (entity < firstDrone) return queenForm(state, entity - firstQueen, scale, take);
  const node = state.layout.entityNode[entity]!;
  return (
    scale * scale * state.mendelian[node]! + queenForm(state, droneMother[entity - firstDrone]!, scale, take)
  );
}

/** The rows whose sum a queen is read at: her own, or those of her families. */
export function readingRows(state: MendelianState, queen: number, take: Take): void {
  const row = state.rowOf[state.resolved.firstQueen + queen]!;
  if (row >= 0) take(row, 1);
  else familyRows(state, queen, 1, take);
}

/** The last of the rows a queen is read at. */
export function lastRowOfQueen({ resolved, rowOf, rowOfFamily }: MendelianState, queen: number): number {
  const { firstQueen, founderBackground, dams } = resolved;
  const row = rowOf[firstQueen + queen]!;
  if (row >= 0) return row;
  const background = founderBackground[queen]!;
  if (background >= 0) return rowOf[background]!;
  let last = -1;
  for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++)
    last = Math.max(last, rowOfFamily[dams.item[k]!]!);
  return last;
}

/** Forms that were written down, row by row: form f holds start[f] .. end[f] - 1 of row and coefficient. */
export interface RowForms {
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly row: number[];
  readonly coefficient: number[];
  /** Variance folded into each form. */
  readonly folded: Float64Array;
}

/** Room for so many forms, none of them worked out yet. */
export function newRowForms(forms: number): RowForms {
  return {
    start: new Int32Array(forms).fill(-1),
    end: new Int32Array(forms),
    row: [],
    coefficient: [],
    folded: new Float64Array(forms),
  };
}

/** Writes down the form of a drone source or of a family task, once; equal rows are put together. */
export function ensureForm(state: MendelianState, task: number): void {
  const { forms, resolved, firstFamily, queensOfFamily } = state;
  if (forms.start[task]! >= 0) return;
  forms.start[task] = forms.row.length;
  const placeOfRow = new Map<number, number>();
  const take: Take = (row, coefficient) => {
    const place = placeOfRow.get(row);
    if (place !== undefined) forms.coefficient[place]! += coefficient;
    else {
      placeOfRow.set(row, forms.row.length);
      forms.row.push(row);
      forms.coefficient.push(coefficient);
    }
  };
  if (task >= firstFamily) {
    familyRows(state, queensOfFamily.item[queensOfFamily.start[task - firstFamily]!]!, 1, take);
  } else {
    const { start, item, share } = resolved.sources;
    for (let k = start[task]!; k < start[task + 1]!; k++) {
      forms.folded[task]! += entityForm(state, item[k]!, share[k]!, take);
    }
  }
  forms.end[task] = forms.row.length;
}

const linker =
  (known: KnownRows): Take =>
  (row, coefficient) =>
    linkRow(known, row, coefficient);

/** Gives a background, queen or drone that has just become known a row, where it needs one. */
export function addEntityRow(state: MendelianState, entity: number): void {
  const { known, resolved, layout, rowOf, needsRow } = state;
  if (!needsRow[entity]) return;
  const { firstQueen, firstDrone, droneMother } = resolved;
  const link = linker(known);
  if (entity >= firstDrone) link(rowOf[firstQueen + droneMother[entity - firstDrone]!]!, 1);
  else if (entity >= firstQueen) familyRows(state, entity - firstQueen, 1, link);
  rowOf[entity] = closeRow(known, state.mendelian[layout.entityNode[entity]!]!);
}

/** Gives a source whose form is written a row, where it needs one; from then on the row is its form. */
export function addSourceRow(state: MendelianState, source: number): void {
  const { known, forms, resolved, rowOf, needsRow } = state;
  const entity = resolved.firstSource + source;
  if (!needsRow[entity]) return;
  const row = closeRow(known, linkSource(state, source, 1));
  rowOf[entity] = row;
  forms.start[source] = forms.row.length;
  forms.end[source] = forms.row.push(row);
  forms.coefficient.push(1);
  forms.folded[source] = 0;
}

/** Links a source's form, scaled; returns the folded variance. */
function linkSource({ known, forms }: MendelianState, source: number, scale: number): number {
  for (let k = forms.start[source]!; k < forms.end[source]!; k++) {
    linkRow(known, forms.row[k]!, scale * forms.coefficient[k]!);
  }
  return scale * scale * forms.folded[source]!;
}

/** The family row of a mating whose mates are known. */
export function addFamilyRow(state: MendelianState, mating: number): void {
  const { known, resolved, layout, rowOf, rowOfFamily } = state;
  const source = resolved.sourceOf[mating]!;
  const sourceRow = rowOf[resolved.firstSource + source]!;
  let folded = state.mendelian[layout.nodeOfMating[mating]!]! / 4;
  folded += queenForm(state, resolved.queenOfMating[mating]!, 0.5, linker(known));
  if (sourceRow >= 0) linkRow(known, sourceRow, 0.5);
  else folded += linkSource(state, source, 0.5);
  rowOfFamily[mating] = closeRow(known, folded);
}
