import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readJournalFile } from '../../src/exchange/journal-file/index.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { Journal } from '../../src/journal/journal.ts';
import { problemText } from '../../src/journal/problems.ts';
import { project } from '../../src/registry/project.ts';
import { isAlive, labelOn } from '../../src/registry/queries.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';

/** The demo yard for tests: read once, by the same door as any file that a keeper brings in. */

export const DEMO_FILE = join(import.meta.dirname, '../../samples/demo-yard.json');
/** The last day that the demo speaks of, in the middle of splitting. */
export const DEMO_DAY = '2026-06-11' as PlainDay;

let entries: readonly Entry[] | undefined;
let registry: Registry | undefined;

export function demoEntries(): readonly Entry[] {
  entries ??= readDemo();
  return entries;
}

function readDemo(): readonly Entry[] {
  const read = readJournalFile(readFileSync(DEMO_FILE, 'utf8'), 'demo-yard.json');
  if (!read.ok) throw new Error(read.problems.map(problemText).join('\n'));
  return read.value.entries;
}

export function demoJournal(): Journal {
  return new Map(demoEntries().map((entry) => [entry.id, entry]));
}

/** The registry of the whole demo. */
export function demoRegistry(): Registry {
  registry ??= project(demoJournal());
  return registry;
}

/** The queen of this name; names are unique in the demo. */
export function demoQueen(name: string, of: Registry = demoRegistry()): Queen {
  const queen = [...of.queens.values()].find((each) => each.name === name);
  if (!queen) throw new Error(`The demo yard has no queen called ${name}.`);
  return queen;
}

/** The colony that bore this label on a day; labels are unique among the living. */
export function demoColony(label: string, on: PlainDay = DEMO_DAY, of: Registry = demoRegistry()): Colony {
  const colony = [...of.colonies.values()].find((each) => isAlive(each, on) && labelOn(each, on) === label);
  if (!colony) throw new Error(`The demo yard has no living colony labelled ${label} on ${on}.`);
  return colony;
}
