import { describe, expect, it } from 'vitest';
import {
  forwardSweep,
  kinshipBlock,
  kinshipColumn,
  multiplyA,
  transposeSweep,
} from '../../../../graph/kinship/sweeps.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';
import { compiled } from '../../../helpers/compiled.ts';
import { denseRelationship } from '../../../helpers/dense-relationship.ts';
import { randomPedigree } from '../../../helpers/random-pedigrees.ts';

const SEEDS = [1, 2, 3, 4, 5, 6];
const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, k) => sum + value * b[k]!, 0);

function randomVector(size: number, seed: number): Float64Array {
  const random = randomGenerator(seed);
  return Float64Array.from({ length: size }, () => random.normal());
}

describe.each(SEEDS)('the sweeps over random pedigree %i', (seed) => {
  const input = randomPedigree(seed * 77, 20);
  const pedigree = compiled(input);
  const v = randomVector(pedigree.size, seed);
  const w = randomVector(pedigree.size, seed + 100);

  it("are each other's transpose: (T v)'w = v'(T'w)", () => {
    expect(dot(forwardSweep(pedigree, v), w)).toBeCloseTo(dot(v, transposeSweep(pedigree, w)), 10);
  });

  it('solve T^-1 = I - C: T v less its parents is v again', () => {
    const swept = forwardSweep(pedigree, v);
    for (let node = 0; node < pedigree.size; node++) {
      let rest = swept[node]!;
      for (let k = pedigree.parentStart[node]!; k < pedigree.parentStart[node + 1]!; k++) {
        rest -= pedigree.coefficient[k]! * swept[pedigree.parent[k]!]!;
      }
      expect(rest).toBeCloseTo(v[node]!, 12);
    }
  });

  it("factor the dense matrix: T D T' = A, with T written out", () => {
    const unit = (node: number) =>
      Float64Array.from({ length: pedigree.size }, (_, k) => (k === node ? 1 : 0));
    const columns = Array.from({ length: pedigree.size }, (_, node) => forwardSweep(pedigree, unit(node)));
    const dense = denseRelationship(input);
    pedigree.queenIds.forEach((a, i) => {
      pedigree.queenIds.forEach((b, j) => {
        const [ni, nj] = [pedigree.queenNode[i]!, pedigree.queenNode[j]!];
        const sum = columns.reduce((total, t, k) => total + t[ni]! * pedigree.mendelian[k]! * t[nj]!, 0);
        expect(sum).toBeCloseTo(dense.at(`queen:${a}`, `queen:${b}`), 12);
      });
    });
  });

  it("make v'A w = w'A v, and v'A v not negative", () => {
    expect(dot(v, multiplyA(pedigree, w))).toBeCloseTo(dot(w, multiplyA(pedigree, v)), 9);
    expect(dot(v, multiplyA(pedigree, v))).toBeGreaterThanOrEqual(0);
  });

  it('may write over what they read', () => {
    const there = multiplyA(pedigree, v);
    const here = v.slice();
    expect(multiplyA(pedigree, here, here)).toBe(here);
    expect(here).toEqual(there);
  });

  it('give the diagonal its half as the kinship of a node with itself', () => {
    for (let node = 0; node < pedigree.size; node++) {
      expect(2 * kinshipColumn(pedigree, node)[node]!).toBeCloseTo(pedigree.diagonal[node]!, 12);
    }
  });

  it('give a block for nodes in any order, and none for none', () => {
    const nodes = [...pedigree.queenNode].reverse();
    const block = kinshipBlock(pedigree, nodes);
    expect(block[1]).toBeCloseTo(kinshipColumn(pedigree, nodes[0]!)[nodes[1]!]!, 12);
    expect(kinshipBlock(pedigree, [])).toHaveLength(0);
  });
});
