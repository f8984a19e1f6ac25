import type { MeritOutlook } from '../../graph/choice/what-if-mating.ts';
import type { MatingInput } from '../../graph/kinship/pedigree-input.ts';
import type { QueenId, YardId } from '../../src/journal/ids.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { MatingWork } from '../../src/store/index.ts';
import { list } from '../parts/words.ts';
import { meritOfAll, type Ranking } from './ranking.ts';

/** What if: a daughter of this queen, flown there, or inseminated by those. */
export interface MatingQuestion {
  readonly dam: QueenId;
  readonly manner: 'yard' | 'inseminated';
  readonly yard: YardId | undefined;
  /** Queens whose colonies are moved to the yard for their drones, and the share of all drones they then make. */
  readonly movedIn: readonly QueenId[];
  readonly movedShare: number;
  /** Queens whose drones give the semen, in equal parts. */
  readonly donors: readonly QueenId[];
  /** The semen of one drone alone. */
  readonly singleDrone: boolean;
}

/** The question as the numerics take it; undefined while something is missing. */
export function matingWork(
  evaluated: Evaluated,
  ranking: Ranking,
  question: MatingQuestion,
): MatingWork | undefined {
  const { work } = evaluated;
  const at = drones(evaluated, question);
  if (!at) return undefined;
  const { manner, movedIn, movedShare, singleDrone } = question;
  const moved = manner === 'yard' && movedIn.length > 0 && movedShare > 0;
  return {
    pedigree: work.pedigree,
    of: { daughterOf: question.dam },
    at,
    effectiveMates: manner === 'inseminated' && singleDrone ? 1 : work.effectiveMates,
    sexAlleles: work.sexAlleles,
    ...(moved ? { movedIn: { droneMothers: equalShares(movedIn), share: movedShare } } : {}),
    ...(ranking.weighed
      ? {
          merit: {
            valueOf: meritOfAll(evaluated, ranking.weights),
            variance: 1,
            known: {
              observations: work.observations,
              variances: work.variances,
              weights: ranking.weights,
            },
          },
        }
      : {}),
  };
}

/** Standard deviation that the bands are drawn with: chance among sisters, and the doubt of the mean where it is known. */
export function spreadOf({ spread, betweenSisters }: MeritOutlook): number {
  return spread ?? betweenSisters;
}

function drones({ work }: Evaluated, { manner, yard, donors }: MatingQuestion): MatingInput | undefined {
  if (manner === 'yard') return work.yards.find((each) => each.yard === yard)?.at;
  if (donors.length === 0) return undefined;
  return { kind: 'drone-mothers', droneMothers: equalShares(donors), backgrounds: [] };
}

function equalShares(queens: readonly QueenId[]) {
  return queens.map((of) => ({ of: of as string, share: 1 / queens.length }));
}

/** The question in words: "A daughter of Brook at High Fallow, with drones of Ford moved in". */
export function questionWords(
  question: MatingQuestion,
  nameOf: (queen: QueenId) => string,
  yardName: (yard: YardId) => string,
): string {
  const { dam, manner, yard, movedIn, movedShare, donors, singleDrone } = question;
  const daughter = `A daughter of ${nameOf(dam)}`;
  if (manner === 'inseminated') {
    if (donors.length === 0) return `${daughter}, inseminated`;
    const semen = singleDrone ? 'one drone' : 'drones';
    return `${daughter}, inseminated by ${semen} of ${list(donors.map(nameOf))}`;
  }
  const moved =
    movedIn.length > 0 && movedShare > 0 ? `, with drones of ${list(movedIn.map(nameOf))} moved in` : '';
  return `${daughter} flown at ${yard ? yardName(yard) : 'a yard'}${moved}`;
}
