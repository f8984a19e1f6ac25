import { dayText } from '../../../src/journal/day-words.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import styles from './Entry.module.css';

/** Who wrote an entry and when, what was said before it was corrected, and the rules it overrules. */
export function Versions({ entry, earlier }: { readonly entry: Entry; readonly earlier: readonly Entry[] }) {
  const { registry } = useStore();
  const nameOf = (each: Entry) => registry.value.keepers.get(each.recordedBy) ?? 'another keeper';
  const contradictions = registry.value.contradictions.filter((each) => each.entry === entry.id);
  return (
    <>
      {contradictions.map((each) => (
        <div key={each.code} class={styles.contradiction}>
          <p>
            <strong>{each.because}</strong> By the records: {each.found}.
          </p>
          {each.overruled ? (
            <p>It is so all the same: {each.overruled}</p>
          ) : (
            <p>{each.remedies.join(' Or: ')}</p>
          )}
        </div>
      ))}
      <dl class={styles.versions}>
        <dt>{earlier.length > 0 ? 'Corrected' : 'Written'}</dt>
        <dd>
          {dayText(entry.recordedAt.slice(0, 10) as Entry['day'])} by {nameOf(entry)}
        </dd>
        {earlier.map((each) => (
          <>
            <dt>Before</dt>
            <dd>
              {each.day !== entry.day && `${dayText(each.day)}. `}
              <EntrySentence entry={each} />
              <span class={styles.by}>
                {' '}
                Written {dayText(each.recordedAt.slice(0, 10) as Entry['day'])} by {nameOf(each)}.
              </span>
            </dd>
          </>
        ))}
      </dl>
    </>
  );
}
