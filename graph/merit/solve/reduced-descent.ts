/**
 * The part of a pedigree that breeding values must carry as unknowns: nodes that something descends from.
 *
 * A node without descendants (a queen who raised no queen and no recorded drones, the mates of a queen without
 * daughters) stays out, with all its parents in; its own Mendelian part is handled where it is seen. Nodes with more
 * than `MOST_PARENTS` parents stay in, since writing them out as their parents would cost more than they do.
 *
 * Source: Quaas & Pollak 1980, J. Anim. Sci. 51:1277 (reduced animal model; from memory).
 * Cost: O(nodes + parents). Unknowns: none; a compiled pedigree is complete.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import type { Descent } from './mixed-model.ts';

const MOST_PARENTS = 4;

export interface ReducedDescent {
  readonly descent: Descent;
  /** Number of each pedigree node in the reduced descent; -1 if left out. */
  readonly kept: Int32Array;
}

/** The reduced descent, in the same order. `keep`: nodes to keep whatever descends from them. */
export function reduceDescent(pedigree: Pedigree, keep: Iterable<number> = []): ReducedDescent {
  const kept = numberKept(pedigree, keep);
  const { parentStart, parent, coefficient, mendelian } = pedigree;
  let size = 0;
  let links = 0;
  for (let node = 0; node < pedigree.size; node++) {
    if (kept[node]! < 0) continue;
    size++;
    links += parentStart[node + 1]! - parentStart[node]!;
  }
  const descent = {
    size,
    parentStart: new Int32Array(size + 1),
    parent: new Int32Array(links),
    coefficient: new Float64Array(links),
    mendelian: new Float64Array(size),
  };
  let at = 0;
  for (let node = 0; node < pedigree.size; node++) {
    const number = kept[node]!;
    if (number < 0) continue;
    descent.mendelian[number] = mendelian[node]!;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      descent.parent[at] = kept[parent[k]!]!;
      descent.coefficient[at++] = coefficient[k]!;
    }
    descent.parentStart[number + 1] = at;
  }
  return { descent, kept };
}

function numberKept({ size, parent, parentStart }: Pedigree, keep: Iterable<number>): Int32Array {
  const stays = new Uint8Array(size);
  for (const node of keep) stays[node] = 1;
  // Youngest first: a node left out is expanded into its parents, so these stay whether it does or not.
  for (let k = 0; k < parentStart[size]!; k++) stays[parent[k]!] = 1;
  const kept = new Int32Array(size).fill(-1);
  let number = 0;
  for (let node = 0; node < size; node++) {
    if (stays[node] || parentStart[node + 1]! - parentStart[node]! > MOST_PARENTS) kept[node] = number++;
  }
  return kept;
}
