import { percents } from '../parts/percents.ts';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './Chosen.module.css';
import type { DroneSources } from './drone-sources.ts';

const BASIS = {
  recorded: 'as written down for this season',
  'from-another-season': 'as written down for another season',
  assumed: 'assumed: nobody has written down what flew there',
} as const;

/** Whose drones she may have met, with their shares, and how that is known. */
export function DroneWords({ drones }: { readonly drones: DroneSources }) {
  return (
    <div class={styles.drones}>
      <p>
        {drones.place ? `Drones of ${drones.place}` : 'Where she flew is not recorded'}
        {drones.basis && `, ${BASIS[drones.basis]}`}.
        {!drones.stated && drones.place && ' The place is taken from where she came into lay.'}
      </p>
      <ul>
        {drones.mothers.map(({ queen, share }) => (
          <li key={queen}>
            <span>
              sons of <QueenName queen={queen} />
            </span>
            <span>{percents(share)}</span>
          </li>
        ))}
        {drones.unrecorded > 0 && (
          <li>
            <span>{drones.background === 'unrecorded' ? 'of nobody recorded' : drones.background}</span>
            <span>{percents(drones.unrecorded)}</span>
          </li>
        )}
      </ul>
    </div>
  );
}
