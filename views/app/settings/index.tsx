import { useState } from 'preact/hooks';
import { Button } from '../../parts/Button.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { TextField } from '../../parts/Field.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { go } from '../routes.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';

const THEMES = [
  { value: 'system', label: 'As the device' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const;

/** Choices of this device: who writes, light or dark, and the end of the records. */
export function SettingsPage() {
  const store = useStore();
  const [wiping, setWiping] = useState(false);
  const demo = store.records.value === 'demo';
  return (
    <>
      <PageHeader title="Settings" />
      <div class={styles.settings}>
        <KeeperName />
        <ChoiceRow
          label="Light or dark"
          required
          options={THEMES}
          value={store.settings.value.theme}
          onChange={(theme) => theme && store.changeSettings({ theme })}
        />
        <section class={styles.end}>
          <h2>{demo ? 'Demo yard' : 'Delete everything'}</h2>
          <p>
            {demo
              ? 'Leave the demo for your own records. What you tried out in the demo is not carried over.'
              : 'Deletes all records on this device for good. Export them first if you may ever want them back.'}
          </p>
          {demo ? (
            <Button onPress={() => store.open('own')}>Leave the demo</Button>
          ) : (
            <Button onPress={() => setWiping(true)}>Delete all records</Button>
          )}
        </section>
      </div>
      {wiping && <WipeSheet onClose={() => setWiping(false)} />}
    </>
  );
}

function KeeperName() {
  const store = useStore();
  const [name, setName] = useState(store.keeper.value.name);
  const changed = name.trim() !== '' && name.trim() !== store.keeper.value.name;
  return (
    <div class={styles.keeper}>
      <TextField
        label="Your name"
        value={name}
        onChange={setName}
        hint="Stands beside what you write from now on."
      />
      {changed && <Button onPress={() => store.nameKeeper(name.trim())}>Save the name</Button>}
    </div>
  );
}

/** The one thing that cannot be undone is the one thing asked about. */
function WipeSheet({ onClose }: { readonly onClose: () => void }) {
  const store = useStore();
  const [word, setWord] = useState('');
  const entries = store.journal.value.size;
  const wipe = () =>
    store.wipe().then(() => {
      onClose();
      go('#/');
    });
  return (
    <Sheet title="Delete all records" onClose={onClose}>
      <p>
        {entries} entries will be gone from this device. This cannot be undone. A file from Exchange is the
        only way back.
      </p>
      <TextField label="Write delete to go on" value={word} onChange={setWord} />
      <Button disabled={word.trim().toLowerCase() !== 'delete'} onPress={wipe}>
        Delete {entries} entries
      </Button>
    </Sheet>
  );
}
