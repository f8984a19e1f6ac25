import { firstDay } from '../../src/journal/day.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lowestThreshold } from '../mites/counts.ts';
import { dayInYear } from '../parts/days.ts';
import { miteFigure } from '../parts/entries/mite-words.ts';
import { IntervalBar } from '../parts/IntervalBar.tsx';
import { treatmentWords } from '../parts/treatment-words.ts';
import { MITE_METHODS } from '../parts/words.ts';
import styles from './Mites.module.css';

type Count = EntryOf<'mite-count'>;

/** Counts shown; older ones stand in the history. */
const SHOWN = 5;

/** The last mite counts with their limits beside the keeper's threshold, and what treatments make of them. */
export function Mites({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const counts = colony.entries
    .filter((entry): entry is Count => entry.kind === 'mite-count' && firstDay(entry.day) <= on)
    .slice(-SHOWN)
    .reverse();
  if (counts.length === 0) return null;
  const { miteThresholds } = store.settings.value;
  const figures = counts.map((entry) => ({
    entry,
    figure: miteFigure(entry.sample),
    threshold: lowestThreshold(miteThresholds, entry),
  }));
  const max = (unit: string) =>
    Math.max(
      1,
      ...figures
        .filter(({ figure }) => figure.unit === unit)
        .flatMap(({ figure, threshold }) => [figure.high, (threshold?.value ?? 0) * 1.25]),
    );
  return (
    <section class={styles.mites} aria-labelledby="mites">
      <h2 id="mites">Mites</h2>
      {figures.map(({ entry, figure, threshold }) => (
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
          <p class={styles.note}>{treatmentWords(entry.day, registry, colony)}</p>
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
