import {
  chanceAbove,
  chancesAmongBest,
  type ErrorTrait,
  indexErrors,
} from '../../graph/merit/index-errors.ts';
import { type Contribution, type TraitWeights, weightedIndex } from '../../graph/merit/index-of-traits.ts';
import { notRanked } from '../../graph/merit/not-ranked.ts';
import type { ColonyId, KeeperId, QueenId, YardId } from '../../src/journal/ids.ts';
import { colonyOfQueen, queenTitle, yardOn, yardsOf } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';

/**
 * The living laying queens in the order of their merit, and how far that order can be believed. Merit is the weighted
 * index divided by its own spread in the starting stock: 0 is a queen of that stock, 1 one spread better.
 */

/** Whether a queen can be told apart from the first on these records; `unranked`: compared with too few, or not at all. */
export type Standing = 'first' | 'close' | 'probably-behind' | 'behind' | 'unranked';

export interface Candidate {
  readonly id: QueenId;
  readonly queen: Queen;
  /** Place among the candidates of the evaluation. */
  readonly place: number;
  readonly merit: number;
  readonly error: number;
  readonly reliability: number;
  /** In spreads of merit, largest first. */
  readonly contributions: readonly Contribution[];
  readonly line: QueenId;
  readonly colony: ColonyId | undefined;
  readonly yard: YardId | undefined;
  /** Her yard is one that the keeper works. */
  readonly mine: boolean;
  /** Chance that the first of the list is truly above her. */
  readonly firstAbove: number;
  readonly standing: Standing;
}

export interface Ranking {
  /** Best first, ties by id; the unranked after them, by name. */
  readonly rows: readonly Candidate[];
  /** By place among the candidates of the evaluation. */
  readonly merits: Float64Array;
  /** Error covariance of the merits, row by row. */
  readonly errors: Float64Array;
  /** How many the best are that `amongBest` speaks of. */
  readonly best: number;
  /** Chance of a candidate to be truly among them; drawn when first asked for, not at each move of a weight. */
  readonly amongBest: (candidate: Pick<Candidate, 'place'>) => number;
  /** The weights in the unit of merit. */
  readonly weights: TraitWeights;
  /** False when every trait is left out: nothing is ranked. */
  readonly weighed: boolean;
}

/** From these chances that the first is above her, a queen is called probably behind, and behind (assumed). */
export const TOLD_APART = { probably: 0.75, surely: 0.95 } as const;

const MOST_BEST = 3;

export function rankingOf(evaluated: Evaluated, given: TraitWeights, keeper: KeeperId): Ranking {
  const { traits, diagonal, relationship } = candidateTraits(evaluated);
  const { weights, weighed } = unitWeights(given);
  const values = weightedIndex(traits, weights, diagonal);
  const merits = Float64Array.from(values, ({ index }) => index);
  const errors = indexErrors(traits, weights, relationship);
  const best = Math.min(MOST_BEST, Math.max(1, Math.floor(merits.length / 2)));
  let among: Float64Array | undefined;
  const amongBest: Ranking['amongBest'] = ({ place }) => {
    among ??= chancesAmongBest(merits, errors, best);
    return among[place] ?? 0;
  };
  const { answer } = evaluated;
  const why = notRanked(answer.evaluation.traits, weights);
  const isRanked = (place: number) => why(answer.candidates[place] ?? '') === undefined;
  const order = [...merits.keys()].sort((a, b) => (merits[b] ?? 0) - (merits[a] ?? 0) || a - b);
  const first = order.find(isRanked) ?? order[0] ?? 0;
  const yards = yardsOf(evaluated.registry, keeper);
  const rows = order.flatMap((place): Candidate[] => {
    const value = values[place];
    const who = whoIs(evaluated, place, yards);
    if (!value || !who) return [];
    const firstAbove = place === first ? 0.5 : chanceAbove(merits, errors, first, place);
    const told = place === first ? 'first' : standingOf(firstAbove);
    return [
      {
        ...who,
        place,
        merit: value.index,
        error: value.standardError,
        reliability: value.reliability,
        contributions: value.contributions,
        firstAbove,
        standing: isRanked(place) ? told : 'unranked',
      },
    ];
  });
  return { rows: unrankedLast(rows), merits, errors, best, amongBest, weights, weighed };
}

function unrankedLast(rows: readonly Candidate[]): readonly Candidate[] {
  const name = ({ queen }: Candidate) => queenTitle(queen);
  const unranked = rows.filter(({ standing }) => standing === 'unranked');
  unranked.sort((a, b) => name(a).localeCompare(name(b), 'en') || (a.id < b.id ? -1 : 1));
  return [...rows.filter(({ standing }) => standing !== 'unranked'), ...unranked];
}

export function standingOf(firstAbove: number): Exclude<Standing, 'first' | 'unranked'> {
  if (firstAbove >= TOLD_APART.surely) return 'behind';
  return firstAbove >= TOLD_APART.probably ? 'probably-behind' : 'close';
}

/** The weights divided by the spread of their index: sum of squares 1. */
export function unitWeights(given: TraitWeights): {
  readonly weights: TraitWeights;
  readonly weighed: boolean;
} {
  const spread = Math.sqrt(Object.values(given).reduce((sum, weight) => sum + weight ** 2, 0));
  if (spread === 0) return { weights: {}, weighed: false };
  const scaled = Object.entries(given).map(([trait, weight]) => [trait, weight / spread] as const);
  return { weights: Object.fromEntries(scaled), weighed: true };
}

function whoIs({ registry, on, answer, work }: Evaluated, place: number, yards: ReadonlySet<YardId>) {
  const queen = registry.queens.get(answer.candidates[place] as QueenId);
  if (!queen) return undefined;
  const colony = colonyOfQueen(registry, queen, on);
  const yard = colony && yardOn(colony, on);
  return {
    id: queen.id,
    queen,
    line: work.lines.get(queen.id) ?? queen.id,
    colony: colony?.id,
    yard,
    mine: yard !== undefined && yards.has(yard),
  };
}

interface CandidateTraits {
  readonly traits: readonly ErrorTrait[];
  readonly diagonal: Float64Array;
  readonly relationship: Float64Array;
}

const kept = new WeakMap<Evaluated['answer'], CandidateTraits>();

/** The evaluation cut down to the candidates, once for each answer: what moves when a weight moves. */
function candidateTraits({ answer }: Evaluated): CandidateTraits {
  const known = kept.get(answer);
  if (known) return known;
  const { queens, traits } = answer.evaluation;
  const places = new Map(queens.map((id, at) => [id, at]));
  const at = answer.candidates.map((id) => places.get(id) ?? -1);
  const pick = (values: Float64Array) => Float64Array.from(at, (q) => values[q] ?? 0);
  const cut: CandidateTraits = {
    traits: traits.map(({ trait, better, sigma, breedingValue, reliability, errorCovariance }) => ({
      trait,
      better,
      sigma,
      ...(breedingValue ? { breedingValue: pick(breedingValue) } : {}),
      ...(reliability ? { reliability: pick(reliability) } : {}),
      ...(errorCovariance ? { errorCovariance } : {}),
    })),
    diagonal: pick(answer.diagonal),
    relationship: answer.kinship.map((kinship) => 2 * kinship),
  };
  kept.set(answer, cut);
  return cut;
}

/** Merit of every evaluated queen, by id: what the drones of a pool are worth. */
export function meritOfAll({ answer }: Evaluated, weights: TraitWeights): ReadonlyMap<string, number> {
  const { queens, traits } = answer.evaluation;
  const values = weightedIndex(traits, weights, answer.diagonal);
  return new Map(queens.map((id, at) => [id, values[at]?.index ?? 0]));
}
