import { useMemo, useState } from 'preact/hooks';
import { yearOf } from '../../src/journal/day.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { HistoryLine } from './HistoryLine.tsx';
import { type HistoryItem, historyOf } from './history.ts';
import styles from './Timeline.module.css';

/** Entries shown before the keeper asks for all of them. */
const FIRST_SHOWN = 25;

/** What happened in a colony, the last first, year by year, with corrections and what was taken back. */
export function Timeline({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const journal = store.journal.value;
  const items = useMemo(() => historyOf(journal, registry, colony, on), [journal, registry, colony, on]);
  const [all, setAll] = useState(false);
  const shown = all ? items : items.slice(0, FIRST_SHOWN);
  return (
    <section class={styles.timeline} aria-labelledby="timeline">
      <h2 id="timeline">What happened</h2>
      {byYear(shown).map(([year, ofYear]) => (
        <div key={year}>
          <h3 class={styles.year}>{year}</h3>
          <ol>
            {ofYear.map((item) => (
              <HistoryLine key={item.entry.id} item={item} />
            ))}
          </ol>
        </div>
      ))}
      {!all && items.length > shown.length && (
        <div class={styles.more}>
          <Button onPress={() => setAll(true)}>{`Show all ${items.length}`}</Button>
        </div>
      )}
    </section>
  );
}

function byYear(items: readonly HistoryItem[]): readonly (readonly [number, readonly HistoryItem[]])[] {
  const years = new Map<number, HistoryItem[]>();
  for (const item of items) {
    const year = yearOf(item.entry.day);
    years.set(year, [...(years.get(year) ?? []), item]);
  }
  return [...years];
}
