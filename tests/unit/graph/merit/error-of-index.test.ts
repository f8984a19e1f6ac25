import { describe, expect, it } from 'vitest';
import { errorOfIndex } from '../../../../graph/merit/error-of-index.ts';
import { evaluate } from '../../../../graph/merit/evaluate.ts';
import { weightedIndex } from '../../../../graph/merit/index-of-traits.ts';
import { smallPedigree } from '../../../helpers/small-pedigrees.ts';
import { inspection } from '../../../helpers/yard-observations.ts';

/*
 *   Ash ---- Birch, Beech (daughters)       all three met drones of the unrelated base
 */
const pedigree = smallPedigree({
  queens: [
    { id: 'Ash', met: 'base' },
    { id: 'Birch', dam: 'Ash', met: 'base' },
    { id: 'Beech', dam: 'Ash', met: 'base' },
  ],
});
const observations = [
  inspection('Ash', { gentle: 3, calm: 2 }),
  inspection('Birch', { gentle: 4 }),
  inspection('Beech', { gentle: 2, calm: 3 }),
];
const nodeOf = (id: string) => pedigree.queenNode[pedigree.queenIndex.get(id)!]!;
const matesOf = (id: string) => pedigree.matesNode[pedigree.queenIndex.get(id)!]!;

describe('the error of an index', () => {
  it('is, for a queen, the standard error that her index is shown with', () => {
    const weights = { gentle: 2, calm: 1, honey: 1 } as const;
    const queens = ['Ash', 'Birch', 'Beech'];
    const evaluation = evaluate({ pedigree, observations, queens, weights });
    if (evaluation.is !== 'done') throw new Error('stopped');
    const error = errorOfIndex({ pedigree, observations, weights });
    const shown = weightedIndex(evaluation.traits, weights, new Float64Array(3).fill(1));
    queens.forEach((id, q) => {
      expect(Math.sqrt(error([nodeOf(id)], [1]))).toBeCloseTo(shown[q]!.standardError, 8);
    });
  });

  it('of a trait without records is its whole variance: half of a queen and half of a strange drone mix to 1/4 + 1/24', () => {
    const error = errorOfIndex({ pedigree, observations: [], weights: { honey: 1 } });
    expect(error([nodeOf('Ash')], [1])).toBeCloseTo(1, 12);
    // Twelve unrelated mates: A of the mates with themselves is 2/12; a quarter of it, with a quarter of hers.
    expect(error([nodeOf('Ash'), matesOf('Ash')], [0.5, 0.5])).toBeCloseTo(1 / 4 + 2 / 12 / 4, 12);
  });
});
