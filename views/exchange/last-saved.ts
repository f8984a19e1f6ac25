import type { RoughDay } from '../../src/journal/day.ts';
import type { Records } from '../../src/store/contract.ts';
import { dayText } from '../parts/days.ts';
import { counted } from './counted.ts';

/** When all records were last saved to a file from this device. A reminder and no record: it is kept with the browser. */
export interface LastSaved {
  readonly day: string;
  /** Entries that the file held. */
  readonly entries: number;
}

const key = (records: Records) => `damline saved ${records}`;

export function readLastSaved(records: Records): LastSaved | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key(records)) ?? 'null') as LastSaved | null;
    return kept && typeof kept.day === 'string' && typeof kept.entries === 'number' ? kept : undefined;
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
    // The next visit says "not saved from this device yet".
  }
}

/** What stands on this device, and how much of it stands nowhere else as far as is known. */
export function savedWords(entries: number, saved: LastSaved | undefined): string {
  const here = `${counted(entries, 'entry', 'entries')} on this device.`;
  if (!saved) return `${here} They have not been saved to a file from here yet.`;
  const when = dayText(saved.day as RoughDay);
  const since = entries - saved.entries;
  if (since <= 0) return `${here} All of it was saved to a file on ${when}.`;
  return `${here} Last saved to a file on ${when}; ${counted(since, 'entry', 'entries')} written since.`;
}
