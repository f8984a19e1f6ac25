import { kindTitle } from '../../src/journal/entry.ts';
import type { Colony } from '../../src/registry/state.ts';
import { unmarkedSeenIn } from '../../src/registry/unmarked.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { shownHead } from '../parts/awaited.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { lastEntry, lastStrength, placeOf } from '../parts/colony-facts.ts';
import { relativeDay } from '../parts/days.ts';
import { HeadLine, headWords } from '../parts/HeadLine.tsx';
import { HiveMark } from '../parts/HiveMark.tsx';
import { StrengthBar } from '../parts/StrengthBar.tsx';
import { unmarkedText } from '../parts/unmarked-words.ts';
import { sentence } from '../parts/words.ts';
import styles from './ColonyLine.module.css';

/** A box of its own, or its place among the hives under one roof: walls run from the first to the last. */
export type RoofPlace = 'own' | 'first' | 'middle' | 'last';

export interface ColonyLineProps {
  readonly colony: Colony;
  readonly roof: RoofPlace;
}

/** One colony at its stand. The whole line opens it; the queen's name opens her. */
export function ColonyLine({ colony, roof }: ColonyLineProps) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const last = lastEntry(colony, on);
  const unmarked = unmarkedSeenIn(registry, colony, on);
  const state = shownHead(registry, colony, on);
  return (
    <div class={`${styles.line} ${styles[roof]}`}>
      <HiveMark head={state} entrance={placeOf(colony, on)?.entrance} size={40} />
      <div class={styles.who}>
        <p class={styles.names}>
          <span class={styles.label}>
            <ColonyLabel colony={colony} />
          </span>{' '}
          <span class={styles.queen}>
            <HeadLine colony={colony} registry={registry} on={on} />
          </span>
        </p>
        <p class={styles.state}>{sentence(headWords({ colony, registry, on }))}</p>
        {unmarked && <p class={styles.state}>{unmarkedText(unmarked, on)}</p>}
        {last && (
          <p class={styles.latest}>
            {kindTitle(last.kind)} {relativeDay(last.day, on)}
          </p>
        )}
      </div>
      <StrengthBar strength={lastStrength(colony, on)} on={on} />
    </div>
  );
}
