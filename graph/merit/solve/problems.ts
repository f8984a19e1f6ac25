/**
 * What can keep breeding values from being computed, each with a sentence for the keeper. Nothing is computed here.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import type { ColonyRecords, ColonyVariances } from './colony-model.ts';
import { effectCovariance } from './colony-model.ts';
import { effectFactor } from './mixed-model.ts';

export type MeritProblemCode =
  /** A record of a colony whose queen has no mating: her workers have no father. */
  | 'mating-unknown'
  | 'no-records'
  /** A variance below 0, or a covariance larger than the two variances allow. */
  | 'impossible-variances'
  /** A sampling variance below 0, or a value that is no number. */
  | 'impossible-record'
  /** Dam or queen of a record not among the queens of the pedigree. */
  | 'unknown-queen';

export interface MeritProblem {
  readonly code: MeritProblemCode;
  /** Queen concerned, or index of the record where there is none. */
  readonly queen?: string;
  readonly record?: number;
  /** Where, what was found, what is expected, what to do. */
  readonly sentence: string;
}

function varianceProblems(variances: ColonyVariances): MeritProblem[] {
  const problems: MeritProblem[] = [];
  const refuse = (sentence: string) => problems.push({ code: 'impossible-variances', sentence });
  for (const name of ['worker', 'queen', 'permanent'] as const) {
    if (!(variances[name] >= 0 && Number.isFinite(variances[name]))) {
      refuse(`The ${name} variance is ${variances[name]}; a variance is a number of at least 0. Correct it.`);
    }
  }
  if (!(variances.residual > 0 && Number.isFinite(variances.residual))) {
    refuse(`The residual variance is ${variances.residual}; it must be a number above 0. Correct it.`);
  }
  if (problems.length === 0 && !effectFactor(effectCovariance(variances))) {
    const most = Math.sqrt(variances.worker * variances.queen);
    refuse(
      `The covariance of worker and queen effect is ${variances.covariance}; with these variances it lies between ` +
        `${(-most).toPrecision(6)} and ${most.toPrecision(6)}. Correct it or a variance.`,
    );
  }
  return problems;
}

function recordProblems(pedigree: Pedigree, records: ColonyRecords): MeritProblem[] {
  const problems: MeritProblem[] = [];
  const unmated = new Set<number>();
  for (let r = 0; r < records.queen.length; r++) {
    const q = records.queen[r]!;
    if (pedigree.matesNode[q]! < 0) unmated.add(q);
    if (Number.isFinite(records.value[r]!) && records.samplingVariance[r]! >= 0) continue;
    problems.push({
      code: 'impossible-record',
      record: r,
      queen: pedigree.queenIds[q]!,
      sentence:
        `Record ${r + 1}, of queen '${pedigree.queenIds[q]}', has the value ${records.value[r]} and the sampling ` +
        `variance ${records.samplingVariance[r]}; a number, and a number of at least 0, are expected. Correct it.`,
    });
  }
  for (const q of unmated) {
    problems.push({
      code: 'mating-unknown',
      queen: pedigree.queenIds[q]!,
      sentence:
        `Queen '${pedigree.queenIds[q]}' has records of her colony but no mating, and her workers are half her ` +
        "mates'. Say which drones she met, if only those of a background, or leave the records out.",
    });
  }
  return problems;
}

/** Everything that is wrong; empty when the breeding values can be computed. */
export function meritProblems(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
): readonly MeritProblem[] {
  const none: MeritProblem = {
    code: 'no-records',
    sentence:
      'There is no record of this trait, so nothing tells the queens apart. Record some, or leave it out.',
  };
  return [
    ...varianceProblems(variances),
    ...(records.queen.length === 0 ? [none] : []),
    ...recordProblems(pedigree, records),
  ];
}
