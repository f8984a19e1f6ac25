/**
 * Chance that can be repeated: a seeded generator, so that the same seed gives the same simulation everywhere.
 *   xoshiro128**: 128 bits of state, period 2^128 - 1, 32 bits a step; state filled from the seed by splitmix32.
 *   uniform: 53 bits of two steps, in [0, 1).  normal: Marsaglia's polar method.
 *   binomial: inversion where n min(p, 1 - p) <= 30, otherwise the sum of two halves (exact).
 * Sources, from memory, not re-read: Blackman & Vigna 2021, Scrambled linear pseudorandom number generators, ACM
 * Trans. Math. Softw. 47:36; Marsaglia & Bray 1964, A convenient method for generating normal variables, SIAM
 * Review 6:260.
 * Cost: O(1) a draw; binomial O(1 + n min(p, 1 - p)).
 */

export interface Random {
  /** A whole number of 32 bits, 0 .. 2^32 - 1. */
  bits(): number;
  /** In [0, 1), every multiple of 2^-53 equally likely. */
  uniform(): number;
  /** A whole number in 0 .. count - 1; count in 1 .. 2^32. */
  integer(count: number): number;
  /** Mean 0, variance 1. */
  normal(): number;
  /** Successes in n trials of probability p. */
  binomial(n: number, p: number): number;
  /** One of the items, each equally likely. Throws on an empty list. */
  choice<Item>(items: readonly Item[]): Item;
  /** An index, drawn in proportion to weights that are not negative and not all 0. */
  weighted(weights: ArrayLike<number>): number;
  /** A generator of its own, for a part of a simulation that must not depend on how much the others draw. */
  fork(): Random;
}

const INVERSION_MEAN = 30;

/** `seed`: any whole number; only its lowest 32 bits count. */
export function randomGenerator(seed: number): Random {
  const bits = xoshiro128(seed);
  const uniform = (): number => ((bits() >>> 5) * 0x4000000 + (bits() >>> 6)) / 0x20000000000000;
  const integer = (count: number): number => {
    const limit = 0x100000000 - (0x100000000 % count);
    let drawn = bits();
    while (drawn >= limit) drawn = bits();
    return drawn % count;
  };
  return {
    bits,
    uniform,
    integer,
    normal: normalFrom(uniform),
    binomial: (n, p) => binomial(uniform, n, p),
    choice(items) {
      if (items.length === 0) throw new Error('Bug: a choice from an empty list.');
      return items[integer(items.length)]!;
    },
    weighted: (weights) => weighted(uniform(), weights),
    fork: () => randomGenerator(bits()),
  };
}

function xoshiro128(seed: number): () => number {
  let mixed = seed | 0;
  const splitmix = (): number => {
    mixed = (mixed + 0x9e3779b9) | 0;
    let z = mixed ^ (mixed >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
  let a = splitmix();
  let b = splitmix();
  let c = splitmix();
  let d = splitmix();
  return () => {
    const times5 = Math.imul(b, 5);
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result >>> 0;
  };
}

function normalFrom(uniform: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square === 0 || square >= 1) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
}

function binomial(uniform: () => number, n: number, p: number): number {
  if (p > 0.5) return n - binomial(uniform, n, 1 - p);
  if (!(p > 0) || n === 0) return 0;
  if (n * p > INVERSION_MEAN) {
    const half = n >> 1;
    return binomial(uniform, half, p) + binomial(uniform, n - half, p);
  }
  const odds = p / (1 - p);
  let left = uniform();
  let probability = (1 - p) ** n;
  let successes = 0;
  while (left >= probability && successes < n) {
    left -= probability;
    successes++;
    probability *= (odds * (n - successes + 1)) / successes;
  }
  return successes;
}

function weighted(uniform: number, weights: ArrayLike<number>): number {
  let total = 0;
  for (let k = 0; k < weights.length; k++) total += weights[k]!;
  if (!(total > 0)) throw new Error('Bug: a draw in proportion to weights that are all 0.');
  let left = uniform * total;
  let last = 0;
  for (let k = 0; k < weights.length; k++) {
    if (weights[k] === 0) continue;
    last = k;
    left -= weights[k]!;
    if (left < 0) return k;
  }
  return last;
}
