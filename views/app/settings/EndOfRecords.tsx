import { useState } from 'preact/hooks';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { count } from '../../parts/words.ts';
import { go } from '../routes.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';

/** Leaving the demo, or deleting the keeper's own records for good. */
export function EndOfRecords() {
  const store = useStore();
  const [wiping, setWiping] = useState(false);
  const demo = store.records.value === 'demo';
  return (
    <section class={styles.part}>
      <h2>{demo ? 'Demo yard' : 'Delete everything'}</h2>
      <p>
        {demo
          ? 'Leave the demo for your own records. What you tried out here stays in the demo.'
          : 'Deletes all records on this device for good. Export them first if you may ever want them back.'}
      </p>
      <div class={styles.row}>
        {demo && <Button onPress={() => store.open('own')}>Leave the demo</Button>}
        <Button onPress={() => setWiping(true)}>
          {demo ? 'Put the demo back as it was' : 'Delete all records'}
        </Button>
      </div>
      {wiping && <WipeSheet demo={demo} onClose={() => setWiping(false)} />}
    </section>
  );
}

/** The one thing that cannot be undone is the one thing asked about. */
function WipeSheet({ demo, onClose }: { readonly demo: boolean; readonly onClose: () => void }) {
  const store = useStore();
  const [word, setWord] = useState('');
  const entries = count(store.journal.value.size, 'entry', 'entries');
  const wipe = async () => {
    await store.wipe();
    if (demo) await store.open('demo');
    onClose();
    go('#/yards');
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
    <Sheet title="Delete all records" onClose={onClose}>
      <p>
        {entries} will be gone from this device. This cannot be undone. A file from Exchange is the only way
        back.
      </p>
      <TextField label="Write delete to go on" value={word} onChange={setWord} />
      <Button disabled={word.trim().toLowerCase() !== 'delete'} onPress={wipe}>
        Delete {entries}
      </Button>
    </Sheet>
  );
}
