import { batch } from '@preact/signals';
import { localDay, type PlainDay } from '../journal/day.ts';
import { type Draft, type Entry, kindTitle } from '../journal/entry.ts';
import type { EntryId } from '../journal/ids.ts';
import { entriesOfAction } from '../journal/journal.ts';
import { failure, type Problem, type Result, success } from '../journal/problems.ts';
import { writeEntries } from '../journal/write.ts';
import { extendProjection } from '../registry/project.ts';
import type { Contradiction } from '../registry/state.ts';
import { type Core, scribeOf } from './core.ts';
import { DURABLE } from './db.ts';
import { onDisk } from './disk.ts';
import { contradictionProblem, newContradictions, standingContradictions } from './projection.ts';
import { afterStep, lastUndoOf, REDO_REASON, stepOf, UNDO_REASON } from './undo.ts';

/** Contradictions that the drafts would bring. Drafts that no schema accepts bring none yet. */
export function checkDrafts(core: Core, drafts: readonly Draft[]): readonly Contradiction[] {
  const entries = writeEntries(drafts, scribeOf(core));
  return entries.ok ? newContradictions(core.projection.peek(), entries.value, latestDay(core)) : [];
}

/** The last day that may be recorded: today; in the demo also the day on which it plays. */
function latestDay(core: Core): PlainDay {
  const today = localDay(core.options.now());
  const shown = core.on.peek();
  return core.records.peek() === 'demo' && shown > today ? shown : today;
}

/** Checks drafts, refuses those that would contradict the records, and saves them as one action. */
export async function writeDrafts(
  core: Core,
  drafts: readonly Draft[],
  title: string,
): Promise<Result<readonly Entry[]>> {
  const entries = writeEntries(drafts, scribeOf(core));
  if (!entries.ok) return entries;
  const brought = newContradictions(core.projection.peek(), entries.value, latestDay(core));
  const standing = standingContradictions(brought, drafts);
  if (standing.length > 0) return failure(standing.map((each) => asProblem(core, entries.value, each)));
  return save(core, entries.value, title);
}

function asProblem(core: Core, written: readonly Entry[], contradiction: Contradiction): Problem {
  const entry =
    written.find(({ id }) => id === contradiction.entry) ?? core.journal.peek().get(contradiction.entry);
  const where = entry ? `${kindTitle(entry.kind)}, ${entry.day}` : contradiction.day;
  return contradictionProblem(contradiction, where);
}

/** Writes a draft that supersedes an entry; the entry itself stays as it was. */
export async function correctEntry(core: Core, id: EntryId, draft: Draft): Promise<Result<readonly Entry[]>> {
  const entry = core.journal.peek().get(id);
  if (!entry) return failure([unknownEntry(id)]);
  return writeDrafts(core, [{ ...draft, supersedes: id }], `Correction: ${kindTitle(entry.kind)}`);
}

/** Writes a withdrawal of the entries; they stay in the journal and no longer count. */
export async function withdrawEntries(
  core: Core,
  ids: readonly EntryId[],
  reason?: string,
): Promise<Result<readonly Entry[]>> {
  const journal = core.journal.peek();
  const unknown = ids.filter((id) => !journal.has(id));
  if (unknown.length > 0) return failure(unknown.map(unknownEntry));
  const kinds = [...new Set(ids.map((id) => kindTitle(journal.get(id)?.kind ?? 'note')))];
  return writeWithdrawal(core, ids, reason, `Taken back: ${kinds.join(', ')}`);
}

function unknownEntry(id: EntryId): Problem {
  return {
    code: 'field-invalid',
    where: 'The journal',
    found: id,
    because: 'There is no such entry on this device.',
    remedy: 'Reload the page; another tab may have taken it out.',
  };
}

/** A withdrawal hides and contradicts nothing by itself, so it is never refused. */
async function writeWithdrawal(
  core: Core,
  withdraws: readonly EntryId[],
  reason: string | undefined,
  title: string,
): Promise<Result<readonly Entry[]>> {
  const draft: Draft<'withdrawal'> = {
    kind: 'withdrawal',
    day: localDay(core.options.now()) as string as Draft['day'],
    withdraws: [...withdraws],
    ...(reason === undefined ? {} : { reason }),
  };
  const entries = writeEntries([draft], scribeOf(core));
  return entries.ok ? save(core, entries.value, title) : entries;
}

/** Takes back the last standing action of this keeper by a withdrawal of all its entries. */
export async function undoAction(core: Core): Promise<Result<readonly Entry[]>> {
  const target = core.stacks.peek().done.at(-1);
  if (!target) return success([]);
  const entries = core.actions.get(target) ?? entriesOfAction(core.journal.peek(), target);
  const ids = entries.map(({ id }) => id);
  return writeWithdrawal(core, ids, UNDO_REASON, `Undone: ${core.titles.get(target) ?? ''}`);
}

/** Brings the last undone action back by a withdrawal of its withdrawal. */
export async function redoAction(core: Core): Promise<Result<readonly Entry[]>> {
  const target = core.stacks.peek().undone.at(-1);
  const undo = target && lastUndoOf(core.journal.peek(), target);
  if (!undo) return success([]);
  return writeWithdrawal(core, [undo.id], REDO_REASON, `Brought back: ${core.titles.get(target) ?? ''}`);
}

/** Saves the entries of one action for good, then shows them here and in the other tabs. */
async function save(core: Core, entries: readonly Entry[], title: string): Promise<Result<readonly Entry[]>> {
  const first = entries[0];
  if (!first) return success([]);
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction(['entries', 'titles'], 'readwrite', DURABLE);
    const store = transaction.objectStore('entries');
    await Promise.all([
      ...entries.map((entry) => store.add(entry)),
      transaction.objectStore('titles').put(title, first.action),
      transaction.done,
    ]);
  });
  if (!saved.ok) return saved;
  core.titles.set(first.action, title);
  core.actions.set(first.action, entries);
  show(core, entries);
  core.channel?.tell({ kind: 'wrote', entries: entries.map(({ id }) => id) });
  await askToPersist(core);
  return success(entries);
}

function show(core: Core, entries: readonly Entry[]): void {
  batch(() => {
    core.projection.value = extendProjection(core.projection.peek(), entries);
    const step = stepOf(core.journal.peek(), entries);
    if (step) core.stacks.value = afterStep(core.stacks.peek(), step);
  });
}

/** Asks the browser once to keep the records when it is short of space: as soon as there is something to lose. */
async function askToPersist(core: Core): Promise<void> {
  if (core.persistenceAsked || core.records.peek() !== 'own' || !core.options.askToPersist) return;
  core.persistenceAsked = true;
  await onDisk(core, (database) => database.put('device', true, 'persistence-asked'));
  // Browsers may leave the question open for long; the record is safe either way, so nobody waits for the answer.
  core.options.askToPersist().catch(() => undefined);
}
