import { useMemo, useState } from 'preact/hooks';
import { yearOf } from '../../src/journal/day.ts';
import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { HistoryLine } from '../colony/HistoryLine.tsx';
import { historyOf } from '../colony/history.ts';
import { Button } from '../parts/Button.tsx';
import queenStyles from './Queen.module.css';

const FIRST_SHOWN = 12;

/** Everything written of her, the last first, with corrections and what was taken back. */
export function History({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const store = useStore();
  const on = store.on.value;
  const journal = store.journal.value;
  const items = useMemo(() => historyOf(journal, registry, queen, on), [journal, registry, queen, on]);
  const [all, setAll] = useState(false);
  const shown = all ? items : items.slice(0, FIRST_SHOWN);
  return (
    <section class={`${queenStyles.section} ${queenStyles.history}`} aria-labelledby="history">
      <h2 id="history">What is written of her</h2>
      <ol>
        {shown.map((item, index) => {
          const year = yearOf(item.entry.day);
          const before = shown[index - 1];
          return (
            <li key={item.entry.id}>
              {(!before || yearOf(before.entry.day) !== year) && <h3>{year}</h3>}
              <ol>
                <HistoryLine item={item} />
              </ol>
            </li>
          );
        })}
      </ol>
      {items.length > shown.length && (
        <p>
          <Button onPress={() => setAll(true)}>{`Show all ${items.length}`}</Button>
        </p>
      )}
    </section>
  );
}
