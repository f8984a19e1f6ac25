import { describe, expect, it } from 'vitest';
import {
  descentTable,
  founderShares,
  geneShareTable,
  groupFounderShares,
  maternalShareTable,
  queenKey,
} from '../../../../graph/lineage/index.ts';
import { registryGraph, TWO_LINES } from '../../../helpers/registry-graphs.ts';

describe('founder shares', () => {
  it('by dams alone are the probabilities that the dam line ends in each founder', () => {
    const table = maternalShareTable(descentTable(registryGraph(TWO_LINES)));
    const { shares, unrecorded } = founderShares(table, queenKey('x'));
    expect(shares.map(({ founder }) => founder)).toEqual([queenKey('a'), queenKey('D')]);
    expect(shares[0]!.share).toBeCloseTo(0.7, 12);
    expect(unrecorded).toBeCloseTo(0, 12);
  });

  it('with drones give half to the dam and half to what she met, the rest of a pool unrecorded', () => {
    const graph = registryGraph({
      queens: [
        { id: 'm' },
        { id: 'd', met: { P: 1 } },
        { id: 'g', dams: { d: 1 }, met: { m: 1 } },
        { id: 'h', dams: { g: 1 } },
      ],
      pools: { P: { m: 0.5 } },
    });
    const table = geneShareTable(graph, descentTable(graph));
    const g = founderShares(table, queenKey('g'));
    expect(g.shares).toEqual([
      { founder: queenKey('d'), share: 0.5 },
      { founder: queenKey('m'), share: 0.25 },
    ]);
    expect(g.unrecorded).toBeCloseTo(0.25, 12);
    const h = founderShares(table, queenKey('h'));
    expect(h.shares).toEqual([
      { founder: queenKey('m'), share: 0.625 },
      { founder: queenKey('d'), share: 0.25 },
    ]);
  });

  it('of a group are the weighted mean of those of its queens', () => {
    const graph = registryGraph(TWO_LINES);
    const table = maternalShareTable(descentTable(graph));
    const weights = new Map([
      [queenKey('c'), 1],
      [queenKey('n'), 3],
    ]);
    const { shares } = groupFounderShares(table, weights);
    expect(Object.fromEntries(shares.map((s) => [s.founder, s.share]))).toEqual({
      [queenKey('n')]: 0.75,
      [queenKey('a')]: expect.closeTo(0.175, 12) as number,
      [queenKey('D')]: expect.closeTo(0.075, 12) as number,
    });
  });

  it('of a queen nobody knows are refused', () => {
    const table = maternalShareTable(descentTable(registryGraph(TWO_LINES)));
    expect(() => founderShares(table, queenKey('nobody'))).toThrow(/queen:nobody is no queen/);
  });
});
