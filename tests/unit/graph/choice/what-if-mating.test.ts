import { describe, expect, it } from 'vitest';
import { whatIfMating } from '../../../../graph/choice/index.ts';
import { NodeKind } from '../../../../graph/kinship/pedigree.ts';
import { RELATIVES, smallPedigree } from '../../../helpers/small-pedigrees.ts';

const pedigree = smallPedigree(RELATIVES);
const sonsOf = (of: string) =>
  ({ kind: 'drone-mothers', droneMothers: [{ of, share: 1 }], backgrounds: [] }) as const;
const UNRELATED = {
  kind: 'drone-mothers',
  droneMothers: [],
  backgrounds: [{ of: 'base', share: 1 }],
} as const;

describe('what would come of a mating', () => {
  it('mixes her own super-sister, dam and unrelated drones in proportion to their shares', () => {
    const at = {
      kind: 'drone-mothers',
      droneMothers: [
        { of: 'D', share: 0.2 },
        { of: 'super', share: 0.1 },
      ],
      backgrounds: [{ of: 'base', share: 0.7 }],
    } as const;
    const found = whatIfMating(pedigree, { of: { queen: 'V' }, at, effectiveMates: 12 });
    // Kinship with her dam 1/4, with a super-sister 3/8.
    expect(found.broodInbreeding).toBeCloseTo(0.2 / 4 + (0.1 * 3) / 8, 12);
    expect(found.inbreeding).toBeCloseTo(0, 12);
  });

  it('gives a daughter the mean merit of dam and drones, and her brood half of what she meets', () => {
    const value = (node: number): number =>
      pedigree.kind[node] === NodeKind.mates ? 2 : node === pedigree.queenNode[5] ? 6 : 0;
    const found = whatIfMating(pedigree, {
      of: { daughterOf: 'E' },
      at: UNRELATED,
      effectiveMates: 12,
      merit: { valueOf: value, variance: 4, errorVariance: () => 1 },
    });
    expect(found.queenMerit!.mean).toBe(4);
    expect(found.broodMerit!.mean).toBe(2);
    // E is not inbred and met very many unrelated drones: q = (1 + 0)/4, so 3/4 of the variance is still open.
    expect(found.queenMerit!.betweenSisters).toBeCloseTo(Math.sqrt(3), 6);
    expect(found.queenMerit!.spread).toBeCloseTo(2, 6);
    // Brood: (3/4 + 2/12)/4 of the variance.
    expect(found.broodMerit!.betweenSisters ** 2).toBeCloseTo(3 / 4 + 2 / 12, 6);
  });

  it('says nothing of a spread whose error is not known, and no merit where a value is missing', () => {
    const known = { valueOf: () => 1, variance: 1 };
    const base = { of: { daughterOf: 'D' }, at: UNRELATED, effectiveMates: 12 } as const;
    expect(whatIfMating(pedigree, { ...base, merit: known }).queenMerit).not.toHaveProperty('spread');
    const missing = { ...known, valueOf: () => undefined };
    expect(whatIfMating(pedigree, { ...base, merit: missing })).not.toHaveProperty('queenMerit');
  });

  it('tells brood viability when the sex alleles are given', () => {
    const found = whatIfMating(pedigree, {
      of: { queen: 'V' },
      at: sonsOf('super'),
      effectiveMates: 12,
      alleles: new Map([['base', { count: Infinity }]]),
    });
    expect(Math.abs(found.viability!.loss - 3 / 8)).toBeLessThan(4 * found.viability!.standardError);
  });

  it('of a daughter of a queen whose mating nobody knows is refused, and so are unknown names', () => {
    expect(() =>
      whatIfMating(pedigree, { of: { daughterOf: 'V' }, at: UNRELATED, effectiveMates: 12 }),
    ).toThrow(/no mating/);
    expect(() =>
      whatIfMating(pedigree, { of: { queen: 'V' }, at: sonsOf('nobody'), effectiveMates: 12 }),
    ).toThrow(/nobody/);
    expect(() =>
      whatIfMating(pedigree, { of: { queen: 'V' }, at: { kind: 'pool', pool: 'P' }, effectiveMates: 12 }),
    ).toThrow(/drone pool 'P'/);
  });
});
