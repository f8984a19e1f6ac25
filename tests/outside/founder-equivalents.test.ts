/**
 * Founder equivalents and founder genome equivalents: Lacy 1989, Analysis of founder representation in pedigrees, Zoo
 * Biol. 8:111 (abstract read): the number of equally contributing founders that would give the same diversity, the
 * second "with no random loss of founder alleles". In formulas f_e = 1/sum p_i^2 and f_g = 1/sum (p_i^2/r_i), r_i the
 * retained share of founder i's genes (from memory, not re-read). No worked table of the paper was at hand: retained
 * shares are counted by hand below, from the two genes of each founder.
 */
import { describe, expect, it } from 'vitest';
import { founderNumbers } from '../../graph/kinship/founder-numbers.ts';
import { meanKinship } from '../../graph/kinship/mean-kinship.ts';
import { compiled } from '../helpers/compiled.ts';
import { daughter, founder, oneDrone, pedigreeOf } from '../helpers/pedigrees.ts';

const living = (pedigree: ReturnType<typeof compiled>, ids: readonly string[]): number[] =>
  ids.map((id) => pedigree.queenIndex.get(id)!);

describe('founder equivalents', () => {
  it('of n unrelated founders alive are n, by both counts, and n lines', () => {
    const pedigree = compiled(pedigreeOf(['A', 'B', 'C', 'D', 'E'].map((id) => founder(id))));
    const found = founderNumbers(pedigree, living(pedigree, ['A', 'B', 'C', 'D', 'E']));
    expect(found.founders).toBeCloseTo(5, 12);
    expect(found.founderGenomes).toBeCloseTo(5, 12);
    expect(found.lines).toBeCloseTo(5, 12);
  });

  it('of unequal founders are 1/sum p^2: three of A and one of B make 1/(9/16 + 1/16) = 1.6', () => {
    /** Daughters by single drones of one queen each of S1 .. S4, so that half of each is her dam's. */
    const fathers = ['1', '2', '3', '4'];
    const queens = [
      ...fathers.map((k) => founder(`S${k}`)),
      founder('A'),
      founder('B'),
      ...fathers.map((k) => ({ ...daughter(`d${k}`, k === '4' ? 'B' : 'A'), father: oneDrone(`x${k}`) })),
    ];
    const pedigree = compiled(pedigreeOf(queens, Object.fromEntries(fathers.map((k) => [`x${k}`, `S${k}`]))));
    const found = founderNumbers(pedigree, living(pedigree, ['d1', 'd2', 'd3', 'd4']));
    /** p: 3/8 of A, 1/8 of B, 1/8 of each of the four drone mothers. */
    expect(found.founders).toBeCloseTo(1 / (9 / 64 + 1 / 64 + 4 / 64), 12);
    expect(found.lines).toBeCloseTo(1.6, 12);
    /**
     * Genes kept: a drone passes his one gene, so each drone mother keeps 1 of 2; B keeps 1 of 2 in one daughter;
     * of A's two genes three daughters hold both with chance 3/4, but f_g weighs how unequally: two draws from A's
     * share are one gene with chance 1/3 + 2/3 * 1/2 = 2/3, worth 1.5 genes, that is r = 3/4.
     */
    expect(found.founderGenomes).toBeCloseTo(1 / (9 / 64 / 0.75 + 1 / 64 / 0.5 + (4 * (1 / 64)) / 0.5), 12);
  });

  it('in founder genomes are 1/(2 mean kinship)', () => {
    const pedigree = compiled(
      pedigreeOf([founder('S'), founder('A', oneDrone('d')), daughter('B', 'A'), daughter('C', 'A')], {
        d: 'S',
      }),
    );
    const queens = living(pedigree, ['B', 'C']);
    /** Super-sisters: kinships 1/2, 3/8, 3/8, 1/2. */
    expect(meanKinship(pedigree, queens).ofSet).toBeCloseTo(7 / 16, 12);
    expect(founderNumbers(pedigree, queens).founderGenomes).toBeCloseTo(8 / 7, 12);
  });
});
