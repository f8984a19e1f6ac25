import { QueenName } from '../parts/QueenName.tsx';
import styles from './Order.module.css';
import type { Choice } from './use-choice.ts';

const SHOWN = 6;

/** The order of the list in a line, in sight while weights are moved. */
export function Order({ choice, lead }: { readonly choice: Choice; readonly lead: string }) {
  const { rows, weighed } = choice.ranking;
  const ranked = rows.filter(({ standing }) => standing !== 'unranked').slice(0, SHOWN);
  return (
    <div class={styles.order} aria-live="polite">
      {weighed && ranked.length > 1 && (
        <ol aria-label="Best first">
          {ranked.map((row, at) => (
            <li key={row.id}>
              <span class={styles.place}>{at + 1}</span>
              <QueenName queen={row.queen} plain hideMark />
            </li>
          ))}
        </ol>
      )}
      <p>{lead}</p>
    </div>
  );
}
