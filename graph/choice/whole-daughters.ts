/**
 * Shares turned into whole daughters.
 *
 *   n_i = floor(N c_i), then one more for the largest N c_i - n_i, until they sum to N; ties to the earlier
 *
 * Never more than ceil(N c_i), so that a queen without a share gets no daughter, nor more than `most` where given;
 * when `most` leaves no room for all N, fewer are given out. Source: the method of largest remainders
 * (common practice). Cost O(n log n).
 */

/**
 * Daughters from each candidate, summing to `total` (a whole number, 0 or more); `shares` sum to 1. `most`: the
 * largest whole number of daughters from each.
 */
export function wholeDaughters(
  shares: ArrayLike<number>,
  total: number,
  most?: ArrayLike<number>,
): Int32Array {
  if (!(Number.isInteger(total) && total >= 0)) throw new RangeError(`${total} is no number of daughters.`);
  // A share that rounding left just below a whole daughter is that daughter.
  const wanted = Float64Array.from(shares, (share) => share * total + 1e-9);
  const daughters = Int32Array.from(wanted, (each) => Math.floor(each));
  daughters.forEach((each, k) => {
    daughters[k] = Math.min(each, most?.[k] ?? each);
  });
  let left = total - daughters.reduce((sum, each) => sum + each, 0);
  const order = [...daughters.keys()]
    .filter((k) => shares[k]! > 0)
    .sort((a, b) => wanted[b]! - daughters[b]! - (wanted[a]! - daughters[a]!) || a - b);
  for (let before = left + 1; left > 0 && left < before; ) {
    before = left;
    for (const k of order) {
      if (left === 0 || daughters[k]! >= (most?.[k] ?? Infinity)) continue;
      daughters[k]! += 1;
      left -= 1;
    }
  }
  return daughters;
}
