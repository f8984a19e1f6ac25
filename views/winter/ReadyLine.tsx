import type { VNode } from 'preact';
import { type PlainDay, yearOf } from '../../src/journal/day.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { figureText } from '../mites/words.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { shortDay } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { count } from '../parts/words.ts';
import styles from './Ready.module.css';
import { autumnOf, type Readiness } from './ready.ts';

/** One colony before winter: what the autumn's looks say, and what is still to be looked at. */
export function ReadyLine({ ready }: { readonly ready: Readiness }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  // The heading names the year of the autumn; the days need not.
  const year = `${autumnOf(on)}-12-31` as PlainDay;
  const { colony, bees, stores, mites, queen } = ready;
  const untouched = !bees && !stores && !queen;
  const head = headOn(registry, colony, on);
  const past = autumnOf(on) < yearOf(on);
  const ask = (kind: 'inspection' | 'mites') =>
    past ? <span class={styles.none}>not seen</span> : <Ask colony={colony} kind={kind} />;
  return (
    <tr class={untouched ? styles.untouched : ''}>
      <th scope="row">
        <ColonyLabel colony={colony} /> {head && <QueenName queen={head} />}
      </th>
      <Looks ready={ready} ask={() => ask('inspection')} year={year} />
      <td data-label="Mites">
        {mites ? (
          <>
            <Seen words={figureText(mites.figure)} day={shortDay(mites.entry.day, year)} />
            {mites.setAside && (
              <small class={styles.after}>after {mites.setAside.treatment.entry.active}</small>
            )}
          </>
        ) : (
          ask('mites')
        )}
      </td>
    </tr>
  );
}

interface LooksProps {
  readonly ready: Readiness;
  readonly ask: () => VNode;
  readonly year: PlainDay;
}

/** Bees, stores and queen, each as it was last seen. */
function Looks({ ready: { bees, stores, queen }, ask, year }: LooksProps) {
  return (
    <>
      <td data-label="Bees">
        {bees ? <Seen words={count(bees.value, 'frame')} day={shortDay(bees.day, year)} /> : ask()}
      </td>
      <td data-label="Stores">
        {stores ? <Seen words={count(stores.value, 'frame')} day={shortDay(stores.day, year)} /> : ask()}
      </td>
      <td data-label="Queen">
        {queen ? (
          <Seen words={queen.value === 'seen' ? 'seen' : 'eggs seen'} day={shortDay(queen.day, year)} />
        ) : (
          ask()
        )}
      </td>
    </>
  );
}

function Seen({ words, day }: { readonly words: string; readonly day: string }) {
  return (
    <>
      {words} <small>{day}</small>
    </>
  );
}

/** What nobody has looked at yet: a way to record it on the screen, a line to write on when printed. */
function Ask({ colony, kind }: { readonly colony: Colony; readonly kind: 'inspection' | 'mites' }) {
  return (
    <a class={styles.ask} href={routes.record(colony.id, kind)}>
      <span>{kind === 'mites' ? 'to count' : 'to look at'}</span>
    </a>
  );
}
