import { describe, expect, it } from 'vitest';
import { kinship } from '../../graph/kinship/sweeps.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';
import { inventedRegistry, type Meeting, registryShape } from '../bench/registries.ts';
import { compiled } from '../helpers/compiled.ts';

/** Sums of some thousand products of numbers of size one at most. */
const ROUNDING = 1e-12;

describe('in a registry of thousands', () => {
  it.each([
    ['pool', 6_000, 50],
    ['neighbours', 1_500, 15],
    ['strangers', 1_000, 20],
  ] as const)(
    'with matings by %s, inbreeding by waves of columns is the kinship of dam and mates',
    (meeting: Meeting, queens, droneMothers) => {
      const input = inventedRegistry(registryShape(queens, { meeting, droneMothers, breeders: 0.3 }), 3);
      const pedigree = compiled(input);
      const random = randomGenerator(4);
      let inbred = 0;
      for (let k = 0; k < 150; k++) {
        const queen = random.integer(queens);
        const mates = pedigree.matesNode[queen]!;
        const withMates = 2 * kinship(pedigree, pedigree.queenNode[queen]!, mates);
        expect(Math.abs(pedigree.relationToMates[queen]! - withMates)).toBeLessThan(ROUNDING);
        const dam = input.queens[queen]!.dams[0];
        if (!dam) continue;
        expect(pedigree.inbreeding[queen]).toBe(
          pedigree.relationToMates[pedigree.queenIndex.get(dam.of)!]! / 2,
        );
        if (pedigree.inbreeding[queen]! > 0.03) inbred++;
      }
      expect(inbred).toBeGreaterThan(50);
    },
  );

  it('has diagonals that are the squares of columns', () => {
    const pedigree = compiled(inventedRegistry(registryShape(4_000), 5));
    const random = randomGenerator(6);
    for (let k = 0; k < 60; k++) {
      const node = random.integer(pedigree.size);
      const trace = new Float64Array(node + 1);
      trace[node] = 1;
      let square = 0;
      for (let at = node; at >= 0; at--) {
        square += trace[at]! ** 2 * pedigree.mendelian[at]!;
        for (let e = pedigree.parentStart[at]!; e < pedigree.parentStart[at + 1]!; e++) {
          trace[pedigree.parent[e]!]! += pedigree.coefficient[e]! * trace[at]!;
        }
      }
      expect(Math.abs(square - pedigree.diagonal[node]!)).toBeLessThan(ROUNDING);
    }
  });
});
