import type { IDBPDatabase } from 'idb';
import { createStores } from './0001-stores.ts';

/**
 * Changes of object stores and indexes. Step n takes a database from version n - 1 to n; numbers rise by one and
 * a released step is never edited. A step must await nothing but the upgrade transaction.
 */
export type Upgrade = (database: IDBPDatabase<unknown>) => void;

export const UPGRADES: readonly Upgrade[] = [createStores];

export const DATABASE_VERSION = UPGRADES.length;
