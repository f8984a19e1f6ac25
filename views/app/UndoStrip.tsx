import { useEffect, useState } from 'preact/hooks';
import type { WrittenAction } from '../../src/store/contract.ts';
import { useStore } from './store-context.ts';
import styles from './UndoStrip.module.css';

/** Long enough to close a hive and look at the phone again. */
const SHOWN_MILLISECONDS = 30_000;

type Happened = { readonly what: 'written' | 'undone'; readonly action: WrittenAction };

/** Says what was just written, and takes it back by one tap; after that, brings it back by one tap. */
export function UndoStrip() {
  const store = useStore();
  const [happened, setHappened] = useHappened(store.lastAction.value, store.lastUndone.value);
  const undone = happened?.what === 'undone';
  return (
    <div class={styles.live} role="status" aria-live="polite">
      {happened && (
        <div class={styles.strip}>
          <p>
            {happened.action.title}
            {undone ? ' taken back' : ' written'}
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
function useHappened(written: WrittenAction | undefined, undone: WrittenAction | undefined) {
  const [happened, setHappened] = useState<Happened>();
  const [known, setKnown] = useState({ written: written?.action, undone: undone?.action });
  useEffect(() => {
    setKnown({ written: written?.action, undone: undone?.action });
    if (undone && undone.action !== known.undone) setHappened({ what: 'undone', action: undone });
    else if (written && written.action !== known.written) setHappened({ what: 'written', action: written });
  }, [written?.action, undone?.action]);
  useEffect(() => {
    if (!happened) return;
    const timer = setTimeout(() => setHappened(undefined), SHOWN_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [happened]);
  return [happened, setHappened] as const;
}
