import { useState } from 'preact/hooks';
import { type Entry, kindTitle } from '../../../src/journal/entry.ts';
import { compareEntries } from '../../../src/journal/journal.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { shortDay } from '../../parts/days.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import styles from './Incoming.module.css';
import { SubjectLabel } from './SubjectLabel.tsx';

const SHOWN = 12;
const STEP = 200;

/** The new entries themselves, the latest first, each with who wrote it. */
export function NewEntries({ entries }: { readonly entries: readonly Entry[] }) {
  const { registry } = useStore();
  const [most, setMost] = useState(SHOWN);
  const ordered = [...entries].sort((a, b) => compareEntries(b, a));
  const left = ordered.length - most;
  return (
    <>
      <ol class={styles.entries}>
        {ordered.slice(0, most).map((entry) => (
          <li key={entry.id}>
            <span class={styles.day}>{shortDay(entry.day)}</span>
            <div>
              <p>
                <strong>{kindTitle(entry.kind)}</strong> <SubjectLabel entry={entry} />{' '}
                <EntrySentence entry={entry} />
              </p>
              <p class={styles.by}>
                {entry.supersedes ? 'A correction, written' : 'Written'} by{' '}
                {registry.value.keepers.get(entry.recordedBy) ?? 'a keeper without a name'}
              </p>
            </div>
          </li>
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
