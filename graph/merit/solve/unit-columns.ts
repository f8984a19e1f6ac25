/**
 * Relationship columns of the recorded queens, for registries small enough to hold them: the dense way.
 *
 *   for unit i headed by Q:  workers[i] = A (e_Q + e_mates)/2,   own[i] = A e_Q        over all nodes
 *   Cov(u_w(x), s_i) = w workers[i][x] + wq own[i][x]                 s_i = u_w(worker group) + u_q(Q)
 *   Cov(u_q(x), s_i) = wq workers[i][x] + q own[i][x]
 *   Cov(s_i, s_j) = w Ww + wq (Wq + qW) + q Qq,   the three kernels below
 *
 * Source: Colleau 2002, Genet. Sel. Evol. 34:409 (columns of A by two sweeps; from memory).
 * Cost: two pairs of sweeps a unit, 2 * units * nodes numbers held: for tens to a few hundred units only.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import { multiplyA } from '../../kinship/sweeps.ts';
import type { ColonyVariances } from './colony-model.ts';

export interface UnitColumns {
  /** Queen index of each unit. */
  readonly unitQueen: Int32Array;
  /** Unit i, node x at i * nodes + x. */
  readonly workers: Float64Array;
  readonly own: Float64Array;
  readonly nodes: number;
}

/** Columns of the given queens, each of whom has mates. */
export function unitColumns(pedigree: Pedigree, unitQueen: Int32Array): UnitColumns {
  const nodes = pedigree.size;
  const workers = new Float64Array(unitQueen.length * nodes);
  const own = new Float64Array(unitQueen.length * nodes);
  unitQueen.forEach((q, unit) => {
    const queenNode = pedigree.queenNode[q]!;
    const workerColumn = workers.subarray(unit * nodes, (unit + 1) * nodes);
    const ownColumn = own.subarray(unit * nodes, (unit + 1) * nodes);
    workerColumn[queenNode] = 0.5;
    workerColumn[pedigree.matesNode[q]!]! += 0.5;
    ownColumn[queenNode] = 1;
    multiplyA(pedigree, workerColumn, workerColumn);
    multiplyA(pedigree, ownColumn, ownColumn);
  });
  return { unitQueen, workers, own, nodes };
}

/** The columns of some of the units, in a new order: `queens` must all be among them. */
export function pickColumns(columns: UnitColumns, queens: Int32Array): UnitColumns {
  const { nodes } = columns;
  const place = new Map(Array.from(columns.unitQueen, (q, unit) => [q, unit] as const));
  const workers = new Float64Array(queens.length * nodes);
  const own = new Float64Array(queens.length * nodes);
  queens.forEach((q, unit) => {
    const from = place.get(q)! * nodes;
    workers.set(columns.workers.subarray(from, from + nodes), unit * nodes);
    own.set(columns.own.subarray(from, from + nodes), unit * nodes);
  });
  return { unitQueen: queens, workers, own, nodes };
}

/** What multiplies each variance in the covariance of the units' predictors; row-major, symmetric. */
export interface UnitKernels {
  /** Times the worker variance: relationship of the worker groups. */
  readonly workers: Float64Array;
  /** Times the covariance: worker group of one with queen of the other, both ways. */
  readonly across: Float64Array;
  /** Times the queen variance: relationship of the queens. */
  readonly own: Float64Array;
}

/** Relationships between the units: of worker groups, of worker group and queen, of queens. Cost O(units^2). */
export function unitKernels(
  pedigree: Pedigree,
  { unitQueen, workers, own, nodes }: UnitColumns,
): UnitKernels {
  const count = unitQueen.length;
  const kernels = {
    workers: new Float64Array(count * count),
    across: new Float64Array(count * count),
    own: new Float64Array(count * count),
  };
  const queenNode = unitQueen.map((q) => pedigree.queenNode[q]!);
  const matesNode = unitQueen.map((q) => pedigree.matesNode[q]!);
  const set = (kernel: Float64Array, i: number, j: number, value: number) => {
    kernel[i * count + j] = value;
    kernel[j * count + i] = value;
  };
  for (let i = 0; i < count; i++) {
    const base = i * nodes;
    for (let j = 0; j <= i; j++) {
      const atQueen = base + queenNode[j]!;
      const atMates = base + matesNode[j]!;
      set(kernels.workers, i, j, (workers[atQueen]! + workers[atMates]!) / 2);
      set(kernels.across, i, j, workers[atQueen]! + (own[atQueen]! + own[atMates]!) / 2);
      set(kernels.own, i, j, own[atQueen]!);
    }
  }
  return kernels;
}

/** Covariance matrix of the units, permanent noise included: w workers + wq across + q own + permanent I. */
export function unitCovariance(kernels: UnitKernels, variances: ColonyVariances): Float64Array {
  const { worker, queen, covariance, permanent } = variances;
  const count = Math.round(Math.sqrt(kernels.own.length));
  const matrix = kernels.own.map(
    (value, k) => queen * value + worker * kernels.workers[k]! + covariance * kernels.across[k]!,
  );
  for (let i = 0; i < count; i++) matrix[i * count + i]! += permanent;
  return matrix;
}
