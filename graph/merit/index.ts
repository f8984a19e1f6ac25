export * from './collect-records.ts';
export { type GroupSummary, SMALL_GROUP } from './comparison-groups.ts';
export * from './counts/comparison.ts';
export * from './counts/growth.ts';
export * from './counts/infestation.ts';
export * from './counts/intervals.ts';
export { errorOfIndex, type KnownMerit } from './error-of-index.ts';
export * from './estimate/estimate-traits.ts';
export * from './estimate/reml.ts';
export {
  allSetAside,
  type Evaluation,
  type EvaluationInput,
  type EvaluationOptions,
  evaluate,
  reweigh,
  type TraitEvaluation,
  type TraitWarning,
} from './evaluate.ts';
export * from './index-errors.ts';
export * from './index-of-traits.ts';
export * from './not-ranked.ts';
export * from './observations.ts';
export type { ColonyRecords, ColonyVariances } from './solve/colony-model.ts';
export { type Combination, errorCovariance, priorCovariance } from './solve/error-covariance.ts';
export { type MeritOptions, type MeritResult, solveMerit } from './solve/merit.ts';
export * from './solve/pack-records.ts';
export type { MeritProblem, MeritProblemCode } from './solve/problems.ts';
export { type ReliabilityResult, reliabilities } from './solve/reliability.ts';
export * from './survival/group-survival.ts';
export * from './survival/kaplan-meier.ts';
export * from './survival/line-scores.ts';
export * from './survival/log-rank.ts';
export * from './survival/shrinkage.ts';
export * from './trait-record.ts';
export { WEARING_OFF_DAYS } from './traits/after-treatment.ts';
export * from './traits/all-traits.ts';
export * from './traits/default-variances.ts';
export * from './traits/trait.ts';
