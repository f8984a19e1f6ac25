import type { BroodViability } from '../../graph/alleles/viability.ts';
import type { QueenId, YardId } from '../../src/journal/ids.ts';
import type { DronePool, PoolBasis } from '../../src/registry/pools.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import { percents } from '../parts/percents.ts';

/** What the daughters of a queen would meet at a yard. */
export interface YardRisk {
  readonly yard: YardId;
  readonly pool: DronePool;
  /** Share of the drones there that are sons of the queen herself: her daughters' brothers. */
  readonly brothers: number;
  /** Expected inbreeding of the brood of her daughters. */
  readonly broodInbreeding: number;
  readonly viability: BroodViability | undefined;
  readonly closeness: Closeness;
}

export type Closeness = 'hardly' | 'somewhat' | 'closely';

/**
 * Brood inbreeding from which a match is called somewhat close, and close. 1/16 is that of the children of cousins
 * where both sexes are diploid, a mark that breeders of any animal know; where to draw the line is assumed.
 */
const SOMEWHAT = 1 / 32;
export const CLOSELY = 1 / 16;

export function closenessOf(broodInbreeding: number): Closeness {
  if (broodInbreeding >= CLOSELY) return 'closely';
  return broodInbreeding >= SOMEWHAT ? 'somewhat' : 'hardly';
}

/** The risks of one candidate, yard by yard, in the order of the evaluation. */
export function yardRisks({ answer, work }: Evaluated, place: number): readonly YardRisk[] {
  const id = answer.candidates[place] as QueenId;
  return answer.yards.flatMap(({ yard, daughters }) => {
    const outlook = daughters[place];
    const pool = work.yards.find((each) => each.yard === yard)?.pool;
    if (!outlook || !pool) return [];
    return [
      {
        yard,
        pool,
        brothers: pool.droneMothers.find(({ queen }) => queen === id)?.share ?? 0,
        broodInbreeding: outlook.broodInbreeding,
        viability: outlook.viability,
        closeness: closenessOf(outlook.broodInbreeding),
      },
    ];
  });
}

/** Yards whose risks differ by less than this are alike (assumed). */
const ALIKE = 0.01;

export interface BestYard {
  readonly risk: YardRisk;
  /** No yard is better than another by more than a percent. */
  readonly any: boolean;
}

/** Where her daughters are least related to the drones; ties in the order given. */
export function bestYard(risks: readonly YardRisk[]): BestYard | undefined {
  const [first] = risks;
  if (!first) return undefined;
  const risk = risks.reduce(
    (best, each) => (each.broodInbreeding < best.broodInbreeding ? each : best),
    first,
  );
  const worst = Math.max(...risks.map(({ broodInbreeding }) => broodInbreeding));
  return { risk, any: risks.length > 1 && worst - risk.broodInbreeding < ALIKE };
}

const CLOSENESS_WORDS: Readonly<Record<Closeness, string>> = {
  hardly: 'hardly related',
  somewhat: 'somewhat related',
  closely: 'closely related',
};

/** "Yes: 1 drone in 9 there is their brother", or how related the drones are where no brother flies. */
export function brothersWords({ brothers, closeness }: Pick<YardRisk, 'brothers' | 'closeness'>): string {
  if (brothers > 0) return `1 drone in ${Math.max(1, Math.round(1 / brothers))} is a brother`;
  return closeness === 'hardly' ? 'no brothers' : `no brothers, yet ${CLOSENESS_WORDS[closeness]}`;
}

const BASIS: Readonly<Record<PoolBasis, string>> = {
  recorded: 'as said for this season',
  'from-another-season': 'as said for another season',
  assumed: 'assumed: nothing was said for this yard',
};

/** What the yard's drones are taken to be, and how that is known. */
export function poolWords({ ownShare, basis, background, droneMothers }: DronePool): string {
  const own =
    droneMothers.length === 0
      ? 'No recorded colony flew drones'
      : `${percents(ownShare)} of the drones from ${droneMothers.length === 1 ? 'one queen' : `${droneMothers.length} queens`} on record`;
  const rest = droneMothers.length === 0 ? `: all ${background}` : `, the rest ${background}`;
  return `${own}${rest}; ${BASIS[basis]}.`;
}
