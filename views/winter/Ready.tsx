import { yearOf } from '../../src/journal/day.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { monthName } from '../parts/days.ts';
import { count, winterText } from '../parts/words.ts';
import styles from './Ready.module.css';
import { ReadyLine } from './ReadyLine.tsx';
import { autumnOf, missingOf, readiness } from './ready.ts';

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
                <ReadyLine key={each.colony.id} ready={each} />
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </>
  );
}
