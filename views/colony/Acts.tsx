import { useState } from 'preact/hooks';
import type { Colony } from '../../src/registry/state.ts';
import { Button } from '../parts/Button.tsx';
import styles from './Acts.module.css';
import { EndSheet } from './EndSheet.tsx';
import { JoinSheet } from './JoinSheet.tsx';
import { MoveSheet } from './MoveSheet.tsx';
import { RelabelSheet } from './RelabelSheet.tsx';

type Act = 'move' | 'relabel' | 'join' | 'end';

const ACTS: readonly { readonly act: Act; readonly label: string }[] = [
  { act: 'move', label: 'Move it' },
  { act: 'relabel', label: 'New label' },
  { act: 'join', label: 'Join with another' },
  { act: 'end', label: 'It has ended' },
];

/** What can be done with the box itself: moved, given another label, joined, ended. */
export function Acts({ colony }: { readonly colony: Colony }) {
  const [open, setOpen] = useState<Act>();
  const close = () => setOpen(undefined);
  return (
    <section class={styles.acts} aria-labelledby="acts">
      <h2 id="acts">The box</h2>
      <ul>
        {ACTS.map(({ act, label }) => (
          <li key={act}>
            <Button look="quiet" onPress={() => setOpen(act)}>
              {label}
            </Button>
          </li>
        ))}
      </ul>
      {open === 'move' && <MoveSheet colony={colony} onClose={close} />}
      {open === 'relabel' && <RelabelSheet colony={colony} onClose={close} />}
      {open === 'join' && <JoinSheet colony={colony} onClose={close} />}
      {open === 'end' && <EndSheet colony={colony} onClose={close} />}
    </section>
  );
}
