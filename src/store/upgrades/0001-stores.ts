import type { IDBPDatabase } from 'idb';

/** The first stores: entries by their id, photographs, what belongs to this device, titles of actions, imports. */
export function createStores(database: IDBPDatabase<unknown>): void {
  database.createObjectStore('entries', { keyPath: 'id' });
  database.createObjectStore('photos', { keyPath: 'id' });
  database.createObjectStore('device');
  database.createObjectStore('titles');
  database.createObjectStore('imports', { keyPath: 'id' });
}
