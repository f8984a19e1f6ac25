/** Compiles facts of a pedigree for a test, and reads figures by id. */
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import { pedigreeProblemText } from '../../graph/kinship/problems.ts';
import { kinship } from '../../graph/kinship/sweeps.ts';

export function compiled(input: PedigreeInput): Pedigree {
  const result = compilePedigree(input);
  if (!result.ok) throw new Error(result.problems.map(pedigreeProblemText).join('\n'));
  return result.pedigree;
}

/** Node of a queen or a single drone. */
export function nodeOf(pedigree: Pedigree, id: string): number {
  const queen = pedigree.queenIndex.get(id);
  const node = queen === undefined ? pedigree.droneNode.get(id) : pedigree.queenNode[queen];
  if (node === undefined) throw new Error(`No queen and no drone '${id}' in this test's pedigree.`);
  return node;
}

export function kinshipOf(pedigree: Pedigree, a: string, b: string): number {
  return kinship(pedigree, nodeOf(pedigree, a), nodeOf(pedigree, b));
}

export function inbreedingById(pedigree: Pedigree, id: string): number {
  const queen = pedigree.queenIndex.get(id);
  if (queen === undefined) throw new Error(`No queen '${id}' in this test's pedigree.`);
  return pedigree.inbreeding[queen]!;
}
