import { dayText } from '../../../src/journal/day-words.ts';
import { kindTitle } from '../../../src/journal/entry.ts';
import { type Altered, canonicalText } from '../../../src/journal/journal.ts';
import { useStore } from '../../app/store-context.ts';
import { VersionColumns } from '../disagreements/VersionColumns.tsx';
import styles from './Incoming.module.css';
import { lineOfEntry } from './read-incoming.ts';
import { SubjectLabel } from './SubjectLabel.tsx';

export interface AlteredEntriesProps {
  readonly altered: readonly Altered[];
  readonly text: string;
  readonly name: string;
}

/** Entries that the file tells otherwise than they were written. They stay out; what is here stands. */
export function AlteredEntries({ altered, text, name }: AlteredEntriesProps) {
  const { journal } = useStore();
  if (altered.length === 0) return null;
  return (
    <section class={`${styles.part} ${styles.warn}`} aria-labelledby="altered">
      <h2 id="altered">Altered in the file</h2>
      <p class={styles.prose}>
        An entry never changes; a mistake is put right by a new one. These were changed by hand or damaged on
        the way, so they are not taken in and yours stand as they are. Ask for an unchanged copy, or, if the
        change is right, correct the entry here.
      </p>
      {altered.map((each) => {
        const mine = journal.value.get(each.id) ?? each.kept;
        const theirs = canonicalText(mine) === canonicalText(each.kept) ? each.setAside : each.kept;
        const line = lineOfEntry(text, each.id);
        return (
          <div key={each.id} class={styles.pair}>
            <h3>
              {kindTitle(mine.kind)} <SubjectLabel entry={mine} /> {dayText(mine.day)}
              {line !== undefined && (
                <span class={styles.line}>
                  {name}, line {line}
                </span>
              )}
            </h3>
            <VersionColumns
              versions={[
                { entry: mine, says: 'On this device', stands: 'Stands', counts: true },
                { entry: theirs, says: 'In the file', stands: 'Stays out', counts: false },
              ]}
            />
          </div>
        );
      })}
    </section>
  );
}
