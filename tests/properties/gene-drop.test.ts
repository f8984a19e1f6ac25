import { describe, expect, it } from 'vitest';
import { dropPlan } from '../../graph/alleles/drop-plan.ts';
import { geneDrop } from '../../graph/alleles/gene-drop.ts';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import { kinshipBlock } from '../../graph/kinship/sweeps.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';

/** A random pedigree whose backgrounds are unrelated, since dropping tells every background gene apart. */
function unrelatedPedigree(seed: number): Pedigree {
  const input = randomPedigree(seed);
  const compiled = compilePedigree({
    ...input,
    backgrounds: input.backgrounds.map(({ id }) => ({ id, kinship: 0 })),
  });
  if (!compiled.ok) throw new Error('The random pedigree does not compile.');
  return compiled.pedigree;
}

const ALL_UNLIKE = new Map([
  ['local', { count: Infinity }],
  ['bought', { count: Infinity }],
]);
const SIX = new Map([
  ['local', { count: 6 }],
  ['bought', { frequencies: [0.4, 0.3, 0.2, 0.1] }],
]);
const HISTORIES = 20_000;

describe('gene dropping', () => {
  it.each([11, 12, 13, 14, 15, 16])(
    'without selection makes two gametes alike as often as kinship says (pedigree %i)',
    (seed) => {
      const pedigree = unrelatedPedigree(seed);
      const nodes = Int32Array.from([
        ...pedigree.queenNode,
        ...pedigree.poolNode.values(),
        ...pedigree.droneNode.values(),
      ]);
      const dropped = geneDrop(dropPlan(pedigree, nodes, ALL_UNLIKE), randomGenerator(seed), {
        viable: false,
      });
      const alike = new Int32Array(nodes.length ** 2);
      const gametes = new Int32Array(nodes.length);
      const others = new Int32Array(nodes.length);
      for (let history = 0; history < HISTORIES; history++) {
        dropped.drop();
        nodes.forEach((node, k) => {
          gametes[k] = dropped.gamete(node);
          others[k] = dropped.gamete(node);
        });
        for (let a = 0; a < nodes.length; a++) {
          for (let b = 0; b < nodes.length; b++)
            if (gametes[a] === others[b]) alike[a * nodes.length + b]! += 1;
        }
      }
      const block = kinshipBlock(pedigree, nodes);
      block.forEach((kinship, pair) => {
        const error = Math.sqrt((kinship * (1 - kinship)) / HISTORIES);
        // About 400 pairs in each of 6 pedigrees: 5 standard errors are passed by chance once in a thousand runs.
        expect(Math.abs(alike[pair]! / HISTORIES - kinship)).toBeLessThan(5 * error + 1e-12);
      });
    },
  );

  it.each([21, 22, 23])('with selection never makes a homozygous queen (pedigree %i)', (seed) => {
    const pedigree = unrelatedPedigree(seed);
    const dropped = geneDrop(dropPlan(pedigree, pedigree.queenNode, SIX), randomGenerator(seed));
    for (let history = 0; history < 500; history++) {
      dropped.drop();
      for (const node of pedigree.queenNode) expect(dropped.first[node]).not.toBe(dropped.second[node]);
    }
  });
});
