import { useState } from 'preact/hooks';
import { yearOf } from '../../src/journal/day.ts';
import type { TreatmentSpan } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { shortDay } from '../parts/days.ts';
import { count, sentence } from '../parts/words.ts';
import { HoneyWaitSheet } from './HoneyWaitSheet.tsx';
import { Colonies } from './Running.tsx';
import styles from './TreatmentLog.module.css';
import { honeyWait, treatmentLog } from './treatments.ts';

/** Years shown before the rest is asked for. */
const FIRST_YEARS = 2;

/** Every treatment by active ingredient: begun, ended, where, and the wait before honey from the label. */
export function TreatmentLog() {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [all, setAll] = useState(false);
  const [wait, setWait] = useState<TreatmentSpan>();
  const years = byYear(treatmentLog(registry, on));
  const shown = all ? years : years.slice(0, FIRST_YEARS);
  return (
    <section class={styles.log} aria-labelledby="treatments">
      <h2 id="treatments">Treatments</h2>
      {years.length === 0 && (
        <p>
          Every treatment will stand here by its active ingredient, with its days and the wait before honey.
          Record one at the colony.
        </p>
      )}
      {shown.map(([year, spans]) => (
        <table key={year}>
          <caption>{year}</caption>
          <thead>
            <tr>
              <th scope="col">Active ingredient</th>
              <th scope="col">In</th>
              <th scope="col">Begun</th>
              <th scope="col">Ended</th>
              <th scope="col">Honey</th>
            </tr>
          </thead>
          <tbody>
            {spans.map((span) => (
              <Line key={span.id} span={span} onWait={() => setWait(span)} />
            ))}
          </tbody>
        </table>
      ))}
      {!all && years.length > FIRST_YEARS && (
        <Button look="quiet" onPress={() => setAll(true)}>
          Show the {count(years.length - FIRST_YEARS, 'year')} before
        </Button>
      )}
      {wait && <HoneyWaitSheet span={wait} onClose={() => setWait(undefined)} />}
    </section>
  );
}

function Line({ span, onWait }: { readonly span: TreatmentSpan; readonly onWait: () => void }) {
  const on = useStore().on.value;
  const { entry, from, to } = span;
  return (
    <tr>
      <th scope="row">
        <a href={routes.entry(entry.id)}>{sentence(entry.active)}</a>
        {(entry.manner || entry.against) && (
          <span class={styles.manner}>
            {[entry.manner, entry.against && `against ${entry.against}`].filter(Boolean).join(', ')}
          </span>
        )}
      </th>
      <td data-label="In">
        <Colonies span={span} />
      </td>
      <td data-label="Begun">{shortDay(from, on)}</td>
      <td data-label="Ended">{to ? shortDay(to, on) : 'not written down'}</td>
      <td data-label="Honey">
        <HoneyWords span={span} onWait={onWait} />
      </td>
    </tr>
  );
}

function HoneyWords({ span, onWait }: { readonly span: TreatmentSpan; readonly onWait: () => void }) {
  const on = useStore().on.value;
  const honey = honeyWait(span);
  if (honey.is === 'until') return <>from {shortDay(honey.day, on)}</>;
  if (honey.is === 'after-end') return <>{count(honey.days, 'day')} after it is out</>;
  return (
    <Button look="quiet" label={`Wait before honey of ${span.entry.active}, from the label`} onPress={onWait}>
      see the label
    </Button>
  );
}

function byYear(spans: readonly TreatmentSpan[]): readonly (readonly [number, readonly TreatmentSpan[]])[] {
  const years = new Map<number, TreatmentSpan[]>();
  for (const span of spans) years.set(yearOf(span.from), [...(years.get(yearOf(span.from)) ?? []), span]);
  return [...years];
}
