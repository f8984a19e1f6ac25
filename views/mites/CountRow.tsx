import { useState } from 'preact/hooks';
import { headOn } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { shortDay } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { MITE_METHODS } from '../parts/words.ts';
import { CountBar } from './CountBar.tsx';
import { CountChart } from './CountChart.tsx';
import styles from './CountRow.module.css';
import type { CountSaid } from './counts.ts';
import type { Surveyed } from './survey.ts';
import { asideWords, besideWords, dueWords, effectWords, growthWords } from './words.ts';

export interface CountRowProps {
  readonly surveyed: Surveyed & { readonly last: CountSaid };
  readonly most: number;
}

/** The last count of one colony to scale, and in words what it says, what it does not, and when the next is due. */
export function CountRow({ surveyed, most }: CountRowProps) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [open, setOpen] = useState(false);
  const { colony, last, due, counts } = surveyed;
  const head = headOn(registry, colony, on);
  return (
    <li class={styles.row}>
      <p>
        <ColonyLabel colony={colony} /> {head && <QueenName queen={head} />}
      </p>
      <div class={styles.bar}>
        <CountBar said={last} most={most} />
      </div>
      <Says {...surveyed} />
      <div class={styles.right}>
        <Figure said={last} />
        <p class={styles.when}>
          <span>
            {MITE_METHODS[last.entry.sample.method]}, {shortDay(last.entry.day, on)}
          </span>
          {counts.length > 1 && (
            <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
              over time
            </button>
          )}
          {due && (
            <a class={due.overdue ? styles.overdue : ''} href={routes.record(colony.id, 'mites')}>
              {dueWords(due, on)}
            </a>
          )}
        </p>
      </div>
      {open && (
        <div class={styles.more}>
          <CountChart colony={colony} />
        </div>
      )}
    </li>
  );
}

function Figure({ said: { figure } }: { readonly said: CountSaid }) {
  const { value, low, high, unit } = figure;
  return (
    <p class={styles.figure}>
      <strong>{value > 0 ? `${value.toFixed(1)} ${unit}` : 'None found'}</strong>
      <span>
        {value > 0 ? `${low.toFixed(1)} to ${high.toFixed(1)} ${unit}` : `below ${high.toFixed(1)} ${unit}`}
      </span>
    </p>
  );
}

function Says({ last, effect, growth }: CountRowProps['surveyed']) {
  const on = useStore().on.value;
  const beside = besideWords(last);
  const isLatest = growth?.later.id === last.entry.id;
  return (
    <div class={styles.says}>
      {beside && <p>{beside}</p>}
      {last.setAside && <p class={styles.quiet}>{asideWords(last.setAside, on)}</p>}
      {effect && <p class={styles.quiet}>{effectWords(effect, on)}</p>}
      {growth && isLatest && (
        <p class={styles.quiet}>
          Since {shortDay(growth.earlier.day, on)}, untreated: {growthWords(growth)}
        </p>
      )}
    </div>
  );
}
