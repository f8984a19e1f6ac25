import { batch, computed } from '@preact/signals';
import { localDay } from '../journal/day.ts';
import type { Draft, Entry } from '../journal/entry.ts';
import type { ActionId } from '../journal/ids.ts';
import { entriesOfAction } from '../journal/journal.ts';
import type { Result } from '../journal/problems.ts';
import { startProjection } from '../registry/project.ts';
import type { Compute } from '../workers/messages.ts';
import {
  checkDrafts,
  correctEntry,
  redoAction,
  undoAction,
  withdrawEntries,
  writeDrafts,
} from './commands.ts';
import type { Keeper, Records, Store, WrittenAction } from './contract.ts';
import { type Core, createCore, inTurn } from './core.ts';
import { changeSettings, readPhoto, readPhotos, savePhoto, wipe } from './device.ts';
import { createEvaluator } from './evaluation.ts';
import { previewUnion, turnImport, uniteWith } from './imports.ts';
import { load } from './load.ts';
import { DEFAULT_OPTIONS, type StoreOptions } from './options.ts';
import { rescue } from './rescue.ts';
import { joinOtherTabs, watchVisibility } from './tabs.ts';
import { actionTitle } from './titles.ts';
import { NOTHING_DONE } from './undo.ts';

/**
 * Opens the records of this device. It always comes back with a store: where the records cannot be opened the store
 * is empty, refuses every write, and `problems` says why.
 */
export async function openStore(options: Partial<StoreOptions> = {}): Promise<Store> {
  const core = createCore({ ...DEFAULT_OPTIONS, ...options });
  await load(core);
  joinOtherTabs(core);
  watchVisibility(core);
  return {
    ...signalsOf(core),
    ...writingOf(core),
    newId: core.options.newId,
    ...numericsOf(core),
    previewUnion: (entries) => previewUnion(core, entries),
    unite: (entries, photos = [], keeper) => inTurn(core, () => uniteWith(core, entries, photos, keeper)),
    changeSettings: (change) => inTurn(core, () => changeSettings(core, change)),
    savePhoto: (photo) => inTurn(core, () => savePhoto(core, photo)),
    photo: async (id) => {
      const stored = await readPhoto(core, id);
      return stored && new Blob([stored.bytes], { type: stored.type });
    },
    photos: () => readPhotos(core),
    open: (records) => inTurn(core, () => openOther(core, records)),
    rescue: () => rescue(core),
    wipe: () => inTurn(core, () => wipe(core)),
  };
}

/** The numerics, started with the first task that needs them. */
function numericsOf(core: Core) {
  let started: Compute | undefined;
  const compute = () => {
    started ??= core.options.compute();
    return started;
  };
  const evaluator = createEvaluator(core, compute);
  const lazy: Compute = {
    run: (kind, work, options) => compute().run(kind, work, options),
    close: () => started?.close(),
  };
  return { evaluation: evaluator.state, watchEvaluation: evaluator.watch, compute: lazy };
}

function signalsOf(core: Core) {
  return {
    records: core.records,
    registry: core.registry,
    journal: core.journal,
    disagreements: computed(() => core.projection.value.disagreements),
    on: core.on,
    keeper: computed<Keeper>(() => ({
      id: core.keeper.value,
      name: core.registry.value.keepers.get(core.keeper.value) ?? '',
    })),
    settings: core.settings,
    problems: core.problems,
    lastAction: computed(() => described(core, core.stacks.value.done.at(-1))),
    lastUndone: computed(() => described(core, core.stacks.value.undone.at(-1))),
  };
}

function described(core: Core, action: ActionId | undefined): WrittenAction | undefined {
  if (!action) return undefined;
  const record = core.imports.get(action);
  const journal = core.journal.value;
  if (record) {
    const there = record.added.flatMap((id) => journal.get(id) ?? []);
    return { action, title: 'Records of a file', entries: there.length > 0 ? there : record.takenOut };
  }
  const entries = writtenEntries(core, action);
  return { action, title: core.titles.get(action) ?? actionTitle(entries, core.registry.value), entries };
}

/** Entries of an action never change, so the journal is searched for them once. */
function writtenEntries(core: Core, action: ActionId): readonly Entry[] {
  const known = core.actions.get(action);
  if (known) return known;
  const entries = entriesOfAction(core.journal.peek(), action);
  core.actions.set(action, entries);
  return entries;
}

function writingOf(core: Core) {
  return {
    check: (drafts: readonly Draft[]) => checkDrafts(core, drafts),
    write: (drafts: readonly Draft[], title: string) => inTurn(core, () => writeDrafts(core, drafts, title)),
    correct: (id: Entry['id'], draft: Draft) => inTurn(core, () => correctEntry(core, id, draft)),
    withdraw: (ids: readonly Entry['id'][], reason?: string) =>
      inTurn(core, () => withdrawEntries(core, ids, reason)),
    undo: () => inTurn(core, () => turnLast(core, 'undone')),
    redo: () => inTurn(core, () => turnLast(core, 'redone')),
    nameKeeper: (name: string) => inTurn(core, () => nameKeeper(core, name)),
  };
}

/** Undo or redo: of an import by taking it out or in, of all else by a withdrawal. */
function turnLast(core: Core, turn: 'undone' | 'redone'): Promise<Result<readonly Entry[]>> {
  const { done, undone } = core.stacks.peek();
  const target = (turn === 'undone' ? done : undone).at(-1);
  const record = target && core.imports.get(target);
  if (record) return turnImport(core, record, turn);
  return turn === 'undone' ? undoAction(core) : redoAction(core);
}

async function nameKeeper(core: Core, name: string): Promise<void> {
  const day = localDay(core.options.now()) as string as Draft['day'];
  const draft: Draft = { kind: 'keeper-named', day, keeper: core.keeper.peek(), name };
  await writeDrafts(core, [draft], 'Your name');
}

/** Leaves the open records and opens others. */
async function openOther(core: Core, records: Records): Promise<void> {
  core.database?.close();
  core.database = undefined;
  batch(() => {
    core.records.value = records;
    core.problems.value = [];
    core.on.value = localDay(core.options.now());
    core.today = core.on.value;
    core.projection.value = startProjection(new Map(), core.registry.peek().revision);
    core.stacks.value = NOTHING_DONE;
  });
  core.titles.clear();
  core.actions.clear();
  core.imports.clear();
  await load(core);
  joinOtherTabs(core);
}
