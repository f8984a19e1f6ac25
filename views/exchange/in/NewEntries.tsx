import { useMemo, useState } from 'preact/hooks';
import type { Entry } from '../../../src/journal/entry.ts';
import { orderOfEvents } from '../../../src/journal/order.ts';
import { Button } from '../../parts/Button.tsx';
import { EntryLine } from './EntryLine.tsx';
import styles from './Incoming.module.css';

const SHOWN = 12;
const STEP = 200;

/** The entries themselves, the latest first, each with who wrote it. */
export function NewEntries({ entries }: { readonly entries: readonly Entry[] }) {
  const [most, setMost] = useState(SHOWN);
  const ordered = useMemo(() => orderOfEvents(entries, new Map()).ordered.toReversed(), [entries]);
  const left = ordered.length - most;
  return (
    <>
      <ol class={styles.entries}>
        {ordered.slice(0, most).map((entry) => (
          <EntryLine key={entry.id} entry={entry} />
        ))}
      </ol>
      {left > 0 && (
        <div>
          <Button onPress={() => setMost(most + STEP)}>
            {left > STEP ? `Show ${STEP} more of ${left.toLocaleString('en')}` : `Show the other ${left}`}
          </Button>
        </div>
      )}
    </>
  );
}
