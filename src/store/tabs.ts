import { batch } from '@preact/signals';
import type { Entry } from '../journal/entry.ts';
import type { EntryId } from '../journal/ids.ts';
import { extendProjection } from '../registry/project.ts';
import { joinTabs, type TabMessage } from './channel.ts';
import { type Core, followClock, inTurn, report } from './core.ts';
import { databaseName } from './db.ts';
import { readDevice } from './device.ts';
import { reload } from './load.ts';
import { storageProblem } from './troubles.ts';
import { undoStacks } from './undo.ts';

/** Joins the tabs that have the same records open, and leaves those of the records open before. */
export function joinOtherTabs(core: Core): void {
  core.channel?.close();
  core.channel = undefined;
  if (!core.options.tabs) return;
  core.channel = joinTabs(databaseName(core.records.peek()), (message) => {
    void inTurn(core, () => hear(core, message));
  });
}

async function hear(core: Core, message: TabMessage): Promise<void> {
  if (message.kind === 'reload') await reload(core);
  else if (message.kind === 'device') await readDevice(core);
  else await readEntries(core, message.entries);
}

async function readEntries(core: Core, ids: readonly EntryId[]): Promise<void> {
  const database = core.database;
  if (!database) return;
  try {
    const transaction = database.transaction(['entries', 'titles']);
    const found = await Promise.all(ids.map((id) => transaction.objectStore('entries').get(id)));
    const entries = found.filter((entry): entry is Entry => entry !== undefined);
    for (const action of new Set(entries.map(({ action: id }) => id))) {
      const title = await transaction.objectStore('titles').get(action);
      if (title !== undefined) core.titles.set(action, title);
    }
    takeIn(core, entries);
  } catch (error) {
    report(core, storageProblem(error, databaseName(core.records.peek())));
  }
}

function takeIn(core: Core, entries: readonly Entry[]): void {
  batch(() => {
    core.projection.value = extendProjection(core.projection.peek(), entries);
    core.stacks.value = undoStacks(core.journal.peek(), core.keeper.peek(), [...core.imports.values()]);
  });
}

/** A page that slept may have missed what others wrote, and a midnight. */
async function catchUp(core: Core): Promise<void> {
  followClock(core);
  const database = core.database;
  if (!database) return;
  try {
    const count = await database.count('entries');
    if (count !== core.journal.peek().size) await reload(core);
  } catch (error) {
    report(core, storageProblem(error, databaseName(core.records.peek())));
  }
}

/** Catches up whenever the page is shown again. */
export function watchVisibility(core: Core): void {
  if (typeof document === 'undefined') return;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void inTurn(core, () => catchUp(core));
  });
}
