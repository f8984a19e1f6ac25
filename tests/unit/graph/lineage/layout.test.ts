import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LineageLayout, layoutLineage, queenKey } from '../../../../graph/lineage/index.ts';
import { registryGraph, TWO_LINES } from '../../../helpers/registry-graphs.ts';

/** The layout as text: a line a row, a queen's name at eight times her column. */
function drawing({ rows, queens }: LineageLayout): string[] {
  return rows.map(({ year, step }, y) => {
    const line: string[] = [];
    for (const queen of queens.filter((placed) => placed.y === y))
      line[Math.round(queen.x * 8)] = queen.key.slice(6);
    const names = Array.from(line, (name) => name ?? ' ').join('');
    return `${year ?? '????'}${step > 0 ? `+${step}` : '  '} ${names}`.trimEnd();
  });
}

describe('the drawing of the lines', () => {
  // Sisters stand 1 column apart, cousins 1.25 (so b and s do, c and t being cousins), lines 2.
  it('puts two lines in strips, queens in the row of their year, dams centred over their daughters', () => {
    expect(drawing(layoutLineage(registryGraph(TWO_LINES)))).toEqual([
      '2020        a',
      '2021   b         s               D',
      '2022                             e',
      '2023   c         t',
      '2024   x                                         n',
    ]);
  });

  it('keeps the other possible dam as an edge outside the tree', () => {
    const edges = layoutLineage(registryGraph(TWO_LINES)).edges.filter(
      ({ daughter }) => daughter === queenKey('c'),
    );
    expect(edges).toEqual([
      { dam: queenKey('b'), daughter: queenKey('c'), probability: 0.7, evidence: 'stated', inTree: true },
      { dam: queenKey('D'), daughter: queenKey('c'), probability: 0.3, evidence: 'stated', inTree: false },
    ]);
  });

  it('joins the sisters of one split under a bracket in the middle above them', () => {
    expect(layoutLineage(registryGraph(TWO_LINES)).makings).toEqual([
      {
        making: 'making:m1',
        how: 'split',
        day: 18_750,
        dam: queenKey('a'),
        queens: [queenKey('b'), queenKey('s')],
        fromX: 0,
        toX: 1.25,
        x: 0.625,
        y: 0.5,
      },
    ]);
  });

  it('puts a daughter of the same year a step lower within the year', () => {
    const graph = registryGraph({
      queens: [
        { id: 'a', year: 2020 },
        { id: 'b', year: 2020, dams: { a: 1 } },
        { id: 'c', year: 2021, dams: { a: 1 } },
      ],
    });
    expect(layoutLineage(graph).rows).toEqual([
      { year: 2020, step: 0 },
      { year: 2020, step: 1 },
      { year: 2021, step: 0 },
    ]);
  });

  it('sets an unrecorded year between those of dam and daughter and says that it is not known', () => {
    const graph = registryGraph({
      queens: [
        { id: 'a' },
        { id: 'b', dams: { a: 1 } },
        { id: 'c', year: 2023, dams: { b: 1 } },
        { id: 'd', year: 2020 },
      ],
    });
    const layout = layoutLineage(graph);
    expect(drawing(layout)).toEqual([
      '2020   d',
      '2021                   a',
      '2022                   b',
      '2023                   c',
    ]);
    expect(layout.queens.map(({ yearKnown }) => yearKnown)).toEqual([false, false, true, true]);
  });

  it('ranks by generation when no year is known at all', () => {
    const graph = registryGraph({ queens: [{ id: 'a' }, { id: 'b', dams: { a: 1 } }] });
    expect(drawing(layoutLineage(graph))).toEqual(['????   a', '????   b']);
  });

  it('of some queens starts a strip where the dam is left out, and keeps the name of the line', () => {
    const only = new Set(['c', 'x', 'e'].map(queenKey));
    const layout = layoutLineage(registryGraph(TWO_LINES), { only });
    expect(layout.lines.map(({ line, root }) => [line, root])).toEqual([
      [queenKey('D'), queenKey('e')],
      [queenKey('a'), queenKey('c')],
    ]);
    expect(layout.edges).toHaveLength(1);
  });

  it('of nothing is empty', () => {
    expect(layoutLineage(registryGraph({ queens: [] }))).toMatchObject({
      columns: 0,
      rows: [],
      queens: [],
      lines: [],
    });
  });

  it('never puts two queens of a row closer than the smallest gap, nor a daughter above her dam', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ dam: fc.nat(), year: fc.option(fc.integer({ min: 2015, max: 2022 })) }), {
          maxLength: 40,
        }),
        (rows) => {
          const queens = rows.map(({ dam, year }, i) => ({
            id: String(i),
            ...(year === null ? {} : { year }),
            ...(i === 0 || dam % 4 === 0 ? {} : { dams: { [String(dam % i)]: 1 } }),
          }));
          const layout = layoutLineage(registryGraph({ queens }));
          const at = new Map(layout.queens.map((queen) => [queen.key, queen]));
          for (const queen of layout.queens)
            if (queen.dam) expect(queen.y).toBeGreaterThan(at.get(queen.dam)!.y);
          layout.rows.forEach((_, y) => {
            const xs = layout.queens
              .filter((queen) => queen.y === y)
              .map(({ x }) => x)
              .sort((a, b) => a - b);
            for (let k = 1; k < xs.length; k += 1) expect(xs[k]! - xs[k - 1]!).toBeGreaterThan(1 - 1e-9);
          });
        },
      ),
    );
  });

  it('does not depend on the order in which the graph was filled', () => {
    const turned = { ...TWO_LINES, queens: [...TWO_LINES.queens].reverse() };
    expect(layoutLineage(registryGraph(turned))).toEqual(layoutLineage(registryGraph(TWO_LINES)));
  });

  it('of 5,000 generations in one line needs no deep stack', () => {
    const queens = Array.from({ length: 5_000 }, (_, i) => ({
      id: String(i),
      ...(i === 0 ? {} : { dams: { [String(i - 1)]: 1 } }),
    }));
    expect(layoutLineage(registryGraph({ queens })).columns).toBe(0);
  });
});
