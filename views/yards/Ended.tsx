import { firstDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { isLiving, yardOn } from '../../src/registry/queries.ts';
import type { Colony, Yard } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { LOSS_CAUSES } from '../parts/words.ts';
import styles from './Ended.module.css';

/** Colonies that stood at this yard and are no more, the last ones first. */
export function Ended({ yard }: { readonly yard: Yard }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const ended = [...registry.colonies.values()]
    .flatMap((colony) => (colony.ended && !isLiving(colony, on) ? [{ colony, end: colony.ended }] : []))
    .filter(({ colony, end }) => yardOn(colony, firstDay(end.day)) === yard.id)
    .sort((a, b) => (a.end.day < b.end.day ? 1 : a.end.day > b.end.day ? -1 : byId(a.colony, b.colony)));
  if (ended.length === 0) return null;
  return (
    <section class={styles.ended}>
      <h3>No longer here</h3>
      <ul>
        {ended.map(({ colony, end }) => (
          <li key={colony.id}>
            <ColonyLabel colony={colony} /> <span>{LOSS_CAUSES[end.cause]}</span>
            {end.into && (
              <>
                {' '}
                <ColonyLabel colony={end.into} />
              </>
            )}
            <span class={styles.day}>{dayText(end.day)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function byId(a: Colony, b: Colony): number {
  return a.id < b.id ? -1 : 1;
}
