import type { ContributionProblem, Contributions } from '../../graph/choice/contribution-problem.ts';
import { wholeDaughters } from '../../graph/choice/whole-daughters.ts';
import { groupBy } from '../../graph/grouping.ts';
import type { QueenId, YardId } from '../../src/journal/ids.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { Choosing } from '../../src/store/settings.ts';
import { NINE_TENTHS } from './merit-scale.ts';
import type { Candidate, Ranking } from './ranking.ts';
import { type BestYard, bestYard, yardRisks } from './yard-risk.ts';

/** How many daughters from whom, flown where: the question put to the numerics, and the answer in whole daughters. */

/** A queen who may be bred from, and where her daughters would fly. */
export interface Breeder {
  readonly row: Candidate;
  readonly flies: BestYard | undefined;
}

/** Whether a queen is in the choice: as the keeper said, else when she stands at a yard that the keeper works. */
export function isTakenIn({ id, mine }: Pick<Candidate, 'id' | 'mine'>, { takenIn }: Choosing): boolean {
  return takenIn[id] ?? mine;
}

/** The queens in the choice, best first, each with the yard that her daughters fly at. */
export function breedersOf(
  evaluated: Evaluated,
  { rows }: Ranking,
  choosing: Choosing,
  yards: ReadonlySet<YardId>,
): readonly Breeder[] {
  return rows
    .filter((row) => isTakenIn(row, choosing))
    .map((row) => ({ row, flies: fliesAt(evaluated, row, choosing.flownAt, yards) }));
}

/** Her best yard among those of the keeper, or the one yard that all fly at. */
export function fliesAt(
  evaluated: Evaluated,
  { place }: Pick<Candidate, 'place'>,
  flownAt: string | undefined,
  yards: ReadonlySet<YardId>,
): BestYard | undefined {
  const risks = yardRisks(evaluated, place);
  const one = risks.find(({ yard }) => yard === flownAt);
  if (one) return { risk: one, any: false };
  const own = risks.filter(({ yard }) => yards.has(yard));
  return bestYard(own.length > 0 ? own : risks);
}

/** Daughters that can be had: as many as are wanted, or as the most from one queen allows. */
export function daughtersToHave(breeders: number, { daughters, mostEach }: Choosing): number {
  return breeders === 0 ? daughters : Math.min(daughters, breeders * mostEach);
}

export function contributionProblem(
  { answer }: Evaluated,
  breeders: readonly Breeder[],
  choosing: Choosing,
): ContributionProblem {
  const { mostEach, droneKinshipLimit } = choosing;
  const size = answer.candidates.length;
  const places = breeders.map(({ row }) => row.place);
  const known = breeders.every(({ flies }) => flies !== undefined);
  return {
    merit: places.map((_, k) => breeders[k]?.row.merit ?? 0),
    kinship: places.flatMap((a) => places.map((b) => answer.kinship[a * size + b] ?? 0)),
    caps: places.map(() => Math.min(1, mostEach / daughtersToHave(breeders.length, choosing))),
    ...(known ? { poolKinship: breeders.map(({ flies }) => flies?.risk.broodInbreeding ?? 0) } : {}),
    ...(known && droneKinshipLimit !== undefined ? { poolKinshipLimit: droneKinshipLimit } : {}),
  };
}

/** The point of the curve that the keeper stands on: `thrift` of the way from the most kinship to the least. */
export function pointAt(points: readonly Pick<Contributions, 'groupKinship'>[], thrift: number): number {
  const kinships = points.map(({ groupKinship }) => groupKinship);
  const most = Math.max(...kinships);
  const wanted = most - thrift * (most - Math.min(...kinships));
  let best = 0;
  kinships.forEach((kinship, k) => {
    if (Math.abs(kinship - wanted) < Math.abs((kinships[best] ?? 0) - wanted)) best = k;
  });
  return best;
}

/** The `thrift` of a point, for keeping the place when the curve changes under it. */
export function thriftOf(points: readonly Pick<Contributions, 'groupKinship'>[], at: number): number {
  const kinships = points.map(({ groupKinship }) => groupKinship);
  const most = Math.max(...kinships);
  const width = most - Math.min(...kinships);
  return width === 0 ? 0 : Math.min(1, Math.max(0, (most - (kinships[at] ?? most)) / width));
}

export interface PlannedDam extends Breeder {
  readonly daughters: number;
}

/** One point of the curve in whole daughters. */
export interface Plan {
  /** Dams with a daughter, in the order of the list. */
  readonly dams: readonly PlannedDam[];
  readonly daughters: number;
  /** Mean merit of the dams above that of all queens in the choice, weighed by daughters, in spreads. */
  readonly gain: number;
  /** Standard error of that gain. */
  readonly gainError: number;
  /** Mean kinship (0..1) of the dams of two daughters, drawn with replacement. */
  readonly kinship: number;
  /** Mean inbreeding of the brood of the daughters; absent where a yard is not known. */
  readonly broodInbreeding: number | undefined;
}

export function planOf(
  evaluated: Evaluated,
  ranking: Ranking,
  breeders: readonly Breeder[],
  shares: ArrayLike<number>,
  choosing: Choosing,
): Plan {
  const whole = wholeDaughters(
    shares,
    daughtersToHave(breeders.length, choosing),
    breeders.map(() => choosing.mostEach),
  );
  const daughters = whole.reduce((sum, each) => sum + each, 0);
  const dams = breeders.flatMap((breeder, k): PlannedDam[] =>
    whole[k] ? [{ ...breeder, daughters: whole[k] ?? 0 }] : [],
  );
  const size = evaluated.answer.candidates.length;
  const contrast = new Float64Array(size);
  for (const { row } of breeders) contrast[row.place] = -1 / breeders.length;
  const weight = new Float64Array(size);
  for (const dam of dams) weight[dam.row.place] = dam.daughters / (daughters || 1);
  contrast.forEach((value, k) => {
    contrast[k] = value + (weight[k] ?? 0);
  });
  const known = dams.every(({ flies }) => flies !== undefined);
  return {
    dams,
    daughters,
    gain: contrast.reduce((sum, value, k) => sum + value * (ranking.merits[k] ?? 0), 0),
    gainError: Math.sqrt(Math.max(0, quadratic(ranking.errors, contrast))),
    kinship: quadratic(evaluated.answer.kinship, weight),
    broodInbreeding: known
      ? dams.reduce(
          (sum, dam) => sum + (dam.daughters / (daughters || 1)) * (dam.flies?.risk.broodInbreeding ?? 0),
          0,
        )
      : undefined,
  };
}

function quadratic(matrix: Float64Array, v: Float64Array): number {
  const size = v.length;
  let sum = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) sum += (v[i] ?? 0) * (v[j] ?? 0) * (matrix[i * size + j] ?? 0);
  }
  return sum;
}

/** Nine times in ten the gain lies between these. */
export function gainBand({ gain, gainError }: Plan): readonly [low: number, high: number] {
  return [gain - NINE_TENTHS * gainError, gain + NINE_TENTHS * gainError];
}

export interface LineKept {
  readonly line: QueenId;
  /** Living laying queens of the line. */
  readonly living: readonly QueenId[];
  readonly daughters: number;
}

/** Every line that is alive, most daughters first, and how many daughters it gets. */
export function linesKept({ rows }: Ranking, { dams }: Pick<Plan, 'dams'>): readonly LineKept[] {
  const daughters = new Map(dams.map((dam) => [dam.row.id, dam.daughters]));
  return [...groupBy(rows, ({ line }) => line)]
    .map(([line, members]) => ({
      line,
      living: members.map(({ id }) => id),
      daughters: members.reduce((sum, { id }) => sum + (daughters.get(id) ?? 0), 0),
    }))
    .sort(
      (a, b) => b.daughters - a.daughters || b.living.length - a.living.length || (a.line < b.line ? -1 : 1),
    );
}
