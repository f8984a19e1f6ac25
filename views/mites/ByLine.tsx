import { useMemo } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { LineMark } from '../lines/LineMark.tsx';
import styles from './ByLine.module.css';
import { mitesByLine, type RoundByLine } from './by-line.ts';
import { cautionWords, ratesWords, ratioWords, roundWords } from './by-line-words.ts';

/** Whether the lines differ in mites: each beside all other colonies of the last round of counts. */
export function ByLine() {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { byId } = lineFacts(registry, on);
  const rounds = useMemo(
    () => mitesByLine(registry, on, (queen) => byId.get(queen as QueenId)?.line),
    [registry, on, byId],
  );
  if (rounds.length === 0) return null;
  return (
    <section class={styles.byLine} aria-labelledby="by-line">
      <h2 id="by-line">Line beside line</h2>
      {rounds.map((round) => (
        <Round key={round.method} round={round} />
      ))}
    </section>
  );
}

function Round({ round }: { readonly round: RoundByLine }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { lines } = lineFacts(registry, on);
  return (
    <>
      <p>{roundWords(round, on)}</p>
      <ul class={styles.lines}>
        {round.lines.map((each) => {
          const line = lines.find(({ line }) => line === each.line);
          return (
            <li key={each.line}>
              <span class={styles.name}>
                {line && <LineMark letter={line.letter} hue={line.hue} />}
                <a href={routes.queen(each.line)}>{line?.title ?? 'a line not in these records'}</a>
              </span>
              <span class={styles.says}>
                <strong>{ratioWords(each)}</strong>
                <span class={styles.rates}>{ratesWords(each)}</span>
              </span>
            </li>
          );
        })}
      </ul>
      <p class={styles.key}>{cautionWords(round)}</p>
    </>
  );
}
