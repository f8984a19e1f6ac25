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

describe('the compiled pedigree against a dense tabular A', () => {
  it('has the same relationship between all nodes, by column and by pair', () => {
    fc.assert(
      fc.property(seeds, sizes, (seed, size) => {
        const input = randomPedigree(seed, size);
        const pedigree = compiled(input);
        const dense = denseRelationship(input);
        const nodes = nodesByName(pedigree);
        expect([...nodes.keys()].sort()).toEqual([...dense.names].sort());
        let worst = 0;
        for (const [name, node] of nodes) {
          const column = kinshipColumn(pedigree, node);
          worst = Math.max(worst, Math.abs(pedigree.diagonal[node]! - dense.at(name, name)));
          for (const [other, otherNode] of nodes) {
            const wanted = dense.at(name, other) / 2;
            worst = Math.max(worst, Math.abs(column[otherNode]! - wanted));
            worst = Math.max(worst, Math.abs(kinship(pedigree, node, otherNode) - wanted));
          }
        }
        expect(worst).toBeLessThan(ROUNDING);
      }),
      { numRuns: 150, seed: 11 },
    );
  });
});
