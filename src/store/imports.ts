import { batch } from '@preact/signals';
import type { Entry } from '../journal/entry.ts';
import type { ActionId } from '../journal/ids.ts';
import { type Journal, liveEntries, unite } from '../journal/journal.ts';
import { type Result, success } from '../journal/problems.ts';
import { extendProjection, startProjection } from '../registry/project.ts';
import type { UnionPreview } from './contract.ts';
import type { Core } from './core.ts';
import { DURABLE, type ImportRecord, type StoredPhoto } from './db.ts';
import { onDisk } from './disk.ts';
import { undoStacks } from './undo.ts';

/** What a union with these entries would bring. Nothing is written. */
export function previewUnion(core: Core, entries: readonly Entry[]): UnionPreview {
  const before = core.projection.peek();
  const after = extendProjection(before, entries);
  const { added, altered } = unite(before.journal, entries);
  const stood = new Set(before.registry.contradictions.map(contradictionKey));
  const disagreed = new Set(before.disagreements.map(({ about, counts }) => `${about} ${counts.id}`));
  const disagreements = added.length + altered.length > 0 ? liveEntries(after.journal).disagreements : [];
  return {
    added,
    same: entries.length - added.length - altered.length,
    altered,
    disagreements: disagreements.filter(({ about, counts }) => !disagreed.has(`${about} ${counts.id}`)),
    contradictions: after.registry.contradictions.filter((each) => !stood.has(contradictionKey(each))),
  };
}

type Keyed = UnionPreview['contradictions'][number];

function contradictionKey({ code, entry, colony, queen }: Keyed): string {
  return [code, entry, colony, queen].join(' ');
}

/** Unites the open records with those of a file: all in one transaction, or nothing. */
export async function uniteWith(
  core: Core,
  entries: readonly Entry[],
  photos: readonly StoredPhoto[],
): Promise<Result<UnionPreview>> {
  const preview = previewUnion(core, entries);
  const journal = core.journal.peek();
  const kept = preview.altered.map((each) => each.kept);
  const record: ImportRecord = {
    id: core.options.newId() as ActionId,
    added: preview.added.map(({ id }) => id),
    replaced: preview.altered.flatMap(({ id }) => journal.get(id) ?? []),
    kept,
    takenOut: [],
    turns: [],
  };
  const changes = record.added.length > 0 || kept.length > 0;
  if (!changes && photos.length === 0) return success(preview);
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction(['entries', 'imports', 'photos'], 'readwrite', DURABLE);
    const store = transaction.objectStore('entries');
    await Promise.all([
      ...[...preview.added, ...kept].map((entry) => store.put(entry)),
      ...photos.map((photo) => transaction.objectStore('photos').put(photo)),
      ...(changes ? [transaction.objectStore('imports').put(record)] : []),
      transaction.done,
    ]);
  });
  if (!saved.ok) return saved;
  if (!changes) return success(preview);
  core.imports.set(record.id, record);
  showJournal(core, unite(journal, entries).journal);
  return success(preview);
}

/** Takes an import out of this device, or brings it in again. */
export async function turnImport(
  core: Core,
  record: ImportRecord,
  turn: 'undone' | 'redone',
): Promise<Result<readonly Entry[]>> {
  const journal = new Map(core.journal.peek());
  const added = turn === 'undone' ? record.added.flatMap((id) => journal.get(id) ?? []) : record.takenOut;
  const turned: ImportRecord = {
    ...record,
    takenOut: turn === 'undone' ? added : [],
    turns: [...record.turns, { id: core.options.newId() as ActionId, turn }],
  };
  const put = turn === 'undone' ? record.replaced : [...added, ...record.kept];
  const remove = turn === 'undone' ? record.added : [];
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction(['entries', 'imports'], 'readwrite', DURABLE);
    const store = transaction.objectStore('entries');
    await Promise.all([
      ...put.map((entry) => store.put(entry)),
      ...remove.map((id) => store.delete(id)),
      transaction.objectStore('imports').put(turned),
      transaction.done,
    ]);
  });
  if (!saved.ok) return saved;
  core.imports.set(turned.id, turned);
  for (const entry of put) journal.set(entry.id, entry);
  for (const id of remove) journal.delete(id);
  showJournal(core, journal);
  return success(added);
}

function showJournal(core: Core, journal: Journal): void {
  batch(() => {
    core.projection.value = startProjection(journal, core.registry.peek().revision);
    core.stacks.value = undoStacks(journal, core.keeper.peek(), [...core.imports.values()]);
  });
  core.channel?.tell({ kind: 'reload' });
}
