import { useEffect, useRef, useState } from 'preact/hooks';
import type { Store, WrittenAction } from '../../src/store/contract.ts';
import { useStore } from './store-context.ts';
import styles from './UndoStrip.module.css';

/** Long enough to close a hive and look at the phone again. */
const SHOWN_MILLISECONDS = 30_000;

type Happened = { readonly what: 'written' | 'undone'; readonly action: WrittenAction };

/** Says what was just written, and takes it back by one tap; after that, brings it back by one tap. */
export function UndoStrip() {
  const store = useStore();
  const [happened, setHappened] = useHappened(store);
  const undone = happened?.what === 'undone';
  return (
    <div class={styles.live} role="status" aria-live="polite">
      {happened && (
        <div class={styles.strip}>
          <p>
            {undone ? 'Taken back: ' : 'Written: '}
            {happened.action.title}
          </p>
          <button type="button" onClick={() => (undone ? store.redo() : store.undo())}>
            {undone ? 'Bring back' : 'Undo'}
          </button>
          <button
            type="button"
            class={styles.close}
            aria-label="Close this strip"
            onClick={() => setHappened(undefined)}
          >
            ×
          </button>
        </div>
      )}
    </div>
  );
}

/** What happened last while this strip looked on; forgotten after a while. */
function useHappened(store: Store) {
  const [happened, setHappened] = useState<Happened>();
  const written = store.lastAction.value;
  const undone = store.lastUndone.value;
  const records = store.records.value;
  const full = store.journal.value.size > 0;
  const before = useRef({ written, undone, records, full });
  useEffect(() => {
    const { current } = before;
    before.current = { written, undone, records, full };
    // Opening other records also changes what was done last; nothing happened just now.
    if (current.records !== records || !current.full) setHappened(undefined);
    else if (undone && undone.action !== current.undone?.action)
      setHappened({ what: 'undone', action: undone });
    else if (written && written.action !== current.written?.action)
      setHappened({ what: 'written', action: written });
  }, [written?.action, undone?.action, records, full]);
  useEffect(() => {
    if (!happened) return;
    const timer = setTimeout(() => setHappened(undefined), SHOWN_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [happened]);
  return [happened, setHappened] as const;
}
