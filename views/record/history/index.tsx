import { useState } from 'preact/hooks';
import { dayText } from '../../../src/journal/day-words.ts';
import { type Entry, kindTitle } from '../../../src/journal/entry.ts';
import type { EntryId } from '../../../src/journal/ids.ts';
import { routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { earlierVersions, withdrawalsOf } from '../../colony/history.ts';
import { Button } from '../../parts/Button.tsx';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { PhotoRow } from '../../parts/PhotoRow.tsx';
import { AnyForm } from '../any/AnyForm.tsx';
import { valuesOf } from '../any/values.ts';
import styles from './Entry.module.css';
import { TakeBack } from './TakeBack.tsx';
import { Versions } from './Versions.tsx';

/** One entry: what it says, who wrote it when, what was said before, and correcting it or taking it back. */
export function EntryPage({ id }: { readonly id?: string }) {
  const store = useStore();
  const journal = store.journal.value;
  const entry = journal.get(id as EntryId);
  const [correcting, setCorrecting] = useState(false);
  if (!entry) {
    return (
      <PageHeader
        title="This entry is not in these records"
        above={{ label: 'Yards', href: routes.yards() }}
      />
    );
  }
  const later = [...journal.values()].findLast(({ supersedes }) => supersedes === entry.id);
  const withdrawal = standing(withdrawalsOf(journal).get(entry.id), journal);
  const photos = 'photos' in entry ? entry.photos : undefined;
  return (
    <article>
      <PageHeader title={kindTitle(entry.kind)} above={placeOf(entry)} lead={dayText(entry.day)} />
      <div class={styles.entry}>
        <p class={withdrawal ? styles.withdrawn : styles.says}>
          <EntrySentence entry={entry} />
        </p>
        {entry.remark && <p>{entry.remark}</p>}
        {photos && <PhotoRow photos={photos} />}
        <Versions entry={entry} earlier={earlierVersions(journal, entry)} />
        {later && (
          <p>
            A later correction counts instead: <a href={routes.entry(later.id)}>read it</a>.
          </p>
        )}
        {!later && !correcting && !withdrawal && (
          <div class={styles.acts}>
            {entry.kind !== 'withdrawal' && <Button onPress={() => setCorrecting(true)}>Correct it</Button>}
          </div>
        )}
        {!later && !correcting && <TakeBack entry={entry} withdrawal={withdrawal} />}
        {correcting && (
          <section class={styles.form}>
            <h2>Correction</h2>
            <AnyForm
              kind={entry.kind}
              initial={valuesOf(entry)}
              supersedes={entry.id}
              onSaved={() => setCorrecting(false)}
            />
          </section>
        )}
      </div>
    </article>
  );
}

/** The withdrawal that hides the entry, unless it was taken back itself. */
function standing(withdrawal: Entry | undefined, journal: ReadonlyMap<EntryId, Entry>): Entry | undefined {
  if (!withdrawal) return undefined;
  return withdrawalsOf(journal).has(withdrawal.id) ? undefined : withdrawal;
}

/** The page that the entry is read on: its colony's, else its queen's. */
function placeOf(entry: Entry): { readonly label: string; readonly href: string } {
  const values = entry as unknown as Record<string, unknown>;
  const colony = ['colony', 'source', 'to', 'builder']
    .map((name) => values[name])
    .find((each) => typeof each === 'string');
  if (colony) return { label: 'Its colony', href: routes.colony(String(colony)) };
  if (typeof values.queen === 'string') return { label: 'The queen', href: routes.queen(values.queen) };
  return { label: 'Yards', href: routes.yards() };
}
