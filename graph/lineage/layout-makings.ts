/**
 * The making events in the drawing of the lines: one bracket over the sisters that one split or graft made.
 *
 *   a bracket = the drawn queens of one making out of one dam; its x runs from the first to the last of them,
 *   its junction stands in the middle, half a row above the topmost
 *
 * Queens of one making out of different dams (cells of another colony given to a part of the split) stand in
 * brackets of their own. Source: our own rule. Cost O(n log n).
 */
import { compareKeys } from './dams.ts';
import type { DescentTable } from './descent-table.ts';
import type { MakingHow, RegistryGraph } from './registry-graph.ts';

export interface MakingOfQueen {
  /** Node key of the making event. */
  readonly making: string;
  readonly how: MakingHow;
  /** Days since 1970-01-01. */
  readonly day?: number;
}

export interface PlacedMaking extends MakingOfQueen {
  /** Node key of the dam drawn; absent for queens that start a strip. */
  readonly dam?: string;
  /** Node keys of the queens, from left to right. */
  readonly queens: readonly string[];
  readonly fromX: number;
  readonly toX: number;
  readonly x: number;
  readonly y: number;
}

interface Standing {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly dam?: string;
}

/** The making event of each queen, aligned to the table; the first by node key where there are several. */
export function makingsOf(graph: RegistryGraph, table: DescentTable): (MakingOfQueen | undefined)[] {
  return table.keys.map((queen) => {
    let found: string | undefined;
    graph.forEachOutboundEdge(queen, (_edge, attributes, _source, target) => {
      if (attributes.type === 'made-by' && (found === undefined || target < found)) found = target;
    });
    if (found === undefined) return undefined;
    const making = graph.getNodeAttributes(found);
    if (making.type !== 'making') throw new Error(`${queen} is made by ${found}, which is no making event.`);
    return { making: found, how: making.how, ...(making.day === undefined ? {} : { day: making.day }) };
  });
}

/** Brackets over the queens drawn, by node key of the making and then of the dam. */
export function placeMakings(
  queens: readonly Standing[],
  makingOf: (queen: string) => MakingOfQueen | undefined,
): PlacedMaking[] {
  const groups = new Map<string, { making: MakingOfQueen; queens: Standing[] }>();
  for (const queen of queens) {
    const making = makingOf(queen.key);
    if (!making) continue;
    const key = `${making.making}|${queen.dam ?? ''}`;
    const group = groups.get(key);
    if (group) group.queens.push(queen);
    else groups.set(key, { making, queens: [queen] });
  }
  return [...groups]
    .sort((a, b) => compareKeys(a[0], b[0]))
    .map(([, group]) => bracket(group.making, group.queens));
}

function bracket(making: MakingOfQueen, queens: Standing[]): PlacedMaking {
  queens.sort((a, b) => a.x - b.x || compareKeys(a.key, b.key));
  const fromX = queens[0]!.x;
  const toX = queens.at(-1)!.x;
  const y = queens.reduce((top, queen) => Math.min(top, queen.y), Infinity) - 0.5;
  const dam = queens[0]!.dam;
  const keys = queens.map(({ key }) => key);
  return {
    ...making,
    ...(dam === undefined ? {} : { dam }),
    queens: keys,
    fromX,
    toX,
    x: (fromX + toX) / 2,
    y,
  };
}
