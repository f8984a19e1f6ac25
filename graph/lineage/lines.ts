/**
 * The lines of the registry: each founder with all her descent, and how much of it is left.
 *
 *   line(f) = queens whose path of most probable dams ends in f, the founder included
 *   expectedLiving(f) = sum over living queens q of share(q, f)
 *
 * share(q, f) is the probability that q's dam line ends in f, all possible dams weighed: the maternal founder
 * share. A line whose `living` is 1 hangs on one queen. Source: the definition itself.
 * Cost O(queens + edges). Unknown dams: the queen founds a line of her own.
 */
import { groupBy } from '../grouping.ts';
import type { DescentTable } from './descent-table.ts';
import { founderOf, generations } from './generations.ts';
import type { QueenAttributes } from './registry-graph.ts';

export interface LinesOptions {
  /** A line is new when its founder was born in this year or later; absent: no line is called new. */
  readonly newSince?: number;
}

export interface Line {
  /** Node key of the founder. */
  readonly founder: string;
  /** Counts of queens: laying and alive, awaited, failed before laying, dead or gone. */
  readonly living: number;
  readonly expected: number;
  readonly failed: number;
  readonly dead: number;
  /** Node keys of the living, ascending. */
  readonly livingQueens: readonly string[];
  /** Living queens to be expected in this line when uncertain dams are weighed by probability. */
  readonly expectedLiving: number;
  /** Deepest generation below the founder. */
  readonly generations: number;
  /** Earliest and latest known birth years in the line. */
  readonly firstYear?: number;
  readonly lastYear?: number;
  readonly isNew: boolean;
}

type Count = 'living' | 'expected' | 'failed' | 'dead';

/** All lines, by founder's first year and then by her node key; founders without a year last. */
export function lines(table: DescentTable, options: LinesOptions = {}): Line[] {
  const founders = founderOf(table);
  const depth = generations(table);
  const weighed = expectedLiving(table);
  const members = groupBy(founders.keys(), (row) => founders[row]!);
  const all = [...members].map(([founder, rows]) => ({
    founder: table.keys[founder]!,
    ...counts(table, rows),
    expectedLiving: weighed[founder]!,
    generations: rows.reduce((deepest, row) => Math.max(deepest, depth[row]!), 0),
    ...years(table, rows),
    isNew: isNew(table.attributes[founder]!, options.newSince),
  }));
  const year = (line: Line): number => table.attributes[table.index.get(line.founder)!]!.bornYear ?? Infinity;
  return all.sort((a, b) => compareNumbers(year(a), year(b)) || (a.founder < b.founder ? -1 : 1));
}

/** Whether she counts as living, awaited, failed or dead. */
function countOf(queen: QueenAttributes): Count {
  if (queen.state !== 'confirmed') return queen.state;
  return queen.alive ? 'living' : 'dead';
}

function counts(table: DescentTable, rows: readonly number[]) {
  const tally: Record<Count, number> = { living: 0, expected: 0, failed: 0, dead: 0 };
  const livingQueens: string[] = [];
  for (const row of rows) {
    const count = countOf(table.attributes[row]!);
    tally[count] += 1;
    if (count === 'living') livingQueens.push(table.keys[row]!);
  }
  return { ...tally, livingQueens };
}

/** For each row: living queens below it, uncertain dams weighed; read at founders. One sweep, youngest first. */
function expectedLiving(table: DescentTable): Float64Array {
  const { order, damStart, dam, damProbability } = table;
  const weight = new Float64Array(order.length);
  for (let k = order.length - 1; k >= 0; k -= 1) {
    const row = order[k]!;
    if (countOf(table.attributes[row]!) === 'living') weight[row]! += 1;
    for (let e = damStart[row]!; e < damStart[row + 1]!; e += 1) {
      weight[dam[e]!]! += damProbability[e]! * weight[row]!;
    }
  }
  return weight;
}

function years(table: DescentTable, rows: readonly number[]): { firstYear?: number; lastYear?: number } {
  let first = Infinity;
  let last = -Infinity;
  for (const row of rows) {
    const year = table.attributes[row]!.bornYear;
    if (year === undefined) continue;
    first = Math.min(first, year);
    last = Math.max(last, year);
  }
  return last >= first ? { firstYear: first, lastYear: last } : {};
}

function isNew(founder: QueenAttributes, since: number | undefined): boolean {
  return since !== undefined && founder.bornYear !== undefined && founder.bornYear >= since;
}

function compareNumbers(a: number, b: number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
