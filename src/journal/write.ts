import { type Draft, Entry } from './entry.ts';
import type { ActionId, EntryId, KeeperId } from './ids.ts';
import { issueProblem } from './issue-words.ts';
import { failure, type Problem, type Result, success } from './problems.ts';

/** Who writes, when, and where new ids come from. Tests pass their own. */
export interface Scribe {
  readonly keeper: KeeperId;
  readonly now: () => Date;
  readonly newId: () => string;
}

/**
 * Turns what the keeper said into entries of one action, checked against the schemas. All or nothing: one bad
 * draft and no entry comes back, but every problem of every draft.
 */
export function writeEntries(drafts: readonly Draft[], scribe: Scribe): Result<Entry[]> {
  const action = scribe.newId() as ActionId;
  const recordedAt = scribe.now().toISOString();
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  for (const draft of drafts) {
    const whole = { ...draft, id: scribe.newId() as EntryId, action, recordedAt, recordedBy: scribe.keeper };
    const read = readEntry(whole, kindAndDay(whole));
    if (read.ok) entries.push(read.value);
    else problems.push(...read.problems);
  }
  return problems.length > 0 ? failure(problems) : success(entries);
}

/** Checks one value of unknown origin. `where` names its place (file and line, or row) in each problem. */
export function readEntry(value: unknown, where: string): Result<Entry> {
  const parsed = Entry.safeParse(value);
  if (parsed.success) return success(parsed.data);
  return failure(parsed.error.issues.map((issue) => issueProblem(issue, value, where)));
}

function kindAndDay(value: { readonly kind: string; readonly day: string }): string {
  return `${value.kind} of ${value.day}`;
}
