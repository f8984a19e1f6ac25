/**
 * Who cannot be ranked: a queen without a record, in a trait that counts, in a comparison group that is not small.
 *
 *   ranked = some trait with weight other than 0 has a record of hers in a group of `SMALL_GROUP` queens or more
 *
 * In a smaller group what sets queens apart is mostly luck; kin alone places nobody. It says nothing of how well she is
 * known: one score in a large group ranks her, and her reliability tells how little that is.
 * Source: the least size of a group is common practice, no source. Cost: O(records). Unknowns: queens without records
 * are not ranked.
 */
import type { CollectedRecords } from './collect-records.ts';
import type { TraitWeights } from './index-of-traits.ts';
import type { TraitId } from './traits/trait.ts';

export type NotRanked =
  /** No record of hers counts in any trait that is weighed. */
  | 'no-record'
  /** All that she has stands in small comparison groups. */
  | 'small-groups';

/** Why a queen is not ranked; `undefined` of one who is. */
export function notRanked(
  traits: readonly (Pick<CollectedRecords, 'groups' | 'records'> & { readonly trait: TraitId })[],
  weights: TraitWeights,
): (queen: string) => NotRanked | undefined {
  const recorded = new Set<string>();
  const compared = new Set<string>();
  for (const { trait, groups, records } of traits) {
    if (!weights[trait]) continue;
    const small = new Set(groups.filter((group) => group.small).map(({ group }) => group));
    for (const { queen, group } of records) {
      recorded.add(queen);
      if (!small.has(group)) compared.add(queen);
    }
  }
  return (queen) => {
    if (compared.has(queen)) return undefined;
    return recorded.has(queen) ? 'small-groups' : 'no-record';
  };
}
