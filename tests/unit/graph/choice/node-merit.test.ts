import { describe, expect, it } from 'vitest';
import { nodeValues } from '../../../../graph/choice/index.ts';
import { smallPedigree } from '../../../helpers/small-pedigrees.ts';

describe('merit of nodes', () => {
  const pedigree = smallPedigree({
    queens: [{ id: 'a', pool: 'P' }, { id: 'b' }, { id: 'c', dam: 'a', drones: { d: 1 } }],
    pools: { P: { b: 0.25, base: 0.75 } },
    drones: { d: 'b' },
  });
  const values = nodeValues(pedigree, [4, 8, Number.NaN], () => -2);

  it('of a pool is the mean of its drone mothers and backgrounds, and so is that of the mates out of it', () => {
    expect(values[pedigree.poolNode.get('P')!]).toBe(8 / 4 - (2 * 3) / 4);
    expect(values[pedigree.matesNode[0]!]).toBe(0.5);
  });

  it('of a queen without an estimate is the mean of dam and mates', () => {
    expect(values[pedigree.queenNode[2]!]).toBe((4 + 0.5) / 2);
  });

  it('of a single drone is that of his mother, and of her mates that of the drone', () => {
    expect(values[pedigree.droneNode.get('d')!]).toBe(8);
    expect(values[pedigree.matesNode[2]!]).toBe(8);
  });
});
