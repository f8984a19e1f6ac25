/**
 * Inbreeding under regular systems of mating in bees.
 *
 * Crow & Roberts 1950, Inbreeding and homozygosis in bees, Genetics 35:612, and Polhemus, Lush & Rothenbuhler 1950,
 * Mating systems in honey bees, J. Hered. 41:151, treat these systems (from memory; their tables were not found to
 * re-read). The recursions and values below are derived from the haplodiploid rules by hand: with f the kinship,
 *   f(daughter, x) = (f(dam, x) + f(father, x))/2, f(drone, x) = f(his mother, x), F = f(dam, father).
 */
import { describe, expect, it } from 'vitest';
import { broodInbreedingOf } from '../../graph/kinship/inbreeding.ts';
import type { MatingInput, PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import { compiled, inbreedingById } from '../helpers/compiled.ts';
import {
  BASE,
  daughter,
  dynasty,
  founder,
  oneDrone,
  pedigreeOf,
  sonsOf,
  unrelatedDrones,
} from '../helpers/pedigrees.ts';

const EXACT = 13;

function expectSeries(input: PedigreeInput, series: readonly number[]): void {
  const pedigree = compiled(input);
  series.forEach((expected, t) => {
    expect(inbreedingById(pedigree, `Q${t}`), `F of Q${t}`).toBeCloseTo(expected, EXACT);
  });
}

describe('the inbreeding of successive queens', () => {
  it("met by their own sons goes 0, 1/2, 3/4, 7/8, 15/16, 31/32 (F' = (1 + F)/2)", () => {
    const input = dynasty(6, (t) => sonsOf({ [`Q${t}`]: 1 }));
    expectSeries(input, [0, 1 / 2, 3 / 4, 7 / 8, 15 / 16, 31 / 32]);
  });

  it("met by their brothers goes 0, 0, 1/4, 3/8, 1/2, 19/32, 43/64, ... (F'' = (1 + 2 F' + F)/4)", () => {
    const input = dynasty(11, (t) => (t === 0 ? unrelatedDrones : sonsOf({ [`Q${t - 1}`]: 1 })));
    const series = [0, 0, 1 / 4, 3 / 8, 1 / 2, 19 / 32, 43 / 64, 47 / 64, 201 / 256, 423 / 512, 55 / 64];
    expectSeries(input, series);
  });

  it("crossed back each time to one queen goes 0, 0, 1/4, 3/8, 7/16, ..., towards 1/2 (F' = 1/4 + F/2)", () => {
    const input = dynasty(8, (t) => (t === 0 ? unrelatedDrones : sonsOf({ Q0: 1 })));
    expectSeries(input, [0, 0, 1 / 4, 3 / 8, 7 / 16, 15 / 32, 31 / 64, 63 / 128]);
  });

  it("inseminated each time with one drone's semen goes 0, 0, 1/2, 3/4, 7/8, 15/16", () => {
    const input = dynasty(6, () => oneDrone('d'), 12, { d: 'S' });
    expectSeries(input, [0, 0, 1 / 2, 3 / 4, 7 / 8, 15 / 16]);
  });

  it('met by drones of the maternal grandmother goes 0, 0, 0, 1/8, 1/4, 9/32, 23/64, 55/128, 61/128, 135/256', () => {
    const input = dynasty(10, (t) => (t < 2 ? unrelatedDrones : sonsOf({ [`Q${t - 2}`]: 1 })));
    expectSeries(input, [0, 0, 0, 1 / 8, 1 / 4, 9 / 32, 23 / 64, 55 / 128, 61 / 128, 135 / 256]);
  });

  it('met by one drone of a super-sister goes 0, 3/8, 9/16, 45/64, 51/64, 441/512, ... from the third queen on', () => {
    expectSeries(superSisterSystem(8), [0, 0, 3 / 8, 9 / 16, 45 / 64, 51 / 64, 441 / 512, 927 / 1024]);
  });
});

/**
 *   Q0 x one unrelated drone; Q1, T1 her daughters
 *   Q1 x one son of T1; Q2, T2 her daughters; and so on
 */
function superSisterSystem(generations: number): PedigreeInput {
  const queens = [founder('S'), founder('Q0', oneDrone('d0'))];
  const drones: Record<string, string> = { d0: 'S' };
  for (let t = 1; t < generations; t++) {
    queens.push(daughter(`T${t}`, `Q${t - 1}`), daughter(`Q${t}`, `Q${t - 1}`, oneDrone(`d${t}`)));
    drones[`d${t}`] = `T${t}`;
  }
  return pedigreeOf(queens, drones);
}

/**
 *   G x countless unrelated drones      S, U unrelated; drones d, e of S and u, v of U
 *   |         \\
 *   D x d      aunt x v
 *   |          cousin
 *   V, super-sister (x u: niece); by D with e: full sister, with u: half-sister; V with u: daughter
 */
function virginMet(mating: MatingInput): PedigreeInput {
  const queens = [
    founder('S'),
    founder('U'),
    founder('G', unrelatedDrones, Number.POSITIVE_INFINITY),
    daughter('D', 'G', oneDrone('d')),
    daughter('aunt', 'G'),
    daughter('super-sister', 'D'),
    { ...daughter('full sister', 'D'), father: oneDrone('e') },
    { ...daughter('half-sister', 'D'), father: oneDrone('u') },
    { ...daughter('niece', 'super-sister'), father: oneDrone('u') },
    { ...daughter('cousin', 'aunt'), father: oneDrone('v') },
    { ...daughter('daughter', 'V'), father: oneDrone('u') },
    daughter('V', 'D', mating),
  ];
  return pedigreeOf(queens, { d: 'S', e: 'S', u: 'U', v: 'U' });
}

function broodOfVirgin(mating: MatingInput): number | undefined {
  const pedigree = compiled(virginMet(mating));
  return broodInbreedingOf(pedigree, pedigree.queenIndex.get('V')!);
}

describe('the inbreeding of the brood of a virgin who meets', () => {
  it.each([
    ['her own drones', 'V', 1 / 2],
    ['drones of her mother', 'D', 1 / 4],
    ['drones of her daughter', 'daughter', 1 / 4],
    ['drones of her super-sister', 'super-sister', 3 / 8],
    ['drones of a sister by another drone of the same mother', 'full sister', 1 / 4],
    ['drones of a half-sister', 'half-sister', 1 / 8],
    ['drones of her maternal grandmother', 'G', 1 / 8],
    ["drones of her father's mother", 'S', 1 / 4],
    ["drones of her mother's half-sister", 'aunt', 1 / 16],
    ['drones of a cousin whose dam is a half-sister of her dam', 'cousin', 1 / 32],
    ['drones of a niece out of her super-sister', 'niece', 3 / 16],
    ['drones of an unrelated queen', 'U', 0],
  ])('%s is as derived', (_, mother, expected) => {
    expect(broodOfVirgin(sonsOf({ [mother]: 1 }))).toBeCloseTo(expected, EXACT);
  });

  it("her own father's semen is 1/2", () => {
    expect(broodOfVirgin(oneDrone('d'))).toBeCloseTo(1 / 2, EXACT);
  });

  it('one fifth mother, a tenth super-sister, a fifth half-sister and half unrelated drones is 9/80', () => {
    const mixed = sonsOf({ D: 0.2, 'super-sister': 0.1, 'half-sister': 0.2, [BASE]: 0.5 });
    expect(broodOfVirgin(mixed)).toBeCloseTo(9 / 80, EXACT);
  });

  it('a tenth drones of her mother is 1/40', () => {
    expect(broodOfVirgin(sonsOf({ D: 0.1, [BASE]: 0.9 }))).toBeCloseTo(1 / 40, EXACT);
  });
});
