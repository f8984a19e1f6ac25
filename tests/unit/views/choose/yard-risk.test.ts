import { describe, expect, it } from 'vitest';
import {
  bestYard,
  brothersWords,
  closenessOf,
  poolWords,
  type YardRisk,
  yardRisks,
} from '../../../../views/choose/yard-risk.ts';
import { demoEvaluated, demoRow } from '../../../helpers/demo-choice.ts';
import { denseRelationship } from '../../../helpers/dense-relationship.ts';

const evaluated = demoEvaluated();

describe('what daughters meet at a yard', () => {
  const dense = denseRelationship(evaluated.work.pedigree);

  for (const name of ['Brook', 'Ford', 'Bora']) {
    it(`is the mean kinship of dam and mates with the drones there, by the tabular method: ${name}`, () => {
      const { place, id } = demoRow(name);
      const risks = yardRisks(evaluated, place);
      expect(risks).toHaveLength(3);
      for (const { pool, broodInbreeding } of risks) {
        const own = pool.droneMothers.reduce((sum, { share }) => sum + share, 0);
        const drones = [
          ...pool.droneMothers.map(({ queen, share }) => [`queen:${queen}`, share] as const),
          [`background:${pool.background}`, 1 - own] as const,
        ];
        const with_ = (node: string) =>
          drones.reduce((sum, [drone, share]) => sum + share * dense.at(node, drone), 0);
        // Brood inbreeding: A[H][S]/2 with H = (dam + mates)/2.
        expect(broodInbreeding).toBeCloseTo((with_(`queen:${id}`) + with_(`mates:${id}`)) / 4, 10);
      }
    });
  }

  it('counts the sons of the queen herself as brothers', () => {
    const { place, id } = demoRow('Bora');
    for (const { pool, brothers } of yardRisks(evaluated, place)) {
      expect(brothers).toBe(pool.droneMothers.find(({ queen }) => queen === id)?.share ?? 0);
    }
  });

  it('is close from a sixteenth on, somewhat close from half of that', () => {
    expect([0, 1 / 33, 1 / 32, 1 / 17, 1 / 16, 0.25].map(closenessOf)).toEqual([
      'hardly',
      'hardly',
      'somewhat',
      'somewhat',
      'closely',
      'closely',
    ]);
  });
});

describe('the best yard', () => {
  const at = (yard: string, broodInbreeding: number) => ({ yard, broodInbreeding }) as YardRisk;

  it('is the one with least kin, and any where they differ by less than a percent', () => {
    expect(bestYard([at('a', 0.05), at('b', 0.02)])).toMatchObject({ risk: { yard: 'b' }, any: false });
    expect(bestYard([at('a', 0.025), at('b', 0.02)])).toMatchObject({ risk: { yard: 'b' }, any: true });
    expect(bestYard([at('a', 0.02)])).toMatchObject({ any: false });
    expect(bestYard([])).toBeUndefined();
  });
});

describe('the words of a yard', () => {
  it('say brothers as one drone in so many', () => {
    expect(brothersWords({ brothers: 0.11, closeness: 'closely' })).toBe('1 drone in 9 is a brother');
    expect(brothersWords({ brothers: 0, closeness: 'hardly' })).toBe('no brothers');
    expect(brothersWords({ brothers: 0, closeness: 'somewhat' })).toBe('no brothers, yet somewhat related');
  });

  it('say what the drones are taken to be and how that is known', () => {
    const pool = evaluated.work.yards[0]!.pool;
    expect(
      poolWords({ ...pool, ownShare: 0.3, basis: 'assumed', background: 'valley bees', droneMothers: [] }),
    ).toBe('No recorded colony flew drones: all valley bees; assumed: nothing was said for this yard.');
    const one = pool.droneMothers.slice(0, 1);
    expect(
      poolWords({ ...pool, ownShare: 0.3, basis: 'recorded', background: 'valley bees', droneMothers: one }),
    ).toBe(
      '30\u00a0% of the drones from one queen on record, the rest valley bees; as said for this season.',
    );
  });
});
