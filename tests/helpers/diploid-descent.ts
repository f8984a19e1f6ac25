/**
 * A textbook (diploid) pedigree as the solver's descent: parents with coefficient 1/2, Mendelian variances from the
 * tabular method. So that published examples run through the very solver that serves queens.
 */
import type { Descent } from '../../graph/merit/solve/mixed-model.ts';

/** `[sire, dam]` of each animal by number from 1; 0 or a missing parent is unknown. */
export type Parents = readonly (readonly [sire: number, dam: number])[];

/** Henderson's tabular method: A with 1 + F on its diagonal. */
export function tabularRelationship(parents: Parents): number[][] {
  const A: number[][] = parents.map(() => parents.map(() => 0));
  const at = (i: number, j: number) => (i > 0 && j > 0 ? A[i - 1]![j - 1]! : 0);
  parents.forEach(([sire, dam], index) => {
    for (let other = 0; other < index; other++) {
      A[index]![other] = (at(sire, other + 1) + at(dam, other + 1)) / 2;
      A[other]![index] = A[index]![other]!;
    }
    A[index]![index] = 1 + at(sire, dam) / 2;
  });
  return A;
}

export function diploidDescent(parents: Parents): Descent {
  const A = tabularRelationship(parents);
  const start = [0];
  const parent: number[] = [];
  const mendelian = parents.map((pair, index) => {
    const known = pair.filter((one) => one > 0).map((one) => one - 1);
    parent.push(...known);
    start.push(parent.length);
    const fromParents = known.reduce(
      (sum, p) => sum + known.reduce((inner, q) => inner + A[p]![q]! / 4, 0),
      0,
    );
    return A[index]![index]! - fromParents;
  });
  return {
    size: parents.length,
    parentStart: Int32Array.from(start),
    parent: Int32Array.from(parent),
    coefficient: new Float64Array(parent.length).fill(0.5),
    mendelian: Float64Array.from(mendelian),
  };
}

export interface TextbookRecord {
  readonly value: number;
  /** Node (from 0) whose first effect the record shows; its dam's node for the second. */
  readonly animal: number;
  readonly dam?: number;
  readonly level: number;
  /** Fixed columns, -1 for a level held at zero. */
  readonly columns: readonly number[];
}

/** Arrays of the solver from rows. */
export function textbookModel(
  descent: Descent,
  records: readonly TextbookRecord[],
  options: {
    readonly effects: { readonly first: number; readonly second: number; readonly both: number };
    readonly levels: number;
    readonly levelVariance: number;
    readonly residual: number;
    readonly columns: number;
  },
) {
  const entries = records.map(({ animal, dam }) => [
    { node: animal, first: 1, second: 0 },
    ...(dam === undefined ? [] : [{ node: dam, first: 0, second: 1 }]),
  ]);
  const flat = entries.flat();
  const start = [0];
  for (const row of entries) start.push(start.at(-1)! + row.length);
  return {
    descent,
    effects: options.effects,
    predictors: {
      start: Int32Array.from(start),
      node: Int32Array.from(flat, ({ node }) => node),
      first: Float64Array.from(flat, ({ first }) => first),
      second: Float64Array.from(flat, ({ second }) => second),
    },
    levelVariance: new Float64Array(options.levels).fill(options.levelVariance),
    columns: options.columns,
    factors: records[0]!.columns.length,
    column: Int32Array.from(records.flatMap(({ columns }) => columns)),
    predictor: Int32Array.from(records, (_, r) => r),
    level: Int32Array.from(records, ({ level }) => level),
    value: Float64Array.from(records, ({ value }) => value),
    weight: new Float64Array(records.length).fill(1 / options.residual),
  };
}
