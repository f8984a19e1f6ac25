import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeJournalFile } from '../src/exchange/journal-file/index.ts';
import type { Entry } from '../src/journal/entry.ts';
import { demoEntries } from './demo/demo.ts';

/** Writes samples/demo-yard.json. Run: npx tsx samples/make-demo.ts */

const EXPORTED = '2026-06-11T19:40:00.000Z';

/** The demo as the journal file that its keeper would have written on the last evening. */
export function demoFile(entries: readonly Entry[]): string {
  const named = entries.find((entry) => entry.kind === 'keeper-named');
  if (named?.kind !== 'keeper-named') throw new Error('No keeper says who writes the demo yard.');
  const by = { id: named.keeper, name: named.name };
  return writeJournalFile({ exported: EXPORTED, by, scope: { of: 'all' }, entries, photos: [] });
}

if (process.argv[1] === import.meta.filename) {
  const entries = demoEntries();
  const file = join(import.meta.dirname, 'demo-yard.json');
  const text = demoFile(entries);
  writeFileSync(file, text);
  console.log(`${file}: ${entries.length} entries, ${Math.round(text.length / 1024)} kB`);
}
