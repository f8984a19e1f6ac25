import { yearOf } from '../../src/journal/day.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { figureText } from '../mites/words.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { monthName, shortDay } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { count, winterText } from '../parts/words.ts';
import styles from './Ready.module.css';
import { autumnOf, missingOf, type Readiness, readiness } from './ready.ts';

/** Before winter: for each colony its strength, stores, mites and queen as the autumn's looks say; what is missing is asked. */
export function Ready() {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const settings = store.settings.value;
  const yards = readiness(registry, on, settings);
  const all = yards.flatMap(({ colonies }) => colonies);
  const open = all.filter((each) => missingOf(each).length > 0);
  const autumn = autumnOf(on);
  const { from } = settings.yearSpans.autumnPreparation;
  const past = autumn < yearOf(on);
  return (
    <>
      <p class={styles.lead}>
        {past
          ? `As it was written down in the autumn of ${autumn}, before ${winterText(autumn + 1)}. The rounds ask for the next from ${Number(from.slice(3))} ${monthName(Number(from.slice(0, 2)))}.`
          : `Before ${winterText(autumn + 1)}: ${open.length === 0 ? 'everything has been looked at' : `${count(open.length, 'colony is', 'colonies are')} not looked through yet`}. Every look from August on counts.`}
      </p>
      {yards.map(({ yard, colonies }) => (
        <section key={yard.id} class={styles.yard} aria-label={yard.name}>
          <table>
            <caption>{yard.name}</caption>
            <thead>
              <tr>
                <th scope="col">Colony</th>
                <th scope="col">Bees</th>
                <th scope="col">Stores</th>
                <th scope="col">Queen</th>
                <th scope="col">Mites</th>
              </tr>
            </thead>
            <tbody>
              {colonies.map((each) => (
                <Line key={each.colony.id} ready={each} />
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </>
  );
}

function Line({ ready }: { readonly ready: Readiness }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  // The heading names the year of the autumn; the days need not.
  const year = `${autumnOf(on)}-12-31` as typeof on;
  const { colony, bees, stores, mites, queen } = ready;
  const head = headOn(registry, colony, on);
  const past = autumnOf(on) < yearOf(on);
  const ask = (kind: 'inspection' | 'mites') =>
    past ? <span class={styles.none}>not seen</span> : <Ask colony={colony} kind={kind} />;
  return (
    <tr>
      <th scope="row">
        <ColonyLabel colony={colony} /> {head && <QueenName queen={head} />}
      </th>
      <td data-label="Bees">
        {bees ? (
          <Seen words={count(bees.value, 'frame')} day={shortDay(bees.day, year)} />
        ) : (
          ask('inspection')
        )}
      </td>
      <td data-label="Stores">
        {stores ? (
          <Seen words={count(stores.value, 'frame')} day={shortDay(stores.day, year)} />
        ) : (
          ask('inspection')
        )}
      </td>
      <td data-label="Queen">
        {queen ? (
          <Seen words={queen.value === 'seen' ? 'seen' : 'eggs seen'} day={shortDay(queen.day, year)} />
        ) : (
          ask('inspection')
        )}
      </td>
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
