/**
 * Kinship of the daughters to come of each candidate: with the drones they will meet, and with one another.
 *
 *   daughters of D: H_D = D/2 + M_D/2   (M_D: the drones D met)
 *   with drones S:      A[H_D][S]/2 = (A[D][S] + A[M_D][S])/4      = inbreeding of the brood of her daughters
 *   with one another:   A[H_D][H_E]/2, for D = E two different daughters: (A[D][D] + A[M][M] + 2 A[D][M])/8
 *
 * For the choice of contributions: the first is the `poolKinship` of each candidate; the second may stand for the
 * kinship of the candidates themselves and then counts the drones that they met as well.
 * Source: the structural nodes of the pedigree (worker groups). Cost: one product with A for the first, one a
 * candidate for the second. A candidate without a mating throws: she has no daughters to come.
 */
import { type DroneSource, geneNodes } from '../alleles/index.ts';
import type { Pedigree } from '../kinship/pedigree.ts';
import { multiplyA } from '../kinship/sweeps.ts';

/** Kinship (0..1) of a daughter of each queen (ids) with the drones. */
export function daughterPoolKinship(
  pedigree: Pedigree,
  queens: readonly string[],
  drones: DroneSource,
): Float64Array {
  const column = halfColumn(pedigree, drones);
  return Float64Array.from(queens, (queen) => read(column, geneNodes(pedigree, { daughterOf: queen })));
}

/** Kinship (0..1) of two daughters, one of each pair of queens, row by row; on the diagonal two sisters. */
export function daughterKinshipBlock(pedigree: Pedigree, queens: readonly string[]): Float64Array {
  const groups = queens.map((queen) => geneNodes(pedigree, { daughterOf: queen }));
  const block = new Float64Array(queens.length ** 2);
  groups.forEach((group, row) => {
    const column = halfColumn(pedigree, group);
    groups.forEach((other, k) => {
      block[row * queens.length + k] = read(column, other);
    });
  });
  return block;
}

function halfColumn(pedigree: Pedigree, { nodes, weights }: DroneSource): Float64Array {
  const column = new Float64Array(pedigree.size);
  nodes.forEach((node, k) => {
    column[node]! += weights[k]! / 2;
  });
  return multiplyA(pedigree, column, column);
}

function read(column: Float64Array, { nodes, weights }: DroneSource): number {
  return nodes.reduce((sum, node, k) => sum + weights[k]! * column[node]!, 0);
}
