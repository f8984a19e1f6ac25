import { useState } from 'preact/hooks';
import type { Entry } from '../../../src/journal/entry.ts';
import { NewEntries } from '../in/NewEntries.tsx';
import styles from './ReadEntries.module.css';

/** Every entry that leaves, to be read before it does. */
export function ReadEntries({ entries }: { readonly entries: readonly Entry[] }) {
  const [open, setOpen] = useState(false);
  return (
    <details class={styles.read} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Read each entry before it leaves</summary>
      {open && <NewEntries entries={entries} />}
    </details>
  );
}
