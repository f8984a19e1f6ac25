import { Wipe } from '../../exchange/Wipe.tsx';
import { Button } from '../../parts/Button.tsx';
import { go, routes } from '../routes.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';

/** Leaving the demo, and the end of the open records on this device. */
export function EndOfRecords() {
  const store = useStore();
  return (
    <>
      {store.records.value === 'demo' && (
        <section class={styles.part}>
          <h2>Demo yard</h2>
          <p>Leave the demo for your own records. What you tried out here stays in the demo.</p>
          <Button onPress={() => store.open('own')}>Leave the demo</Button>
        </section>
      )}
      <Wipe onWiped={() => go(routes.yards())} />
    </>
  );
}
