/**
 * Solves K x = rhs for a symmetric positive definite K known only by its products.
 *
 *   p = M^-1 r;  a = r'M^-1 r / p'Kp;  x += a p;  r -= a K p;  p = M^-1 r + (ratio of r'M^-1 r) p
 * until |r| <= tolerance * |rhs|, M the preconditioner.
 *
 * Source: Hestenes & Stiefel 1952, J. Res. Natl. Bur. Stand. 49:409; preconditioned form from Saad 2003, algorithm 9.1
 * (both from memory). Cost: one product and one preconditioning an iteration. Not converging is a result.
 */

export interface SolveOptions {
  /** Relative residual |r| / |rhs| at which the solution is taken. */
  readonly tolerance: number;
  readonly mostIterations: number;
  /** Asked now and then; true ends the solve unconverged. */
  readonly shouldStop?: () => boolean;
  /** Told the share of the way (on the log scale of the residual) now and then, 0..1. */
  readonly onProgress?: (fraction: number) => void;
}

const SOLVE_DEFAULTS: SolveOptions = { tolerance: 1e-8, mostIterations: 1000 };

export interface SolveOutcome {
  readonly converged: boolean;
  readonly iterations: number;
  /** |r| / |rhs| at the end. */
  readonly residual: number;
  readonly stopped: boolean;
}

type Product = (x: Float64Array, out: Float64Array) => void;

const ASK_EVERY = 4;

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** Solves into `x`, whose content is the starting guess; `rhs` is overwritten with the residual. */
export function conjugateGradients(
  multiply: Product,
  precondition: Product,
  rhs: Float64Array,
  x: Float64Array,
  options: Partial<SolveOptions> = {},
): SolveOutcome {
  const { tolerance, mostIterations, shouldStop, onProgress } = { ...SOLVE_DEFAULTS, ...options };
  const size = Math.sqrt(dot(rhs, rhs));
  const residual = rhs;
  const image = new Float64Array(x.length);
  if (x.some((value) => value !== 0)) {
    multiply(x, image);
    move(residual, -1, image);
  }
  const direction = new Float64Array(x.length);
  let rho = 0;
  for (let iteration = 0; ; iteration++) {
    const left = size === 0 ? 0 : Math.sqrt(dot(residual, residual)) / size;
    if (left <= tolerance) return { converged: true, iterations: iteration, residual: left, stopped: false };
    const ask = iteration % ASK_EVERY === 0;
    if (ask) onProgress?.(Math.min(1, Math.max(0, Math.log(left) / Math.log(tolerance))));
    const stopped = ask && shouldStop?.() === true;
    if (stopped || iteration === mostIterations || !Number.isFinite(left)) {
      return { converged: false, iterations: iteration, residual: left, stopped };
    }
    precondition(residual, image);
    const before = rho;
    rho = dot(residual, image);
    turn(direction, iteration === 0 ? 0 : rho / before, image);
    multiply(direction, image);
    const step = rho / dot(direction, image);
    move(x, step, direction);
    move(residual, -step, image);
  }
}

/** x += step * direction. */
function move(x: Float64Array, step: number, direction: Float64Array): void {
  for (let i = 0; i < x.length; i++) x[i]! += step * direction[i]!;
}

/** direction = towards + share * direction. */
function turn(direction: Float64Array, share: number, towards: Float64Array): void {
  for (let i = 0; i < direction.length; i++) direction[i] = towards[i]! + share * direction[i]!;
}
