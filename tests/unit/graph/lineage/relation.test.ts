import { describe, expect, it } from 'vitest';
import { nearestCommonDam, queenKey, relation } from '../../../../graph/lineage/index.ts';
import { registryGraph, TWO_LINES } from '../../../helpers/registry-graphs.ts';

/**
 *   f -- a -- b -- c        a and u are sisters out of one split; v, c and d are deeper
 *   |-- u -- v -- w -- z
 *   g (met P) -- p          k (met P) -- q : p and q have fathers out of one pool
 */
const graph = registryGraph({
  queens: [
    { id: 'f' },
    { id: 'a', dams: { f: 1 }, making: 'm' },
    { id: 'b', dams: { a: 1 } },
    { id: 'c', dams: { b: 0.6, f: 0.4 } },
    { id: 'u', dams: { f: 1 }, making: 'm' },
    { id: 'v', dams: { u: 1 } },
    { id: 'w', dams: { v: 1 } },
    { id: 'z', dams: { w: 1 } },
    { id: 'g', met: { P: 1 } },
    { id: 'p', dams: { g: 1 } },
    { id: 'k', met: { P: 1 } },
    { id: 'q', dams: { k: 1 } },
  ],
  pools: { P: {} },
  makings: { m: { how: 'split' } },
});
const code = (first: string, second: string): string =>
  relation(graph, queenKey(first), queenKey(second)).code;

describe('the relation of two queens', () => {
  it.each([
    ['a', 'a', 'self'],
    ['f', 'a', 'dam'],
    ['a', 'f', 'daughter'],
    ['f', 'b', 'granddam'],
    ['b', 'f', 'granddaughter'],
    ['f', 'z', 'ancestor'],
    ['z', 'f', 'descendant'],
    ['a', 'u', 'sister'],
    ['a', 'v', 'aunt'],
    ['v', 'a', 'niece'],
    ['b', 'v', 'cousin'],
    ['b', 'w', 'common-dam'],
    ['p', 'q', 'drone-side'],
    ['a', 'p', 'none'],
  ])('of %s to %s is %s', (first, second, expected) => {
    expect(code(first, second)).toBe(expected);
  });

  it('says whether sisters came out of the same split', () => {
    expect(relation(graph, queenKey('a'), queenKey('u')).sameMaking).toBe(true);
    expect(relation(graph, queenKey('b'), queenKey('v')).sameMaking).toBe(false);
  });

  it('names the pool that the dams of both met', () => {
    expect(relation(graph, queenKey('p'), queenKey('q')).sharedDroneSources).toEqual(['pool:P']);
  });

  it('carries the probability of uncertain steps on both sides', () => {
    const between = relation(graph, queenKey('c'), queenKey('v'));
    expect(between).toMatchObject({
      code: 'common-dam',
      commonDam: queenKey('f'),
      fromFirst: 3,
      fromSecond: 2,
    });
    expect(between.probability).toBeCloseTo(0.6, 12);
  });

  it('turned round swaps the steps and keeps the common dam', () => {
    expect(nearestCommonDam(graph, queenKey('w'), queenKey('b'))).toEqual({
      key: queenKey('f'),
      fromFirst: 3,
      fromSecond: 2,
      probability: 1,
    });
    expect(nearestCommonDam(registryGraph(TWO_LINES), queenKey('n'), queenKey('a'))).toBeUndefined();
  });
});
