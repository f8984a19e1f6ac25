import type { Records } from './store/index.ts';

/** Which records were open when the page was left: a reload in the demo stays in the demo. */

const KEY = 'damline records';

/** Which records were open when the app was last left. */
export function recordsOpenLast(): Records {
  try {
    return localStorage.getItem(KEY) === 'demo' ? 'demo' : 'own';
  } catch {
    return 'own';
  }
}

/** Keeps which records are open, for the next start. */
export function rememberRecords(records: Records): void {
  try {
    localStorage.setItem(KEY, records);
  } catch {
    // A device that keeps nothing opens the keeper's own records.
  }
}
