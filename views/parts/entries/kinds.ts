import type { Entry, EntryKind, EntryOf } from '../../../src/journal/entry.ts';

/** A test whether an entry is of one of these kinds, known to the compiler. */
export function ofKinds<K extends EntryKind>(...kinds: readonly K[]): (entry: Entry) => entry is EntryOf<K> {
  const known: ReadonlySet<string> = new Set(kinds);
  return (entry): entry is EntryOf<K> => known.has(entry.kind);
}
