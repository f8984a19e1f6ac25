import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import type { Life } from '../lines/lives.ts';
import { fateText, sinceText, wintersText } from '../lines/words.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { ShareInterval } from '../parts/ShareInterval.tsx';
import { countsSentence, daughterCounts, daughtersOf } from './daughter-counts.ts';
import queenStyles from './Queen.module.css';

/** Her daughters: how many came to lay, how they wintered, and each of them. */
export function Daughters({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { byId } = lineFacts(registry, on);
  const daughters = daughtersOf(byId, queen.id);
  const counts = daughterCounts(registry, daughters, on);
  const { layingShare, wintersWentIn, wintersCameOut, probable } = counts;
  return (
    <section class={`${queenStyles.section} ${queenStyles.daughters}`} aria-labelledby="daughters">
      <h2 id="daughters">Her daughters</h2>
      {daughters.length === 0 ? (
        <p>None on record. A split or a graft of her eggs puts the first one here.</p>
      ) : (
        <>
          <p>
            {countsSentence(counts)}
            {probable > 0 && ` Of ${probable} she is only probably the dam.`}
            {wintersWentIn > 0 &&
              ` Of ${wintersWentIn} ${wintersWentIn === 1 ? 'winter' : 'winters'} they went into, they came out of ${wintersCameOut}.`}
          </p>
          {layingShare && (
            <ShareInterval label="Came to lay" share={{ ...layingShare, mean: layingShare.value }} />
          )}
          <ul class={queenStyles.rows}>
            {daughters.map((life) => (
              <li key={life.id}>
                <QueenName queen={life.id} />
                <span class={queenStyles.aside}>{aboutHer(life)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function aboutHer(life: Life): string {
  const winters = life.winters.length > 0 ? `; ${wintersText(life.winters)}` : '';
  return `${sinceText(life)}; ${fateText(life)}${winters}`;
}
