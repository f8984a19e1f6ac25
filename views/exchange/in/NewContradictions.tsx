import { dayText } from '../../../src/journal/day-words.ts';
import { kindTitle } from '../../../src/journal/entry.ts';
import type { Contradiction } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { plainDays } from '../../parts/days.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import styles from './Incoming.module.css';

/** What does not fit together once both records are one. It does not stop the union: it stays in sight until mended. */
export function NewContradictions({ contradictions }: { readonly contradictions: readonly Contradiction[] }) {
  const { journal } = useStore();
  if (contradictions.length === 0) return null;
  return (
    <section class={styles.part} aria-labelledby="contradictions">
      <h2 id="contradictions">What does not fit together</h2>
      <p class={styles.prose}>
        Taken in all the same, and shown beside the entry until one of you corrects it or says why it is so.
      </p>
      <ul class={styles.problems}>
        {contradictions.map((each) => {
          const entry = journal.value.get(each.entry);
          return (
            <li key={`${each.code} ${each.entry} ${each.queen} ${each.colony}`}>
              <p class={styles.where}>
                {entry ? kindTitle(entry.kind) : 'An entry'}, {dayText(each.day)}
              </p>
              {entry && (
                <p>
                  <EntrySentence entry={entry} />
                </p>
              )}
              <p>
                {plainDays(each.because)} By the records: {plainDays(each.found)}.
              </p>
              {each.remedies.length > 0 && <p>{plainDays(each.remedies.join(' Or: '))}</p>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
