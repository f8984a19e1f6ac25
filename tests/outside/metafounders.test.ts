/**
 * Backgrounds as metafounders: Legarra, Christensen, Vitezica, Aguilar & Misztal 2015, Ancestral relationships using
 * metafounders, Genetics 200:455 (identities from memory, not re-read). With gamma = A of a population with itself, two
 * founders out of it have A = gamma, one with herself 1 + gamma/2, and a diploid offspring of two unrelated-by-record
 * founders keeps both. Here gamma = 2 theta.
 */
import { describe, expect, it } from 'vitest';
import { compiled, inbreedingById, kinshipOf, nodeOf } from '../helpers/compiled.ts';
import { BASE, daughter, founder, pedigreeOf, sonsOf, unrelatedDrones } from '../helpers/pedigrees.ts';

const GAMMA = 0.2;
const THETA = GAMMA / 2;

describe('founders out of a population with gamma = 0.2', () => {
  const countless = Number.POSITIVE_INFINITY;
  const pedigree = compiled(
    pedigreeOf(
      [
        founder('A', sonsOf({ B: 1 }), countless),
        founder('B', unrelatedDrones, countless),
        daughter('C', 'A'),
        daughter('E', 'B'),
      ],
      {},
      THETA,
    ),
  );

  it('have A = 1.1 with themselves and 0.2 with each other', () => {
    expect(2 * kinshipOf(pedigree, 'A', 'A')).toBeCloseTo(1.1, 14);
    expect(2 * kinshipOf(pedigree, 'A', 'B')).toBeCloseTo(0.2, 14);
  });

  it('have A = 0.65 with their offspring', () => {
    expect(2 * kinshipOf(pedigree, 'A', 'C')).toBeCloseTo((1.1 + 0.2) / 2, 14);
    expect(2 * kinshipOf(pedigree, 'B', 'C')).toBeCloseTo((1.1 + 0.2) / 2, 14);
  });

  it('and their offspring are inbred by gamma/2, by recorded and by unrecorded drones alike', () => {
    for (const id of ['A', 'B', 'C', 'E']) expect(inbreedingById(pedigree, id)).toBeCloseTo(GAMMA / 2, 14);
  });

  it('have the population itself as their parent: A = gamma, Mendelian variance 1 - gamma/2', () => {
    const background = pedigree.backgroundNode.get(BASE)!;
    expect(pedigree.diagonal[background]).toBeCloseTo(GAMMA, 14);
    expect(pedigree.mendelian[nodeOf(pedigree, 'A')]).toBeCloseTo(1 - GAMMA / 2, 14);
  });
});

describe('founders out of two populations', () => {
  it('are unrelated', () => {
    const input = pedigreeOf([founder('A'), { ...founder('B'), background: 'other' }], {}, THETA);
    const pedigree = compiled({
      ...input,
      backgrounds: [...input.backgrounds, { id: 'other', kinship: 0.3 }],
    });
    expect(kinshipOf(pedigree, 'A', 'B')).toBe(0);
  });
});
