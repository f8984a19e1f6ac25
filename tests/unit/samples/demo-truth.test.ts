import { describe, expect, it } from 'vitest';
import { collectRecords } from '../../../graph/merit/collect-records.ts';
import { solveMerit } from '../../../graph/merit/solve/merit.ts';
import { TRAITS } from '../../../graph/merit/traits/all-traits.ts';
import { defaultVariances } from '../../../graph/merit/traits/default-variances.ts';
import type { TraitId } from '../../../graph/merit/traits/trait.ts';
import { tellDemo } from '../../../samples/demo/demo.ts';
import type { Quality } from '../../../samples/demo/worth.ts';
import { traitObservations } from '../../../src/registry/observations.ts';
import { openedPedigreeInput } from '../../../src/registry/pedigree.ts';
import { demoRegistry } from '../../helpers/demo.ts';

/** Which hidden quality a trait shows, and whether more of it makes the figure higher or lower. */
const SHOWN: readonly (readonly [TraitId, Quality, 1 | -1])[] = [
  ['winter-strength', 'hardy', 1],
  ['gentle', 'gentle', 1],
  ['calm', 'calm', 1],
  ['mite-level', 'mites', -1],
  ['hygienic', 'hygiene', 1],
];

const hidden = new Map([...tellDemo().queens.values()].map(({ id, own }) => [id as string, own]));
const { pedigree } = openedPedigreeInput(demoRegistry());
const observations = traitObservations(demoRegistry());

function breedingValues(id: TraitId): ReadonlyMap<string, number> {
  const trait = TRAITS.find((each) => each.id === id);
  if (!trait) throw new Error(`There is no trait ${id}.`);
  const { records } = collectRecords(trait, observations);
  const groups = [...new Set(records.map(({ group }) => group))];
  const result = solveMerit(
    pedigree,
    {
      queen: Int32Array.from(records, ({ queen }) => pedigree.queenIndex.get(queen) ?? -1),
      group: Int32Array.from(records, ({ group }) => groups.indexOf(group)),
      groups: groups.length,
      value: Float64Array.from(records, ({ value }) => value),
      samplingVariance: Float64Array.from(records, ({ samplingVariance }) => samplingVariance),
    },
    defaultVariances(trait.variances),
  );
  if (result.is !== 'solved') throw new Error(`${id} was not solved: ${result.is}`);
  return new Map(pedigree.queenIds.map((queen, index) => [queen, result.breedingValue[index]!]));
}

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const mean = (of: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[of], 0) / pairs.length;
  const [meanA, meanB] = [mean(0), mean(1)];
  const moment = (a: 0 | 1, b: 0 | 1) => {
    const about = [meanA, meanB] as const;
    return pairs.reduce((sum, pair) => sum + (pair[a] - about[a]) * (pair[b] - about[b]), 0);
  };
  return moment(0, 1) / Math.sqrt(moment(0, 0) * moment(1, 1));
}

describe('what the story hides from its keepers', () => {
  it.each(SHOWN)('is found again by the breeding values: %s shows %s', (trait, quality, sign) => {
    const values = breedingValues(trait);
    const pairs = [...hidden].flatMap(([queen, own]) => {
      const value = values.get(queen);
      return value === undefined ? [] : [[own[quality], sign * value] as const];
    });
    expect(pairs.length).toBe(hidden.size);
    // The records of a few dozen colonies tell about half of the differences: r of 0.5 and more by quantitative theory.
    expect(correlation(pairs)).toBeGreaterThan(0.4);
  });
});
