import { useState } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import styles from './FirstRun.module.css';
import { go, routes } from './routes.ts';
import { areShut, ShutRecords } from './ShutRecords.tsx';
import { StartOwn } from './StartOwn.tsx';
import { useStore } from './store-context.ts';

/** The first page of an empty app: what this is, and three ways in. */
export function FirstRun() {
  const store = useStore();
  const [starting, setStarting] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  if (areShut(store)) return <ShutRecords />;
  const openDemo = () =>
    store.open('demo').then(
      () => go(routes.yards()),
      () => setTrouble('The demo yard could not be opened. Reload the page and try once more.'),
    );
  return (
    <div class={styles.first}>
      <p class={styles.name}>Damline</p>
      <h1>Who descends from whom, and whom to breed from next.</h1>
      <p class={styles.lead}>
        For keepers who make their increase from the colonies that came through winter. Damline keeps queens,
        boxes and lines apart, tells what to look for in each box and when, and works out whom to multiply.
      </p>
      {trouble && <Notice tone="warn">{trouble}</Notice>}
      {starting ? (
        <StartOwn onBack={() => setStarting(false)} />
      ) : (
        <ul class={styles.ways}>
          <li>
            <Button look="main" size="hive" wide onPress={openDemo}>
              Walk through a demo yard
            </Button>
            <p>Two invented yards over six seasons, kept apart from anything of yours.</p>
          </li>
          <li>
            <Button size="hive" wide onPress={() => setStarting(true)}>
              Start my own records
            </Button>
            <p>Your name and the name of your first yard are enough.</p>
          </li>
          <li>
            <Button size="hive" wide href={routes.exchange()}>
              Bring in a table or a file
            </Button>
            <p>A spreadsheet you kept until now, or records from another device.</p>
          </li>
        </ul>
      )}
      <p class={styles.stays}>Everything stays on this device. No account, no server.</p>
    </div>
  );
}
