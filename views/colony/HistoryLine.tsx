import { kindTitle } from '../../src/journal/entry.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { shortDay } from '../parts/days.ts';
import { EntrySentence } from '../parts/entries/EntrySentence.tsx';
import { PhotoRow } from '../parts/PhotoRow.tsx';
import styles from './HistoryLine.module.css';
import type { HistoryItem } from './history.ts';

/** One entry in the history of a colony: its day, what it says, and what became of it since. */
export function HistoryLine({ item }: { readonly item: HistoryItem }) {
  const { entry, withdrawnBy, before, contradictions } = item;
  const { registry, keeper, on } = useStore();
  const by = entry.recordedBy === keeper.value.id ? undefined : registry.value.keepers.get(entry.recordedBy);
  const photos = 'photos' in entry ? entry.photos : undefined;
  return (
    <li class={`${styles.line} ${withdrawnBy ? styles.withdrawn : ''}`}>
      <a class={styles.day} href={routes.entry(entry.id)}>
        {dayOnly(shortDay(entry.day, on.value))}
      </a>
      <div class={styles.what}>
        <p>
          <strong class={styles.kind}>{kindTitle(entry.kind)}</strong>{' '}
          <span class={styles.says}>
            <EntrySentence entry={entry} />
          </span>
        </p>
        {entry.remark && <p>{entry.remark}</p>}
        {photos && <PhotoRow photos={photos} />}
        {withdrawnBy && (
          <p class={styles.since}>
            Taken back
            {withdrawnBy.kind === 'withdrawal' && withdrawnBy.reason ? `: ${withdrawnBy.reason}` : ''}.
          </p>
        )}
        {before[0] && (
          <p class={styles.since}>
            Corrected. Before: <EntrySentence entry={before[0]} />
          </p>
        )}
        {contradictions.map((each) => (
          <p key={each.code} class={each.overruled ? styles.since : styles.contradiction}>
            {each.because} {each.overruled ? `It is so all the same: ${each.overruled}` : each.remedies[0]}
          </p>
        ))}
        {by && <p class={styles.since}>Written by {by}.</p>}
      </div>
    </li>
  );
}

/** The year stands in the heading above. */
function dayOnly(text: string): string {
  return text.replace(/ \d{4}$/, '');
}
