import { useRegistry } from '../app/store-context.ts';
import { yardsInOrder } from '../parts/colony-facts.ts';
import { shareOf, type WinterOutcome, wintersKnown } from './outcomes.ts';
import { Squares } from './Squares.tsx';
import { shareWords } from './words.ts';
import styles from './YardGrid.module.css';

/** Winters shown, counted back from the last. */
const MOST_WINTERS = 6;

/** Yard by winter: a square for each colony that went in, filled if it came out, with the figures. */
export function YardGrid({ outcomes }: { readonly outcomes: readonly WinterOutcome[] }) {
  const registry = useRegistry();
  const winters = wintersKnown(outcomes).slice(0, MOST_WINTERS).toReversed();
  const yards = yardsInOrder(registry).filter(({ id }) => outcomes.some(({ yard }) => yard === id));
  return (
    <section class={styles.grid} aria-labelledby="by-yard">
      <h2 id="by-yard">Yard by winter</h2>
      <div class={styles.wide}>
        <table>
          <thead>
            <tr>
              <td />
              {winters.map((winter) => (
                <th key={winter} scope="col">
                  {String(winter - 1).slice(2)}/{String(winter).slice(2)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {yards.map((yard) => (
              <tr key={yard.id}>
                <th scope="row">{yard.name}</th>
                {winters.map((winter) => {
                  const share = shareOf(
                    outcomes.filter((each) => each.yard === yard.id && each.winter === winter),
                  );
                  return (
                    <td key={winter}>
                      <Squares share={share} />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class={styles.key}>
        A square for each colony that went into the winter, filled if it came out; with a stroke, lost to an
        animal, the weather or a sale. All winters: {shareWords(shareOf(outcomes))}.
      </p>
    </section>
  );
}
