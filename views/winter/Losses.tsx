import { LineMark } from '../lines/LineMark.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { LOSS_CAUSES, sentence } from '../parts/words.ts';
import styles from './Losses.module.css';
import { useLineOf } from './line-of.ts';
import { lossesByCause, type WinterOutcome } from './outcomes.ts';

/** What the others died of, the most frequent cause first, and who headed them. */
export function Losses({ outcomes }: { readonly outcomes: readonly WinterOutcome[] }) {
  const lineOf = useLineOf();
  const causes = lossesByCause(outcomes);
  return (
    <section class={styles.losses} aria-labelledby="losses">
      <h2 id="losses">Losses</h2>
      {causes.length === 0 && <p>None by the records.</p>}
      <dl>
        {causes.map(({ cause, lost }) => (
          <div key={cause} class={styles.cause}>
            <dt>
              {sentence(LOSS_CAUSES[cause as keyof typeof LOSS_CAUSES] ?? cause)} <b>{lost.length}</b>
            </dt>
            <dd>
              <ul>
                {lost.map(({ colony, head }) => {
                  const line = lineOf(head);
                  return (
                    <li key={colony.id}>
                      <ColonyLabel colony={colony} /> {head ? <QueenName queen={head} /> : 'nobody known'}
                      {line && (
                        <span class={styles.line}>
                          <LineMark letter={line.letter} hue={line.hue} />
                        </span>
                      )}
                    </li>
                  );
                })}
              </ul>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
