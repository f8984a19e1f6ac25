/**
 * The plain, slow twin of the breeding-value solver: dense matrices, Gaussian elimination, formulas as textbooks print
 * them. Shares no code with the fast path; for small examples in tests only.
 */

export type Matrix = number[][];

export const zeros = (rows: number, columns: number): Matrix =>
  Array.from({ length: rows }, () => new Array<number>(columns).fill(0));

export const transpose = (a: Matrix): Matrix => a[0]!.map((_, j) => a.map((row) => row[j]!));

export const multiply = (a: Matrix, b: Matrix): Matrix =>
  a.map((row) => b[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));

/** A^-1 by Gauss-Jordan with row exchange; also log |det A|. */
export function inverse(a: Matrix): { inverse: Matrix; logDeterminant: number } {
  const n = a.length;
  const work = a.map((row, i) => [...row, ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0))]);
  let logDeterminant = 0;
  for (let column = 0; column < n; column++) {
    let best = column;
    for (let i = column; i < n; i++) {
      if (Math.abs(work[i]![column]!) > Math.abs(work[best]![column]!)) best = i;
    }
    [work[column], work[best]] = [work[best]!, work[column]!];
    const pivot = work[column]![column]!;
    if (pivot === 0) throw new Error(`singular at column ${column}`);
    logDeterminant += Math.log(Math.abs(pivot));
    work[column] = work[column]!.map((value) => value / pivot);
    for (let i = 0; i < n; i++) {
      const factor = work[i]![column]!;
      if (i === column || factor === 0) continue;
      work[i] = work[i]!.map((value, j) => value - factor * work[column]![j]!);
    }
  }
  return { inverse: work.map((row) => row.slice(n)), logDeterminant };
}

const column = (values: readonly number[]): Matrix => values.map((value) => [value]);

export interface GaussianModel {
  /** Covariance of the random effects that are wanted. */
  readonly G: Matrix;
  /** Records on these effects. */
  readonly Z: Matrix;
  /** Covariance of everything else in the records. */
  readonly R: Matrix;
  readonly X: Matrix;
  readonly y: readonly number[];
}

/**
 * Best linear unbiased prediction by its definition: V = Z G Z' + R, b = (X'V^-1 X)^-1 X'V^-1 y,
 * u = G Z'V^-1 (y - X b), PEV = G - G Z'P Z G with P = V^-1 - V^-1 X (X'V^-1 X)^-1 X'V^-1 (Henderson 1963; from memory).
 */
export function predictByDefinition({ G, Z, R, X, y }: GaussianModel) {
  const covariance = multiply(Z, G);
  const signal = multiply(covariance, transpose(Z));
  const V = signal.map((row, i) => row.map((value, j) => value + R[i]![j]!));
  const { inverse: Vi, logDeterminant } = inverse(V);
  const ViX = multiply(Vi, X);
  const information = inverse(multiply(transpose(X), ViX));
  const P = multiply(multiply(ViX, information.inverse), transpose(ViX)).map((row, i) =>
    row.map((value, j) => Vi[i]![j]! - value),
  );
  const Py = multiply(P, column(y));
  const b = multiply(multiply(information.inverse, transpose(ViX)), column(y)).map(([value]) => value!);
  const GZ = transpose(covariance);
  const u = multiply(GZ, Py).map(([value]) => value!);
  const explained = multiply(multiply(GZ, P), covariance);
  const logLikelihood =
    -0.5 *
    (logDeterminant + information.logDeterminant + y.reduce((sum, value, i) => sum + value * Py[i]![0]!, 0));
  return { u, b, explained, logLikelihood };
}
