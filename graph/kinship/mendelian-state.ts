/** What the computation of the Mendelian variances (mendelian.ts) knows at any moment. Set up in O(nodes + shares). */
import { type KnownRows, newKnownRows } from './column-kernel.ts';
import type { Layout } from './nodes.ts';
import { listLengths, listOfItems, type NumberLists, numberLists } from './number-lists.ts';
import type { Resolved } from './resolve-input.ts';
import { newRowForms, type RowForms } from './row-forms.ts';
import { shareRowsBuilder } from './share-rows.ts';

export interface MendelianTerms {
  readonly mendelian: Float64Array;
  readonly diagonal: Float64Array;
  readonly inbreeding: Float64Array;
  readonly relationToMates: Float64Array;
}

export interface MendelianState extends MendelianTerms {
  readonly resolved: Resolved;
  readonly layout: Layout;
  readonly known: KnownRows;
  /** Kernel row of each entity, and of the family of each mating; -1 without one. */
  readonly rowOf: Int32Array;
  readonly rowOfFamily: Int32Array;
  readonly needsRow: Uint8Array;
  /** Tasks are the drone sources, then the family tasks: one for each distinct set of several possible dams. */
  readonly firstFamily: number;
  readonly familyOf: Int32Array;
  readonly forms: RowForms;
  /** c' A c of each drone source; NaN until computed. */
  readonly squares: Float64Array;
  readonly dronesOf: NumberLists;
  /** Matings of each queen: her own, if any, and those a daughter's known father tells. */
  readonly matingsOf: NumberLists;
  readonly sourcesHolding: NumberLists;
  /** Matings with the drones of each source; daughters of each mating. */
  readonly readersOf: NumberLists;
  readonly daughtersOf: NumberLists;
  readonly queensOfFamily: NumberLists;
  readonly isKnown: Uint8Array;
  /**
   * Of each source: its entities not yet known, its matings whose queen is not yet known, and the known ones
   * with daughters that are not yet read. */
  readonly itemsPending: Int32Array;
  readonly readersPending: Int32Array;
  readonly damsWaiting: Int32Array;
  /** Possible dams of each queen whose mating is not yet read. */
  readonly damsPending: Int32Array;
  readonly newlyKnown: number[];
  /** Family tasks whose dams are all read. */
  readonly familiesReady: number[];
}

/** Nothing known yet. */
export function newMendelianState(resolved: Resolved, layout: Layout, level: Int32Array): MendelianState {
  const { dams, sources, sourceOf, queenOfMating, firstSource, droneMother } = resolved;
  const queens = dams.rows;
  const relations = {
    dronesOf: numberLists(queens, droneMother),
    matingsOf: numberLists(
      queens,
      queenOfMating.map((queen, mating) => (sourceOf[mating]! < 0 ? -1 : queen)),
    ),
    sourcesHolding: numberLists(firstSource, sources.item, listOfItems(sources)),
    readersOf: numberLists(sources.rows, sourceOf),
    daughtersOf: numberLists(sourceOf.length, dams.item, listOfItems(dams)),
  };
  const { familyOf, families } = familyTasks(resolved);
  return {
    ...relations,
    resolved,
    layout,
    known: newKnownRows(1024, 1024),
    rowOf: new Int32Array(firstSource + sources.rows).fill(-1),
    rowOfFamily: new Int32Array(sourceOf.length).fill(-1),
    needsRow: rowNeeds(resolved, relations, level),
    firstFamily: sources.rows,
    familyOf,
    forms: newRowForms(sources.rows + families),
    mendelian: new Float64Array(layout.nodes.size),
    diagonal: new Float64Array(layout.nodes.size),
    inbreeding: new Float64Array(queens),
    relationToMates: new Float64Array(sourceOf.length).fill(Number.NaN),
    squares: new Float64Array(sources.rows).fill(Number.NaN),
    queensOfFamily: numberLists(
      families,
      familyOf.map((task) => (task < 0 ? -1 : task - sources.rows)),
    ),
    isKnown: new Uint8Array(firstSource),
    itemsPending: listLengths(sources),
    readersPending: listLengths(relations.readersOf),
    damsWaiting: new Int32Array(sources.rows),
    damsPending: listLengths(dams),
    newlyKnown: [],
    familiesReady: [],
  };
}

/** The family task of each queen with two or more possible dams; -1 for the others. */
function familyTasks({ dams, sources }: Resolved): { familyOf: Int32Array; families: number } {
  const builder = shareRowsBuilder(16, 16);
  const familyOf = new Int32Array(dams.rows).fill(-1);
  for (let queen = 0; queen < dams.rows; queen++) {
    if (dams.start[queen + 1]! - dams.start[queen]! < 2) continue;
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++)
      builder.add(dams.item[k]!, dams.share[k]!);
    familyOf[queen] = sources.rows + builder.closeShared(0);
  }
  return { familyOf, families: builder.finish().rows };
}

type Relations = Pick<
  MendelianState,
  'dronesOf' | 'matingsOf' | 'sourcesHolding' | 'readersOf' | 'daughtersOf'
>;

/**
 * 1 for each entity that cannot be folded into its one child; see row-forms.ts. A queen who may have met drones
 * that descend from her own sons is kept too, since her reading needs her own row.
 */
function rowNeeds(resolved: Resolved, relations: Relations, level: Int32Array): Uint8Array {
  const { firstQueen, firstDrone, firstSource, sources, sourceOf, queenOfMating } = resolved;
  const { dronesOf, matingsOf, sourcesHolding, readersOf, daughtersOf } = relations;
  const needs = new Uint8Array(firstSource + sources.rows).fill(1, 0, firstQueen);
  const length = ({ start }: NumberLists, list: number): number => start[list + 1]! - start[list]!;
  for (let entity = firstQueen; entity < firstSource; entity++) {
    const uses = length(sourcesHolding, entity);
    if (entity >= firstDrone) needs[entity] = uses > 1 ? 1 : 0;
    else needs[entity] = queenNeedsRow(entity - firstQueen, uses) ? 1 : 0;
  }
  for (let source = 0; source < sources.rows; source++) {
    needs[firstSource + source] = sourceNeedsRow(source) ? 1 : 0;
  }
  return needs;

  /** `uses`: sources that hold her. */
  function queenNeedsRow(queen: number, uses: number): boolean {
    const matings = length(matingsOf, queen);
    if (uses > 1 || matings > 1 || length(dronesOf, queen) > 0) return true;
    if (uses === 0 || matings === 0) return false;
    const mating = matingsOf.item[matingsOf.start[queen]!]!;
    const met = sourceOf[mating]!;
    const flownIn = sourcesHolding.item[sourcesHolding.start[firstQueen + queen]!]!;
    const mayMeetHerSons = met === flownIn || level[firstSource + met]! > level[firstSource + flownIn]!;
    return mayMeetHerSons || length(daughtersOf, mating) > 0;
  }

  /** Met by two dams, or by one dam and a queen who may descend from her. */
  function sourceNeedsRow(source: number): boolean {
    const readers = readersOf.item.subarray(readersOf.start[source]!, readersOf.start[source + 1]!);
    let oldestDam = Number.POSITIVE_INFINITY;
    let dams = 0;
    const levelOf = (mating: number): number => level[firstQueen + queenOfMating[mating]!]!;
    for (const mating of readers) {
      if (length(daughtersOf, mating) === 0) continue;
      dams++;
      oldestDam = Math.min(oldestDam, levelOf(mating));
    }
    return dams > 1 || (dams === 1 && readers.some((mating) => levelOf(mating) > oldestDam));
  }
}
