/**
 * Solves a mixed model by sweeps and conjugate gradients: all effects at once, or the explained variance of one node.
 *
 *   K x = (W, X)' M y      then  (u1, u2) = T D^(1/2) z C',  noise of the levels,  b (operator.ts)
 *   for the sum u1 + u2 of one node: r = (D^(1/2) T' C' (1, 1), 0),  Var = r'r,  PEV = r' K^-1 r
 *
 * Source: Henderson 1984 (from memory); Colleau 2002 for the sweeps. Cost: iterations * O(nodes + records).
 * Not converging is a result with iterations and residual, never a last iterate passed off as an answer.
 */
import { conjugateGradients, type SolveOptions, type SolveOutcome } from './conjugate-gradients.ts';
import type { MixedModel } from './mixed-model.ts';
import { effectsOf, levelsOf, makeOperator, multiply, type Operator, rightHandSide } from './operator.ts';
import { makePreconditioner, type Preconditioner, precondition } from './precondition.ts';
import { prepareModel } from './prepare-model.ts';
import { gatherUp } from './two-sweeps.ts';

/** A model made ready for any number of solves. */
export interface Solver {
  readonly operator: Operator;
  readonly preconditioner: Preconditioner;
}

export interface NotConverged {
  readonly is: 'not-converged';
  readonly iterations: number;
  /** Relative residual reached. */
  readonly residual: number;
  /** True when the caller asked to stop. */
  readonly stopped: boolean;
}

export interface ModelSolution {
  readonly is: 'solved';
  /** First and second effect of each node side by side. */
  readonly effects: Float64Array;
  /** Fixed columns, in the unit of the values. */
  readonly columns: Float64Array;
  /** Noise of each level. */
  readonly levels: Float64Array;
  readonly iterations: number;
  readonly residual: number;
}

/** Throws if the covariance of the effects is not positive semi-definite (check it before). */
export function makeSolver(model: MixedModel): Solver {
  const operator = makeOperator(prepareModel(model));
  return { operator, preconditioner: makePreconditioner(operator) };
}

/** One preconditioned solve into `x`; `right` is overwritten. */
function solveRight(
  { operator, preconditioner }: Solver,
  right: Float64Array,
  x: Float64Array,
  options: Partial<SolveOptions>,
): SolveOutcome {
  return conjugateGradients(
    (v, out) => multiply(operator, v, out),
    (v, out) => precondition(preconditioner, v, out),
    right,
    x,
    options,
  );
}

const notConverged = ({ iterations, residual, stopped }: SolveOutcome): NotConverged => ({
  is: 'not-converged',
  iterations,
  residual,
  stopped,
});

/** All effects of the model. */
export function solveModel(
  solver: Solver,
  options: Partial<SolveOptions> = {},
): ModelSolution | NotConverged {
  const { operator } = solver;
  const x = new Float64Array(operator.unknowns);
  const outcome = solveRight(solver, rightHandSide(operator), x, options);
  if (!outcome.converged) return notConverged(outcome);
  const offset = 2 * operator.model.descent.size;
  return {
    is: 'solved',
    effects: effectsOf(operator, x),
    columns: operator.model.centre.map((mean, c) => mean + x[offset + c]!),
    levels: levelsOf(operator, x),
    iterations: outcome.iterations,
    residual: outcome.residual,
  };
}

/** Variance of u1 + u2 of one node, and how much of it the records explain (Var - PEV), fixed columns unknown. */
export function explainedAtNode(
  solver: Solver,
  node: number,
  options: Partial<SolveOptions> = {},
): { readonly is: 'solved'; readonly variance: number; readonly explained: number } | NotConverged {
  const found = errorOfCombination(solver, { nodes: [node], weights: [1] }, options);
  if (found.is !== 'solved') return found;
  let variance = 0;
  let error = 0;
  found.row.forEach((value, i) => {
    variance += value * value;
    error += value * found.error[i]!;
  });
  return { is: 'solved', variance, explained: variance - error };
}

/**
 * A weighted sum of u1 + u2 of nodes as a row r on the unknowns, and K^-1 r: their product with another row is the
 * prediction error covariance of the two sums.
 */
export function errorOfCombination(
  solver: Solver,
  combination: { readonly nodes: ArrayLike<number>; readonly weights: ArrayLike<number> },
  options: Partial<SolveOptions> = {},
): { readonly is: 'solved'; readonly row: Float64Array; readonly error: Float64Array } | NotConverged {
  const row = rowOf(solver.operator, combination);
  const error = new Float64Array(row.length);
  const outcome = solveRight(solver, row.slice(), error, options);
  return outcome.converged ? { is: 'solved', row, error } : notConverged(outcome);
}

function rowOf(
  { model, root, factor, up, unknowns }: Operator,
  { nodes, weights }: { readonly nodes: ArrayLike<number>; readonly weights: ArrayLike<number> },
): Float64Array {
  const row = new Float64Array(unknowns);
  up.fill(0);
  for (let k = 0; k < nodes.length; k++) {
    up[2 * nodes[k]!]! += weights[k]! * (factor[0] + factor[1]);
    up[2 * nodes[k]! + 1]! += weights[k]! * factor[2];
  }
  gatherUp(model.descent, root, up, row);
  return row;
}
