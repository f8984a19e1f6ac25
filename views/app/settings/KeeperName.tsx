import { useState } from 'preact/hooks';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';

/** The name that stands beside what is written on this device. */
export function KeeperName() {
  const store = useStore();
  const [name, setName] = useState(store.keeper.value.name);
  const changed = name.trim() !== '' && name.trim() !== store.keeper.value.name;
  return (
    <div class={styles.part}>
      <TextField label="Your name" value={name} onChange={setName} hint="Stands beside what you write." />
      {changed && <Button onPress={() => store.nameKeeper(name.trim())}>Save the name</Button>}
    </div>
  );
}
