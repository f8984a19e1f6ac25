/**
 * Where each queen stands in the drawing of the lines.
 *
 *   y = row by birth year (see layout-rows.ts)
 *   x = column: each line a strip of its own, within it a tidy tree, a dam centred over her daughters
 *
 * Tree dams are the most probable ones; other possible dams give edges with `inTree` false. A daughter more
 * than one row below her dam holds her column open in the rows between, so that nothing stands on her edge.
 * Source: tidy trees in linear time, Buchheim, Juenger & Leipert 2002, Graph Drawing, LNCS 2528:344, as
 * implemented by d3-hierarchy. Cost O(n log n + sum of row gaps). Deterministic: ties by node key.
 * Unknown dams: the queen starts a strip. Units: columns and rows, to be scaled by the drawing.
 */
import { dams } from './dams.ts';
import { type DescentTable, descentTable } from './descent-table.ts';
import { founderOf } from './generations.ts';
import { makingsOf, type PlacedMaking, placeMakings } from './layout-makings.ts';
import { type LayoutRow, planRows } from './layout-rows.ts';
import { buildKnots, type Gaps, placeStrips, type Strip } from './layout-strips.ts';
import type { ParentageEvidence, RegistryGraph } from './registry-graph.ts';

export interface LayoutOptions extends Gaps {
  /** Node keys of the queens to draw; absent: all. A queen whose dam is left out starts a strip. */
  readonly only?: ReadonlySet<string>;
}

export const LAYOUT_DEFAULTS: LayoutOptions = { sisterGap: 1, cousinGap: 1.25, lineGap: 2 };

export interface PlacedQueen {
  readonly key: string;
  /** Column, 0 or more. */
  readonly x: number;
  /** Row: index into `rows`. */
  readonly y: number;
  /** Node key of the founder of her line. */
  readonly line: string;
  /** Node key of the dam she hangs on in the drawing; absent for one that starts a strip. */
  readonly dam?: string;
  /** Whether her birth year is recorded and not set between its neighbours. */
  readonly yearKnown: boolean;
}

export interface PlacedEdge {
  readonly dam: string;
  readonly daughter: string;
  /** Probability (0..1] that she is the dam. */
  readonly probability: number;
  readonly evidence: ParentageEvidence;
  /** Whether the daughter hangs on this dam in the drawing. */
  readonly inTree: boolean;
}

export interface PlacedLine {
  /** Node key of the founder. */
  readonly line: string;
  /** Node key of the queen that starts the strip: the founder unless she is left out. */
  readonly root: string;
  readonly fromX: number;
  readonly toX: number;
}

export interface LineageLayout {
  /** Width in columns: the largest x. */
  readonly columns: number;
  readonly rows: readonly LayoutRow[];
  /** By node key. */
  readonly queens: readonly PlacedQueen[];
  readonly edges: readonly PlacedEdge[];
  readonly makings: readonly PlacedMaking[];
  /** Strips from left to right. */
  readonly lines: readonly PlacedLine[];
}

/** What every step below reads: who takes part, on which dam each hangs, and in which row. */
interface Plan {
  readonly table: DescentTable;
  /** Rows of the table that take part, dams before daughters. */
  readonly members: readonly number[];
  readonly dam: Int32Array;
  readonly founder: Int32Array;
  readonly rowOf: Int32Array;
  readonly takesPart: (row: number) => boolean;
}

/** Lays out the lines of the graph, or of the queens named. */
export function layoutLineage(graph: RegistryGraph, options: Partial<LayoutOptions> = {}): LineageLayout {
  const settings = { ...LAYOUT_DEFAULTS, ...options };
  const table = descentTable(graph);
  const takesPart = (row: number): boolean => settings.only?.has(table.keys[row]!) ?? true;
  const members = [...table.order].filter(takesPart);
  const dam = table.mainDam.map((row) => (row >= 0 && takesPart(row) ? row : -1));
  const { rows, rowOf } = planRows({ members, dam, bornYear: (row) => table.attributes[row]!.bornYear });
  const plan: Plan = { table, members, dam, founder: founderOf(table), rowOf, takesPart };
  const makings = makingsOf(graph, table);
  const knots = buildKnots(members, dam, {
    rowOf,
    day: (row) => makings[row]?.day ?? table.attributes[row]!.bornDay ?? Infinity,
    making: (row) => makings[row]?.making ?? '',
  });
  const { x, strips } = placeStrips(rootsInOrder(plan), knots, table.keys.length, settings);
  const queens = placeQueens(plan, x);
  return {
    columns: strips.at(-1)?.toX ?? 0,
    rows,
    queens,
    edges: queens.flatMap(({ key }) => placeEdges(graph, plan, key)),
    makings: placeMakings(queens, (key) => makings[table.index.get(key)!]),
    lines: strips.map((strip) => placeLine(plan, strip)),
  };
}

/** Strips stand in the order of their lines' founders: by row, then by key; founders left out come first. */
function rootsInOrder({ members, dam, founder, rowOf }: Plan): number[] {
  return members
    .filter((row) => dam[row] === -1)
    .sort(
      (a, b) =>
        rowOf[founder[a]!]! - rowOf[founder[b]!]! ||
        founder[a]! - founder[b]! ||
        rowOf[a]! - rowOf[b]! ||
        a - b,
    );
}

function placeQueens({ table, members, dam, founder, rowOf }: Plan, x: Float64Array): PlacedQueen[] {
  return [...members]
    .sort((a, b) => a - b)
    .map((row) => ({
      key: table.keys[row]!,
      x: x[row]!,
      y: rowOf[row]!,
      line: table.keys[founder[row]!]!,
      ...(dam[row]! >= 0 ? { dam: table.keys[dam[row]!]! } : {}),
      yearKnown: table.attributes[row]!.bornYear !== undefined,
    }));
}

function placeEdges(graph: RegistryGraph, { table, dam, takesPart }: Plan, daughter: string): PlacedEdge[] {
  const treeDam = dam[table.index.get(daughter)!];
  return dams(graph, daughter)
    .filter((possible) => takesPart(table.index.get(possible.dam)!))
    .map((possible) => ({ ...possible, daughter, inTree: table.index.get(possible.dam) === treeDam }));
}

function placeLine({ table, founder }: Plan, { row, fromX, toX }: Strip): PlacedLine {
  return { line: table.keys[founder[row]!]!, root: table.keys[row]!, fromX, toX };
}
