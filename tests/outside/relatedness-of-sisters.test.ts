/**
 * Relatedness of bees as published.
 *
 * - Sisters by one drone 3/4, by unrelated drones 1/4; mother and daughter 1/2: Withrow & Tarpy 2018, Cryptic "royal"
 *   subfamilies in honey bee colonies, PLoS ONE 13:e0199124 (read in its abstract).
 * - Mean relatedness of sisters 1/4 + 1/2 sum p_i^2 = 1/4 + 1/(2 n): Laidlaw & Page 1984, Polyandry in honey bees,
 *   Genetics 108:985 (form of the equation from memory, not re-read).
 * - Drones of several drone mothers: 1/4 + (p1 + p2/2 + p3 f)/2, with p1, p2, p3 the chances that two sisters'
 *   fathers are one drone, two drones of one mother, drones of two mothers of kinship f; the values below follow
 *   from it by hand (derived).
 *
 * Relatedness here is twice the kinship, between females who are not inbred.
 */
import { describe, expect, it } from 'vitest';
import type { PedigreeInput, QueenInput } from '../../graph/kinship/pedigree-input.ts';
import { workerGroupDiagonal } from '../../graph/kinship/worker-group.ts';
import { compiled, kinshipOf } from '../helpers/compiled.ts';
import {
  daughter,
  founder,
  halfSisters,
  oneDrone,
  pedigreeOf,
  sisters,
  sistersByBrothers,
  sonsOf,
  superSisters,
} from '../helpers/pedigrees.ts';

const EXACT = 14;
const relatedness = (input: PedigreeInput, a: string, b: string): number =>
  2 * kinshipOf(compiled(input), a, b);

describe('the relatedness of bees', () => {
  it('of sisters by one drone is 3/4', () => {
    expect(relatedness(superSisters, 'A', 'B')).toBeCloseTo(3 / 4, EXACT);
  });

  it('of sisters by two drones of one mother is 1/2, by drones of unrelated mothers 1/4', () => {
    expect(relatedness(sistersByBrothers, 'A', 'B')).toBeCloseTo(1 / 2, EXACT);
    expect(relatedness(halfSisters, 'A', 'B')).toBeCloseTo(1 / 4, EXACT);
  });

  it('of mother and daughter is 1/2', () => {
    for (const input of [superSisters, sistersByBrothers, halfSisters, sisters(12)]) {
      expect(relatedness(input, 'D', 'A')).toBeCloseTo(1 / 2, EXACT);
    }
  });

  it('of a queen and her own drone is 1/2 as kinship, and of a drone with himself 1', () => {
    const pedigree = compiled(superSisters);
    expect(kinshipOf(pedigree, 'S', 'd')).toBeCloseTo(1 / 2, EXACT);
    expect(kinshipOf(pedigree, 'd', 'd')).toBeCloseTo(1, EXACT);
    expect(kinshipOf(pedigree, 'd', 'A')).toBeCloseTo(1 / 2, EXACT);
  });

  it.each([
    [1, 3 / 4],
    [2, 1 / 2],
    [3, 5 / 12],
    [4, 3 / 8],
    [5, 7 / 20],
    [10, 3 / 10],
    [12, 7 / 24],
    [15, 17 / 60],
    [17, 19 / 68],
    [20, 11 / 40],
    [100, 51 / 200],
  ])('of sisters, on the mean, with %i unrelated drones is 1/4 + 1/(2 n)', (mates, expected) => {
    const pedigree = compiled(sisters(mates));
    expect(2 * kinshipOf(pedigree, 'A', 'B')).toBeCloseTo(expected, EXACT);
    expect(workerGroupDiagonal(pedigree, pedigree.queenIndex.get('D')!)).toBeCloseTo(expected, EXACT);
  });
});

const MOTHERS = ['K', 'L', 'M', 'N'];

/** Sisters A and B out of D, inseminated with three drones of each of four mothers, all used alike. */
function threeDronesOfEach(mothers: readonly QueenInput[], others: PedigreeInput): PedigreeInput {
  const drones = mothers.flatMap(({ id }) => [1, 2, 3].map((k) => ({ id: `${id}${k}`, mother: id })));
  const semen = { kind: 'drones', drones: drones.map(({ id }) => ({ of: id, share: 1 / 12 })) } as const;
  const family = [founder('D', semen), daughter('A', 'D'), daughter('B', 'D')];
  return {
    ...others,
    drones: [...others.drones, ...drones],
    queens: [...others.queens, ...mothers, ...family],
  };
}

describe('the mean relatedness of sisters by twelve drones', () => {
  it('taken at random from the sons of one unrelated queen is 25/48', () => {
    const family = [founder('D', sonsOf({ S: 1 }), 12), daughter('A', 'D'), daughter('B', 'D')];
    expect(relatedness(pedigreeOf([founder('S'), ...family]), 'A', 'B')).toBeCloseTo(25 / 48, EXACT);
  });

  it('of four unrelated mothers, three of each, is 1/3', () => {
    const mothers = MOTHERS.map((id) => founder(id));
    expect(relatedness(threeDronesOfEach(mothers, pedigreeOf([])), 'A', 'B')).toBeCloseTo(1 / 3, EXACT);
  });

  it('of four half-sisters (kinship 1/8) is 73/192', () => {
    const drones = Object.fromEntries(MOTHERS.map((id) => [`father of ${id}`, `S${id}`]));
    const others = pedigreeOf([founder('G'), ...MOTHERS.map((id) => founder(`S${id}`))], drones);
    const mothers = MOTHERS.map((id) => ({ ...daughter(id, 'G'), father: oneDrone(`father of ${id}`) }));
    expect(relatedness(threeDronesOfEach(mothers, others), 'A', 'B')).toBeCloseTo(73 / 192, EXACT);
  });

  it('of four sisters by drones of one mother (kinship 1/4) is 41/96', () => {
    const drones = Object.fromEntries(MOTHERS.map((id) => [`father of ${id}`, 'S']));
    const others = pedigreeOf([founder('G'), founder('S')], drones);
    const mothers = MOTHERS.map((id) => ({ ...daughter(id, 'G'), father: oneDrone(`father of ${id}`) }));
    expect(relatedness(threeDronesOfEach(mothers, others), 'A', 'B')).toBeCloseTo(41 / 96, EXACT);
  });

  it('of four super-sisters (kinship 3/8) is 91/192', () => {
    const others = pedigreeOf([founder('S'), founder('G', oneDrone('d'))], { d: 'S' });
    const mothers = MOTHERS.map((id) => daughter(id, 'G'));
    expect(relatedness(threeDronesOfEach(mothers, others), 'A', 'B')).toBeCloseTo(91 / 192, EXACT);
  });
});
