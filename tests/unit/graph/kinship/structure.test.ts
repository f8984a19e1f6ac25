import { describe, expect, it } from 'vitest';
import { founderNumbers } from '../../../../graph/kinship/founder-numbers.ts';
import { broodInbreedingOf, inbreedingOf } from '../../../../graph/kinship/inbreeding.ts';
import { meanKinship } from '../../../../graph/kinship/mean-kinship.ts';
import { multiplyA } from '../../../../graph/kinship/sweeps.ts';
import {
  addWorkerGroup,
  workerGroupDiagonal,
  workerGroupValue,
} from '../../../../graph/kinship/worker-group.ts';
import { compiled, kinshipOf } from '../../../helpers/compiled.ts';
import {
  daughter,
  founder,
  pedigreeOf,
  sonsOf,
  superSisters,
  unrelatedDrones,
} from '../../../helpers/pedigrees.ts';
import { randomPedigree } from '../../../helpers/random-pedigrees.ts';

describe('brood inbreeding', () => {
  it('is the inbreeding a daughter has', () => {
    const queens = [founder('A', unrelatedDrones), daughter('B', 'A', sonsOf({ A: 1 })), daughter('C', 'B')];
    const pedigree = compiled(pedigreeOf(queens));
    expect(broodInbreedingOf(pedigree, 1)).toBe(inbreedingOf(pedigree, 2));
    expect(broodInbreedingOf(pedigree, 1)).toBe(1 / 4);
  });

  it('is unknown, not 0, while nothing is known of her mating', () => {
    const pedigree = compiled(pedigreeOf([founder('A')]));
    expect(broodInbreedingOf(pedigree, 0)).toBeUndefined();
    expect(workerGroupDiagonal(pedigree, 0)).toBeUndefined();
    expect(workerGroupValue(pedigree, 0, new Float64Array(pedigree.size))).toBeUndefined();
    expect(() => addWorkerGroup(pedigree, 0, 1, new Float64Array(pedigree.size))).toThrow('no mating');
  });
});

describe("a colony's worker group", () => {
  it('has as diagonal w A w, w being half the queen and half her mates', () => {
    for (let seed = 0; seed < 20; seed++) {
      const pedigree = compiled(randomPedigree(seed, 20));
      pedigree.queenIds.forEach((_, queen) => {
        if (pedigree.matesNode[queen]! < 0) return;
        const w = new Float64Array(pedigree.size);
        addWorkerGroup(pedigree, queen, 1, w);
        const value = workerGroupValue(pedigree, queen, multiplyA(pedigree, w));
        expect(workerGroupDiagonal(pedigree, queen)).toBeCloseTo(value!, 12);
      });
    }
  });
});

describe('the mean kinship of a set', () => {
  it('is the mean of all pairs, each queen with herself included', () => {
    const pedigree = compiled(randomPedigree(8, 12));
    const { ofSet, ofEach } = meanKinship(pedigree, [0, 3, 5]);
    const ids = [0, 3, 5].map((queen) => pedigree.queenIds[queen]!);
    const mean = (a: string) => ids.reduce((sum, b) => sum + kinshipOf(pedigree, a, b), 0) / 3;
    ids.forEach((id, k) => {
      expect(ofEach[k]).toBeCloseTo(mean(id), 12);
    });
    expect(ofSet).toBeCloseTo((mean(ids[0]!) + mean(ids[1]!) + mean(ids[2]!)) / 3, 12);
  });

  it('of no queens is a bug, not a number', () => {
    expect(() => meanKinship(compiled(superSisters), [])).toThrow('no queens');
  });
});

describe('founder numbers', () => {
  it('fall from founders to founder genomes by drift, and never below 1/2', () => {
    for (let seed = 0; seed < 30; seed++) {
      const pedigree = compiled(randomPedigree(seed, 20));
      const living = [...pedigree.queenIds.keys()].slice(-8);
      const { founders, founderGenomes, lines } = founderNumbers(pedigree, living);
      expect(founderGenomes!).toBeLessThanOrEqual(founders! + 1e-12);
      expect(founderGenomes!).toBeGreaterThanOrEqual(0.5);
      expect(founderGenomes!).toBeCloseTo(1 / (2 * meanKinship(pedigree, living).ofSet), 10);
      expect(lines).toBeGreaterThanOrEqual(1 - 1e-12);
    }
  });

  it('count lines by dams alone: many unrelated fathers make no second line', () => {
    const queens = [founder('A', unrelatedDrones), daughter('B', 'A', unrelatedDrones), daughter('C', 'B')];
    expect(founderNumbers(compiled(pedigreeOf(queens)), [1, 2]).lines).toBeCloseTo(1, 12);
  });
});
