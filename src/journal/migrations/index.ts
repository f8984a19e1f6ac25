/**
 * Steps from an older shape of entries to the next, shared by the database and by files. Steps are numbered by
 * one and never edited after a release: step n turns a raw entry of version n into one of version n + 1. A step
 * is pure, takes raw JSON, and may drop nothing that a keeper wrote.
 */
export type Migration = (entry: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** Version 1 is the first; no step leads to it. Add `0001-what-changed.ts` here with the first change of shape. */
export const MIGRATIONS: readonly Migration[] = [];

/** The version of the entry shapes that this app writes. */
export const JOURNAL_VERSION = MIGRATIONS.length + 1;

/** A raw entry written at `version`, brought to the shape of now. What is no object is passed on for the schema to refuse. */
export function migrateEntry(
  raw: unknown,
  version: number,
  migrations: readonly Migration[] = MIGRATIONS,
): unknown {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return raw;
  return migrations.slice(version - 1).reduce((entry, step) => step(entry), raw as Record<string, unknown>);
}
