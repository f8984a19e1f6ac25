/**
 * The two sweeps of the solver, for two values a node side by side.
 *
 *   down:  out = T D^(1/2) z      from the oldest node to the youngest, each reads its parents
 *   up:    out = D^(1/2) T' v     from the youngest to the oldest, each adds to its parents
 * Identity tested: down is the transpose of up, and down with unit columns squares to A = T D T'.
 *
 * Source: Colleau 2002, Genet. Sel. Evol. 34:409 (from memory). The root of D goes into the sweep, since the solver
 * works in Mendelian terms; the plain sweeps of `graph/kinship` serve single columns.
 * Cost: O(nodes + parents). Unknowns: none; a compiled pedigree is complete.
 */
import type { Descent } from './mixed-model.ts';

/** out = T D^(1/2) z; `root` holds the square roots of D. z may be longer than 2 * nodes. */
export function spreadDown(descent: Descent, root: Float64Array, z: Float64Array, out: Float64Array): void {
  const { size, parentStart, parent, coefficient } = descent;
  let k = 0;
  for (let node = 0; node < size; node++) {
    const scale = root[node]!;
    let one = scale * z[2 * node]!;
    let two = scale * z[2 * node + 1]!;
    for (const end = parentStart[node + 1]!; k < end; k++) {
      const at = 2 * parent[k]!;
      const c = coefficient[k]!;
      one += c * out[at]!;
      two += c * out[at + 1]!;
    }
    out[2 * node] = one;
    out[2 * node + 1] = two;
  }
}

/** out = D^(1/2) T' v, overwriting v on the way; `out` may be longer than 2 * nodes. */
export function gatherUp(descent: Descent, root: Float64Array, v: Float64Array, out: Float64Array): void {
  const { size, parentStart, parent, coefficient } = descent;
  let k = parentStart[size]! - 1;
  for (let node = size - 1; node >= 0; node--) {
    const one = v[2 * node]!;
    const two = v[2 * node + 1]!;
    for (const first = parentStart[node]!; k >= first; k--) {
      const at = 2 * parent[k]!;
      const c = coefficient[k]!;
      v[at]! += c * one;
      v[at + 1]! += c * two;
    }
    out[2 * node] = root[node]! * one;
    out[2 * node + 1] = root[node]! * two;
  }
}
