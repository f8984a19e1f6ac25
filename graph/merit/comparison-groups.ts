/**
 * Comparison groups: queens whose records of one trait stand beside one another (same yard, season and manner). A group
 * of one queen tells nothing of her, and is set aside. Cost O(records).
 */
import { groupBy } from '../grouping.ts';
import type { SetAside, TraitRecord } from './trait-record.ts';
import type { Trait } from './traits/trait.ts';

/** How far a comparison group can tell queens apart. */
export interface GroupSummary {
  readonly group: string;
  readonly yard: string;
  readonly season: number;
  readonly records: number;
  readonly queens: number;
  /** True for fewer queens than `SMALL_GROUP`: differences inside it are mostly luck. */
  readonly small: boolean;
}

/** Queens in a group below which it is called small (common practice, no source). */
export const SMALL_GROUP = 5;

/** Leaves out records that nothing can be compared with, and tells how large each group is. */
export function comparable(trait: Trait, records: readonly TraitRecord[], setAside: SetAside[]) {
  const kept: TraitRecord[] = [];
  const groups: GroupSummary[] = [];
  for (const [group, inGroup] of groupBy(records, ({ group }) => group)) {
    const queens = new Set(inGroup.map(({ queen }) => queen)).size;
    const { yard, season } = inGroup[0]!;
    if (queens > 1) {
      kept.push(...inGroup);
      groups.push({ group, yard, season, records: inGroup.length, queens, small: queens < SMALL_GROUP });
      continue;
    }
    for (const { observations, colony, day, queen } of inGroup) {
      const sentence =
        'No other queen has this figure at her yard in that season: there is nobody to compare her with.';
      setAside.push({
        trait: trait.id,
        code: 'group-of-one',
        sentence,
        observations,
        colony,
        day,
        season,
        queen,
      });
    }
  }
  return { kept, groups };
}
