import { useState } from 'preact/hooks';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { sizeText } from '../manifest.ts';
import type { ReadyFile } from './files.ts';
import styles from './Out.module.css';

export interface SaveFileProps {
  readonly name: string;
  /** About how many bytes. */
  readonly bytes?: number;
  /** Makes the file when the button is pressed: a large one takes a moment. */
  readonly make: () => ReadyFile | Promise<ReadyFile>;
  /** A second file that belongs to the first. */
  readonly beside?: ReadyFile | undefined;
  readonly disabled?: boolean;
}

/** The name of the file, about how large it is, and the button that saves it. */
export function SaveFile({ name, bytes, make, beside, disabled }: SaveFileProps) {
  const [busy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    const file = await make();
    saveFile(file.text, file.name, file.type);
    setBusy(false);
  };
  return (
    <div class={styles.save}>
      <p class={styles.file}>
        <strong>{name}</strong>
        {bytes !== undefined && <span class={styles.size}>, about {sizeText(bytes)}</span>}
      </p>
      <div class={styles.buttons}>
        <Button look="main" size="hive" disabled={busy || disabled} onPress={save}>
          {busy ? 'Saving' : 'Save the file'}
        </Button>
        {beside && (
          <Button size="hive" onPress={() => saveFile(beside.text, beside.name, beside.type)}>
            Save its drone pools
          </Button>
        )}
      </div>
    </div>
  );
}

/** Asks a keeper without a name for one: a file says whose it is. */
export function NameAsk() {
  const store = useStore();
  const [name, setName] = useState('');
  if (store.keeper.value.name) return null;
  const given = name.trim();
  return (
    <div class={styles.save}>
      <TextField
        label="Your name"
        value={name}
        onChange={setName}
        hint="It stands in the file and beside what you write."
      />
      <Button disabled={given === ''} onPress={() => store.nameKeeper(given)}>
        Save the name
      </Button>
    </div>
  );
}
