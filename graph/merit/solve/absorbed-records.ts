/**
 * Records summed to one row a unit (recorded queen), with the comparison groups taken out: small dense matrices.
 *
 *   Q = R^-1 - R^-1 X (X'R^-1 X)^-1 X'R^-1        R diagonal, X the groups
 *   M = Z'Q Z (units x units),   g = Z'Q y,   y'Q y,   log|R| + log|X'R^-1 X| for the likelihood
 *
 * Source: absorption of fixed effects, Henderson 1984 (from memory). Cost: O(sum of squared group sizes).
 * Unknowns: none; a group of one record cancels out and informs on nothing.
 */
import type { ColonyRecords } from './colony-model.ts';

export interface AbsorbedRecords {
  readonly units: number;
  /** M. */
  readonly information: Float64Array;
  /** g. */
  readonly right: Float64Array;
  /** 1 / R of each record. */
  readonly weight: Float64Array;
  /** Sum of weights and weighted mean of the values of each group. */
  readonly groupWeight: Float64Array;
  readonly groupMean: Float64Array;
}

/** `unitOf`: unit of each record; `residual`: the common residual variance. */
export function absorbRecords(
  records: ColonyRecords,
  unitOf: Int32Array,
  units: number,
  residual: number,
): AbsorbedRecords {
  const { group, groups, value, samplingVariance } = records;
  const weight = samplingVariance.map((sampling) => 1 / (residual + sampling));
  const groupWeight = new Float64Array(groups);
  const groupMean = new Float64Array(groups);
  const members: number[][] = Array.from({ length: groups }, () => []);
  for (let r = 0; r < value.length; r++) {
    groupWeight[group[r]!]! += weight[r]!;
    groupMean[group[r]!]! += weight[r]! * value[r]!;
    members[group[r]!]!.push(r);
  }
  for (let g = 0; g < groups; g++) groupMean[g] = groupWeight[g]! > 0 ? groupMean[g]! / groupWeight[g]! : 0;
  const information = new Float64Array(units * units);
  const right = new Float64Array(units);
  for (let r = 0; r < value.length; r++) {
    const unit = unitOf[r]!;
    information[unit * units + unit]! += weight[r]!;
    right[unit]! += weight[r]! * (value[r]! - groupMean[group[r]!]!);
  }
  members.forEach((inGroup, g) => {
    for (const r of inGroup) {
      const scaled = weight[r]! / groupWeight[g]!;
      for (const s of inGroup) information[unitOf[r]! * units + unitOf[s]!]! -= scaled * weight[s]!;
    }
  });
  return { units, information, right, weight, groupWeight, groupMean };
}
