import { batch } from '@preact/signals';
import type { Entry } from '../journal/entry.ts';
import type { ActionId, KeeperId } from '../journal/ids.ts';
import { unite } from '../journal/journal.ts';
import { type Result, success } from '../journal/problems.ts';
import { extendProjection, type Projection, startProjection } from '../registry/project.ts';
import type { UnionPreview } from './contract.ts';
import type { Core } from './core.ts';
import { DURABLE, type ImportRecord, type StoredPhoto } from './db.ts';
import { onDisk } from './disk.ts';
import { undoStacks } from './undo.ts';

/** What a union with these entries would bring. Nothing is written. */
export function previewUnion(core: Core, entries: readonly Entry[]): UnionPreview {
  return tryUnion(core, entries).preview;
}

interface TriedUnion {
  readonly preview: UnionPreview;
  /** The records as they would be. */
  readonly after: Projection;
}

function tryUnion(core: Core, entries: readonly Entry[]): TriedUnion {
  const before = core.projection.peek();
  const after = extendProjection(before, entries);
  const { added, altered } = unite(before.journal, entries);
  const stood = new Set(before.registry.contradictions.map(contradictionKey));
  const disagreed = new Set(before.disagreements.map(({ about, counts }) => `${about} ${counts.id}`));
  const preview: UnionPreview = {
    added,
    same: entries.length - added.length - altered.length,
    altered,
    disagreements: after.disagreements.filter(({ about, counts }) => !disagreed.has(`${about} ${counts.id}`)),
    contradictions: after.registry.contradictions.filter((each) => !stood.has(contradictionKey(each))),
  };
  return { preview, after };
}

type Keyed = UnionPreview['contradictions'][number];

function contradictionKey({ code, entry, colony, queen }: Keyed): string {
  return [code, entry, colony, queen].join(' ');
}

/**
 * Unites the open records with those of a file: all in one transaction, or nothing. With `keeper` the file is said to
 * be the keeper's own, and this device writes on under the id that it bears.
 */
export async function uniteWith(
  core: Core,
  entries: readonly Entry[],
  photos: readonly StoredPhoto[],
  keeper: KeeperId = core.keeper.peek(),
): Promise<Result<UnionPreview>> {
  const { preview, after } = tryUnion(core, entries);
  const journal = core.journal.peek();
  const kept = preview.altered.map((each) => each.kept);
  const before = core.keeper.peek();
  const record: ImportRecord = {
    id: core.options.newId() as ActionId,
    added: preview.added.map(({ id }) => id),
    replaced: preview.altered.flatMap(({ id }) => journal.get(id) ?? []),
    kept,
    takenOut: [],
    turns: [],
    ...(keeper === before ? {} : { keeper: { before, after: keeper } }),
  };
  const changes = record.added.length > 0 || kept.length > 0 || keeper !== before;
  if (!changes && photos.length === 0) return success(preview);
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction(
      ['entries', 'imports', 'photos', 'device'],
      'readwrite',
      DURABLE,
    );
    const store = transaction.objectStore('entries');
    await Promise.all([
      ...[...preview.added, ...kept].map((entry) => store.put(entry)),
      ...photos.map((photo) => transaction.objectStore('photos').put(photo)),
      ...(changes ? [transaction.objectStore('imports').put(record)] : []),
      ...(keeper === before ? [] : [transaction.objectStore('device').put(keeper, 'keeper')]),
      transaction.done,
    ]);
  });
  if (!saved.ok) return saved;
  if (!changes) return success(preview);
  core.imports.set(record.id, record);
  show(core, after, keeper);
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
  const keeper = turn === 'undone' ? record.keeper?.before : record.keeper?.after;
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction(['entries', 'imports', 'device'], 'readwrite', DURABLE);
    const store = transaction.objectStore('entries');
    await Promise.all([
      ...put.map((entry) => store.put(entry)),
      ...remove.map((id) => store.delete(id)),
      transaction.objectStore('imports').put(turned),
      ...(keeper ? [transaction.objectStore('device').put(keeper, 'keeper')] : []),
      transaction.done,
    ]);
  });
  if (!saved.ok) return saved;
  core.imports.set(turned.id, turned);
  for (const entry of put) journal.set(entry.id, entry);
  for (const id of remove) journal.delete(id);
  show(core, startProjection(journal, core.registry.peek().revision), keeper);
  return success(added);
}

function show(core: Core, projection: Projection, keeper: KeeperId = core.keeper.peek()): void {
  batch(() => {
    core.keeper.value = keeper;
    core.projection.value = projection;
    core.stacks.value = undoStacks(projection.journal, keeper, [...core.imports.values()]);
  });
  core.channel?.tell({ kind: 'reload' });
}
