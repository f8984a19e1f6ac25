import { useMemo, useState } from 'preact/hooks';
import type { Queen } from '../../src/registry/state.ts';
import { useRegistry } from '../app/store-context.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { foundersLeft } from './founders-left.ts';
import styles from './Origin.module.css';
import queenStyles from './Queen.module.css';
import { ShareBar } from './ShareBar.tsx';

/** What is left of each founder in her: worked out when asked for. A founder herself has nothing to tell. */
export function FoundersLeft({ queen }: { readonly queen: Queen }) {
  const [open, setOpen] = useState(false);
  if ((queen.parentage?.dams.length ?? 0) === 0) return null;
  return (
    <details class={styles.drones} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>What is left of each founder in her</summary>
      {open && <Shares queen={queen} />}
    </details>
  );
}

function Shares({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const left = useMemo(() => foundersLeft(registry, queen.id), [registry, queen.id]);
  if (!left) return <p>The records contradict themselves, so that it cannot be told.</p>;
  return (
    <>
      <ul class={styles.founders}>
        {left.founders.map((founder) => (
          <li key={founder.queen}>
            <QueenName queen={founder.queen} hideMark />
            <ShareBar share={founder.share} />
          </li>
        ))}
        {left.unrecorded > 0.0005 && (
          <li>
            <span class={styles.unknown}>drones or dams not on record</span>
            <ShareBar share={left.unrecorded} />
          </li>
        )}
      </ul>
      <p class={queenStyles.quiet}>
        Expected share of her genes: half of what each dam has, half of what her mates brought. What really
        came down is dealt by chance.
      </p>
    </>
  );
}
