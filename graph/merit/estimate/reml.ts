/**
 * Variances of a trait from the keeper's own records, by restricted maximum likelihood.
 *
 * Coordinates (`coordinates.ts`) make any step possible. Steps: (J'A J - bend + damping) step = J' slope, J the slopes of
 * the variances by the coordinates, A the average information, bend the slope times the second derivatives of the
 * variances; damping falls after a gain and rises after a failure.
 * Standard errors are the roots of the diagonal of (average information)^-1 at the end, over the components that may move.
 *
 * Sources: Gilmour, Thompson & Cullis 1995, Biometrics 51:1440 (average information); Levenberg 1944 (damping); Patterson
 * & Thompson 1971, Biometrika 58:545 (all from memory). The least numbers of records are project assumptions.
 * Cost: some ten to thirty times O(m^3), m recorded queens; refused beyond `MOST_QUEENS`.
 * Unknowns: too few records are refused with a sentence; the caller then keeps the published variances.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import { choleskyInPlace, choleskySolveInPlace } from '../dense.ts';
import { type ColonyRecords, type ColonyVariances, recordedQueens } from '../solve/colony-model.ts';
import { meritProblems } from '../solve/problems.ts';
import { type Coordinates, coordinatesOf, onCoordinates } from './coordinates.ts';
import {
  COMPONENTS,
  type EstimationData,
  estimationData,
  type Likelihood,
  likelihoodAt,
  logLikelihoodAt,
} from './likelihood.ts';

export type Component = (typeof COMPONENTS)[number];

/** Least records and recorded queens for each kind of estimate; more queens than the last are not for dense algebra. */
const ESTIMATE_LIMITS = {
  ratio: { records: 150, queens: 60 },
  all: { records: 400, queens: 150 },
} as const;
const MOST_QUEENS = 1500;

export interface EstimateOptions {
  /** 'auto': all five where the records are many, else the ratio of the genetic three held as at the start. */
  readonly estimate: 'auto' | 'all' | 'ratio';
  readonly mostIterations: number;
  /** A gain in log-likelihood below this ends the search. */
  readonly tolerance: number;
  /** Hold records to `ESTIMATE_LIMITS`. */
  readonly checkNumbers: boolean;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (fraction: number) => void;
}

const ESTIMATE_DEFAULTS: EstimateOptions = {
  estimate: 'auto',
  mostIterations: 60,
  tolerance: 1e-7,
  checkNumbers: true,
};

export type VarianceEstimate =
  | {
      readonly is: 'estimated';
      readonly variances: ColonyVariances;
      /** Absent for a component at the edge of what is possible (a variance of 0) or not estimated. */
      readonly standardErrors: Partial<Record<Component, number>>;
      readonly logLikelihood: number;
      /** At the start: twice the difference tells how far the records disagree with the published variances. */
      readonly logLikelihoodAtStart: number;
      readonly iterations: number;
      readonly converged: boolean;
      readonly estimated: 'all' | 'ratio';
    }
  | { readonly is: 'refused'; readonly sentence: string; readonly tooFew?: TooFew };

/** What is there, and the least that is needed. */
export interface TooFew {
  readonly records: number;
  readonly queens: number;
  readonly groups: number;
  /** Records beyond one for each group. */
  readonly leastRecords: number;
  readonly leastQueens: number;
}

/** Gain in log-likelihood from which the edges are looked at. */
const NEARLY_THERE = 0.01;
/** Squared coordinate over the residual variance below which it is at its edge, and to which it is lifted. */
const EDGE = 0.01;
const LIFT = 0.05;
const AT_EDGE = 1e-5;
const DAMPING = { start: 1e-3, fall: 0.2, rise: 8, most: 1e12 };

/** Estimates from `start` (the published variances, say). */
export function estimateVariances(
  pedigree: Pedigree,
  records: ColonyRecords,
  start: ColonyVariances,
  options: Partial<EstimateOptions> = {},
): VarianceEstimate {
  const settings = { ...ESTIMATE_DEFAULTS, ...options };
  const problem = meritProblems(pedigree, records, start)[0];
  if (problem) return { is: 'refused', sentence: problem.sentence };
  const queens = recordedQueens(pedigree, records.queen);
  const estimated = kindOf(settings.estimate, records.queen.length, queens);
  const refused = settings.checkNumbers ? refusal(records, queens, estimated) : undefined;
  if (refused) return refused;
  return search(estimationData(pedigree, records), start, estimated, settings);
}

function kindOf(wanted: EstimateOptions['estimate'], records: number, queens: number): 'all' | 'ratio' {
  if (wanted !== 'auto') return wanted;
  const { all } = ESTIMATE_LIMITS;
  return records >= all.records && queens >= all.queens ? 'all' : 'ratio';
}

function refusal(
  { queen, groups }: ColonyRecords,
  queens: number,
  kind: 'all' | 'ratio',
): Extract<VarianceEstimate, { is: 'refused' }> | undefined {
  const { records: leastRecords, queens: leastQueens } = ESTIMATE_LIMITS[kind];
  if (queens > MOST_QUEENS) {
    const sentence = `${queens} queens have records; estimating variances is made for up to ${MOST_QUEENS}. The published ones stay.`;
    return { is: 'refused', sentence };
  }
  const compared = queen.length - groups;
  if (compared >= leastRecords && queens >= leastQueens) return undefined;
  const sentence =
    `${queen.length} records of ${queens} queens in ${groups} comparison groups are too few to estimate variances ` +
    `from: at least ${leastRecords} beyond the groups, of ${leastQueens} queens, are needed. The published ones stay.`;
  return {
    is: 'refused',
    sentence,
    tooFew: { records: queen.length, queens, groups, leastRecords, leastQueens },
  };
}

function search(
  data: EstimationData,
  start: ColonyVariances,
  estimated: 'all' | 'ratio',
  { mostIterations, tolerance, shouldStop, onProgress }: EstimateOptions,
): VarianceEstimate {
  const coordinates = coordinatesOf(estimated, start);
  let at = coordinates.start;
  let here = likelihoodAt(data, coordinates.variances(at));
  const logLikelihoodAtStart = logLikelihoodAt(data, start);
  let damping = DAMPING.start;
  let iterations = 0;
  let converged = false;
  while (!converged && iterations < mostIterations && shouldStop?.() !== true) {
    const { slope, information } = onCoordinates(coordinates.slopes(at), here.slope, here.information);
    const bend = coordinates.bend(here.slope);
    let gain: number | undefined;
    while (gain === undefined && damping <= DAMPING.most) {
      const step = dampedStep(information, bend, slope, damping);
      const next = step && at.map((value, k) => value + step[k]!);
      const reached = next ? logLikelihoodAt(data, coordinates.variances(next)) : Number.NEGATIVE_INFINITY;
      if (next && reached >= here.logLikelihood) {
        gain = reached - here.logLikelihood;
        at = next;
        damping = Math.max(1e-8, damping * DAMPING.fall);
      } else damping *= DAMPING.rise;
    }
    iterations++;
    if (gain !== undefined) here = likelihoodAt(data, coordinates.variances(at));
    if (gain === undefined || gain < NEARLY_THERE) {
      const lifted = liftFromEdge(data, coordinates, at, here);
      converged = lifted === undefined && (gain === undefined || gain < tolerance);
      if (lifted) {
        at = lifted;
        here = likelihoodAt(data, coordinates.variances(at));
        damping = DAMPING.start;
      }
    }
    onProgress?.(Math.min(1, iterations / mostIterations));
  }
  const variances = coordinates.variances(at);
  return {
    is: 'estimated',
    variances,
    standardErrors: standardErrors(coordinates.slopes(at), here.information, variances, estimated),
    logLikelihood: here.logLikelihood,
    logLikelihoodAtStart,
    iterations,
    converged,
    estimated,
  };
}

/**
 * A coordinate at 0 has no slope even where its variance wants to grow. Moves such a one off the edge; `undefined` where
 * none is there or nothing is gained.
 */
function liftFromEdge(
  data: EstimationData,
  coordinates: Coordinates,
  at: Float64Array,
  here: Likelihood,
): Float64Array | undefined {
  const { residual } = coordinates.variances(at);
  for (const [coordinate, component] of coordinates.edges) {
    if (at[coordinate]! ** 2 > EDGE * residual || here.slope[component]! <= 0) continue;
    const lifted = at.slice();
    lifted[coordinate] = Math.sqrt(LIFT * residual);
    if (logLikelihoodAt(data, coordinates.variances(lifted)) > here.logLikelihood) return lifted;
  }
  return undefined;
}

/** The step; `undefined` while the damped matrix is not positive definite. */
function dampedStep(
  information: Float64Array,
  bend: Float64Array,
  slope: Float64Array,
  damping: number,
): Float64Array | undefined {
  const count = slope.length;
  const matrix = information.map((value, k) => value - bend[k]!);
  let largest = 0;
  for (let k = 0; k < count; k++) largest = Math.max(largest, information[k * count + k]!);
  for (let k = 0; k < count; k++) {
    matrix[k * count + k]! += damping * (information[k * count + k]! + 1e-3 * largest);
  }
  if (!choleskyInPlace(matrix, count)) return undefined;
  const step = slope.slice();
  choleskySolveInPlace(matrix, count, step);
  return step;
}

/** Errors of the variances through the coordinates that are off the edge: J (J'A J)^-1 J'. */
function standardErrors(
  slopes: Float64Array,
  information: Float64Array,
  variances: ColonyVariances,
  estimated: 'all' | 'ratio',
): Partial<Record<Component, number>> {
  const total = variances.worker + variances.queen + variances.permanent + variances.residual;
  const count = slopes.length / 5;
  const off = Array.from({ length: count }, (_, k) => k).filter((k) => {
    const reach = COMPONENTS.reduce((sum, _, i) => sum + Math.abs(slopes[i * count + k]!), 0);
    return reach ** 2 > AT_EDGE * total;
  });
  const reduced = new Float64Array(5 * off.length);
  for (let i = 0; i < 5; i++) {
    off.forEach((k, at) => {
      reduced[i * off.length + at] = slopes[i * count + k]!;
    });
  }
  const matrix = onCoordinates(reduced, new Float64Array(5), information).information;
  if (!choleskyInPlace(matrix, off.length)) return {};
  const errors: Partial<Record<Component, number>> = {};
  COMPONENTS.forEach((component, i) => {
    if (estimated === 'ratio' && variances[component] === 0) return;
    const row = reduced.slice(i * off.length, (i + 1) * off.length);
    const solved = row.slice();
    choleskySolveInPlace(matrix, off.length, solved);
    const variance = row.reduce((sum, value, k) => sum + value * solved[k]!, 0);
    if (variance > 0) errors[component] = Math.sqrt(variance);
  });
  return errors;
}
