import type { PhotoId } from '../journal/ids.ts';
import { type Result, success } from '../journal/problems.ts';
import { type Core, report } from './core.ts';
import { ALL_STORES, DURABLE, databaseName, type StoredPhoto } from './db.ts';
import { onDisk } from './disk.ts';
import { reload } from './load.ts';
import { Settings } from './settings.ts';
import { storageProblem } from './troubles.ts';

/** Settings, photographs and the wipe: what is on this device without being an entry. */

export async function changeSettings(core: Core, change: Partial<Settings>): Promise<void> {
  const settings = Settings.parse({ ...core.settings.peek(), ...change });
  const saved = await onDisk(core, (database) => database.put('device', settings, 'settings'));
  if (!saved.ok) return;
  core.settings.value = settings;
  core.channel?.tell({ kind: 'device' });
}

/** Saves a photograph durably; the id goes into the entry that shows it. */
export async function savePhoto(core: Core, photo: Blob): Promise<Result<PhotoId>> {
  const id = core.options.newId() as PhotoId;
  const stored: StoredPhoto = { id, type: photo.type, bytes: await photo.arrayBuffer() };
  const saved = await onDisk(core, async (database) => {
    const transaction = database.transaction('photos', 'readwrite', DURABLE);
    await Promise.all([transaction.store.put(stored), transaction.done]);
  });
  return saved.ok ? success(id) : saved;
}

/** A photograph of these records; undefined where this device does not have it. */
export async function readPhoto(core: Core, id: PhotoId): Promise<StoredPhoto | undefined> {
  const read = await onDisk(core, (database) => database.get('photos', id));
  return read.ok ? read.value : undefined;
}

/** All photographs on this device, for an export. */
export async function readPhotos(core: Core): Promise<readonly StoredPhoto[]> {
  const read = await onDisk(core, (database) => database.getAll('photos'));
  return read.ok ? read.value : [];
}

/**
 * Deletes all entries, photographs and settings for good, and who wrote them: the device may go to someone else. A
 * backup taken in again says whose it is, and the keeper whether that is them.
 */
export async function wipe(core: Core): Promise<void> {
  const wiped = await onDisk(core, async (database) => {
    const transaction = database.transaction(ALL_STORES, 'readwrite', DURABLE);
    await Promise.all([
      ...(['entries', 'photos', 'titles', 'imports'] as const).map((name) =>
        transaction.objectStore(name).clear(),
      ),
      transaction.objectStore('device').delete('settings'),
      transaction.objectStore('device').delete('keeper'),
      transaction.done,
    ]);
  });
  if (!wiped.ok) return;
  core.problems.value = [];
  await reload(core);
  core.channel?.tell({ kind: 'reload' });
}

/** Reads what another tab changed. A message that came while the records were shut changes nothing. */
export async function readDevice(core: Core): Promise<void> {
  try {
    const stored = await core.database?.get('device', 'settings');
    if (stored !== undefined) core.settings.value = Settings.parse(stored);
  } catch (error) {
    report(core, storageProblem(error, databaseName(core.records.peek())));
  }
}
