import { useState } from 'preact/hooks';
import type { Store } from '../../src/store/contract.ts';
import { Button } from '../parts/Button.tsx';
import { saveFile } from '../parts/save-file.ts';
import styles from './FirstRun.module.css';
import { useStore } from './store-context.ts';

/** True while the records on this device could not be opened, so that an empty page does not mean empty records. */
export function areShut({ journal, problems }: Store): boolean {
  const refused = problems.value.some(({ code }) => code === 'storage-newer' || code === 'storage-failed');
  return journal.value.size === 0 && refused;
}

/** Stands where the records cannot be opened: that they are still there, and the way to take them out. */
export function ShutRecords() {
  const store = useStore();
  const [outcome, setOutcome] = useState<string>();
  const rescue = async () => {
    const read = await store.rescue();
    if (!read.ok) {
      setOutcome(`Nothing could be read from this device: ${read.problems[0]?.found ?? 'no reason given'}.`);
      return;
    }
    const name = `rescued-${store.on.value}.damline.json`;
    saveFile(read.value, name, 'application/json');
    setOutcome(`Handed to the browser as ${name}. Keep it in a second place; a newer Damline brings it in.`);
  };
  return (
    <div class={styles.first}>
      <p class={styles.name}>Damline</p>
      <h1>Your records are shut.</h1>
      <p class={styles.lead}>
        They could not be opened for the reason given above. Nothing in them was changed, and nothing can be
        recorded until they open.
      </p>
      <ul class={styles.ways}>
        <li>
          <Button look="main" size="hive" wide onPress={rescue}>
            Save what can be read
          </Button>
          <p>Every entry just as it stands on this device, in one file.</p>
        </li>
        <li>
          <Button size="hive" wide onPress={() => window.location.reload()}>
            Reload the page
          </Button>
          <p>While online, so that a newer page can come.</p>
        </li>
      </ul>
      <p class={outcome ? styles.stays : ''} role="status">
        {outcome}
      </p>
    </div>
  );
}
