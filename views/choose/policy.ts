import type {
  BreedingPolicy,
  LookAheadInput,
  LookAheadProblem,
} from '../../graph/choice/look-ahead/policy.ts';
import type { Registry } from '../../src/registry/state.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { Choosing } from '../../src/store/settings.ts';
import { percents } from '../parts/percents.ts';
import type { Breeder } from './plan.ts';
import type { Ranking } from './ranking.ts';

/** The look-ahead: a way of breeding to play from the queens who live now, and what it starts with. */

export interface Outlook {
  readonly policy: BreedingPolicy;
  readonly seasons: number;
}

/** Records from which the keeper's own rate is taken; below, the common one (both assumed). */
const ENOUGH = 10;
const COMMON = { success: 0.5, winterLoss: 0.25 } as const;
/** Correlation of merit with coming through winter (assumed: most of a winter is luck). */
const WINTER_ON_MERIT = 0.2;
/** Enough that the edges of the bands lie still to a point or two of a hundred. */
const REPLICATES = 600;

/** What the keeper does now, as far as the records tell it. */
export function usualPolicy(
  evaluated: Evaluated,
  ranking: Ranking,
  breeders: readonly Breeder[],
  { daughters, mostEach }: Choosing,
  ownDrones: number,
): BreedingPolicy {
  const dams = Math.max(1, Math.min(breeders.length, Math.ceil(daughters / mostEach)));
  return {
    colonies: Math.max(1, breeders.length),
    breeders: dams,
    daughtersEach: Math.max(1, Math.round(daughters / dams)),
    success: cameToLay(evaluated.registry),
    requeened: 0.3,
    ownDrones: twentieth(ownDrones),
    droneMothers: 'all',
    mates: evaluated.work.effectiveMates,
    winterLoss: winterLoss(evaluated),
    winterOnMerit: WINTER_ON_MERIT,
    reliability: twentieth(mean(ranking.rows.map(({ reliability }) => reliability))),
  };
}

/** Mean share of own drones over the keeper's yards. */
export function ownDronesOf({ work }: Evaluated, yards: ReadonlySet<string>): number {
  const own = work.yards.filter(({ yard }) => yards.has(yard)).map(({ pool }) => pool.ownShare);
  return own.length === 0 ? 0 : mean(own);
}

/** What a policy starts from: shares on record and how many they rest on; assumed where those are too few. */
export function startWords({ registry, answer }: Evaluated): string {
  const laying = layingOutcomes(registry);
  const winters = wintersOf(answer);
  const said = [
    laying.length >= ENOUGH
      ? `of ${laying.length} queens raised ${percents(mean(laying))} came to lay`
      : `that ${percents(COMMON.success)} of queens raised come to lay is assumed`,
    winters.length >= ENOUGH
      ? `of ${winters.length} winters ${percents(1 - mean(winters))} were lost`
      : `that ${percents(COMMON.winterLoss)} of colonies are lost in winter is assumed`,
  ];
  return (
    `To start with, each to the nearest five percent: ${said.join('; ')}; drones as at your yards on the mean; how well merit is known as in the list. ` +
    'How many old queens are replaced and how far merit decides a winter is assumed. Move each as you see fit.'
  );
}

/** Share of the queens raised here who came to lay. */
export function cameToLay(registry: Registry): number {
  const laying = layingOutcomes(registry);
  return laying.length < ENOUGH ? COMMON.success : twentieth(mean(laying));
}

/** For each queen raised here whose fate is known: 1 she came to lay, 0 she failed. */
function layingOutcomes(registry: Registry): readonly number[] {
  const outcomes: number[] = [];
  for (const { state, madeBy } of registry.queens.values()) {
    const making = madeBy && registry.makings.get(madeBy);
    if (!making || making.how === 'brought-in' || state.is === 'expected' || state.is === 'unknown') continue;
    outcomes.push(state.is === 'failed' ? 0 : 1);
  }
  return outcomes;
}

function winterLoss({ answer }: Evaluated): number {
  const winters = wintersOf(answer);
  return winters.length < ENOUGH ? COMMON.winterLoss : twentieth(1 - mean(winters));
}

/** Winters that count: 1 come through, 0 lost. */
function wintersOf({ evaluation }: Evaluated['answer']): readonly number[] {
  const winters = evaluation.traits.find(({ trait }) => trait === 'winter-survival');
  return winters?.records.map(({ value }) => value) ?? [];
}

const mean = (values: readonly number[]) =>
  values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;

/** In steps of five percent: nothing here is known better. */
const twentieth = (share: number) => Math.round(20 * share) / 20;

/** The question as the numerics take it: the queens in the choice are the founders. */
export function lookAheadWork(
  { answer, work }: Evaluated,
  ranking: Ranking,
  breeders: readonly Breeder[],
  { policy, seasons }: Outlook,
): LookAheadInput {
  const size = answer.candidates.length;
  const places = breeders.map(({ row }) => row.place);
  return {
    policy,
    founders: breeders.map(({ row }) => ({
      line: row.line,
      ...(ranking.weighed ? { merit: row.merit, errorVariance: row.error ** 2 } : {}),
    })),
    founderKinship: places.flatMap((a) => places.map((b) => answer.kinship[a * size + b] ?? 0)),
    background: { merit: 0, kinship: backgroundKinship(work), sexAlleles: work.sexAlleles },
    variance: 1,
    seasons,
    replicates: REPLICATES,
    seed: 1,
  };
}

/** Kinship within the unrecorded bees that fly at the yards, yards alike. */
function backgroundKinship({ pedigree, yards }: Evaluated['work']): number {
  const kinships = new Map(pedigree.backgrounds.map(({ id, kinship }) => [id, kinship]));
  return mean(yards.map(({ pool }) => kinships.get(pool.background) ?? 0));
}

/** A setting that cannot be played, in a sentence. */
export function problemWords({ field, found, because, remedy }: LookAheadProblem): string {
  return `${FIELD_WORDS[field] ?? field}: ${found}. ${because} ${remedy}`;
}

/** The numbers that the form lets grow too large, as it calls them. */
const FIELD_WORDS: Readonly<Record<string, string>> = { colonies: 'Colonies kept', founders: 'Queens' };
