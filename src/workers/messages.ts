import type { QueenGroup, RetainedAlleles } from '../../graph/alleles/index.ts';
import type {
  ContributionProblem,
  LookAhead,
  LookAheadInput,
  MatingOutlook,
  tradeOffCurve,
  WhatIfMating,
} from '../../graph/choice/index.ts';
import type { PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import type { KnownMerit, TraitId, TraitObservation, VarianceEstimate } from '../../graph/merit/index.ts';
import type { EvaluationWork } from '../registry/evaluation.ts';
import type { EvaluationAnswer } from './evaluate.ts';

/** What the numerics can be asked, wherever they run. Each task has its answer; all is plain data. */
export interface Tasks {
  readonly evaluate: { readonly work: EvaluationWork; readonly answer: EvaluationAnswer };
  readonly mating: { readonly work: MatingWork; readonly answer: MatingOutlook };
  readonly 'trade-off': {
    readonly work: TradeOffWork;
    readonly answer: ReturnType<typeof tradeOffCurve>;
  };
  readonly 'look-ahead': { readonly work: LookAheadInput; readonly answer: LookAhead };
  readonly 'genes-kept': { readonly work: GenesKeptWork; readonly answer: GenesKept };
  readonly variances: { readonly work: VariancesWork; readonly answer: readonly TraitVariances[] };
}
export type TaskKind = keyof Tasks;

export interface TradeOffWork extends ContributionProblem {
  /** Limit (0..1) of the kinship between the dams; absent: no limit. */
  readonly kinshipLimit?: number;
}

export interface MatingWork {
  readonly pedigree: PedigreeInput;
  readonly of: WhatIfMating['of'];
  readonly at: WhatIfMating['at'];
  readonly movedIn?: NonNullable<WhatIfMating['movedIn']>;
  readonly effectiveMates: number;
  readonly sexAlleles: number;
  /** Index of each evaluated queen in her own spread, with its variance in the base population. */
  readonly merit?: {
    readonly valueOf: ReadonlyMap<string, number>;
    readonly variance: number;
    /** What the values rest on; with it the standard error of the outlook is told as well. */
    readonly known?: Omit<KnownMerit, 'pedigree'>;
  };
}

export interface GenesKeptWork {
  readonly pedigree: PedigreeInput;
  readonly groups: readonly QueenGroup[];
  readonly sexAlleles: number;
}

/** For each group, in their order: different sex alleles, and different genes of founders at any other place. */
export interface GenesKept {
  readonly sex: readonly RetainedAlleles[];
  readonly founders: readonly RetainedAlleles[];
}

export interface VariancesWork {
  readonly pedigree: PedigreeInput;
  readonly observations: readonly TraitObservation[];
}

export interface TraitVariances {
  readonly trait: TraitId;
  readonly estimate: VarianceEstimate;
}

export type Request = {
  [K in TaskKind]: { readonly kind: K; readonly id: number; readonly work: Tasks[K]['work'] };
}[TaskKind];

export type Response =
  | { readonly kind: 'progress'; readonly id: number; readonly fraction: number }
  | { readonly kind: 'answer'; readonly id: number; readonly answer: Tasks[TaskKind]['answer'] }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };

export interface RunOptions {
  /** Ends the work; the promise then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
  /** Share of the work done, 0 to 1. */
  readonly onProgress?: (fraction: number) => void;
}

/** Runs tasks: in a worker (`client.ts`); in tests, here and now. */
export interface Compute {
  run<K extends TaskKind>(kind: K, work: Tasks[K]['work'], options?: RunOptions): Promise<Tasks[K]['answer']>;
  close(): void;
}
