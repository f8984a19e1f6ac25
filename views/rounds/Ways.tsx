import { useState } from 'preact/hooks';
import type { Task } from '../../graph/calendar/index.ts';
import type { Colony } from '../../src/registry/state.ts';
import { go } from '../app/routes.ts';
import { EndSheet } from '../colony/EndSheet.tsx';
import { JoinSheet } from '../colony/JoinSheet.tsx';
import { Button } from '../parts/Button.tsx';
import { FromWhich } from './FromWhich.tsx';
import styles from './Ways.module.css';
import { type Doing, waysOf } from './ways.ts';

/** What helps where no queen is to come: each way leads to the form that writes it down. */
export function Ways({ task, colony }: { readonly task: Task; readonly colony: Colony }) {
  const [chosen, setChosen] = useState<Doing>();
  const ways = waysOf(task);
  if (ways.length === 0) return null;
  const close = () => setChosen(undefined);
  const choose = (does: Doing) => (does.is === 'page' ? go(does.href) : setChosen(does));
  return (
    <div class={styles.ways}>
      <h3>What helps</h3>
      <ul>
        {ways.map(({ fallback, name, does }) => (
          <li key={fallback}>
            <Button size="hive" wide onPress={() => choose(does)}>
              {name}
            </Button>
          </li>
        ))}
      </ul>
      {chosen?.is === 'carry' && <FromWhich to={colony} frame={chosen.frame} onClose={close} />}
      {chosen?.is === 'join' && <JoinSheet colony={colony} onClose={close} />}
      {chosen?.is === 'end' && <EndSheet colony={colony} onClose={close} />}
    </div>
  );
}
