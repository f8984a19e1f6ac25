import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Entry } from '../journal/entry.ts';
import type { ActionId, EntryId, KeeperId, PhotoId } from '../journal/ids.ts';
import { failure, type Problem, type Result, success } from '../journal/problems.ts';
import type { Records } from './contract.ts';
import { newerDatabase, otherTabBlocks, otherTabIsNewer, storageLost, storageProblem } from './troubles.ts';
import { DATABASE_VERSION, UPGRADES } from './upgrades/index.ts';

/** A photograph at rest: bytes and not a Blob, which some browsers do not keep. */
export interface StoredPhoto {
  readonly id: PhotoId;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/**
 * A file brought in. Undoing it takes the entries out of this device again: to withdraw them would speak in the
 * name of other keepers. `turns` are its undos and redos, by ids that rise with time.
 */
export interface ImportRecord {
  readonly id: ActionId;
  readonly added: readonly EntryId[];
  /** Entries as they stood before, where the file held another content under the same id. */
  readonly replaced: readonly Entry[];
  /** What was kept in their place. */
  readonly kept: readonly Entry[];
  /** The added entries themselves, while the import is undone and they stand nowhere else. */
  readonly takenOut: readonly Entry[];
  /** Who writes on this device, where the file was the keeper's own and said so. */
  readonly keeper?: { readonly before: KeeperId; readonly after: KeeperId };
  readonly turns: readonly ImportTurn[];
}

export interface ImportTurn {
  readonly id: ActionId;
  readonly turn: 'undone' | 'redone';
}

/** Values of this device, by key: settings, keeper, version of the entry shapes, whether lasting storage was asked. */
export type DeviceKey = 'settings' | 'keeper' | 'journal-version' | 'persistence-asked';

interface Schema extends DBSchema {
  entries: { key: EntryId; value: Entry };
  photos: { key: PhotoId; value: StoredPhoto };
  device: { key: DeviceKey; value: unknown };
  titles: { key: ActionId; value: string };
  imports: { key: ActionId; value: ImportRecord };
}

export type Database = IDBPDatabase<Schema>;
export const ALL_STORES = ['entries', 'photos', 'device', 'titles', 'imports'] as const;
/** Every write waits until the data is on the disk, so that a phone that dies keeps what was confirmed. */
export const DURABLE = { durability: 'strict' } as const;

/** The demo yard has a database of its own, so that nothing in it can touch the keeper’s records. */
export function databaseName(records: Records): string {
  return records === 'own' ? 'damline' : 'damline-demo';
}

/** What the database may report while it is open. */
export interface DatabaseEvents {
  readonly onProblem: (problem: Problem) => void;
  /** The connection is gone; the next command must open it again. */
  readonly onClosed: () => void;
}

/** Opens the database of these records; the only place that does. A database newer than this app is refused. */
export async function openRecords(records: Records, events: DatabaseEvents): Promise<Result<Database>> {
  const name = databaseName(records);
  try {
    const database = await openDB<Schema>(name, DATABASE_VERSION, {
      upgrade(opened, from) {
        for (const step of UPGRADES.slice(from)) step(opened as unknown as IDBPDatabase<unknown>);
      },
      blocked: () => events.onProblem(otherTabBlocks(name)),
      blocking(_current, _wanted, event) {
        (event.target as IDBDatabase).close();
        events.onClosed();
        events.onProblem(otherTabIsNewer(name));
      },
      terminated() {
        events.onClosed();
        events.onProblem(storageLost(name));
      },
    });
    return success(database);
  } catch (error) {
    const newer = error instanceof Error && error.name === 'VersionError';
    return failure([newer ? newerDatabase(name) : storageProblem(error, name)]);
  }
}

/** What stands in a database that this page does not open for work, whatever its version: nothing is written to it. */
export async function readRaw(
  records: Records,
): Promise<{ readonly entries: readonly unknown[]; readonly version: unknown; readonly keeper: unknown }> {
  const database = await openDB(databaseName(records));
  try {
    const names = [...database.objectStoreNames];
    if (!names.includes('entries') || !names.includes('device'))
      return { entries: [], version: 1, keeper: '' };
    const [entries, version, keeper] = await Promise.all([
      database.getAll('entries'),
      database.get('device', 'journal-version'),
      database.get('device', 'keeper'),
    ]);
    return { entries, version, keeper };
  } finally {
    database.close();
  }
}
