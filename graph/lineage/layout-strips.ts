/**
 * The columns of the drawing of the lines: a strip for each tree of dams, side by side.
 *
 * A queen's knot holds her daughters' knots; a daughter more than one row below her dam hangs on knots that
 * only hold her column open, so that no queen of the same strip stands on her edge.
 * Source: tidy trees in linear time, Buchheim, Juenger & Leipert 2002, Graph Drawing, LNCS 2528:344 (from
 * memory, not re-read), as implemented by d3-hierarchy. Cost O(n log n + sum of row gaps).
 */
import { type HierarchyNode, type HierarchyPointNode, hierarchy, tree } from 'd3-hierarchy';
import { compareKeys } from './dams.ts';

/** Columns between neighbours. */
export interface Gaps {
  readonly sisterGap: number;
  readonly cousinGap: number;
  readonly lineGap: number;
}

/** Left and right end of the strip of one root. */
export interface Strip {
  readonly row: number;
  readonly fromX: number;
  readonly toX: number;
}

/** What orders sisters: the row they stand in, then the day, then the event, then their own row number. */
export interface SisterOrder {
  readonly rowOf: Int32Array;
  readonly day: (row: number) => number;
  readonly making: (row: number) => string;
}

export interface Knot {
  /** Row of the descent table; -1 for a held column. */
  readonly row: number;
  readonly below: readonly Knot[];
}

/** The knot of each member; `members` have dams before daughters, `dam` is -1 for roots. */
export function buildKnots(
  members: readonly number[],
  dam: Int32Array,
  sisters: SisterOrder,
): ReadonlyMap<number, Knot> {
  const { rowOf, day, making } = sisters;
  const daughters = new Map<number, number[]>(members.map((row) => [row, []]));
  for (const row of members) daughters.get(dam[row]!)?.push(row);
  const compare = (a: number, b: number): number =>
    rowOf[a]! - rowOf[b]! || compareDays(day(a), day(b)) || compareKeys(making(a), making(b)) || a - b;
  const knots = new Map<number, Knot>();
  for (let k = members.length - 1; k >= 0; k -= 1) {
    const row = members[k]!;
    const below = daughters.get(row)!.sort(compare);
    knots.set(row, {
      row,
      below: below.map((child) => held(knots.get(child)!, rowOf[child]! - rowOf[row]!)),
    });
  }
  return knots;
}

function held(knot: Knot, rows: number): Knot {
  let top = knot;
  for (let k = 1; k < rows; k += 1) top = { row: -1, below: [top] };
  return top;
}

function compareDays(a: number, b: number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Column of each row of the table (`size` rows) and the strips from left to right, in the order of `roots`. */
export function placeStrips(
  roots: readonly number[],
  knots: ReadonlyMap<number, Knot>,
  size: number,
  gaps: Gaps,
) {
  const gap = (a: HierarchyNode<Knot>, b: HierarchyNode<Knot>): number =>
    a.parent === b.parent ? gaps.sisterGap : gaps.cousinGap;
  const place = tree<Knot>().nodeSize([1, 1]).separation(gap);
  const x = new Float64Array(size);
  const strips: { row: number; fromX: number; toX: number }[] = [];
  let free = 0;
  for (const row of roots) {
    const placed = place(hierarchy(knots.get(row)!, (knot) => knot.below));
    const { low, high } = extent(placed);
    placed.each((node) => {
      if (node.data.row >= 0) x[node.data.row] = free + node.x - low;
    });
    strips.push({ row, fromX: free, toX: free + high - low });
    free += high - low + gaps.lineGap;
  }
  return { x, strips };
}

function extent(placed: HierarchyPointNode<Knot>): { low: number; high: number } {
  let low = Infinity;
  let high = -Infinity;
  placed.each(({ x }) => {
    low = Math.min(low, x);
    high = Math.max(high, x);
  });
  return { low, high };
}
