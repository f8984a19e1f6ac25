import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ancestors,
  descent,
  descentTable,
  founderShares,
  geneShareTable,
  maternalShareTable,
  queenKey,
} from '../../graph/lineage/index.ts';
import { type GraphRows, type QueenRow, registryGraph } from '../helpers/registry-graphs.ts';

/** Random pedigrees with uncertain dams, pools and named drone mothers; parents always have lower numbers. */
const pedigrees: fc.Arbitrary<GraphRows> = fc
  .array(
    fc.record({
      first: fc.nat(),
      second: fc.nat(),
      kind: fc.constantFrom('founder', 'one', 'two', 'part'),
      met: fc.constantFrom('nothing', 'pool', 'mother'),
      mother: fc.nat(),
    }),
    { minLength: 2, maxLength: 9 },
  )
  .map((rows) => ({
    queens: rows.map((row, i) => queenRow(row, i)),
    pools: Object.fromEntries(
      rows.map((row, i) => [
        `P${i}`,
        i === 0 ? {} : { [String(row.first % i)]: 0.25, ...other(row.second % i, row.first % i) },
      ]),
    ),
  }));

function other(second: number, first: number): Record<string, number> {
  return second === first ? {} : { [String(second)]: 0.5 };
}

function queenRow(
  row: { first: number; second: number; kind: string; met: string; mother: number },
  i: number,
): QueenRow {
  const met: Record<string, number> =
    i === 0 || row.met === 'nothing'
      ? {}
      : row.met === 'pool'
        ? { [`P${i}`]: 1 }
        : { [String(row.mother % i)]: 0.75 };
  if (i === 0 || row.kind === 'founder') return { id: String(i), met };
  const first = String(row.first % i);
  const second = String(row.second % i);
  if (row.kind === 'two' && second !== first)
    return { id: String(i), dams: { [first]: 0.75, [second]: 0.25 }, met };
  return { id: String(i), dams: { [first]: row.kind === 'part' ? 0.5 : 1 }, met };
}

/** Every path from the queen upwards, one by one: where it ends or stands, its weight and its length. */
interface Path {
  readonly at: string;
  readonly weight: number;
  readonly length: number;
}

function pathsUp(rows: GraphRows, id: string, drones: boolean): Path[] {
  const queen = rows.queens.find((row) => row.id === id)!;
  const half = drones ? 0.5 : 1;
  const steps: [string, number][] = [];
  for (const [dam, probability] of Object.entries(queen.dams ?? {})) {
    steps.push([dam, probability * half]);
    if (!drones) continue;
    const met = rows.queens.find((row) => row.id === dam)!.met ?? {};
    for (const [source, share] of Object.entries(met)) {
      if (!source.startsWith('P')) steps.push([source, probability * half * share]);
      else
        for (const [mother, part] of Object.entries(rows.pools![source]!))
          steps.push([mother, probability * half * share * part]);
    }
  }
  return steps.flatMap(([at, weight]) => [
    { at, weight, length: 1 },
    ...pathsUp(rows, at, drones).map((path) => ({
      at: path.at,
      weight: weight * path.weight,
      length: path.length + 1,
    })),
  ]);
}

const isFounder = (rows: GraphRows, id: string): boolean =>
  Object.keys(rows.queens.find((row) => row.id === id)!.dams ?? {}).length === 0;

describe('lineage against counting every path', () => {
  it.each([false, true])(
    'ancestors and their generations are the ends of paths and the shortest of them (drones: %s)',
    (drones) => {
      fc.assert(
        fc.property(pedigrees, (rows) => {
          const graph = registryGraph(rows);
          for (const { id } of rows.queens) {
            const shortest = new Map<string, number>();
            for (const path of pathsUp(rows, id, drones)) {
              if (path.at !== id)
                shortest.set(path.at, Math.min(path.length, shortest.get(path.at) ?? Infinity));
            }
            const found = ancestors(graph, queenKey(id), { drones });
            expect(new Map(found.map(({ key, generations }) => [key.slice(6), generations]))).toEqual(
              shortest,
            );
          }
        }),
      );
    },
  );

  it.each([false, true])(
    'a queen is in the descent of all her ancestors and of nobody else (drones: %s)',
    (drones) => {
      fc.assert(
        fc.property(pedigrees, (rows) => {
          const graph = registryGraph(rows);
          for (const { id } of rows.queens) {
            for (const { key, generations } of descent(graph, queenKey(id), { drones })) {
              const back = ancestors(graph, key, { drones }).find((found) => found.key === queenKey(id));
              expect(back?.generations).toBe(generations);
            }
            const count = rows.queens.filter((row) =>
              ancestors(graph, queenKey(row.id), { drones }).some(({ key }) => key === queenKey(id)),
            );
            expect(descent(graph, queenKey(id), { drones })).toHaveLength(count.length);
          }
        }),
      );
    },
  );

  it.each([false, true])(
    'founder shares are the summed weights of the paths to founders (drones: %s)',
    (drones) => {
      fc.assert(
        fc.property(pedigrees, (rows) => {
          const graph = registryGraph(rows);
          const queens = descentTable(graph);
          const table = drones ? geneShareTable(graph, queens) : maternalShareTable(queens);
          for (const { id } of rows.queens) {
            const expected = new Map<string, number>();
            const paths = isFounder(rows, id) ? [{ at: id, weight: 1 }] : pathsUp(rows, id, drones);
            for (const { at, weight } of paths) {
              if (isFounder(rows, at)) expected.set(at, (expected.get(at) ?? 0) + weight);
            }
            const { shares, unrecorded } = founderShares(table, queenKey(id));
            expect(shares.length).toBe(expected.size);
            for (const { founder, share } of shares)
              expect(share).toBeCloseTo(expected.get(founder.slice(6))!, 12);
            const known = [...expected.values()].reduce((sum, share) => sum + share, 0);
            expect(unrecorded).toBeCloseTo(1 - known, 12);
          }
        }),
      );
    },
  );

  it('the order in which the graph is filled changes nothing', () => {
    fc.assert(
      fc.property(pedigrees, (rows) => {
        const turned = { ...rows, queens: [...rows.queens].reverse() };
        const strip = (graph: GraphRows) => {
          const { keys, dam, damProbability, mainDam, order } = descentTable(registryGraph(graph));
          return { keys, dam, damProbability, mainDam, order };
        };
        expect(strip(turned)).toEqual(strip(rows));
      }),
    );
  });
});
