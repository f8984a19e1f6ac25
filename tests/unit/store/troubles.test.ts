import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readJournalFile } from '../../../src/exchange/journal-file/index.ts';
import { JOURNAL_VERSION } from '../../../src/journal/migrations/index.ts';
import { openStore } from '../../../src/store/index.ts';
import { migrateEntries, readSettings } from '../../../src/store/load.ts';
import { DATABASE_VERSION } from '../../../src/store/upgrades/index.ts';
import { device, inspection, smallYard, unwrap, written } from '../../helpers/devices.ts';

afterEach(() => vi.restoreAllMocks());

/** Every put and add fails as it does in a browser with a full disk. */
function fillDisk() {
  const quota = () => {
    throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
  };
  vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(quota);
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(quota);
}

function openAtVersion(name: string, version: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

describe('storage trouble', () => {
  it('of a full disk is a problem, and neither disk nor screen has half an action', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    const journal = store.journal.value;
    fillDisk();
    const result = await store.write([inspection(yard.colony, '2026-05-10')], 'Inspection');
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'storage-full' }] });
    expect(store.problems.value).toMatchObject([{ code: 'storage-full' }]);
    expect(store.journal.value).toBe(journal);
    expect(store.lastAction.value?.title).toBe('Start');
    expect(await store.savePhoto(new Blob(['x']))).toMatchObject({ ok: false });
    expect(store.problems.value).toHaveLength(1);
    vi.restoreAllMocks();
    unwrap(await store.write([inspection(yard.colony, '2026-05-10')], 'Inspection'));
    expect((await phone.open()).journal.value.size).toBe(4);
  });

  it('of a database newer than the page refuses by name and writes nothing', async () => {
    const phone = device();
    await phone.open();
    (await openAtVersion('damline', DATABASE_VERSION + 1)).close();
    const store = await phone.open();
    expect(store.problems.value).toMatchObject([
      { code: 'storage-newer', where: expect.stringContaining('"damline"') },
    ]);
    expect(await store.write(smallYard(phone.newId).drafts, 'Start')).toMatchObject({ ok: false });
    expect(store.journal.value.size).toBe(0);
    (await openAtVersion('damline', DATABASE_VERSION + 1)).close();
  });

  it('of entries written in a newer shape refuses too', async () => {
    const phone = device();
    await phone.open();
    const database = await openAtVersion('damline', DATABASE_VERSION);
    const transaction = database.transaction('device', 'readwrite');
    transaction.objectStore('device').put(JOURNAL_VERSION + 1, 'journal-version');
    await new Promise((resolve) => transaction.addEventListener('complete', resolve));
    database.close();
    const store = await phone.open();
    expect(store.problems.value).toMatchObject([{ code: 'storage-newer' }]);
    expect(await store.write(smallYard(phone.newId).drafts, 'Start')).toMatchObject({ ok: false });
  });

  it('of a database newer than the page still lets the entries out, as a file that a page of its time reads', async () => {
    const phone = device();
    const first = await phone.open();
    unwrap(await first.write(smallYard(phone.newId).drafts, 'Start'));
    (await openAtVersion('damline', DATABASE_VERSION + 1)).close();
    const store = await phone.open();
    expect(store.journal.value.size).toBe(0);
    const file = unwrap(readJournalFile(unwrap(await store.rescue()), 'rescued'));
    expect(new Map(file.entries.map((entry) => [entry.id, entry]))).toEqual(new Map(first.journal.value));
    expect(file.by.id).toBe(first.keeper.value.id);
  });

  it('of a newer page in another tab: this one lets go and says so', async () => {
    const phone = device();
    const store = await phone.open();
    const newer = await openAtVersion('damline', DATABASE_VERSION + 1);
    expect(store.problems.value).toMatchObject([{ code: 'storage-newer', remedy: 'Reload this page.' }]);
    expect(await store.write(smallYard(phone.newId).drafts, 'Start')).toMatchObject({ ok: false });
    newer.close();
  });

  it('of a browser without storage leaves an empty store that says why and refuses to write', async () => {
    globalThis.indexedDB = {
      open: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    } as never;
    const store = await openStore({ tabs: false });
    expect(store.problems.value).toMatchObject([{ code: 'storage-failed', found: 'SecurityError: denied' }]);
    expect(await store.write(smallYard(device().newId).drafts, 'Start')).toMatchObject({ ok: false });
    globalThis.indexedDB = new IDBFactory();
  });
});

describe('lasting storage', () => {
  it('is asked for once, with the first record of the keeper’s own, and not for the demo', async () => {
    const askToPersist = vi.fn(async () => true);
    const phone = device();
    const demo = await phone.open({ records: 'demo', askToPersist });
    unwrap(await demo.write(smallYard(phone.newId).drafts, 'Start'));
    expect(askToPersist).not.toHaveBeenCalled();
    const store = await phone.open({ askToPersist });
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    unwrap(await store.write([inspection(yard.colony, '2026-05-10')], 'Inspection'));
    const again = await phone.open({ askToPersist });
    unwrap(await again.write([inspection(yard.colony, '2026-05-11')], 'Inspection'));
    expect(askToPersist).toHaveBeenCalledTimes(1);
  });
});

describe('older shapes', () => {
  it('of entries are brought up by each step in turn and checked', () => {
    const entry = written([{ kind: 'note', day: '2026-01-01' as never, text: 'Snow' }])[0]!;
    const { text, ...rest } = entry as Extract<typeof entry, { kind: 'note' }>;
    const old = { ...rest, words: text };
    const steps = [
      (raw: Readonly<Record<string, unknown>>) => ({ ...raw, writing: raw.words }),
      (raw: Readonly<Record<string, unknown>>) => ({ ...raw, text: raw.writing }),
    ];
    expect(unwrap(migrateEntries([old], 1, steps))).toEqual([entry]);
    expect(migrateEntries([old], 2, steps)).toMatchObject({ ok: false, problems: [{ field: 'text' }] });
  });

  it('of settings fall back field by field', () => {
    expect(readSettings({ theme: 'dark', washEveryDays: 'often' })).toMatchObject({
      theme: 'dark',
      washEveryDays: 30,
    });
    expect(readSettings('nothing')).toMatchObject({ theme: 'system' });
  });
});
