/** Stores for the tests: in-memory databases, a clock that stands where it is put, ids that rise. */
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import type { Draft, Entry } from '../../src/journal/entry.ts';
import type { ColonyId, EntryId, KeeperId, QueenId, YardId } from '../../src/journal/ids.ts';
import type { Result } from '../../src/journal/problems.ts';
import { type Scribe, writeEntries } from '../../src/journal/write.ts';
import { openStore, type Store, type StoreOptions } from '../../src/store/index.ts';

/** A maker of UUIDv7s that count up from a start, so that tests are the same on each run. */
export function countingIds(series = 1, start = 0): () => string {
  let count = start;
  return () => {
    count += 1;
    const time = (0x0190_0000_0000 + count).toString(16).padStart(12, '0');
    return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${series.toString(16).padStart(12, '0')}`;
  };
}

export interface Device {
  readonly open: (options?: Partial<StoreOptions>) => Promise<Store>;
  readonly newId: () => string;
}

/** One device: whatever it opens shares one disk. Devices with different series never make the same id. */
export function device(series = 1, now = new Date(2026, 5, 1, 12)): Device {
  const factory = new IDBFactory();
  const newId = countingIds(series);
  return {
    newId,
    open: (options = {}) => {
      globalThis.indexedDB = factory;
      return openStore({ now: () => now, newId, tabs: false, ...options });
    },
  };
}

export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return result.value;
}

export function scribe(newId = countingIds(), now = new Date(2026, 5, 1, 12)): Scribe {
  return { keeper: newId() as KeeperId, now: () => now, newId };
}

export function written(drafts: readonly Draft[], by: Scribe = scribe()): Entry[] {
  return unwrap(writeEntries(drafts, by));
}

type Day = Draft['day'];
export const day = (text: string): Day => text as Day;

export interface SmallYard {
  readonly yard: YardId;
  readonly colony: ColonyId;
  readonly queen: QueenId;
  readonly drafts: readonly Draft[];
}

/** One yard, one colony "Box 1" headed by the laying queen "Birch" born 2024. */
export function smallYard(newId: () => string): SmallYard {
  const yard = newId() as YardId;
  const colony = newId() as ColonyId;
  const queen = newId() as QueenId;
  return {
    yard,
    colony,
    queen,
    drafts: [
      { kind: 'yard-opened', day: day('2024-05-01'), yard, name: 'Hill' },
      { kind: 'colony-started', day: day('2024-05-01'), colony, yard, label: 'Box 1', how: 'bought' },
      {
        kind: 'queen-entered',
        day: day('2024-05-01'),
        queen,
        name: 'Birch',
        colony,
        born: '2023' as Day,
        background: 'local',
        laying: true,
      },
    ],
  };
}

export function inspection(colony: ColonyId, on: string, more: Partial<Draft<'inspection'>> = {}): Draft {
  return { kind: 'inspection', day: day(on), colony, ...more };
}

export type { EntryId };
