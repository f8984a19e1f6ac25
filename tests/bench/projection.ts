import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bigJournal } from '../../samples/make-big.ts';
import { readJournalFile } from '../../src/exchange/journal-file/index.ts';
import { addDays, lastDay, type RoughDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { ActionId, EntryId } from '../../src/journal/ids.ts';
import type { Journal } from '../../src/journal/journal.ts';
import { extendProjection, type Projection, project, startProjection } from '../../src/registry/project.ts';

/** How long it takes to read the state of the yards out of a journal. Prints one line a figure. */

const BIG = 100_000;
const REPEATS = 5;

export function benchProjection(print: (line: string) => void = console.log): void {
  const demo = demoJournal();
  print(figure(`demo yard, ${demo.size} entries, projected`, () => project(demo)));
  for (const size of [1_000, 10_000, BIG]) {
    const journal = journalOf(bigJournal(size));
    print(figure(`${size} entries projected`, () => project(journal)));
  }
  const entries = bigJournal(BIG);
  const projection = startProjection(journalOf(entries));
  const next = oneMore(entries);
  print(figure(`one more entry on ${BIG}`, () => extendProjection(projection, [next])));
  print(
    figure(`one corrected entry on ${BIG}`, () => extendProjection(projection, [correction(projection)])),
  );
}

/** The median of some runs, in milliseconds, with the heap that is in use afterwards. */
function figure(what: string, run: () => unknown): string {
  const times = Array.from({ length: REPEATS }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const median = times[Math.floor(REPEATS / 2)] ?? 0;
  const heap = Math.round(process.memoryUsage().heapUsed / 1e6);
  return `${what.padEnd(44)} ${median.toFixed(median < 10 ? 2 : 0).padStart(8)} ms  ${String(heap).padStart(5)} MB in use`;
}

function journalOf(entries: readonly Entry[]): Journal {
  return new Map(entries.map((entry) => [entry.id, entry]));
}

function demoJournal(): Journal {
  const text = readFileSync(join(import.meta.dirname, '../../samples/demo-yard.json'), 'utf8');
  const read = readJournalFile(text, 'demo-yard.json');
  if (!read.ok) throw new Error('The demo yard does not read.');
  return journalOf(read.value.entries);
}

/** An inspection on the day after everything else. */
function oneMore(entries: readonly Entry[]): Entry {
  const seen = entries.findLast((entry) => entry.kind === 'inspection');
  const last = entries.at(-1);
  if (!seen || !last) throw new Error('The big journal has no inspection.');
  return { ...seen, ...laterIds(1), day: addDays(lastDay(last.day), 1) as string as RoughDay };
}

/** A correction, which asks for a projection from nothing. */
function correction({ registry }: Projection): Entry {
  const wrong = registry.entries.find((entry) => entry.kind === 'inspection');
  if (!wrong) throw new Error('The big journal has no inspection.');
  return { ...wrong, ...laterIds(2), supersedes: wrong.id };
}

function laterIds(number: number): { readonly id: EntryId; readonly action: ActionId } {
  const id = `0fffffff-ffff-7000-8000-00000000000${number}`;
  return { id: id as EntryId, action: id as ActionId };
}

if (process.argv[1] === import.meta.filename) benchProjection();
