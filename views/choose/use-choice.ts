import { useMemo } from 'preact/hooks';
import type { Contributions, NoContributions } from '../../graph/choice/contribution-problem.ts';
import type { TraitWeights } from '../../graph/merit/index-of-traits.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId, YardId } from '../../src/journal/ids.ts';
import { colonyOfQueen, labelOn, queenTitle, yardsOf } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { Choosing } from '../../src/store/settings.ts';
import { traitWeights } from '../../src/store/trait-weights.ts';
import { useStore } from '../app/store-context.ts';
import { type LineFacts, lineFacts } from '../lines/facts.ts';
import { useTask } from '../parts/use-task.ts';
import { type Breeder, breedersOf, contributionProblem, type Plan, planOf, pointAt } from './plan.ts';
import { type Ranking, rankingOf } from './ranking.ts';
import { useSetting } from './use-setting.ts';

/** Everything that the parts of the screen share: the ranking by the weights of now, and the daughters planned. */
export interface Choice {
  readonly evaluated: Evaluated;
  readonly weights: TraitWeights;
  readonly setWeights: (weights: TraitWeights) => void;
  readonly ranking: Ranking;
  readonly choosing: Choosing;
  readonly setChoosing: (change: Partial<Choosing>) => void;
  /** Yards that the keeper works. */
  readonly yards: ReadonlySet<YardId>;
  readonly breeders: readonly Breeder[];
  /** The curve of gain against kinship, or why there is none; absent until it is worked out. */
  readonly curve: Curve | undefined;
  readonly plan: Plan | undefined;
  readonly lines: LineFacts;
  readonly nameOf: (queen: QueenId) => string;
  readonly yardName: (yard: YardId) => string;
}

export type Curve =
  | {
      readonly is: 'drawn';
      readonly points: readonly Contributions[];
      /** The first point that keeps the keeper's limit of kinship; those before it are beyond it. */
      readonly within: number;
      /** The point that the keeper stands on. */
      readonly at: number;
      /** The queens that its shares are of. */
      readonly breeders: readonly Breeder[];
      readonly busy: boolean;
    }
  | { readonly is: 'impossible'; readonly why: NoContributions }
  | { readonly is: 'failed'; readonly problem: string };

export function useChoice(evaluated: Evaluated): Choice {
  const store = useStore();
  const keeper = store.keeper.value.id;
  const { registry, on } = evaluated;
  const [ownWeights, setOwnWeights] = useSetting('traitWeights');
  const [choosing, setWhole] = useSetting('choosing');
  const weights = useMemo(() => traitWeights({ traitWeights: ownWeights }), [ownWeights]);
  const ranking = useMemo(() => rankingOf(evaluated, weights, keeper), [evaluated, weights, keeper]);
  const yards = useMemo(() => yardsOf(registry, keeper), [registry, keeper]);
  const { flownAt, takenIn } = choosing;
  // Only these two of the settings choose the breeders.
  const breeders = useMemo(
    () => breedersOf(evaluated, ranking, choosing, yards),
    [evaluated, ranking, flownAt, takenIn, yards],
  );
  const { curve, plan } = usePlan(evaluated, ranking, breeders, choosing);
  const lines = useMemo(() => lineFacts(registry, on), [registry, on]);
  return {
    evaluated,
    weights,
    setWeights: (next) => setOwnWeights(next as Record<string, number>),
    ranking,
    choosing,
    setChoosing: (change) => setWhole({ ...choosing, ...change }),
    yards,
    breeders,
    curve,
    plan,
    lines,
    nameOf: (id) => nameOf(registry, on, id),
    yardName: (id) => registry.yards.get(id)?.name ?? 'a yard not in these records',
  };
}

/** Her name; where she has none, the box she heads, so that no two are called alike: "H9’s queen". */
export function nameOf(registry: Registry, on: PlainDay, id: QueenId): string {
  const queen = registry.queens.get(id);
  if (!queen) return 'a queen not in these records';
  const colony = queen.name ? undefined : colonyOfQueen(registry, queen, on);
  return colony ? `${labelOn(colony, on)}’s queen` : queenTitle(queen);
}

/** The curve is worked out by the worker; the point on it and the whole daughters follow the hand here. */
function usePlan(
  evaluated: Evaluated,
  ranking: Ranking,
  breeders: readonly Breeder[],
  choosing: Choosing,
): { readonly curve: Curve | undefined; readonly plan: Plan | undefined } {
  const { daughters, mostEach, droneKinshipLimit, kinshipLimit, thrift } = choosing;
  // The place on the curve, and whom it was moved for, ask for no new curve.
  const problem = useMemo(() => {
    const problem = contributionProblem(evaluated, breeders, choosing);
    const asked = kinshipLimit === undefined ? problem : { ...problem, kinshipLimit };
    askedOf.set(asked, { evaluated, breeders });
    return asked;
  }, [evaluated, breeders, daughters, mostEach, droneKinshipLimit, kinshipLimit]);
  const task = useTask('trade-off', problem);
  return useMemo(() => {
    const { answer, of, busy } = task;
    if (task.problem !== undefined)
      return { curve: { is: 'failed', problem: task.problem } as const, plan: undefined };
    // Shares of the question before belong to its queens; they stay in sight until the new ones are there.
    const asked = of && askedOf.get(of);
    if (!answer || asked?.evaluated !== evaluated) return { curve: undefined, plan: undefined };
    if (!answer.ok) return { curve: { is: 'impossible', why: answer } as const, plan: undefined };
    const { points, within } = answer;
    const at = Math.max(within, pointAt(points, thrift));
    const shares = points[at]?.shares ?? [];
    return {
      curve: { is: 'drawn', points, within, at, breeders: asked.breeders, busy } as const,
      plan: planOf(evaluated, ranking, asked.breeders, shares, choosing),
    };
  }, [task, thrift, evaluated, ranking, choosing]);
}

const askedOf = new WeakMap<
  object,
  { readonly evaluated: Evaluated; readonly breeders: readonly Breeder[] }
>();
