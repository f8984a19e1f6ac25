import { groupBy } from '../../graph/grouping.ts';
import type { Entry } from '../journal/entry.ts';
import type { ActionId, EntryId, KeeperId } from '../journal/ids.ts';
import type { Journal } from '../journal/journal.ts';
import type { ImportRecord } from './db.ts';

/**
 * Undo is no state of its own: it is read off the journal, so it survives a reload. An undo is a withdrawal of all
 * entries of one action with the reason below; a redo withdraws that withdrawal. Walking through a keeper's
 * actions in order gives the two stacks that an undo command works on.
 */
export const UNDO_REASON = 'undone';
export const REDO_REASON = 'brought back';

/** Actions (or imports) that can be taken back and brought back; the last of each list is next. */
export interface UndoStacks {
  readonly done: readonly ActionId[];
  readonly undone: readonly ActionId[];
}

export const NOTHING_DONE: UndoStacks = { done: [], undone: [] };

/** One step in time: something done, or an undo or redo of an earlier one. */
export interface Step {
  readonly turn: 'done' | 'undone' | 'redone';
  readonly target: ActionId;
}

/** The stacks after an action was written, undone or done again. */
export function afterStep(stacks: UndoStacks, step: Step): UndoStacks {
  const next = { done: [...stacks.done], undone: [...stacks.undone] };
  take(next, step);
  return next;
}

interface OpenStacks {
  done: ActionId[];
  undone: ActionId[];
}

/** Takes one step in place. What is undone or redone is nearly always the last, so this is O(1) as a rule. */
function take(stacks: OpenStacks, { turn, target }: Step): void {
  if (turn === 'done') {
    stacks.done.push(target);
    stacks.undone = [];
  } else if (turn === 'undone') {
    stacks.done = without(stacks.done, target);
    stacks.undone.push(target);
  } else {
    stacks.undone = without(stacks.undone, target);
    stacks.done.push(target);
  }
}

function without(list: ActionId[], target: ActionId): ActionId[] {
  if (list.at(-1) !== target) return list.filter((action) => action !== target);
  list.pop();
  return list;
}

/** What the entries of one action mean for undo. */
export function stepOf(journal: Journal, entries: readonly Entry[]): Step | undefined {
  const first = entries[0];
  if (!first) return undefined;
  if (first.kind === 'withdrawal' && first.reason === UNDO_REASON) {
    const target = withdrawnBy(journal, first)?.action;
    if (target) return { turn: 'undone', target };
  }
  if (first.kind === 'withdrawal' && first.reason === REDO_REASON) {
    const target = withdrawnBy(journal, withdrawnBy(journal, first))?.action;
    if (target) return { turn: 'redone', target };
  }
  return { turn: 'done', target: first.action };
}

function withdrawnBy(journal: Journal, entry: Entry | undefined): Entry | undefined {
  const id = entry?.kind === 'withdrawal' ? entry.withdraws[0] : undefined;
  return id && journal.get(id);
}

/**
 * The stacks of a keeper on this device, from all that was written and brought in. What came in with a file is undone
 * with the file, even where this keeper once wrote it. O(entries).
 */
export function undoStacks(journal: Journal, keeper: KeeperId, imports: Iterable<ImportRecord>): UndoStacks {
  const steps: { readonly id: ActionId; readonly step: Step }[] = [];
  const brought = new Set<EntryId>();
  for (const { added } of imports) for (const id of added) brought.add(id);
  for (const [action, entries] of actionsOf(journal, keeper, brought)) {
    const step = stepOf(journal, entries);
    if (step) steps.push({ id: action, step });
  }
  for (const record of imports) {
    steps.push({ id: record.id, step: { turn: 'done', target: record.id } });
    for (const { id, turn } of record.turns) steps.push({ id, step: { turn, target: record.id } });
  }
  steps.sort((a, b) => (a.id < b.id ? -1 : 1));
  const stacks: OpenStacks = { done: [], undone: [] };
  for (const { step } of steps) take(stacks, step);
  return stacks;
}

function actionsOf(
  journal: Journal,
  keeper: KeeperId,
  brought: ReadonlySet<EntryId>,
): ReadonlyMap<ActionId, readonly Entry[]> {
  const own = [...journal.values()].filter(({ id, recordedBy }) => recordedBy === keeper && !brought.has(id));
  return groupBy(own, ({ action }) => action);
}

/** The standing withdrawal by which an action was last undone. */
export function lastUndoOf(journal: Journal, target: ActionId): Entry | undefined {
  let last: Entry | undefined;
  for (const entry of journal.values()) {
    if (entry.kind !== 'withdrawal' || entry.reason !== UNDO_REASON) continue;
    if (withdrawnBy(journal, entry)?.action !== target) continue;
    if (!last || entry.id > last.id) last = entry;
  }
  return last;
}
