import { useMemo, useState } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { sentence } from '../parts/words.ts';
import { CandidateRow } from './CandidateRow.tsx';
import { MeritAxis, MeritKey } from './MeritBar.tsx';
import { meritScale } from './merit-scale.ts';
import type { Candidate } from './ranking.ts';
import type { Choice } from './use-choice.ts';
import styles from './Whom.module.css';
import { STANDING_WORDS, smallNumber } from './words.ts';

/** Rows shown before the rest is asked for. */
const SHOWN = 24;

/** The living laying queens, best first, those that cannot be told apart from the first kept together. */
export function Whom({ choice }: { readonly choice: Choice }) {
  const [all, setAll] = useState(false);
  const { rows, weighed } = choice.ranking;
  const scale = useMemo(() => meritScale(rows), [rows]);
  const shown = all ? rows : rows.slice(0, SHOWN);
  const level = shown.filter(({ standing }) => standing === 'first' || standing === 'close');
  const groups: readonly (readonly [string, string | undefined, readonly Candidate[]])[] = [
    ['level', levelWords(level.length), level],
    [
      'probably',
      STANDING_WORDS['probably-behind'],
      shown.filter(({ standing }) => standing === 'probably-behind'),
    ],
    ['behind', STANDING_WORDS.behind, shown.filter(({ standing }) => standing === 'behind')],
    ['unranked', unrankedWords(weighed), shown.filter(({ standing }) => standing === 'unranked')],
  ];
  return (
    <section class={styles.whom} aria-label="Whom to breed from">
      <div class={styles.axis}>
        <MeritAxis scale={scale} />
      </div>
      {groups.map(
        ([key, words, members]) =>
          members.length > 0 && (
            <div key={key} class={styles[key]}>
              {words && <h2 class={styles.heading}>{words}</h2>}
              <ul>
                {members.map((row) => (
                  <CandidateRow key={row.id} row={row} choice={choice} scale={scale} />
                ))}
              </ul>
            </div>
          ),
      )}
      {rows.length > shown.length && (
        <Button onPress={() => setAll(true)}>Show all {rows.length} queens</Button>
      )}
      <MeritKey />
    </section>
  );
}

function unrankedWords(weighed: boolean): string {
  return weighed ? STANDING_WORDS.unranked : 'Not ranked: every trait is left out';
}

function levelWords(queens: number): string | undefined {
  return queens > 1 ? sentence(`${smallNumber(queens)} whom the records cannot tell apart`) : undefined;
}
