/**
 * What the choice of contributions is told, what it answers, and what makes it impossible.
 * Source and formulas: contributions.ts.
 */

export interface ContributionProblem {
  /** Index value of each candidate, in any one unit. */
  readonly merit: ArrayLike<number>;
  /** Kinship (0..1) of each pair of candidates, row by row; the diagonal is (1 + F)/2. */
  readonly kinship: ArrayLike<number>;
  /** Largest share (0..1] of the daughters that each may raise; absent: no cap. */
  readonly caps?: ArrayLike<number>;
  /** Kinship (0..1) of the daughters of each candidate with the drones that they will meet. */
  readonly poolKinship?: ArrayLike<number>;
  /** Limit of the mean of `poolKinship` over the daughters; absent: no limit. */
  readonly poolKinshipLimit?: number;
}

export interface Contributions {
  readonly ok: true;
  /** Share (0..1) of the daughters from each candidate; sums to 1. */
  readonly shares: Float64Array;
  /** c'I: mean index of the dams, weighted. */
  readonly gain: number;
  /** c'fc: mean kinship of two dams drawn with these shares, with replacement. */
  readonly groupKinship: number;
  /** Mean kinship of the daughters with the drones they will meet; absent when not given. */
  readonly poolKinship?: number;
  /** Index given up for each unit of `poolKinshipLimit`; 0 when the limit does not bind. */
  readonly limitPrice: number;
  /** Weight on kinship that this point is best for. */
  readonly lambda: number;
  /**
   * Largest breach of the Karush-Kuhn-Tucker conditions, relative to the size of the gradient and of the shares;
   * `converged` when it is below 1e-8.
   */
  readonly residual: number;
  readonly converged: boolean;
  readonly steps: number;
}

export interface NoContributions {
  readonly ok: false;
  readonly code:
    | 'no-candidates'
    | 'caps-too-small'
    | 'pool-limit-too-low'
    | 'kinship-limit-too-low'
    | 'not-solved';
  /** For the keeper: what was found, and what would let a choice be made. */
  readonly found: string;
  readonly remedy: string;
  /** Lowest limit that can be met, where a limit is too low. */
  readonly least?: number;
}

export type ContributionResult = Contributions | NoContributions;

/** What stands in the way of any choice at all, or undefined. */
export function impossible(problem: ContributionProblem): NoContributions | undefined {
  const count = problem.merit.length;
  if (count === 0) {
    return {
      ok: false,
      code: 'no-candidates',
      found: 'No queen is among the candidates.',
      remedy: 'Take at least one living queen into the choice.',
    };
  }
  const room = capsOf(problem).reduce((sum, cap) => sum + cap, 0);
  if (room < 1 - 1e-12) {
    return {
      ok: false,
      code: 'caps-too-small',
      found: `The caps of the ${count} candidates together allow only ${percent(room)} of the daughters.`,
      remedy: 'Raise the cap for each queen, or take more queens into the choice.',
    };
  }
  const { poolKinship, poolKinshipLimit } = problem;
  if (poolKinship === undefined || poolKinshipLimit === undefined) return undefined;
  const least = leastRelatedShares(problem).reduce((sum, share, k) => sum + share * poolKinship[k]!, 0);
  if (least <= poolKinshipLimit + 1e-12) return undefined;
  return {
    ok: false,
    code: 'pool-limit-too-low',
    found:
      `The limit of ${percent(poolKinshipLimit)} kinship with the drones cannot be met: ` +
      `the least these candidates can reach is ${percent(least)}.`,
    remedy: 'Raise the limit, fly the daughters at another yard, or move other drone colonies there.',
    least,
  };
}

/** The cap of each candidate, at most 1. */
export function capsOf({ merit, caps }: ContributionProblem): Float64Array {
  return Float64Array.from({ length: merit.length }, (_, k) => Math.min(1, caps?.[k] ?? 1));
}

/** The caps filled in order of kinship with the drones, least first: no shares that sum to 1 have less of it. */
export function leastRelatedShares(problem: ContributionProblem): Float64Array {
  const { poolKinship } = problem;
  const caps = capsOf(problem);
  const order = [...caps.keys()].sort(
    (a, b) => (poolKinship ? poolKinship[a]! - poolKinship[b]! : 0) || a - b,
  );
  const shares = new Float64Array(caps.length);
  let left = 1;
  for (const k of order) {
    shares[k] = Math.min(left, caps[k]!);
    left -= shares[k]!;
  }
  return shares;
}

/** A share (0..1) in percent, three significant digits, for the words of a problem. */
export function percent(share: number): string {
  return `${Number((100 * share).toPrecision(3))} %`;
}
