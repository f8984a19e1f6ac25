import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { countsOf } from '../mites/counts.ts';
import { asideWords } from '../mites/words.ts';
import { dayInYear } from '../parts/days.ts';
import { IntervalBar } from '../parts/IntervalBar.tsx';
import { MITE_METHODS } from '../parts/words.ts';
import styles from './Mites.module.css';

/** Counts shown; older ones stand in the history. */
const SHOWN = 5;

/** The last mite counts with their limits beside the keeper's threshold, and what treatments make of them. */
export function Mites({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const { miteThresholds } = store.settings.value;
  const counts = countsOf(registry, colony, on, miteThresholds).slice(-SHOWN).reverse();
  if (counts.length === 0) return null;
  const max = (unit: string) =>
    Math.max(
      1,
      ...counts
        .filter(({ figure }) => figure.unit === unit)
        .flatMap(({ figure, thresholds }) => [figure.high, (thresholds[0]?.value ?? 0) * 1.25]),
    );
  return (
    <section class={styles.mites} aria-labelledby="mites">
      <h2 id="mites">Mites</h2>
      {counts.map(({ entry, figure, thresholds: [threshold], setAside }) => (
        <div key={entry.id}>
          <IntervalBar
            label={`${dayInYear(entry.day, on)}, ${MITE_METHODS[entry.sample.method].toLowerCase()}`}
            low={figure.low}
            high={figure.high}
            value={entry.sample.mites > 0 ? figure.value : undefined}
            max={max(figure.unit)}
            unit={figure.unit}
            threshold={
              threshold && { value: threshold.value, label: `Your threshold (${threshold.jurisdiction})` }
            }
          />
          {setAside && <p class={styles.note}>{asideWords(setAside, on)}</p>}
        </div>
      ))}
      <p class={styles.note}>
        The bar is the range that the count allows, 95 times of 100.
        {miteThresholds.length === 0 && (
          <>
            {' '}
            <a href={routes.mites()}>Set the thresholds you go by</a>.
          </>
        )}
      </p>
    </section>
  );
}
