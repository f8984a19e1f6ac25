/**
 * The forms c' A c and c' A e that the Mendelian variances ask for.
 *   Task of a drone source: c = its shares; its square gives the mates' diagonal, and read at each queen who
 *   met those drones it gives A[queen][mates], hence the inbreeding of her daughters and her brood.
 *   Task of a family: c = half the probability on each possible dam and on that dam's mates, for queens with
 *   two or more possible dams; its square gives their Mendelian variance.
 * Queens with the same possible dams and probabilities share one task.
 */
import type { Layout } from './nodes.ts';
import type { Resolved } from './resolve-input.ts';
import { type ShareRows, shareRowsBuilder } from './share-rows.ts';

/** Compressed lists of numbers: row r holds item[start[r]] .. item[start[r + 1] - 1]. */
export interface NumberLists {
  readonly start: Int32Array;
  readonly item: Int32Array;
}

/** Turns pairs (list, number) around: for each list, its numbers in the order of the pairs. */
export function numberLists(
  lists: number,
  pairs: number,
  listOf: (pair: number) => number,
  numberOf: (pair: number) => number,
): NumberLists {
  const start = new Int32Array(lists + 1);
  for (let pair = 0; pair < pairs; pair++) {
    const list = listOf(pair);
    if (list >= 0) start[list + 1]!++;
  }
  for (let list = 0; list < lists; list++) start[list + 1]! += start[list]!;
  const next = start.slice();
  const item = new Int32Array(start[lists]!);
  for (let pair = 0; pair < pairs; pair++) {
    const list = listOf(pair);
    if (list >= 0) item[next[list]!++] = numberOf(pair);
  }
  return { start, item };
}

export interface ColumnTasks {
  /** Nodes and coefficients of each task: sources first, then families. */
  readonly forms: ShareRows;
  /** Family task of each queen; -1 with one dam or none. */
  readonly familyOf: Int32Array;
  readonly firstFamily: number;
}

export function columnTasks(resolved: Resolved, layout: Layout): ColumnTasks {
  const { sources, dams } = resolved;
  const { entityNode, queenNode, matesNode } = layout;
  const queens = dams.rows;
  const builder = shareRowsBuilder(sources.rows, sources.item.length);
  for (let source = 0; source < sources.rows; source++) {
    for (let k = sources.start[source]!; k < sources.start[source + 1]!; k++) {
      builder.add(entityNode[sources.item[k]!]!, sources.share[k]!);
    }
    builder.close();
  }
  const familyOf = new Int32Array(queens).fill(-1);
  for (let queen = 0; queen < queens; queen++) {
    if (dams.start[queen + 1]! - dams.start[queen]! < 2) continue;
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) {
      builder.add(queenNode[dams.item[k]!]!, dams.share[k]! / 2);
      builder.add(matesNode[dams.item[k]!]!, dams.share[k]! / 2);
    }
    familyOf[queen] = builder.closeShared(0);
  }
  return { forms: builder.finish(), familyOf, firstFamily: sources.rows };
}
