/**
 * Diploid pedigrees as a limit of the bees' rules: where every offspring has a father drawn anew from the gametes of
 * one parent (drones of that "queen", countless effective mates), relationships are those of diploid animals.
 *
 * - The six animals of Henderson 1976, as in Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd
 *   ed., Example 2.1 (pedigree and A from memory, not re-read; A recomputed by hand with the tabular method).
 * - A pedigree of 40 by package kinship2 1.9.7, R 4.2.2 (tests/outside/data/README.md).
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import { compiled, inbreedingById, kinshipOf, nodeOf } from '../helpers/compiled.ts';
import { BASE, daughter, founder, pedigreeOf, sonsOf } from '../helpers/pedigrees.ts';

type Animal = readonly [id: string, dam: string | null, sire: string | null];

/** The package's matrix was printed to 12 digits. */
const PRINTED = 11;

const COUNTLESS = Number.POSITIVE_INFINITY;

function diploid(animals: readonly Animal[]): Pedigree {
  const queens = animals.map(([id, dam, sire]) => {
    const [first, second] = dam ? [dam, sire] : [sire, dam];
    if (!first) return founder(id, undefined, COUNTLESS);
    return { ...daughter(id, first, undefined, COUNTLESS), father: sonsOf({ [second ?? BASE]: 1 }) };
  });
  return compiled(pedigreeOf(queens));
}

const TEXTBOOK: readonly Animal[] = [
  ['1', null, null],
  ['2', null, null],
  ['3', '2', '1'],
  ['4', null, '1'],
  ['5', '3', '4'],
  ['6', '2', '5'],
];

const TEXTBOOK_A = [
  [1, 0, 1 / 2, 1 / 2, 1 / 2, 1 / 4],
  [0, 1, 1 / 2, 0, 1 / 4, 5 / 8],
  [1 / 2, 1 / 2, 1, 1 / 4, 5 / 8, 9 / 16],
  [1 / 2, 0, 1 / 4, 1, 5 / 8, 5 / 16],
  [1 / 2, 1 / 4, 5 / 8, 5 / 8, 9 / 8, 11 / 16],
  [1 / 4, 5 / 8, 9 / 16, 5 / 16, 11 / 16, 9 / 8],
];
const TEXTBOOK_D = [1, 1, 0.5, 0.75, 0.5, 0.46875];

describe("the textbook's six animals", () => {
  const pedigree = diploid(TEXTBOOK);

  it('have its relationship matrix', () => {
    TEXTBOOK_A.forEach((row, a) => {
      row.forEach((expected, b) => {
        expect(2 * kinshipOf(pedigree, `${a + 1}`, `${b + 1}`)).toBeCloseTo(expected, 14);
      });
    });
  });

  it('have its Mendelian variances, and inbreeding 1/8 of animals 5 and 6', () => {
    TEXTBOOK_D.forEach((expected, k) => {
      expect(pedigree.mendelian[nodeOf(pedigree, `${k + 1}`)]).toBeCloseTo(expected, 14);
    });
    expect([1, 2, 3, 4, 5, 6].map((id) => inbreedingById(pedigree, `${id}`))).toEqual([
      0, 0, 0, 0, 0.125, 0.125,
    ]);
  });
});

describe('a diploid pedigree of 40 with loops and an unknown father', () => {
  const data = JSON.parse(readFileSync(join(import.meta.dirname, 'data', 'auto-kinship-1.json'), 'utf8')) as {
    readonly individuals: readonly {
      readonly id: string;
      readonly dam: string | null;
      readonly sire: string | null;
    }[];
    readonly matrix: readonly (readonly number[])[];
  };
  const pedigree = diploid(data.individuals.map(({ id, dam, sire }) => [id, dam, sire] as const));

  it('has the kinships of the genetics package, every pair', () => {
    data.individuals.forEach(({ id: a }, row) => {
      data.individuals.forEach(({ id: b }, column) => {
        expect(kinshipOf(pedigree, a, b), `${a}, ${b}`).toBeCloseTo(data.matrix[row]![column]!, PRINTED);
      });
    });
  });
});
