import { useState } from 'preact/hooks';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/Field.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { saveFile } from '../parts/save-file.ts';
import { counted } from './counted.ts';
import { keepLastSaved, markOf, readLastSaved, savedWords } from './last-saved.ts';
import { journalFile } from './out/files.ts';
import styles from './Wipe.module.css';

/** The end of the open records on this device: the one thing that cannot be undone, so the one that is asked about. */
export function Wipe({ onWiped }: { readonly onWiped?: () => void }) {
  const { records } = useStore();
  const [asking, setAsking] = useState(false);
  const demo = records.value === 'demo';
  return (
    <section class={styles.part} aria-labelledby="wipe">
      <h2 id="wipe">{demo ? 'Start the demo afresh' : 'Clear this device'}</h2>
      <p>
        {demo
          ? 'Puts the demo yard back as it was. Your own records are not touched.'
          : 'Deletes all records here for good, for a device that goes to someone else. Files that you saved, and what others took in, stay.'}
      </p>
      <Button onPress={() => setAsking(true)}>
        {demo ? 'Put the demo back as it was' : 'Delete all records here'}
      </Button>
      {asking && <WipeSheet demo={demo} onClose={() => setAsking(false)} onWiped={onWiped} />}
    </section>
  );
}

interface WipeSheetProps {
  readonly demo: boolean;
  readonly onClose: () => void;
  readonly onWiped: (() => void) | undefined;
}

function WipeSheet({ demo, onClose, onWiped }: WipeSheetProps) {
  const store = useStore();
  const [word, setWord] = useState('');
  const entries = [...store.journal.value.values()];
  const [saved, setSaved] = useState(() => readLastSaved(store.records.value));
  const wipe = async () => {
    await store.wipe();
    if (demo) await store.open('demo');
    keepLastSaved(store.records.value, undefined);
    onClose();
    onWiped?.();
  };
  const save = async () => {
    const exported = new Date().toISOString();
    const file = journalFile({
      exported,
      by: store.keeper.value,
      scope: { of: 'all' },
      entries,
      photos: await store.photos(),
    });
    saveFile(file.text, file.name, file.type);
    const kept = { at: exported, mark: markOf(entries) };
    keepLastSaved(store.records.value, kept);
    setSaved(kept);
  };
  if (demo) {
    return (
      <Sheet title="Put the demo back as it was" onClose={onClose}>
        <p>What you tried out in the demo is forgotten. Your own records are not touched.</p>
        <Button look="main" onPress={wipe}>
          Put it back
        </Button>
      </Sheet>
    );
  }
  return (
    <Sheet title="Delete all records on this device" onClose={onClose}>
      <p>{savedWords(entries, saved)} What is deleted comes back only from a file.</p>
      <Button look="main" onPress={save}>
        Save all of it to a file first
      </Button>
      <TextField label="Write delete to go on" value={word} onChange={setWord} />
      <Button disabled={word.trim().toLowerCase() !== 'delete'} onPress={wipe}>
        Delete {counted(entries.length, 'entry', 'entries')}
      </Button>
    </Sheet>
  );
}
