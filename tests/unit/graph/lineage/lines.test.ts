import { describe, expect, it } from 'vitest';
import {
  descentTable,
  founderOf,
  generations,
  lines,
  maternalPath,
  queenKey,
} from '../../../../graph/lineage/index.ts';
import { registryGraph, TWO_LINES } from '../../../helpers/registry-graphs.ts';

const table = descentTable(registryGraph(TWO_LINES));
const byId = (values: ArrayLike<number>): Record<string, number> =>
  Object.fromEntries(table.keys.map((key, row) => [key.slice(6), values[row]!]));

describe('the dam line', () => {
  it('follows the most probable dam and multiplies the probabilities', () => {
    const path = maternalPath(registryGraph(TWO_LINES), queenKey('x'));
    expect(path.keys.map((key) => key.slice(6))).toEqual(['x', 'c', 'b', 'a']);
    expect(path.founder).toBe(queenKey('a'));
    expect(path.probability).toBeCloseTo(0.7, 12);
  });

  it('of a founder is the founder alone, for sure', () => {
    expect(maternalPath(registryGraph(TWO_LINES), queenKey('n'))).toEqual({
      keys: [queenKey('n')],
      founder: queenKey('n'),
      probability: 1,
    });
  });

  it('takes the dam with the lower key when two are equally probable', () => {
    const graph = registryGraph({
      queens: [{ id: 'b' }, { id: 'a' }, { id: 'c', dams: { b: 0.5, a: 0.5 } }],
    });
    expect(maternalPath(graph, queenKey('c')).founder).toBe(queenKey('a'));
  });

  it('that goes in a circle is refused with the name of a queen in it', () => {
    const graph = registryGraph({
      queens: [
        { id: 'a', dams: { b: 1 } },
        { id: 'b', dams: { a: 1 } },
      ],
    });
    expect(() => maternalPath(graph, queenKey('a'))).toThrow(/circle of dams through queen:a/);
    expect(() => descentTable(graph)).toThrow(/circle of descent at or above queen:a/);
  });
});

describe('generations', () => {
  it('count 0 for founders and one more for each step down', () => {
    expect(byId(generations(table))).toEqual({ a: 0, b: 1, s: 1, D: 0, e: 1, c: 2, t: 2, x: 3, n: 0 });
  });
});

describe('the lines', () => {
  it('hold all descent of each founder, counted by what became of it', () => {
    const [a, d, n] = lines(table, { newSince: 2024 });
    expect(a).toMatchObject({
      founder: queenKey('a'),
      living: 2,
      livingQueens: [queenKey('b'), queenKey('c')],
      expected: 1,
      failed: 1,
      dead: 2,
      generations: 3,
      firstYear: 2020,
      lastYear: 2024,
      isNew: false,
    });
    expect(d).toMatchObject({ founder: queenKey('D'), living: 0, dead: 2, isNew: false });
    expect(n).toMatchObject({ founder: queenKey('n'), living: 1, generations: 0, isNew: true });
  });

  it('weigh living queens of uncertain dams: c counts 0.7 for a and 0.3 for D', () => {
    const [a, d, n] = lines(table);
    expect(a!.expectedLiving).toBeCloseTo(1.7, 12);
    expect(d!.expectedLiving).toBeCloseTo(0.3, 12);
    expect(n!.expectedLiving).toBe(1);
  });

  it('add up to all queens', () => {
    const total = lines(table).reduce((sum, l) => sum + l.living + l.expected + l.failed + l.dead, 0);
    expect(total).toBe(TWO_LINES.queens.length);
    expect(new Set(founderOf(table)).size).toBe(lines(table).length);
  });
});
