/**
 * What can be wrong with what a keeper wrote or brought in. Problems are values: all of them are returned
 * together, each says where, what was found, what is expected and what to do.
 */
export type ProblemCode =
  | 'not-a-journal'
  | 'newer-than-this-app'
  | 'field-invalid'
  | 'entry-altered'
  | 'row-invalid'
  | 'column-missing'
  | 'storage-full'
  | 'storage-failed'
  | 'storage-newer'
  | 'worker-failed'
  | ContradictionCode;

/** Contradictions between entries: see `src/registry/apply`. A keeper may overrule one with a reason. */
export type ContradictionCode =
  | 'queen-in-two-colonies'
  | 'two-queens-in-colony'
  | 'daughter-older-than-dam'
  | 'dam-is-descendant'
  | 'eggs-of-absent-queen'
  | 'colony-not-started'
  | 'colony-already-ended'
  | 'colony-started-twice'
  | 'joined-with-itself'
  | 'queen-unknown'
  | 'queen-entered-twice'
  | 'queen-already-lost'
  | 'queen-not-there'
  | 'yard-unknown'
  | 'split-without-source'
  | 'day-in-future'
  | 'probabilities-over-one'
  | 'treatment-unknown';

export interface Problem {
  readonly code: ProblemCode;
  /** Where it stands: a file and line, a row and column, or an entry and its day, in words a keeper can follow. */
  readonly where: string;
  /** The field's name where one field is at fault. */
  readonly field?: string;
  /** What stands there now, as written. */
  readonly found: string;
  /** What is wrong with it, in one sentence. */
  readonly because: string;
  /** What to do about it, in one sentence. */
  readonly remedy: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A result that came out. */
export function success<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** A result that did not: every problem, not the first alone. */
export function failure(problems: readonly Problem[]): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  return { ok: false, problems };
}

/** A problem as one line of text, for the command line and for notices. */
export function problemText(problem: Problem): string {
  const field = problem.field ? `, ${problem.field}` : '';
  return `${problem.where}${field}: ${problem.because} Found: ${problem.found}. ${problem.remedy}`;
}

/** Closes a switch over a union: the compiler refuses a case that was forgotten. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
