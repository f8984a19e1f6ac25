import { useState } from 'preact/hooks';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { monthsText } from '../parts/days.ts';
import { MITE_METHODS } from '../parts/words.ts';
import styles from './MyThresholds.module.css';
import { PublishedSheet } from './PublishedSheet.tsx';
import { thresholdWords } from './words.ts';

/** The thresholds that the keeper goes by, and the way to published ones; none applies until it is taken. */
export function MyThresholds() {
  const store = useStore();
  const [offering, setOffering] = useState(false);
  const { miteThresholds } = store.settings.value;
  return (
    <section class={styles.mine} aria-labelledby="my-thresholds">
      <h2 id="my-thresholds">Your thresholds</h2>
      {miteThresholds.length === 0 ? (
        <p>
          None set. From how many mites on you act depends on the season, the place and the plan; the counts
          are drawn beside the thresholds that you choose, and no others.
        </p>
      ) : (
        <ul>
          {miteThresholds.map((threshold) => (
            <li key={threshold.id}>
              <strong>{thresholdWords(threshold)}</strong>, {MITE_METHODS[threshold.method].toLowerCase()},{' '}
              {monthsText(threshold.months)}
              <span>
                {threshold.jurisdiction}; {threshold.source}
              </span>
            </li>
          ))}
        </ul>
      )}
      <div class={styles.acts}>
        <Button onPress={() => setOffering(true)}>Take a published one</Button>
        <Button look="quiet" href={routes.settings()}>
          {miteThresholds.length === 0 ? 'Set one of your own' : 'Change or add one'}
        </Button>
      </div>
      {offering && <PublishedSheet onClose={() => setOffering(false)} />}
    </section>
  );
}
