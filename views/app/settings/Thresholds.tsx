import { useState } from 'preact/hooks';
import type { Settings } from '../../../src/store/settings.ts';
import { Button } from '../../parts/Button.tsx';
import { monthsText } from '../../parts/days.ts';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { MITE_METHODS, number } from '../../parts/words.ts';
import { routes } from '../routes.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';
import { ThresholdSheet } from './ThresholdSheet.tsx';

export type Threshold = Settings['miteThresholds'][number];

/** The action thresholds that the keeper goes by, each with where it comes from; counts are drawn beside them. */
export function Thresholds() {
  const store = useStore();
  const [open, setOpen] = useState<Threshold | 'new'>();
  const { miteThresholds, washEveryDays } = store.settings.value;
  const remove = (threshold: Threshold) =>
    store.changeSettings({ miteThresholds: miteThresholds.filter(({ id }) => id !== threshold.id) });
  return (
    <section class={styles.part}>
      <h2>Mite thresholds</h2>
      <p>
        From how many mites on you act depends on the season, the place and the plan. Set those you go by; the
        app draws each count beside them and gives no verdict of its own.
      </p>
      <ul class={styles.thresholds}>
        {miteThresholds.map((threshold) => (
          <li key={threshold.id}>
            <span>
              <strong>
                {number(threshold.value)} {threshold.method === 'natural-drop' ? 'a day' : '%'}
              </strong>
              , {MITE_METHODS[threshold.method].toLowerCase()}, {monthsText(threshold.months)}
              <span class={styles.source}>
                {threshold.jurisdiction}; {threshold.source}
              </span>
            </span>
            <Button
              look="quiet"
              label={`Change the threshold of ${threshold.jurisdiction}`}
              onPress={() => setOpen(threshold)}
            >
              Change
            </Button>
            <Button
              look="quiet"
              label={`Remove the threshold of ${threshold.jurisdiction}`}
              onPress={() => remove(threshold)}
            >
              Remove
            </Button>
          </li>
        ))}
      </ul>
      <div class={styles.row}>
        <Button onPress={() => setOpen('new')}>Add a threshold</Button>
        <Button look="quiet" href={routes.mites()}>
          Published ones to take over
        </Button>
      </div>
      <NumberStepper
        label="Count again every"
        unit="(days, in the mite season)"
        min={7}
        max={180}
        value={washEveryDays}
        onChange={(days) => days && store.changeSettings({ washEveryDays: days })}
      />
      {open && (
        <ThresholdSheet threshold={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </section>
  );
}
