import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readJournalFile, writeJournalFile } from '../../../../src/exchange/journal-file/index.ts';
import { Entry } from '../../../../src/journal/entry.ts';
import { JOURNAL_VERSION, MIGRATIONS, migrateEntry } from '../../../../src/journal/migrations/index.ts';
import { project } from '../../../../src/registry/project.ts';
import { unwrap } from '../../../helpers/devices.ts';
import { everyKind } from '../../../helpers/every-kind.ts';

const KINDS = new Set(Entry.options.map((option) => option.shape.kind.value));
const versions = Array.from({ length: JOURNAL_VERSION }, (_, index) => index + 1);

/** A file as the app of that version wrote it. These files are never written again. */
function frozen(version: number): string {
  return readFileSync(new URL(`../../../fixtures/versions/${version}.damline.json`, import.meta.url), 'utf8');
}

describe('the released shapes of entries', () => {
  it.each(versions)('version %i is read whole and projects without a contradiction', (version) => {
    const { entries } = unwrap(readJournalFile(frozen(version), `version ${version}`));
    expect(entries.length).toBeGreaterThan(0);
    const registry = project(new Map(entries.map((entry) => [entry.id, entry])));
    expect(registry.contradictions).toEqual([]);
    expect(registry.queens.size).toBeGreaterThan(0);
  });

  it('are each held by a frozen file with every kind of entry of its time', () => {
    for (const version of versions) {
      expect(existsSync(new URL(`../../../fixtures/versions/${version}.damline.json`, import.meta.url))).toBe(
        true,
      );
    }
    const { entries } = unwrap(readJournalFile(frozen(JOURNAL_VERSION), 'newest'));
    expect(new Set(entries.map(({ kind }) => kind))).toEqual(KINDS);
  });

  it('of this version are written as the frozen file has them, byte for byte', () => {
    const file = unwrap(readJournalFile(frozen(JOURNAL_VERSION), 'newest'));
    expect(writeJournalFile(file)).toBe(frozen(JOURNAL_VERSION));
    expect(writeJournalFile({ ...file, entries: everyKind() })).toBe(frozen(JOURNAL_VERSION));
  });
});

describe('the steps from shape to shape', () => {
  const steps = [
    (entry: Readonly<Record<string, unknown>>) => ({ ...entry, second: true }),
    (entry: Readonly<Record<string, unknown>>) => ({ ...entry, third: entry.second }),
  ];

  it('are one fewer than the versions, and each is run from its own version on', () => {
    expect(MIGRATIONS).toHaveLength(JOURNAL_VERSION - 1);
    expect(migrateEntry({ first: 1 }, 1, steps)).toEqual({ first: 1, second: true, third: true });
    expect(migrateEntry({ first: 1 }, 2, steps)).toEqual({ first: 1, third: undefined });
    expect(migrateEntry({ first: 1 }, 3, steps)).toEqual({ first: 1 });
  });

  it('pass on what is no entry, for the schema to refuse', () => {
    for (const value of [null, 7, 'text', [1]]) expect(migrateEntry(value, 1, steps)).toBe(value);
  });
});
