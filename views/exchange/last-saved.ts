import { signal } from '@preact/signals';
import { localDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { Records } from '../../src/store/contract.ts';
import { counted } from './counted.ts';

/** When all records were last saved to a file from this device. A reminder and no record: it is kept with the browser. */
export interface LastSaved {
  /** The moment, as in the file. */
  readonly at: string;
  /** Mark of the entries that the file held. */
  readonly mark: string;
}

type Entries = readonly Pick<Entry, 'id' | 'recordedAt'>[];

/** A mark that is the same for the same set of entries, in whatever order they stand. O(entries). */
export function markOf(entries: Entries): string {
  let sum = 0;
  for (const { id } of entries) {
    // FNV-1a over the signs of the id; the sum over all ids does not depend on their order.
    let hash = 0x811c9dc5;
    for (let at = 0; at < id.length; at += 1) hash = Math.imul(hash ^ id.charCodeAt(at), 0x01000193);
    sum = (sum + (hash >>> 0)) % 2 ** 48;
  }
  return `${entries.length} ${sum.toString(36)}`;
}

/** Rises when a file is saved, so that the words on the screen follow. */
const saves = signal(0);

const key = (records: Records) => `damline saved ${records}`;

/** When these records last left the device, as far as the browser kept it. */
export function readLastSaved(records: Records): LastSaved | undefined {
  void saves.value;
  try {
    const kept = JSON.parse(localStorage.getItem(key(records)) ?? 'null') as LastSaved | null;
    return kept && typeof kept.at === 'string' && typeof kept.mark === 'string' ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** A browser that keeps nothing only forgets the reminder; the file is saved all the same. */
export function keepLastSaved(records: Records, saved: LastSaved | undefined): void {
  try {
    if (saved) localStorage.setItem(key(records), JSON.stringify(saved));
    else localStorage.removeItem(key(records));
  } catch {
    // The next visit says that nothing was saved from here yet.
  }
  saves.value += 1;
}

/** What stands on this device, and how much of it stands nowhere else as far as is known. */
export function savedWords(entries: Entries, saved: LastSaved | undefined): string {
  const here = `${counted(entries.length, 'entry', 'entries')} on this device`;
  if (!saved) return `${here}, not saved to a file from here yet.`;
  const when = dayText(localDay(new Date(saved.at)));
  if (saved.mark === markOf(entries)) return `${here}; all of it was saved to a file on ${when}.`;
  const since = entries.filter(({ recordedAt }) => recordedAt > saved.at).length;
  if (since === 0)
    return `${here}. Last saved to a file on ${when}; other entries have come in or gone since.`;
  return `${here}. Last saved to a file on ${when}; ${counted(since, 'entry', 'entries')} written since.`;
}
