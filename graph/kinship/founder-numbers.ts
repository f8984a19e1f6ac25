/**
 * How many equal founders, and founding lines, the living queens are worth.
 *   z = T' v, v = 1/N on each living queen: the expected share of the living that comes from each node
 *   founders:         1 / sum over founders and backgrounds of d z^2
 *   founder genomes:  1 / sum over all nodes of d z^2 = 1 / (2 * mean kinship), drift since then included
 *   founding lines:   1 / sum over lines of p^2, p the expected share of the living whose dam line ends in her
 * Unrelated founders and a background of unrelated bees have d = 1 and d = 0, so that the first is
 * 1 / sum p_i^2 over recorded founders and a drone of nobody's counts as a founder of his own, of negligible
 * share; a background with kinship counts as the one population it is.
 * Source: Lacy 1989, Analysis of founder representation in pedigrees: founder equivalents and founder genome
 * equivalents, Zoo Biol. 8:111 (abstract read); with mean kinship: Lacy 1995, Zoo Biol. 14:565 (from memory).
 * Cost: O(nodes + parents). A number is undefined where nothing recorded is shared at all (the sum is 0).
 */
import { NodeKind, type Pedigree } from './pedigree.ts';
import { transposeSweep } from './sweeps.ts';

export interface FounderNumbers {
  /** Effective number of founders (founder equivalents), at least 1. */
  readonly founders: number | undefined;
  /** Founder genome equivalents, never above `founders`. */
  readonly founderGenomes: number | undefined;
  /** Effective number of founding lines, dam lines only, 1 .. number of lines. */
  readonly lines: number;
}

/** `living`: indices into `queenIds`, at least one, none twice. Throws on an empty set. */
export function founderNumbers(pedigree: Pedigree, living: ArrayLike<number>): FounderNumbers {
  if (living.length === 0) throw new Error('Bug: founder numbers of no queens.');
  const shares = new Float64Array(pedigree.size);
  for (let k = 0; k < living.length; k++) shares[pedigree.queenNode[living[k]!]!]! += 1 / living.length;
  const lineShares = maternalShares(pedigree, shares);
  transposeSweep(pedigree, shares, shares);
  let base = 0;
  let all = 0;
  let lines = 0;
  for (let node = 0; node < pedigree.size; node++) {
    const kind = pedigree.kind[node];
    const term = pedigree.mendelian[node]! * shares[node]! ** 2;
    all += term;
    if (kind === NodeKind.founder || kind === NodeKind.background) base += term;
    if (kind === NodeKind.founder) lines += lineShares[node]! ** 2;
  }
  const worth = (sum: number): number | undefined => (sum > 0 ? 1 / sum : undefined);
  return { founders: worth(base), founderGenomes: worth(all), lines: 1 / lines };
}

/** What each node holds of `shares` by dam lines alone, uncertain dams weighed by their probability. */
function maternalShares({ size, kind, parentStart, parent, coefficient }: Pedigree, shares: Float64Array) {
  const held = shares.slice();
  for (let node = size - 1; node >= 0; node--) {
    if (kind[node] !== NodeKind.queen || held[node] === 0) continue;
    for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
      const to = parent[k]!;
      if (kind[to] !== NodeKind.mates) held[to]! += 2 * coefficient[k]! * held[node]!;
    }
  }
  return held;
}
