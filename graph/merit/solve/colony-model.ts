/**
 * The mixed model of bee colonies, from a compiled pedigree and records that belong to queens.
 *
 *   record of a colony headed by Q = group + u_w(worker group of Q) + u_q(Q) + p_Q + e
 *   u_w(worker group of Q) = (u_w(Q) + u_w(mates of Q)) / 2
 *   residual variance of a record = common one + the record's own sampling variance
 *
 * Queens and mates without descendants are not carried as unknowns: their Mendelian part is seen by one colony alone,
 * so it joins that colony's permanent noise, and is recovered after the solve (reduced model):
 *   leaf Q, mates kept:    noise += d_Q (w/4 + wq + q)             w, q variances, wq covariance of the effects
 *   leaf mates:            noise += d_M w/4
 *   recovered u_w(Q) = parents + d_Q (w/2 + wq) g,  u_q(Q) = parents + d_Q (wq/2 + q) g,   g = noise / its variance
 *
 * Sources: worker and queen effects: Bienefeld, Ehrhardt & Reinhardt 2007, Apidologie 38:77 (abstract read); the
 * reduction: Quaas & Pollak 1980, J. Anim. Sci. 51:1277 (from memory, re-derived for two effects).
 * Cost: O(nodes + parents + records). Unknowns: a colony's record needs a mated queen, since its workers are half her
 * mates'; where nobody knows the mating, the caller gives her one out of a background. Others are refused.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import type { Descent, EffectCovariance, MixedModel } from './mixed-model.ts';
import { reduceDescent } from './reduced-descent.ts';

/** Records of one trait in arrays; all of one length. */
export interface ColonyRecords {
  /** Index of the queen in `Pedigree.queenIds`. */
  readonly queen: Int32Array;
  /** Comparison group, 0 .. groups - 1. */
  readonly group: Int32Array;
  readonly groups: number;
  readonly value: Float64Array;
  /** Known sampling variance of the record, added to the residual variance; >= 0. */
  readonly samplingVariance: Float64Array;
}

/** Variances of one trait in its squared unit. */
export interface ColonyVariances {
  readonly worker: number;
  readonly queen: number;
  /** Covariance of a queen's worker and queen effect; usually negative. */
  readonly covariance: number;
  /** Permanent effect of a queen's colony over its repeated records. */
  readonly permanent: number;
  readonly residual: number;
}

/** The queens with records, in the order of their nodes: unit l is predictor l and level l of the model. */
export interface ColonyModel {
  readonly model: MixedModel;
  /** Queen index of each unit. */
  readonly unitQueen: Int32Array;
  /** Unit of each queen; -1 without records. */
  readonly unitOfQueen: Int32Array;
  /** Node in the reduced descent of each node of the pedigree; -1 if left out. */
  readonly kept: Int32Array;
}

/** The two genetic effects of a colony, workers’ first, in the words of the general model. */
export function effectCovariance({ worker, queen, covariance }: ColonyVariances): EffectCovariance {
  return { first: worker, second: queen, both: covariance };
}

/**
 * The recorded queens as units, in the order of `key` (ties by queen), by default that of their nodes: one pass over the
 * records then walks the nodes in order.
 */
export function unitsOf(
  pedigree: Pedigree,
  queen: Int32Array,
  key: (queen: number) => number = (q) => pedigree.queenNode[q]!,
): { unitQueen: Int32Array; unitOfQueen: Int32Array } {
  const unitOfQueen = new Int32Array(pedigree.queenNode.length).fill(-1);
  let recorded = 0;
  for (const q of queen) {
    if (unitOfQueen[q] === -1) recorded++;
    unitOfQueen[q] = 0;
  }
  // Key and queen in one sortable number: both stay below 2^26 here, so the product is exact.
  const keyed = new Float64Array(recorded);
  let filled = 0;
  for (let q = 0; q < unitOfQueen.length; q++) {
    if (unitOfQueen[q] === 0) keyed[filled++] = key(q) * unitOfQueen.length + q;
  }
  keyed.sort();
  const unitQueen = Int32Array.from(keyed, (value) => value % unitOfQueen.length);
  for (let unit = 0; unit < recorded; unit++) unitOfQueen[unitQueen[unit]!] = unit;
  return { unitQueen, unitOfQueen };
}

/** How many queens have records. */
export function recordedQueens(pedigree: Pedigree, queen: Int32Array): number {
  const seen = new Uint8Array(pedigree.queenNode.length);
  let count = 0;
  for (const q of queen) {
    if (!seen[q]) count++;
    seen[q] = 1;
  }
  return count;
}

/**
 * The reduced model. `keep`: nodes that stay unknowns although nothing descends from them (candidates whose
 * reliability is wanted). Every recorded queen must have mates.
 */
export function colonyModel(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  keep: Iterable<number> = [],
): ColonyModel {
  const { descent, kept } = reduceDescent(pedigree, keep);
  const { queenNode, parentStart, parent } = pedigree;
  // A queen left out is read through her parents: next to her sisters she finds them at hand.
  const readAt = (q: number) => {
    const own = kept[queenNode[q]!]!;
    return own >= 0 ? own : kept[parent[parentStart[queenNode[q]!]!]!]!;
  };
  const { unitQueen, unitOfQueen } = unitsOf(pedigree, records.queen, readAt);
  const { predictors, levelVariance } = unitRows(pedigree, variances, unitQueen, kept);
  const level = records.queen.map((q) => unitOfQueen[q]!);
  const model = {
    descent: descent satisfies Descent,
    effects: effectCovariance(variances),
    predictors,
    levelVariance,
    columns: records.groups,
    factors: 1,
    column: records.group,
    predictor: level,
    level,
    value: records.value,
    weight: records.samplingVariance.map((sampling) => 1 / (variances.residual + sampling)),
  };
  return { model, unitQueen, unitOfQueen, kept };
}

function unitRows(pedigree: Pedigree, variances: ColonyVariances, unitQueen: Int32Array, kept: Int32Array) {
  const { queenNode, matesNode, parentStart, parent, coefficient, mendelian } = pedigree;
  const { worker, queen, covariance, permanent } = variances;
  const levelVariance = new Float64Array(unitQueen.length).fill(permanent);
  const start = new Int32Array(unitQueen.length + 1);
  const width = (node: number) => (kept[node]! >= 0 ? 1 : parentStart[node + 1]! - parentStart[node]!);
  unitQueen.forEach((q, unit) => {
    start[unit + 1] = start[unit]! + width(queenNode[q]!) + width(matesNode[q]!);
  });
  const entries = start[unitQueen.length]!;
  const rows = {
    start,
    node: new Int32Array(entries),
    first: new Float64Array(entries),
    second: new Float64Array(entries),
  };
  let at = 0;
  const write = (node: number, first: number, second: number) => {
    rows.node[at] = kept[node]!;
    rows.first[at] = first;
    rows.second[at++] = second;
  };
  const place = (node: number, first: number, second: number) => {
    if (kept[node]! >= 0) return write(node, first, second);
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      write(parent[k]!, first * coefficient[k]!, second * coefficient[k]!);
    }
  };
  unitQueen.forEach((q, unit) => {
    const own = queenNode[q]!;
    const mates = matesNode[q]!;
    place(own, 0.5, 1);
    place(mates, 0.5, 0);
    if (kept[own]! < 0) levelVariance[unit]! += mendelian[own]! * (worker / 4 + covariance + queen);
    if (kept[mates]! < 0) levelVariance[unit]! += (mendelian[mates]! * worker) / 4;
  });
  return { predictors: rows, levelVariance };
}

/** Worker effect, queen effect and permanent effect of each queen of the pedigree. */
export interface ColonyEffects {
  readonly worker: Float64Array;
  readonly queen: Float64Array;
  /** 0 for queens without records: nothing is known of their colony but its descent. */
  readonly permanent: Float64Array;
}

/** Effects of every queen from the node effects of the reduced solve (side by side) and the noise of each unit. */
export function colonyEffects(
  pedigree: Pedigree,
  { model, unitOfQueen, kept }: ColonyModel,
  variances: ColonyVariances,
  nodeEffects: Float64Array,
  noise: Float64Array,
): ColonyEffects {
  const { queenNode, parentStart, parent, coefficient, mendelian } = pedigree;
  const queens = queenNode.length;
  const effects = {
    worker: new Float64Array(queens),
    queen: new Float64Array(queens),
    permanent: new Float64Array(queens),
  };
  const onWorker = variances.worker / 2 + variances.covariance;
  const onQueen = variances.covariance / 2 + variances.queen;
  for (let q = 0; q < queens; q++) {
    const own = queenNode[q]!;
    const unit = unitOfQueen[q]!;
    const share = unit >= 0 && model.levelVariance[unit]! > 0 ? noise[unit]! / model.levelVariance[unit]! : 0;
    effects.permanent[q] = variances.permanent * share;
    if (kept[own]! >= 0) {
      effects.worker[q] = nodeEffects[2 * kept[own]!]!;
      effects.queen[q] = nodeEffects[2 * kept[own]! + 1]!;
      continue;
    }
    let worker = mendelian[own]! * onWorker * share;
    let queen = mendelian[own]! * onQueen * share;
    for (let k = parentStart[own]!; k < parentStart[own + 1]!; k++) {
      worker += coefficient[k]! * nodeEffects[2 * kept[parent[k]!]!]!;
      queen += coefficient[k]! * nodeEffects[2 * kept[parent[k]!]! + 1]!;
    }
    effects.worker[q] = worker;
    effects.queen[q] = queen;
  }
  return effects;
}
