import { lookAhead, nodeValues, tradeOffCurve, whatIfMating } from '../../graph/choice/index.ts';
import {
  collectRecords,
  defaultVariances,
  estimateVariances,
  packRecords,
  phenotypicVariance,
  TRAITS,
} from '../../graph/merit/index.ts';
import { allelesOf, compiled, type EvaluateHooks, evaluateWork } from './evaluate.ts';
import type { MatingWork, TaskKind, Tasks, TraitVariances, VariancesWork } from './messages.ts';

type Runners = {
  readonly [K in TaskKind]: (work: Tasks[K]['work'], hooks: EvaluateHooks) => Tasks[K]['answer'] | undefined;
};

const RUNNERS: Runners = {
  evaluate: evaluateWork,
  mating: outlook,
  'trade-off': (problem) => tradeOffCurve(problem),
  'look-ahead': (input, hooks) => lookAhead(input, hooks),
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
      ? { merit: { valueOf: (node: number) => values[node], variance: merit.variance } }
      : {}),
  });
}

function estimates(
  { pedigree: input, observations }: VariancesWork,
  hooks: EvaluateHooks,
): readonly TraitVariances[] | undefined {
  const pedigree = compiled(input);
  const refuses = (queen: string) =>
    pedigree.queenIndex.has(queen)
      ? undefined
      : { setAside: 'not-in-pedigree' as const, sentence: 'The queen has no place in the pedigree yet.' };
  const answers: TraitVariances[] = [];
  for (const [index, trait] of TRAITS.entries()) {
    if (hooks.shouldStop?.()) return undefined;
    const collected = collectRecords(trait, observations, { refuses });
    const { phenotypic } = phenotypicVariance(collected.records, trait.variances.phenotypic);
    const start = defaultVariances(trait.variances, phenotypic);
    const estimate = estimateVariances(pedigree, packRecords(pedigree, collected.records).records, start);
    answers.push({ trait: trait.id, estimate });
    hooks.onProgress?.((index + 1) / TRAITS.length);
  }
  return answers;
}
