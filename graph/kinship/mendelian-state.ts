/** What the computation of the Mendelian variances (mendelian.ts) knows at any moment. Cost to set up: O(nodes + shares). */
import { type KnownRows, newKnownRows } from './column-kernel.ts';
import { type ColumnTasks, columnTasks, type NumberLists, numberLists } from './column-tasks.ts';
import type { Layout } from './nodes.ts';
import { NodeKind } from './pedigree.ts';
import type { Resolved } from './resolve-input.ts';

export interface MendelianTerms {
  readonly mendelian: Float64Array;
  readonly diagonal: Float64Array;
  readonly relationToMates: Float64Array;
}

export interface MendelianState extends MendelianTerms {
  readonly resolved: Resolved;
  readonly layout: Layout;
  readonly tasks: ColumnTasks;
  readonly known: KnownRows;
  readonly rowOf: Int32Array;
  readonly isAncestor: Uint8Array;
  /** c' A c of each task; NaN until computed. */
  readonly squares: Float64Array;
  /** Single drones of each queen. */
  readonly dronesOf: NumberLists;
  /** Sources that hold an entity; readers of a source; daughters of a queen; queens of a family task. */
  readonly sourcesHolding: NumberLists;
  readonly readersOf: NumberLists;
  readonly daughtersOf: NumberLists;
  readonly queensOfFamily: NumberLists;
  readonly isKnown: Uint8Array;
  /** Entities of each source not yet known, readers not yet known, and known dams not yet read. */
  readonly itemsPending: Int32Array;
  readonly readersPending: Int32Array;
  readonly damsWaiting: Int32Array;
  /** Possible dams of each queen not yet read. */
  readonly damsPending: Int32Array;
  readonly newlyKnown: number[];
  /** Family tasks whose dams are all read. */
  readonly familiesReady: number[];
}

const rowLengths = (start: Int32Array): Int32Array =>
  Int32Array.from({ length: start.length - 1 }, (_, row) => start[row + 1]! - start[row]!);

/** Nothing known yet. */
export function newMendelianState(resolved: Resolved, layout: Layout): MendelianState {
  const { dams, sources, sourceOf, firstSource, droneMother } = resolved;
  const tasks = columnTasks(resolved, layout);
  const queens = dams.rows;
  const rowOfPair = (start: Int32Array, pairs: number): Int32Array => {
    const row = new Int32Array(pairs);
    for (let r = 0; r + 1 < start.length; r++) row.fill(r, start[r]!, start[r + 1]!);
    return row;
  };
  const damRow = rowOfPair(dams.start, dams.item.length);
  const sourceRow = rowOfPair(sources.start, sources.item.length);
  const readersOf = numberLists(
    sources.rows,
    queens,
    (queen) => sourceOf[queen]!,
    (queen) => queen,
  );
  const isAncestor = ancestors(resolved, layout);
  const { rows, pairs } = ancestorSizes(layout, isAncestor);
  const families = tasks.forms.rows - tasks.firstFamily;
  return {
    resolved,
    layout,
    tasks,
    known: newKnownRows(rows, pairs),
    rowOf: new Int32Array(layout.size).fill(-1),
    isAncestor,
    mendelian: new Float64Array(layout.size),
    diagonal: new Float64Array(layout.size),
    relationToMates: new Float64Array(queens).fill(Number.NaN),
    squares: new Float64Array(tasks.forms.rows).fill(Number.NaN),
    sourcesHolding: numberLists(
      firstSource,
      sources.item.length,
      (k) => sources.item[k]!,
      (k) => sourceRow[k]!,
    ),
    readersOf,
    dronesOf: numberLists(
      queens,
      droneMother.length,
      (drone) => droneMother[drone]!,
      (drone) => drone,
    ),
    daughtersOf: numberLists(
      queens,
      dams.item.length,
      (k) => dams.item[k]!,
      (k) => damRow[k]!,
    ),
    queensOfFamily: numberLists(
      families,
      queens,
      (queen) => tasks.familyOf[queen]! - (tasks.familyOf[queen]! < 0 ? 0 : tasks.firstFamily),
      (queen) => queen,
    ),
    isKnown: new Uint8Array(firstSource),
    itemsPending: rowLengths(sources.start),
    readersPending: rowLengths(readersOf.start),
    damsWaiting: new Int32Array(sources.rows),
    damsPending: rowLengths(dams.start),
    newlyKnown: [],
    familiesReady: [],
  };
}

/** 1 for each node from which some queen, drone or drone source descends, mates of the childless left out. */
function ancestors({ dams, sources, sourceOf, firstSource }: Resolved, layout: Layout): Uint8Array {
  const is = new Uint8Array(layout.size);
  for (const [node, kind] of layout.kind.entries()) if (kind === NodeKind.background) is[node] = 1;
  for (const dam of dams.item) {
    is[layout.queenNode[dam]!] = 1;
    is[layout.matesNode[dam]!] = 1;
    const source = layout.entityNode[firstSource + sourceOf[dam]!]!;
    if (source >= 0) is[source] = 1;
  }
  for (const entity of sources.item) is[layout.entityNode[entity]!] = 1;
  for (let node = layout.size - 1; node >= 0; node--) {
    if (!is[node]) continue;
    for (let k = layout.parentStart[node]!; k < layout.parentStart[node + 1]!; k++) is[layout.parent[k]!] = 1;
  }
  return is;
}

function ancestorSizes(layout: Layout, isAncestor: Uint8Array): { rows: number; pairs: number } {
  let rows = 0;
  let pairs = 0;
  for (let node = 0; node < layout.size; node++) {
    if (!isAncestor[node]) continue;
    rows++;
    pairs += layout.parentStart[node + 1]! - layout.parentStart[node]!;
  }
  return { rows, pairs };
}
