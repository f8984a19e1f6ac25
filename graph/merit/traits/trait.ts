/**
 * The form of a trait: what it reads, how one record comes of it, what is set aside, and its default variances. A trait
 * is a declaration; `collect-records.ts` reads it, the same way for all.
 */
import type { TraitObservation } from '../observations.ts';

export type TraitId =
  | 'winter-survival'
  | 'winter-strength'
  | 'spring-build-up'
  | 'gentle'
  | 'calm'
  | 'swarm-tendency'
  | 'mite-level'
  | 'mite-growth'
  | 'hygienic'
  | 'brood-pattern'
  | 'honey';

/** Why an observation is no record of a queen. */
export type SetAsideCode =
  | 'changing-over'
  | 'nobody-known'
  | 'day-not-exact'
  | 'yard-unknown'
  | 'treatment-acting'
  | 'after-treatment'
  | 'treatment-between'
  | 'loss-from-outside'
  | 'too-weak-to-tell'
  | 'group-of-one'
  | 'not-in-pedigree'
  | 'mating-unknown';

/** A reason particular to the trait, with a sentence for the keeper. */
export interface Reason {
  readonly setAside: SetAsideCode;
  readonly sentence: string;
}

/** One figure in the trait's unit, with the part of its variance that comes of counting or judging. */
export interface Figure {
  readonly value: number;
  /** In the squared unit; >= 0. */
  readonly samplingVariance: number;
}

/** How well a figure in a line of source text is known. */
export type SourceStatus = 'published' | 'from memory' | 'assumed';

/**
 * Default variances as shares of the phenotypic variance of one record inside a comparison group. `worker` and `queen`
 * are the additive variances of the two effects, `correlation` that between them.
 */
export interface DefaultVariances {
  /** In the squared unit of the trait. */
  readonly phenotypic: number;
  readonly worker: number;
  readonly queen: number;
  readonly correlation: number;
  readonly permanent: number;
  readonly status: SourceStatus;
  readonly source: string;
}

interface TraitBase {
  readonly id: TraitId;
  /** Unit of the record, after any transformation. */
  readonly unit: string;
  readonly better: 'higher' | 'lower';
  /** In words: what it reads and how a record comes of it. */
  readonly method: string;
  /** Protocol or source of the method. */
  readonly protocol: string;
  readonly variances: DefaultVariances;
  /** False where the year is enough: a harvest, a winter. */
  readonly needsDay: boolean;
  /** Adds to yard and season what else must be alike for a fair comparison (method, hours). */
  readonly alike?: (observation: TraitObservation) => string;
}

/** Every observation is a record by itself. `undefined`: the observation does not speak of this trait. */
export interface EachTrait extends TraitBase {
  readonly shape: 'each';
  readonly figure: (observation: TraitObservation) => Figure | Reason | undefined;
}

/** The observations of a queen's colony in one season make one record. */
export interface SeasonTrait extends TraitBase {
  readonly shape: 'season';
  readonly score: (observation: TraitObservation) => number | Reason | undefined;
  readonly combine: (scores: readonly number[]) => Figure;
  /** Evaluations that the protocol asks for; fewer are used, weigh less and are warned of. */
  readonly protocolEvaluations: number;
}

/** The first and the last observation of a season make one record, if far enough apart. */
export interface PairTrait extends TraitBase {
  readonly shape: 'pair';
  readonly usable: (observation: TraitObservation) => boolean | Reason;
  /** Days between the two that are wanted. */
  readonly daysApart: readonly [least: number, most: number];
  readonly join: (
    earlier: TraitObservation,
    later: TraitObservation,
    days: number,
  ) => Figure | Reason | undefined;
}

export type Trait = EachTrait | SeasonTrait | PairTrait;

/** Whether a trait gave a reason to set the record aside in place of a figure. */
export function isReason(value: unknown): value is Reason {
  return typeof value === 'object' && value !== null && 'setAside' in value;
}
