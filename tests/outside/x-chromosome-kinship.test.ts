/**
 * Kinship on the X chromosome follows the rules of bees: a male has one parent that counts and one gene, a female two.
 * Data: package kinship2 1.9.7, kinship(..., chrtype = "X"), R 4.2.2 (tests/outside/data/README.md): two strongly
 * inbred pedigrees. Males are single known drones here; a male without a dam has a founder of his own for one.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { PedigreeInput, QueenInput } from '../../graph/kinship/pedigree-input.ts';
import { compiled, inbreedingById, kinshipOf } from '../helpers/compiled.ts';
import { daughter, founder, oneDrone, pedigreeOf } from '../helpers/pedigrees.ts';

interface Individual {
  readonly id: string;
  readonly sex: 'F' | 'M';
  readonly dam: string | null;
  readonly sire: string | null;
}

interface KinshipData {
  readonly individuals: readonly Individual[];
  readonly inbreeding: Readonly<Record<string, number>>;
  readonly matrix: readonly (readonly number[])[];
}

/** The data carry all digits of binary fractions. */
const EXACT = 15;

const read = (name: string): KinshipData =>
  JSON.parse(readFileSync(join(import.meta.dirname, 'data', name), 'utf8')) as KinshipData;

function beesOf({ individuals }: KinshipData): PedigreeInput {
  const queens: QueenInput[] = [];
  const drones: Record<string, string> = {};
  for (const { id, sex, dam, sire } of individuals) {
    if (sex === 'F' && dam && sire) queens.push({ ...daughter(id, dam), father: oneDrone(sire) });
    else if (sex === 'F') queens.push(founder(id));
    else {
      if (!dam) queens.push(founder(`mother of ${id}`));
      drones[id] = dam ?? `mother of ${id}`;
    }
  }
  return pedigreeOf(queens, drones);
}

describe.each(['x-kinship-1.json', 'x-kinship-2.json'])('X-chromosome kinship, %s', (name) => {
  const data = read(name);
  const pedigree = compiled(beesOf(data));

  it('is the kinship of queens and drones, every pair', () => {
    data.individuals.forEach(({ id: a }, row) => {
      data.individuals.forEach(({ id: b }, column) => {
        expect(kinshipOf(pedigree, a, b), `${a}, ${b}`).toBeCloseTo(data.matrix[row]![column]!, EXACT);
      });
    });
  });

  it('gives the inbreeding of the queens', () => {
    const queens = data.individuals.filter(({ sex }) => sex === 'F');
    expect(queens.length).toBeGreaterThan(10);
    for (const { id } of queens)
      expect(inbreedingById(pedigree, id)).toBeCloseTo(data.inbreeding[id]!, EXACT);
  });
});
