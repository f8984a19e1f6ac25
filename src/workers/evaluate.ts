import { broodViabilities, droneSource } from '../../graph/alleles/index.ts';
import { type MatingOutlook, whatIfMating } from '../../graph/choice/index.ts';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import { type FounderNumbers, founderNumbers } from '../../graph/kinship/founder-numbers.ts';
import { broodInbreedingOf, inbreedingOf } from '../../graph/kinship/inbreeding.ts';
import { type MeanKinship, meanKinship } from '../../graph/kinship/mean-kinship.ts';
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import { pedigreeProblemText } from '../../graph/kinship/problems.ts';
import { kinshipBlock } from '../../graph/kinship/sweeps.ts';
import { type Evaluation, type EvaluationOptions, evaluate } from '../../graph/merit/index.ts';
import type { YardId } from '../journal/ids.ts';
import type { EvaluationWork } from '../registry/evaluation.ts';

/** What the screens show of the numbers: breeding values with their doubt, kinship, and what daughters would meet. */
export interface EvaluationAnswer {
  readonly evaluation: Extract<Evaluation, { is: 'done' }>;
  /** A[q][q] = 1 + F of each evaluated queen; aligned to `evaluation.queens`. */
  readonly diagonal: Float64Array;
  readonly inbreeding: readonly number[];
  /** Undefined for a queen who has not mated. */
  readonly broodInbreeding: readonly (number | undefined)[];
  readonly candidates: readonly string[];
  /** Kinship of each pair of candidates, row by row. */
  readonly kinship: Float64Array;
  readonly meanKinship: MeanKinship | undefined;
  readonly founders: FounderNumbers | undefined;
  /** For each yard, what a daughter of each candidate would meet there; aligned to `candidates`. */
  readonly yards: readonly { readonly yard: YardId; readonly daughters: readonly MatingOutlook[] }[];
}

export interface EvaluateHooks {
  readonly onProgress?: (fraction: number) => void;
  readonly shouldStop?: () => boolean;
}

/** Histories of sex alleles dropped for the matings shown in a list; the page of one mating takes more. */
const LISTED_HISTORIES = 400;

/** The whole evaluation, or nothing when it was stopped. */
export function evaluateWork(work: EvaluationWork, hooks: EvaluateHooks = {}): EvaluationAnswer | undefined {
  const pedigree = compiled(work.pedigree);
  const options: EvaluationOptions = {
    ...(hooks.shouldStop ? { shouldStop: hooks.shouldStop } : {}),
    onProgress: (fraction) => hooks.onProgress?.(0.8 * fraction),
  };
  const evaluation = evaluate(
    {
      pedigree,
      observations: work.observations,
      queens: work.queens,
      candidates: work.candidates,
      variances: work.variances,
      weights: {},
      lineOf: (queen) => work.lines.get(queen as never),
    },
    options,
  );
  if (evaluation.is === 'stopped') return undefined;
  const indices = evaluation.queens.map((id) => indexOf(pedigree, id));
  const chosen = work.candidates.filter((id) => pedigree.queenIndex.has(id));
  const living = Int32Array.from(chosen, (id) => indexOf(pedigree, id));
  hooks.onProgress?.(0.8);
  const yards = listedOutlooks(pedigree, work, chosen);
  return {
    evaluation,
    diagonal: Float64Array.from(indices, (queen) => pedigree.diagonal[pedigree.queenNode[queen] ?? 0] ?? 1),
    inbreeding: indices.map((queen) => inbreedingOf(pedigree, queen)),
    broodInbreeding: indices.map((queen) => broodInbreedingOf(pedigree, queen)),
    candidates: chosen,
    kinship: kinshipBlock(
      pedigree,
      living.map((queen) => pedigree.queenNode[queen] ?? 0),
    ),
    meanKinship: living.length > 0 ? meanKinship(pedigree, living) : undefined,
    founders: living.length > 0 ? founderNumbers(pedigree, living) : undefined,
    yards,
  };
}

/** What a daughter of each candidate would meet at each yard. */
function listedOutlooks(
  pedigree: Pedigree,
  { pedigree: input, yards, effectiveMates, sexAlleles }: EvaluationWork,
  candidates: readonly string[],
): EvaluationAnswer['yards'] {
  const daughters = candidates.map((id) => ({ daughterOf: id }));
  const viabilities = broodViabilities(
    pedigree,
    {
      of: daughters,
      drones: yards.map(({ at }) => droneSource(pedigree, at)),
      mates: effectiveMates,
      alleles: allelesOf(input, sexAlleles),
    },
    { histories: LISTED_HISTORIES },
  );
  return yards.map(({ yard, at }, place) => ({
    yard,
    daughters: daughters.map((of, candidate) => {
      const viability = viabilities[place]?.[candidate];
      return { ...whatIfMating(pedigree, { of, at, effectiveMates }), ...(viability ? { viability } : {}) };
    }),
  }));
}

/** The same assumed number of sex alleles in every background. */
export function allelesOf(
  { backgrounds }: PedigreeInput,
  count: number,
): ReadonlyMap<string, { readonly count: number }> {
  return new Map(backgrounds.map(({ id }) => [id, { count }]));
}

/** Compiles what the registry made; it has no loops and no unknown names, so a refusal is a bug of ours. */
export function compiled(input: PedigreeInput): Pedigree {
  const result = compilePedigree(input);
  if (!result.ok) throw new Error(result.problems.map(pedigreeProblemText).join('\n'));
  return result.pedigree;
}

function indexOf(pedigree: Pedigree, id: string): number {
  const index = pedigree.queenIndex.get(id);
  if (index === undefined) throw new Error(`The pedigree has no queen ${id}.`);
  return index;
}
