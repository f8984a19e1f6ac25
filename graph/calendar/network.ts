/**
 * A network of difference constraints between days, kept closed: from `x_to - x_from <= max` for some pairs
 * it knows the tightest such bound for every pair.
 *
 *   upper[i][j] = least upper bound of x_j - x_i that follows from all constraints
 *   adding x_v - x_u <= w:  upper[i][j] = min(upper[i][j], upper[i][u] + w + upper[v][j])
 *   contradiction when  w + upper[v][u] < 0
 *
 * Variable 0 is the origin (day 0), so the window of variable k is [-upper[k][0], upper[0][k]]. A closed network
 * is decomposable: variables may be given values one after another, each anywhere within the bounds that
 * the earlier ones leave, and a full solution always follows.
 * Source: Dechter, Meiri & Pearl 1991, Artificial Intelligence 49:61, Temporal constraint networks (from memory).
 * Cost O(n^2) a constraint, n variables (about ten). Unknown is no constraint (Infinity).
 */

export interface Network {
  readonly size: number;
  /** Row-major: upper[from * size + to]. */
  readonly upper: Float64Array;
}

/** x_to - x_from <= max. */
export interface Bound {
  readonly from: number;
  readonly to: number;
  readonly max: number;
}

export const ORIGIN = 0;

/** A network of `size` events that bounds nothing yet: any event may lie any number of days from any other. */
export function emptyNetwork(size: number): Network {
  const upper = new Float64Array(size * size).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i < size; i++) upper[i * size + i] = 0;
  return { size, upper };
}

/** A copy to narrow further; the first stays as it was. */
export function copyNetwork(network: Network): Network {
  return { size: network.size, upper: network.upper.slice() };
}

/** True when the bound already follows from the network. */
export function follows(network: Network, bound: Bound): boolean {
  return network.upper[bound.from * network.size + bound.to]! <= bound.max;
}

/** True when the bound can be added without contradiction. */
export function agrees(network: Network, bound: Bound): boolean {
  return bound.max + network.upper[bound.to * network.size + bound.from]! >= 0;
}

/** Adds a bound in place and closes the network again. False, and nothing changed, when it contradicts. */
export function tighten(network: Network, bound: Bound): boolean {
  if (!agrees(network, bound)) return false;
  if (follows(network, bound)) return true;
  const { size, upper } = network;
  const { from, to, max } = bound;
  for (let i = 0; i < size; i++) {
    const through = upper[i * size + from]! + max;
    if (through === Number.POSITIVE_INFINITY) continue;
    for (let j = 0; j < size; j++) {
      const sum = through + upper[to * size + j]!;
      if (sum < upper[i * size + j]!) upper[i * size + j] = sum;
    }
  }
  return true;
}

/** A copy with all the bounds added; undefined when they contradict it or one another. */
export function withBounds(network: Network, bounds: readonly Bound[]): Network | undefined {
  const next = copyNetwork(network);
  for (const bound of bounds) if (!tighten(next, bound)) return undefined;
  return next;
}

/** Earliest and latest value of a variable. */
export function rangeOf(network: Network, variable: number): { earliest: number; latest: number } {
  return {
    earliest: 0 - network.upper[variable * network.size + ORIGIN]!,
    latest: network.upper[ORIGIN * network.size + variable]!,
  };
}
