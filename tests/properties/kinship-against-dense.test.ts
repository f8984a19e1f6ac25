import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import { kinship, kinshipBlock, kinshipColumn } from '../../graph/kinship/sweeps.ts';
import { denseRelationship } from '../helpers/dense-relationship.ts';
import { randomPedigree, reordered } from '../helpers/random-pedigrees.ts';

/** Sums of products of a few dozen numbers of size one. */
const ROUNDING = 1e-12;

function compiled(input: PedigreeInput): Pedigree {
  const result = compilePedigree(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.pedigree;
}

/** Names of the dense twin with the node of each. */
function nodesByName(pedigree: Pedigree): Map<string, number> {
  const nodes = new Map<string, number>();
  pedigree.queenIds.forEach((id, queen) => {
    nodes.set(`queen:${id}`, pedigree.queenNode[queen]!);
    if (pedigree.matesNode[queen]! >= 0) nodes.set(`mates:${id}`, pedigree.matesNode[queen]!);
  });
  for (const [id, node] of pedigree.poolNode) nodes.set(`pool:${id}`, node);
  for (const [id, node] of pedigree.droneNode) nodes.set(`drone:${id}`, node);
  for (const [id, node] of pedigree.backgroundNode) nodes.set(`background:${id}`, node);
  return nodes;
}

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const sizes = fc.integer({ min: 1, max: 40 });

/** Greatest difference of any figure from the dense twin. */
function worstDifference(input: PedigreeInput): number {
  const pedigree = compiled(input);
  const dense = denseRelationship(input);
  const nodes = nodesByName(pedigree);
  expect([...nodes.keys()].sort()).toEqual([...dense.names].sort());
  let worst = 0;
  const compare = (found: number, wanted: number) => {
    worst = Math.max(worst, Math.abs(found - wanted));
  };
  for (const [name, node] of nodes) {
    const column = kinshipColumn(pedigree, node);
    compare(pedigree.diagonal[node]!, dense.at(name, name));
    for (const [other, otherNode] of nodes) {
      compare(column[otherNode]!, dense.at(name, other) / 2);
      compare(kinship(pedigree, node, otherNode), dense.at(name, other) / 2);
    }
  }
  pedigree.queenIds.forEach((id, queen) => {
    compare(pedigree.inbreeding[queen]!, dense.at(`queen:${id}`, `queen:${id}`) - 1);
    if (pedigree.matesNode[queen]! < 0) expect(pedigree.relationToMates[queen]).toBeNaN();
    else compare(pedigree.relationToMates[queen]!, dense.at(`queen:${id}`, `mates:${id}`));
  });
  return worst;
}

describe('the compiled pedigree against a dense tabular A', () => {
  it('has the same relationship between all nodes, by column and by pair, and the same inbreeding', () => {
    fc.assert(
      fc.property(seeds, sizes, (seed, size) => {
        expect(worstDifference(randomPedigree(seed, size))).toBeLessThan(ROUNDING);
      }),
      { numRuns: 100, seed: 11 },
    );
  });

  it('has a block of kinships equal to the columns', () => {
    fc.assert(
      fc.property(seeds, sizes, (seed, size) => {
        const pedigree = compiled(randomPedigree(seed, size));
        const nodes = pedigree.queenNode.filter((_, queen) => queen % 2 === 0);
        const block = kinshipBlock(pedigree, nodes);
        nodes.forEach((node, a) => {
          const column = kinshipColumn(pedigree, node);
          nodes.forEach((other, b) => {
            expect(Math.abs(block[a * nodes.length + b]! - column[other]!)).toBeLessThan(ROUNDING);
          });
        });
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  it('does not change when the rows of the input are put in another order', () => {
    fc.assert(
      fc.property(seeds, sizes, (seed, size) => {
        const input = randomPedigree(seed, size);
        const first = compiled(input);
        const second = compiled(reordered(input, seed + 1));
        for (const [id, queen] of first.queenIndex) {
          const other = second.queenIndex.get(id)!;
          expect(Math.abs(first.inbreeding[queen]! - second.inbreeding[other]!)).toBeLessThan(ROUNDING);
          const a = kinshipColumn(first, first.queenNode[queen]!);
          const b = kinshipColumn(second, second.queenNode[other]!);
          for (const [relative, node] of first.queenIndex) {
            const there = b[second.queenNode[second.queenIndex.get(relative)!]!]!;
            expect(Math.abs(a[first.queenNode[node]!]! - there)).toBeLessThan(ROUNDING);
          }
        }
      }),
      { numRuns: 40, seed: 13 },
    );
  });
});
