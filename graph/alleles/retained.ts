/**
 * How many sex alleles are left among the queens of each season, by gene dropping through the recorded pedigree.
 *
 *   left(season) = number of different alleles among the two of each queen named, over many histories
 *
 * Two genes that no founder shared are two alleles where a background is `{ count: Infinity }`: then the count is
 * of founder genes still there. Drones stored by the queens are not counted, so the count is a low one.
 * Sources: as gene-drop.ts. Cost O(histories x (ancestors + queens named)).
 */
import type { Pedigree } from '../kinship/pedigree.ts';
import { type Bands, bandsOf } from '../numerics/bands.ts';
import { randomGenerator } from '../numerics/random.ts';
import { queenNodeOf } from './drone-source.ts';
import { dropPlan } from './drop-plan.ts';
import { geneDrop } from './gene-drop.ts';
import type { BackgroundAlleles } from './populations.ts';

export interface QueenGroup {
  /** A season, a yard, a plan: what the group is called. */
  readonly name: string;
  /** Ids of its queens. */
  readonly queens: readonly string[];
}

export interface RetainedOptions {
  readonly histories: number;
  readonly seed: number;
}

export const RETAINED_DEFAULTS: RetainedOptions = { histories: 1_000, seed: 1 };

/** Different alleles in the group, over the histories. */
export interface RetainedAlleles extends Bands {
  readonly name: string;
}

/** Alleles left in each group, in the order of the groups. Throws on unknown queens. */
export function retainedAlleles(
  pedigree: Pedigree,
  groups: readonly QueenGroup[],
  alleles: BackgroundAlleles,
  options: Partial<RetainedOptions> = {},
): RetainedAlleles[] {
  const { histories, seed } = { ...RETAINED_DEFAULTS, ...options };
  const nodes = groups.map(({ queens }) => queens.map((queen) => queenNodeOf(pedigree, queen)));
  const dropped = geneDrop(dropPlan(pedigree, nodes.flat(), alleles), randomGenerator(seed));
  const counts = groups.map(() => new Float64Array(histories));
  for (let history = 0; history < histories; history += 1) {
    dropped.drop();
    nodes.forEach((group, k) => {
      const seen = new Set<number>();
      for (const node of group) seen.add(dropped.first[node]!).add(dropped.second[node]!);
      counts[k]![history] = seen.size;
    });
  }
  return groups.map(({ name }, k) => ({ name, ...bandsOf(counts[k]!) }));
}
