import { useState } from 'preact/hooks';
import { lastDay, localDay, type PlainDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { Registry } from '../../src/registry/state.ts';
import { weekday } from '../parts/days.ts';
import { Sheet } from '../parts/Sheet.tsx';
import styles from './DayLine.module.css';
import { routes } from './routes.ts';
import { useStore } from './store-context.ts';

/** The line at the top: which records, which day, and the way back from looking at another one. */
export function DayLine() {
  const store = useStore();
  const [choosing, setChoosing] = useState(false);
  const demo = store.records.value === 'demo';
  const on = store.on.value;
  const today = demo ? lastDayOf(store.registry.value) : localDay(new Date());
  const elsewhere = on !== today;
  const pick = (day: string) => {
    if (day) store.on.value = day as PlainDay;
    setChoosing(false);
  };
  return (
    <header class={`${styles.line} ${elsewhere ? styles.elsewhere : ''}`}>
      {demo && (
        <p class={styles.demo}>
          Demo yard
          <button type="button" onClick={() => store.open('own')}>
            Leave
          </button>
        </p>
      )}
      <p class={styles.day}>
        <button
          type="button"
          onClick={() => setChoosing(true)}
          aria-label={`${dayText(on)}: look at another day`}
        >
          {elsewhere && 'As it stood on '}
          {weekday(on).slice(0, 3)} {dayText(on)}
        </button>
        {elsewhere && (
          <button type="button" onClick={() => pick(today)}>
            {demo ? 'Back' : 'Back to today'}
          </button>
        )}
      </p>
      <a class={styles.settings} href={routes.settings()}>
        Settings
      </a>
      {choosing && (
        <Sheet title="Look at another day" onClose={() => setChoosing(false)}>
          <p>Every screen shows the yards as they stood at the end of the day chosen here.</p>
          <label class={styles.pick}>
            Day
            <input type="date" value={on} onChange={(event) => pick(event.currentTarget.value)} />
          </label>
        </Sheet>
      )}
    </header>
  );
}

/** The demo plays on the last day that its entries speak of. */
function lastDayOf(registry: Registry): PlainDay {
  return (registry.entries
    .map(({ day }) => lastDay(day))
    .sort()
    .at(-1) ?? '') as PlainDay;
}
