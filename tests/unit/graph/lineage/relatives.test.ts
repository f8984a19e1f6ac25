import { describe, expect, it } from 'vitest';
import { ancestors, descent, queenKey } from '../../../../graph/lineage/index.ts';
import { registryGraph, TWO_LINES } from '../../../helpers/registry-graphs.ts';

const names = (found: readonly { key: string; generations: number }[]): string[] =>
  found.map(({ key, generations }) => `${key.slice(6)}${generations}`).sort();

/**
 *   m --drones--> P <--met-- d         v --met directly--> w
 *                            |         |
 *                            g         h
 */
const DRONES = registryGraph({
  queens: [
    { id: 'm' },
    { id: 'd', met: { P: 1 } },
    { id: 'g', dams: { d: 1 } },
    { id: 'w' },
    { id: 'v', met: { w: 1 } },
    { id: 'h', dams: { v: 1 } },
  ],
  pools: { P: { m: 0.5 } },
});

describe('relatives of a queen', () => {
  it('are all her possible dams upwards, each once with the fewest steps', () => {
    expect(names(ancestors(registryGraph(TWO_LINES), queenKey('x')))).toEqual(['D2', 'a3', 'b2', 'c1']);
  });

  it('are all her possible descent downwards', () => {
    expect(names(descent(registryGraph(TWO_LINES), queenKey('D')))).toEqual(['c1', 'e1', 'x2']);
  });

  it('leave drones out unless they are asked for', () => {
    expect(names(ancestors(DRONES, queenKey('g')))).toEqual(['d1']);
    expect(names(descent(DRONES, queenKey('m')))).toEqual([]);
  });

  it('include the mothers of drones met in a pool or by name when drones are followed', () => {
    expect(names(ancestors(DRONES, queenKey('g'), { drones: true }))).toEqual(['d1', 'm1']);
    expect(names(ancestors(DRONES, queenKey('h'), { drones: true }))).toEqual(['v1', 'w1']);
    expect(names(descent(DRONES, queenKey('m'), { drones: true }))).toEqual(['g1']);
    expect(names(descent(DRONES, queenKey('w'), { drones: true }))).toEqual(['h1']);
  });

  it('never hold the queen who met the drones, only her daughters', () => {
    expect(names(descent(DRONES, queenKey('m'), { drones: true }))).not.toContain('d1');
  });

  it('are found through 100,000 generations without running out of stack', () => {
    const count = 100_000;
    const graph = registryGraph({
      queens: Array.from({ length: count }, (_, i) => ({
        id: String(i),
        dams: i === 0 ? {} : { [String(i - 1)]: 1 },
      })),
    });
    expect(ancestors(graph, queenKey(String(count - 1)))).toHaveLength(count - 1);
    expect(descent(graph, queenKey('0')).at(-1)).toEqual({
      key: queenKey(String(count - 1)),
      generations: count - 1,
    });
  });
});
