/**
 * What would come of it: a daughter of this queen, flown at that yard or inseminated by those drones.
 *
 *   H = daughter to come: D/2 + M/2   (D: dam, M: the drones that D met);  or H = a queen there already
 *   S = the drones H is to meet: a pool, drone mothers or single drones, mixed with moved-in drone colonies
 *   inbreeding of H                F_H = A[D][M]/2                     (of a queen there already: A[H][H] - 1)
 *   inbreeding of her brood        A[H][S]/2 = (A[D][S] + A[M][S])/4
 *   merit of H                     mean u_H = (u_D + u_M)/2
 *     between sisters              (1 + F_H - q) V,   q = (A[D][D] + A[M][M] + 2 A[D][M])/4
 *   merit of her brood             mean (u_H + u_S)/2
 *     between sisters' broods      ((1 + F_H - q) + (2 - q_S)/n) V/4,   q_S = A[S][S] of two random gametes
 *   spread = sqrt(between sisters + error variance of the mean)
 *
 * A: twice the kinship; V: additive variance of the merit in a base population; n: her effective mates (with single
 * drones given by shares the second term is 0: they are given). The error variance is the prediction error variance
 * of that very combination of nodes; left out when it is not given, and then said so.
 * Source: the structural nodes of the pedigree; Mendelian sampling as Quaas 1976, Biometrics 32:949 (from memory).
 * Cost: one product with A, O(nodes), and the gene dropping when alleles are given. Unknown dams' mating throws.
 */
import {
  type BackgroundAlleles,
  type BroodViability,
  broodViability,
  type DroneSource,
  droneSource,
  geneNodes,
  mixSources,
  type ViabilityOf,
  type ViabilityOptions,
} from '../alleles/index.ts';
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';
import type { MatingInput, Share } from '../kinship/pedigree-input.ts';
import { multiplyA } from '../kinship/sweeps.ts';

export interface WhatIfMating {
  /** `{ daughterOf }` a daughter to come, or `{ queen }` one there already. */
  readonly of: ViabilityOf;
  /** The drones she is to meet: a pool of the pedigree, drone mothers, or single drones. */
  readonly at: MatingInput;
  /** Drone colonies moved there for her: their mothers, and the share of all drones that they make up. */
  readonly movedIn?: { readonly droneMothers: readonly Share[]; readonly share: number };
  /** Effective number of mates, 1 or more. */
  readonly effectiveMates: number;
  /** Sex alleles of each background; absent: brood viability is not computed. */
  readonly alleles?: BackgroundAlleles;
  /** Absent: merit is not computed. */
  readonly merit?: NodeMerit;
}

/** Breeding values by structural node, in any one unit. */
export interface NodeMerit {
  /** Estimated value of a node; undefined where there is none. */
  readonly valueOf: (node: number) => number | undefined;
  /** Additive variance of the merit (worker and queen effect together) in the base population. */
  readonly variance: number;
  /** Prediction error variance of sum of weights[k] * value of nodes[k]; absent: not known. */
  readonly errorVariance?: (nodes: Int32Array, weights: Float64Array) => number;
}

export interface MeritOutlook {
  readonly mean: number;
  /** Standard deviation between sisters raised and mated alike, by chance of genes and drones. */
  readonly betweenSisters: number;
  /** Standard error of the mean; absent where the error variance is not known. */
  readonly standardError?: number;
  /** Both together; absent where the error variance is not known. */
  readonly spread?: number;
}

export interface MatingOutlook {
  /** Inbreeding (0..1) of the queen herself. */
  readonly inbreeding: number;
  /** Inbreeding (0..1) of the brood of her colony: her kinship with the drones. */
  readonly broodInbreeding: number;
  readonly viability?: BroodViability;
  /** Merit of the queen as a breeder, and of her brood; absent where a value is missing. */
  readonly queenMerit?: MeritOutlook;
  readonly broodMerit?: MeritOutlook;
}

/** The outlook of one mating. Throws on unknown ids and on a dam without a mating. */
export function whatIfMating(
  pedigree: Pedigree,
  mating: WhatIfMating,
  options: Partial<ViabilityOptions> = {},
): MatingOutlook {
  const queen = geneNodes(pedigree, mating.of);
  const drones = dronesOf(pedigree, mating);
  const { with: withDrones, square } = formsOf(pedigree, queen, drones);
  const { inbreeding, mendelian } = ownTerms(pedigree, mating.of, queen);
  const viability =
    mating.alleles &&
    broodViability(
      pedigree,
      { of: mating.of, drones, mates: mating.effectiveMates, alleles: mating.alleles },
      options,
    );
  const known = drones.nodes.every((node) => pedigree.kind[node] === NodeKind.drone);
  const matesVariance = known ? 0 : Math.max(0, 2 - square) / mating.effectiveMates;
  const brood = halves(queen, drones);
  const queenMerit = outlook(mating.merit, queen, mendelian);
  const broodMerit = outlook(mating.merit, brood, (mendelian + matesVariance) / 4);
  return {
    inbreeding,
    broodInbreeding: withDrones / 2,
    ...(viability ? { viability } : {}),
    ...(queenMerit ? { queenMerit } : {}),
    ...(broodMerit ? { broodMerit } : {}),
  };
}

function dronesOf(pedigree: Pedigree, { at, movedIn }: WhatIfMating): DroneSource {
  const there = droneSource(pedigree, at);
  if (!movedIn || movedIn.share === 0) return there;
  const moved = droneSource(pedigree, {
    kind: 'drone-mothers',
    droneMothers: movedIn.droneMothers,
    backgrounds: [],
  });
  return mixSources([
    { source: there, share: 1 - movedIn.share },
    { source: moved, share: movedIn.share },
  ]);
}

/** A[queen][drones], and A[S][S] for two independent draws of a gamete of the drones. */
function formsOf(pedigree: Pedigree, queen: DroneSource, drones: DroneSource) {
  const column = new Float64Array(pedigree.size);
  drones.nodes.forEach((node, k) => {
    column[node]! += drones.weights[k]!;
  });
  multiplyA(pedigree, column, column);
  const read = ({ nodes, weights }: DroneSource): number =>
    nodes.reduce((sum, node, k) => sum + weights[k]! * column[node]!, 0);
  return { with: read(queen), square: read(drones) };
}

/** Inbreeding, and the Mendelian variance that is not yet drawn: none for a queen there already. */
function ownTerms(
  { diagonal, relationToMates, queenIndex }: Pedigree,
  of: ViabilityOf,
  { nodes }: DroneSource,
) {
  if ('queen' in of) return { inbreeding: diagonal[nodes[0]!]! - 1, mendelian: 0 };
  const relation = relationToMates[queenIndex.get(of.daughterOf)!]!;
  const square = (diagonal[nodes[0]!]! + diagonal[nodes[1]!]! + 2 * relation) / 4;
  return { inbreeding: relation / 2, mendelian: 1 + relation / 2 - square };
}

function halves(queen: DroneSource, drones: DroneSource): DroneSource {
  return mixSources([
    { source: queen, share: 0.5 },
    { source: drones, share: 0.5 },
  ]);
}

function outlook(
  merit: NodeMerit | undefined,
  { nodes, weights }: DroneSource,
  mendelian: number,
): MeritOutlook | undefined {
  if (!merit) return undefined;
  let mean = 0;
  for (let k = 0; k < nodes.length; k += 1) {
    const value = merit.valueOf(nodes[k]!);
    if (value === undefined) return undefined;
    mean += weights[k]! * value;
  }
  const between = Math.max(0, mendelian) * merit.variance;
  const betweenSisters = Math.sqrt(between);
  const error = merit.errorVariance?.(nodes, weights);
  if (error === undefined) return { mean, betweenSisters };
  return { mean, betweenSisters, standardError: Math.sqrt(error), spread: Math.sqrt(between + error) };
}
