import { useStore } from '../app/store-context.ts';
import { shortDay } from '../parts/days.ts';
import { Unfold } from '../parts/Unfold.tsx';
import { MITE_METHODS } from '../parts/words.ts';
import styles from './CountTable.module.css';
import type { CountSaid } from './counts.ts';
import { basisWords, figureText, thresholdWords } from './words.ts';

/** The counts of a colony in a table, the last first: the twin of the drawing. */
export function CountTable({ counts }: { readonly counts: readonly CountSaid[] }) {
  const on = useStore().on.value;
  return (
    <Unfold class={styles.twin} title="As a table">
      <div class={styles.wide}>
        <table>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">Counted</th>
              <th scope="col">Found, with limits</th>
              <th scope="col">Your threshold</th>
              <th scope="col">Set aside</th>
            </tr>
          </thead>
          <tbody>
            {counts.toReversed().map(({ entry, figure, thresholds, setAside }) => (
              <tr key={entry.id}>
                <td>{shortDay(entry.day, on)}</td>
                <td>
                  {MITE_METHODS[entry.sample.method]}: {entry.sample.mites} on {basisWords(entry.sample)}
                </td>
                <td>{figureText(figure)}</td>
                <td>{thresholds.map(thresholdWords).join(', ') || '–'}</td>
                <td>{setAside ? `after ${setAside.treatment.entry.active}` : '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Unfold>
  );
}
