/**
 * Breeding values of an invented registry: three records a queen in comparison groups of about a hundred, worker and
 * queen effect, a permanent one, to a relative residual of 1e-8. Times are of this machine; printed by the bench.
 */
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { ColonyRecords, ColonyVariances } from '../../graph/merit/solve/colony-model.ts';
import { solveMerit } from '../../graph/merit/solve/merit.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';
import { type Seconds, timed } from './timed.ts';

export const BENCH_VARIANCES: ColonyVariances = {
  worker: 0.3,
  queen: 0.3,
  covariance: -0.1,
  permanent: 0.2,
  residual: 1,
};
const RECORDS_A_QUEEN = 3;
const QUEENS_A_GROUP = 100;

/** Records in the order of the queens; those of one season (neighbours in the list) share groups. */
export function inventedRecords(pedigree: Pedigree, seed = 5): ColonyRecords {
  const random = randomGenerator(seed);
  const mated = pedigree.queenIds.flatMap((_, q) => (pedigree.matesNode[q]! >= 0 ? [q] : []));
  const perSeason = Math.ceil(mated.length / 12);
  const yards = Math.max(1, Math.round((perSeason * RECORDS_A_QUEEN) / QUEENS_A_GROUP / 3));
  const queen = new Int32Array(RECORDS_A_QUEEN * mated.length);
  const group = new Int32Array(queen.length);
  const used = new Map<number, number>();
  let r = 0;
  mated.forEach((q, place) => {
    const yard = random.integer(yards);
    for (let year = 0; year < RECORDS_A_QUEEN; year++) {
      const key = (Math.floor(place / perSeason) + year) * yards + yard;
      if (!used.has(key)) used.set(key, used.size);
      queen[r] = q;
      group[r++] = used.get(key)!;
    }
  });
  const value = Float64Array.from(queen, (_, k) => (group[k]! % 7) + random.normal());
  return { queen, group, groups: used.size, value, samplingVariance: new Float64Array(queen.length) };
}

export interface MeritBench {
  readonly records: number;
  readonly groups: number;
  readonly iterations: number;
  readonly solved: Seconds;
}

/** Solves once; throws if the solve does not arrive. */
export function benchMerit(pedigree: Pedigree): MeritBench {
  const records = inventedRecords(pedigree);
  const { value, seconds, processor } = timed(() =>
    solveMerit(pedigree, records, BENCH_VARIANCES, { method: 'sweeps', tolerance: 1e-8 }),
  );
  if (value.is !== 'solved') throw new Error(`the bench did not solve: ${JSON.stringify(value)}`);
  return {
    records: records.queen.length,
    groups: records.groups,
    iterations: value.iterations,
    solved: { seconds, processor },
  };
}
