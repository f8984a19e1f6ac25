import { addDays, type PlainDay } from '../../src/journal/day.ts';
import type { Colony, Queen } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { expectedQueens } from '../parts/HeadLine.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { WindowBand } from '../parts/WindowBand.tsx';
import styles from './Expected.module.css';

/** What is expected next in a colony that waits for a queen. */
export function Expected({ colony }: { readonly colony: Colony }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const coming = expectedQueens(colony, registry);
  if (coming.length === 0) return null;
  return (
    <section class={styles.expected} aria-labelledby="expected">
      <h2 id="expected">Expected</h2>
      {coming.map((queen) => (
        <div key={queen.id} class={styles.queen}>
          <p>
            <QueenName queen={queen} />
          </p>
          {queen.born && (
            <WindowBand label="She emerges" window={queen.born} scale={scaleOf(queen.born, on)} on={on} />
          )}
        </div>
      ))}
      <Button href={routes.record(colony.id, 'queen')}>Eggs seen, or she failed</Button>
    </section>
  );
}

function scaleOf(born: NonNullable<Queen['born']>, on: PlainDay) {
  const first = born.first < on ? born.first : on;
  const last = born.last > on ? born.last : on;
  return { first: addDays(first, -3), last: addDays(last, 3) };
}
