import { describe, expect, it } from 'vitest';
import type { GroupSummary } from '../../../../graph/merit/comparison-groups.ts';
import { notRanked } from '../../../../graph/merit/not-ranked.ts';
import type { TraitRecord } from '../../../../graph/merit/trait-record.ts';
import type { TraitId } from '../../../../graph/merit/traits/trait.ts';

const trait = (id: TraitId, large: readonly string[], small: readonly string[]) => ({
  trait: id,
  groups: [
    { group: 'large', small: false },
    { group: 'small', small: true },
  ] as GroupSummary[],
  records: [
    ...large.map((queen) => ({ queen, group: 'large' })),
    ...small.map((queen) => ({ queen, group: 'small' })),
  ] as TraitRecord[],
});

describe('a queen is not ranked', () => {
  const traits = [trait('gentle', ['a'], ['b']), trait('honey', ['c'], [])];

  it('when all her records stand in small groups, or there are none', () => {
    const why = notRanked(traits, { gentle: 1, honey: 1 });
    expect(['a', 'b', 'c', 'd'].map(why)).toEqual([undefined, 'small-groups', undefined, 'no-record']);
  });

  it('by the records of a trait that is left out', () => {
    const why = notRanked(traits, { gentle: 1, honey: 0 });
    expect(why('c')).toBe('no-record');
  });
});
