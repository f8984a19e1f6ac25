import { type Entry, kindTitle } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { plainDays, shortDay } from '../../parts/days.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import styles from './Incoming.module.css';
import { SubjectLabel } from './SubjectLabel.tsx';

/** A note longer than this is opened by who wants to read it. */
const LONG_NOTE = 240;

/** One entry as it stands in a file: the day, what it says, its remark, and who wrote it. */
export function EntryLine({ entry }: { readonly entry: Entry }) {
  const { registry } = useStore();
  const long = entry.kind === 'note' && entry.text.length > LONG_NOTE;
  return (
    <li>
      <span class={styles.day}>{shortDay(entry.day)}</span>
      <div>
        <p>
          <strong>{kindTitle(entry.kind)}</strong> <SubjectLabel entry={entry} />{' '}
          {!long && <EntrySentence entry={entry} />}
        </p>
        {long && <LongNote text={entry.text} />}
        {entry.remark && <p>{entry.remark}</p>}
        <p class={styles.by}>
          {entry.supersedes ? 'A correction, written' : 'Written'} by{' '}
          {registry.value.keepers.get(entry.recordedBy) ?? 'a keeper without a name'}
        </p>
      </div>
    </li>
  );
}

function LongNote({ text }: { readonly text: string }) {
  const [first = '', ...rest] = text.split('\n');
  return (
    <details class={styles.note}>
      <summary>
        {rest.length > 0 ? `${first.replace(/:$/, '')}, ${rest.length} lines` : 'A long note'}
      </summary>
      {(rest.length > 0 ? rest : [first]).map((line, at) => (
        <p key={at}>{plainDays(line)}</p>
      ))}
    </details>
  );
}
