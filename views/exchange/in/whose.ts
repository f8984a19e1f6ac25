import type { JournalFile } from '../../../src/exchange/journal-file/index.ts';
import type { Journal } from '../../../src/journal/journal.ts';
import type { Keeper, Records } from '../../../src/store/contract.ts';

/** Whose records a file holds: written under this keeper's id, another's, or it must be asked. */
export type Whose = 'mine' | 'theirs' | 'ask';

/**
 * A backup brought onto a clean device bears an id that the device does not know. It is asked about where the file may
 * be the keeper's own: a whole journal, and here nothing was written yet, or under the same name.
 */
export function whoseFile(file: JournalFile, keeper: Keeper, journal: Journal, records: Records): Whose {
  if (file.by.id === keeper.id) return 'mine';
  if (file.scope.of === 'queen' || records === 'demo') return 'theirs';
  const sameName = keeper.name !== '' && nameKey(keeper.name) === nameKey(file.by.name);
  return sameName || !hasWritten(keeper, journal) ? 'ask' : 'theirs';
}

function hasWritten({ id }: Keeper, journal: Journal): boolean {
  for (const { recordedBy, kind } of journal.values()) {
    if (recordedBy === id && kind !== 'keeper-named') return true;
  }
  return false;
}

function nameKey(name: string): string {
  return name.trim().toLocaleLowerCase();
}
