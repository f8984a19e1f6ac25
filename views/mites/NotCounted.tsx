import { headOn } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { shortDay } from '../parts/days.ts';
import styles from './NotCounted.module.css';
import type { Surveyed } from './survey.ts';
import { dueWords } from './words.ts';

/** Colonies without a count this season, each with the day of its last and of its next. */
export function NotCounted({ others }: { readonly others: readonly Surveyed[] }) {
  return (
    <section class={styles.others} aria-labelledby="not-counted">
      <h2 id="not-counted">Not counted this season</h2>
      <ul>
        {others.map((each) => (
          <Line key={each.colony.id} {...each} />
        ))}
      </ul>
    </section>
  );
}

function Line({ colony, last, due }: Surveyed) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const waits = headOn(registry, colony, on)
    ? 'too young to be counted yet'
    : 'left alone while a queen is awaited';
  return (
    <li>
      <span>
        <ColonyLabel colony={colony} />
      </span>
      <span>{last ? `last ${shortDay(last.entry.day, on)}` : 'never'}</span>
      {due ? (
        <a
          class={`${styles.due} ${due.overdue ? styles.overdue : ''}`}
          href={routes.record(colony.id, 'mites')}
        >
          {dueWords(due, on)}
        </a>
      ) : (
        <span class={styles.quiet}>{waits}</span>
      )}
    </li>
  );
}
