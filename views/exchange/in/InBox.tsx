import { useState } from 'preact/hooks';
import { guessColumns } from '../../../src/exchange/intake/index.ts';
import { go, routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { TextArea } from '../../parts/Field.tsx';
import { useToday } from '../../parts/use-today.ts';
import { opened } from '../incoming.ts';
import styles from './InBox.module.css';
import { decodeText, PASTED, readIncoming } from './read-incoming.ts';

/** The way in: a file chosen or dropped, or what is pasted. It is only read here; what it would do is shown next. */
export function InBox() {
  const [busy, setBusy] = useState(false);
  const [text, setText] = useState('');
  const [over, setOver] = useState(false);
  const open = useOpen();

  const take = async (file: File | undefined) => {
    if (!file) return;
    setBusy(true);
    open(decodeText(new Uint8Array(await file.arrayBuffer())), file.name);
    setBusy(false);
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    void take(event.dataTransfer?.files[0]);
  };
  const onPaste = (event: ClipboardEvent) => {
    const pasted = event.clipboardData?.getData('text/plain') ?? '';
    if (pasted.trim() === '' || text.trim() !== '') return;
    event.preventDefault();
    open(pasted, PASTED);
  };

  return (
    <section class={styles.in} aria-labelledby="in">
      <h2 id="in">Into your records</h2>
      <Waiting />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way to the file input inside. */}
      <div
        class={`${styles.drop} ${over ? styles.over : ''}`}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <label class={styles.choose}>
          <input
            type="file"
            accept=".json,.csv,.tsv,.txt,text/csv,text/plain,application/json"
            onChange={(event) => {
              void take(event.currentTarget.files?.[0]);
              event.currentTarget.value = '';
            }}
          />
          <span>{busy ? 'Reading' : 'Choose a file'}</span>
        </label>
        <p>
          or drop one here: a file of records (.damline.json) from another keeper or device, or a table you
          kept until now (.csv).
        </p>
      </div>
      <div class={styles.paste} onPaste={onPaste}>
        <TextArea
          label="Or paste cells of a spreadsheet"
          value={text}
          onChange={setText}
          rows={4}
          hint="Its header row with them. They are read at once; nothing is written before you have seen what."
        />
        {text.trim() !== '' && <Button onPress={() => open(text, PASTED)}>Read this</Button>}
      </div>
    </section>
  );
}

/** Reads what came, keeps it open and goes to where it is looked through. */
function useOpen(): (text: string, name: string) => void {
  const { records } = useStore();
  const today = useToday();
  return (text, name) => {
    const incoming = readIncoming(text, name);
    const work =
      incoming.is === 'table'
        ? {
            mapping: guessColumns(incoming.table, today),
            answers: {},
            leaveOut: new Set<number>(),
            mended: new Map(),
          }
        : undefined;
    opened.value = { records: records.value, incoming, ...(work ? { work } : {}) };
    go(routes.exchange({ incoming: 'open' }));
  };
}

/** What was read before and neither taken in nor put away. */
function Waiting() {
  const { records } = useStore();
  const open = opened.value;
  if (!open || open.records !== records.value) return null;
  return (
    <div class={styles.waiting}>
      <p>
        <strong>{open.incoming.name}</strong> is open and not taken in.
      </p>
      <div class={styles.acts}>
        <Button href={routes.exchange({ incoming: 'open' })}>Go on with it</Button>
        <Button
          look="quiet"
          onPress={() => {
            opened.value = undefined;
          }}
        >
          Put it away
        </Button>
      </div>
    </div>
  );
}
