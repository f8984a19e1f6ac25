import {
  type JournalFile,
  journalFileName,
  plainWord,
  writeJournalFile,
} from '../../../src/exchange/journal-file/index.ts';
import { type PedigreeTables, pedigreeTables } from '../../../src/exchange/pedigree/index.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import type { QueenId } from '../../../src/journal/ids.ts';
import { canonicalText } from '../../../src/journal/journal.ts';
import type { Registry } from '../../../src/registry/state.ts';

/** A file ready to be saved. */
export interface ReadyFile {
  readonly name: string;
  readonly text: string;
  readonly type: string;
}

/** The whole journal as a file ready to save. */
export function journalFile(file: JournalFile): ReadyFile {
  return { name: journalFileName(file), text: writeJournalFile(file), type: 'application/json' };
}

export interface TableFiles {
  readonly queens: ReadyFile;
  /** Drone pools that the queens met; absent when none of them did. */
  readonly pools?: ReadyFile;
  /** Queens in the table. */
  readonly count: number;
  /** Yards whose names stand in it, as names of drone pools. */
  readonly yards: readonly string[];
}

/** The pedigree of all, or of one queen with her ancestors, as CSV tables. */
export function tableFiles(
  registry: Registry,
  day: string,
  queen?: { readonly id: QueenId; readonly title: string },
): TableFiles {
  const tables = pedigreeTables(registry, queen ? { queen: queen.id } : {});
  const start = queen ? `queen-${plainWord(queen.title)}` : 'queens';
  return {
    queens: { name: `${start}-${day}.csv`, text: tables.pedigree, type: 'text/csv' },
    ...(tables.pools
      ? { pools: { name: `${start}-drone-pools-${day}.csv`, text: tables.pools, type: 'text/csv' } }
      : {}),
    count: tables.pedigree.trimEnd().split('\n').length - 1,
    yards: yardsIn(tables, registry),
  };
}

function yardsIn({ pedigree }: PedigreeTables, registry: Registry): readonly string[] {
  return [...registry.yards.values()]
    .map(({ name }) => name)
    .filter((name) => pedigree.includes(`pool:${name.replace(/[,:;"\s]+/g, ' ').trim()} `));
}

const SAMPLED = 200;

/** About how long the file of these entries will be, in bytes, from a few of them; exact but for its head up to 200. */
export function estimateBytes(entries: readonly Entry[]): number {
  const step = Math.max(1, Math.floor(entries.length / SAMPLED));
  let sum = 0;
  let sampled = 0;
  for (let at = 0; at < entries.length; at += step) {
    sum += canonicalText(entries[at]).length + 2;
    sampled += 1;
  }
  return sampled === 0 ? 0 : Math.round((sum / sampled) * entries.length);
}
