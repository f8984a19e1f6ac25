import type { ComponentChildren } from 'preact';
import { dayText } from '../../../src/journal/day-words.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import styles from './Disagreements.module.css';

export interface Version {
  readonly entry: Entry;
  /** Whose or where this version is: "Ada Brandt", "In the file". */
  readonly says: string;
  /** What comes of it: "Counts now". */
  readonly stands?: string | undefined;
  readonly counts: boolean;
  readonly act?: ComponentChildren;
}

/** Versions of one entry side by side, on a phone one under the other: who says so, what it says, what comes of it. */
export function VersionColumns({ versions }: { readonly versions: readonly Version[] }) {
  const days = new Set(versions.map(({ entry }) => entry.day)).size > 1;
  return (
    <ul class={styles.versions}>
      {versions.map(({ entry, says, stands, counts, act }) => (
        <li key={says + entry.id} class={counts ? styles.counts : undefined}>
          <p class={styles.who}>
            <span>{says}</span>
            {stands && <strong>{stands}</strong>}
          </p>
          <p>
            {days && `${dayText(entry.day)}. `}
            <EntrySentence entry={entry} />
          </p>
          {entry.remark && <p>{entry.remark}</p>}
          {act}
        </li>
      ))}
    </ul>
  );
}

/** Who wrote a version, and when it was written. */
export function useWriter(): (entry: Entry) => string {
  const { registry, keeper } = useStore();
  return (entry) => {
    const name = registry.value.keepers.get(entry.recordedBy) ?? 'A keeper without a name';
    const who = entry.recordedBy === keeper.value.id ? `You, ${name}` : name;
    const written = entry.recordedAt.slice(0, 10) as Entry['day'];
    return `${who}, written ${dayText(written)}`;
  };
}
