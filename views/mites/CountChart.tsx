import { dayNumber, firstDay, isExactDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { useWidth } from '../parts/use-width.ts';
import { ChartDrawing } from './ChartDrawing.tsx';
import styles from './CountChart.module.css';
import { CountTable } from './CountTable.tsx';
import { chartScale } from './chart-scale.ts';
import { countsOf, growthOf } from './counts.ts';
import { againstMites } from './treatments.ts';
import { growthWords } from './words.ts';

const HEIGHT = 200;
const AXIS = 24;
const TOP = 42;
const LEFT = 26;
/** Days that the drawing looks back; older counts stand in the table. */
const SHOWN_DAYS = 420;

/**
 * The mite counts of one colony over time: what each allows, the keeper's thresholds, the treatments, and the growth
 * between two untreated counts. The same stands in a table below.
 */
export function CountChart({ colony }: { readonly colony: Colony }) {
  const registry = useRegistry();
  const store = useStore();
  const on = store.on.value;
  const { box, width } = useWidth();
  const all = countsOf(registry, colony, on, store.settings.value.miteThresholds);
  const last = all.at(-1);
  if (!last) return null;
  const { unit } = last.figure;
  const shown = all.filter(
    ({ entry, figure }) =>
      figure.unit === unit &&
      dayNumber(firstDay(entry.day)) >= dayNumber(on) - SHOWN_DAYS &&
      isExactDay(entry.day),
  );
  const treatments = againstMites(registry, colony);
  const growth = growthOf(all, treatments);
  const size = { width, top: TOP, base: HEIGHT - AXIS, left: LEFT };
  return (
    <figure class={styles.chart}>
      <div ref={box}>
        {width > 0 && shown.length > 0 && (
          <ChartDrawing
            {...{ shown, treatments, size }}
            height={HEIGHT}
            scale={chartScale(shown, on, size, unit)}
          />
        )}
      </div>
      <figcaption class={styles.caption}>
        {growth ? (
          <>
            From {dayText(growth.earlier.day)} to {dayText(growth.later.day)}, untreated:{' '}
            {growthWords(growth)}
          </>
        ) : (
          'No two counts by one method, four weeks or more apart, without a treatment between: growth is not known.'
        )}
      </figcaption>
      <CountTable counts={all} />
    </figure>
  );
}
