import { lastDay, type PlainDay } from './journal/day.ts';
import type { Entry } from './journal/entry.ts';
import { problemText } from './journal/problems.ts';
import { readEntry } from './journal/write.ts';
import type { DemoYard } from './store/index.ts';

/** The file of the invented yard; it is part of the installed app and opens without a network. */
const ADDRESS = new URL('../samples/demo-yard.json', import.meta.url);

/**
 * Reads the demo yard. It plays on the last day that its entries speak of, written by the keeper of its last entry.
 * A file of ours that does not read is a bug of ours, so it throws.
 */
export async function loadDemoYard(): Promise<DemoYard> {
  const answer = await fetch(ADDRESS);
  if (!answer.ok) throw new Error(`The demo yard could not be read: ${answer.status} at ${ADDRESS.href}.`);
  const file = (await answer.json()) as { readonly entries: readonly unknown[] };
  const entries = file.entries.map(checked);
  const last = entries.reduce((latest, entry) => (lastDay(entry.day) > lastDay(latest.day) ? entry : latest));
  return { entries, keeper: last.recordedBy, on: lastDay(last.day) as PlainDay };
}

function checked(value: unknown, index: number): Entry {
  const read = readEntry(value, `Entry ${index + 1} of the demo yard`);
  if (!read.ok) throw new Error(read.problems.map(problemText).join('\n'));
  return read.value;
}
