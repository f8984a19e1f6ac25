/**
 * Small dense symmetric algebra for what is on screen (a few dozen to about a thousand rows), row-major.
 *
 *   Cholesky   L L' = A            solve   L (L' x) = b          products   L' M L
 * Identities tested: L L' = A, A x = b.
 * Source: Golub & Van Loan, Matrix Computations, chapter 4 (from memory, not re-read).
 * Cost: n^3/3 to factor, n^2 a solve. A matrix that is not positive definite is a result (false), not an exception.
 * Unknowns: none.
 */

/** Pivots below this share of the diagonal they started from count as zero. */
const SINGULAR = 1e-13;

/**
 * Overwrites the lower triangle of `matrix` (n x n, row-major) with its Cholesky factor and clears the upper one;
 * false if it is not positive definite (the contents are then unusable).
 */
export function choleskyInPlace(matrix: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const row = i * n;
    const before = matrix[row + i]!;
    for (let j = 0; j < i; j++) {
      const other = j * n;
      let sum = matrix[row + j]!;
      for (let k = 0; k < j; k++) sum -= matrix[row + k]! * matrix[other + k]!;
      matrix[row + j] = sum / matrix[other + j]!;
    }
    let pivot = before;
    for (let k = 0; k < i; k++) pivot -= matrix[row + k]! ** 2;
    if (!(pivot > SINGULAR * Math.abs(before))) return false;
    matrix[row + i] = Math.sqrt(pivot);
    matrix.fill(0, row + i + 1, row + n);
  }
  return true;
}

/**
 * As `choleskyInPlace`, for a matrix that may be singular: where a pivot vanishes its column becomes zero, so that
 * L L' is still the matrix.
 */
export function semiDefiniteInPlace(matrix: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    const row = i * n;
    const before = matrix[row + i]!;
    let pivot = before;
    for (let j = 0; j < i; j++) {
      const other = j * n;
      let sum = matrix[row + j]!;
      for (let k = 0; k < j; k++) sum -= matrix[row + k]! * matrix[other + k]!;
      const value = matrix[other + j]! === 0 ? 0 : sum / matrix[other + j]!;
      matrix[row + j] = value;
      pivot -= value * value;
    }
    matrix[row + i] = pivot > SINGULAR * Math.abs(before) ? Math.sqrt(pivot) : 0;
    matrix.fill(0, row + i + 1, row + n);
  }
}

/** Overwrites b with L^-1 b. */
export function lowerSolveInPlace(factor: Float64Array, n: number, b: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    const row = i * n;
    for (let k = 0; k < i; k++) sum -= factor[row + k]! * b[k]!;
    b[i] = sum / factor[row + i]!;
  }
}

/** Overwrites b with L'^-1 b. */
export function upperSolveInPlace(factor: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n;
    const value = b[i]! / factor[row + i]!;
    b[i] = value;
    for (let k = 0; k < i; k++) b[k]! -= factor[row + k]! * value;
  }
}

/** Overwrites b with A^-1 b, from the factor of `choleskyInPlace`. */
export function choleskySolveInPlace(factor: Float64Array, n: number, b: Float64Array): void {
  lowerSolveInPlace(factor, n, b);
  upperSolveInPlace(factor, n, b);
}

/** L' v for a lower triangular L. */
export function transposeTimes(factor: Float64Array, n: number, v: Float64Array): Float64Array {
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const value = v[i]!;
    if (value === 0) continue;
    for (let j = 0; j <= i; j++) out[j]! += factor[i * n + j]! * value;
  }
  return out;
}

/** A v for a full square A. */
export function times(matrix: Float64Array, n: number, v: Float64Array): Float64Array {
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += matrix[i * n + j]! * v[j]!;
    out[i] = sum;
  }
  return out;
}

/** A B for full square A and B, row by row so that memory is walked in order. */
export function product(a: Float64Array, b: Float64Array, n: number): Float64Array {
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    const row = out.subarray(i * n, (i + 1) * n);
    for (let k = 0; k < n; k++) {
      const value = a[i * n + k]!;
      if (value === 0) continue;
      for (let j = 0, from = k * n; j < n; j++, from++) row[j]! += value * b[from]!;
    }
  }
  return out;
}

/** v'w. */
export function dot(v: Float64Array, w: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < v.length; i++) sum += v[i]! * w[i]!;
  return sum;
}
