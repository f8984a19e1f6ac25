import { RETAINED_DEFAULTS, retainedAlleles } from '../../graph/alleles/index.ts';
import { lookAhead, nodeValues, tradeOffCurve, whatIfMating } from '../../graph/choice/index.ts';
import { errorOfIndex, estimateTraits } from '../../graph/merit/index.ts';
import { allelesOf, compiled, type EvaluateHooks, evaluateWork } from './evaluate.ts';
import type {
  GenesKeptWork,
  MatingWork,
  TaskKind,
  Tasks,
  TraitVariances,
  VariancesWork,
} from './messages.ts';

type Runners = {
  readonly [K in TaskKind]: (work: Tasks[K]['work'], hooks: EvaluateHooks) => Tasks[K]['answer'] | undefined;
};

const RUNNERS: Runners = {
  evaluate: evaluateWork,
  mating: outlook,
  'trade-off': ({ kinshipLimit, ...problem }) =>
    tradeOffCurve(problem, kinshipLimit === undefined ? {} : { kinshipLimit }),
  'look-ahead': (input, hooks) => lookAhead(input, hooks),
  'genes-kept': genesKept,
  variances: estimates,
};

/** Runs one task to its end; nothing comes back from one that was stopped. */
export function runTask<K extends TaskKind>(
  kind: K,
  work: Tasks[K]['work'],
  hooks: EvaluateHooks = {},
): Tasks[K]['answer'] | undefined {
  return RUNNERS[kind](work, hooks);
}

function outlook({ pedigree: input, of, at, movedIn, effectiveMates, sexAlleles, merit }: MatingWork) {
  const pedigree = compiled(input);
  const values =
    merit &&
    nodeValues(
      pedigree,
      pedigree.queenIds.map((id) => merit.valueOf.get(id) ?? Number.NaN),
      () => 0,
    );
  return whatIfMating(pedigree, {
    of,
    at,
    effectiveMates,
    alleles: allelesOf(input, sexAlleles),
    ...(movedIn ? { movedIn } : {}),
    ...(merit && values
      ? {
          merit: {
            valueOf: (node: number) => values[node],
            variance: merit.variance,
            ...(merit.known ? { errorVariance: errorOfIndex({ pedigree, ...merit.known }) } : {}),
          },
        }
      : {}),
  });
}

/** Histories times queens that are dropped at most, and histories at least: a registry of thousands is told in seconds. */
const GENES_DROPPED = 4_000_000;
const FEWEST_HISTORIES = 100;

function genesKept({ pedigree: input, groups, sexAlleles }: GenesKeptWork, { onProgress }: EvaluateHooks) {
  const pedigree = compiled(input);
  const affordable = Math.round(GENES_DROPPED / Math.max(1, pedigree.queenIds.length));
  const histories = Math.max(FEWEST_HISTORIES, Math.min(RETAINED_DEFAULTS.histories, affordable));
  const sex = retainedAlleles(pedigree, groups, allelesOf(input, sexAlleles), { histories });
  onProgress?.(0.5);
  const founders = retainedAlleles(pedigree, groups, allelesOf(input, Number.POSITIVE_INFINITY), {
    histories,
  });
  return { sex, founders };
}

function estimates(
  { pedigree, observations }: VariancesWork,
  { onProgress, shouldStop }: EvaluateHooks,
): readonly TraitVariances[] | undefined {
  const { byTrait } = estimateTraits(compiled(pedigree), observations, {
    ...(onProgress ? { onProgress } : {}),
    ...(shouldStop ? { shouldStop } : {}),
  });
  if (shouldStop?.()) return undefined;
  return [...byTrait].map(([trait, estimate]) => ({ trait, estimate }));
}
