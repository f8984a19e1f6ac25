/**
 * What a gene dropping has to visit: the ancestors of the queens and drone sources asked about, oldest first.
 *
 * Mates with Mendelian variance d and q = A[mates][mates] - d are n = (2 - q)/d effective drones; mates without
 * it are single known drones, or out of a source whose gametes are all alike. Above 1,000 mates each daughter's
 * father is drawn anew.
 * Source: the structural nodes of the pedigree. Cost O(nodes + parents).
 */
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';
import { allelesOf } from './expected-loss.ts';
import type { BackgroundAlleles } from './populations.ts';
import { checkPopulation, frequencies } from './populations.ts';

export interface DropPlan {
  readonly pedigree: Pedigree;
  /** Queens, founders and drones to be dropped, oldest first. */
  readonly visits: Int32Array;
  /** Effective number of drones of each mates node; 0 where the drones are drawn from the parents at once. */
  readonly effectiveMates: Float64Array;
  /** First slot of each mates node in the list of drones met. */
  readonly slotStart: Int32Array;
  readonly slots: number;
  /** Summed frequencies of the alleles of each background node; empty where no two genes are alike. */
  readonly cumulative: ReadonlyMap<number, Float64Array>;
}

/** The plan for all ancestors of the nodes given. Throws when a background among them lacks its alleles. */
export function dropPlan(
  pedigree: Pedigree,
  targets: ArrayLike<number>,
  alleles: BackgroundAlleles,
): DropPlan {
  const needed = new Uint8Array(pedigree.size);
  for (let k = 0; k < targets.length; k += 1) needed[targets[k]!] = 1;
  markAncestors(pedigree, needed);
  const visits: number[] = [];
  const effectiveMates = new Float64Array(pedigree.size);
  const slotStart = new Int32Array(pedigree.size);
  let slots = 0;
  for (let node = 0; node < pedigree.size; node += 1) {
    if (needed[node] === 0) continue;
    const kind = pedigree.kind[node]!;
    if (kind === NodeKind.founder || kind === NodeKind.queen || kind === NodeKind.drone) visits.push(node);
    if (kind !== NodeKind.mates) continue;
    effectiveMates[node] = matesOf(pedigree, node);
    slotStart[node] = slots;
    slots += Math.ceil(effectiveMates[node]!);
  }
  const cumulative = new Map<number, Float64Array>();
  for (const [id, node] of pedigree.backgroundNode) {
    if (needed[node] === 1) cumulative.set(node, summedFrequencies(alleles, id));
  }
  return { pedigree, visits: Int32Array.from(visits), effectiveMates, slotStart, slots, cumulative };
}

function markAncestors({ size, parentStart, parent }: Pedigree, needed: Uint8Array): void {
  for (let node = size - 1; node >= 0; node -= 1) {
    if (needed[node] === 0) continue;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k += 1) needed[parent[k]!] = 1;
  }
}

/** More drones than this are drawn anew for each daughter: two share a father less than once in a thousand. */
const MANY_MATES = 1_000;

/** Rounding in d must not turn 12 mates into 12.0000001, which would be 13 slots. */
const WHOLE = 1e-6;

function matesOf({ mendelian, diagonal }: Pedigree, node: number): number {
  const own = mendelian[node]!;
  if (!(own > 0)) return 0;
  const mates = (2 - (diagonal[node]! - own)) / own;
  if (mates > MANY_MATES) return 0;
  const whole = Math.round(mates);
  return Math.abs(mates - whole) < WHOLE * whole ? whole : mates;
}

function summedFrequencies(alleles: BackgroundAlleles, id: string): Float64Array {
  const population = allelesOf(alleles, id);
  checkPopulation(population);
  if ('count' in population && population.count === Infinity) return new Float64Array(0);
  let sum = 0;
  return Float64Array.from(frequencies(population), (each) => {
    sum += each;
    return sum;
  });
}
