import { taskTitle } from '../../graph/calendar/index.ts';
import { dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import type { YardRound as Round } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { windowText } from '../parts/days.ts';
import { ColonyStop } from './ColonyStop.tsx';
import { asksWhoSheIs, sortTasks } from './grouping.ts';
import styles from './YardRound.module.css';

/** One yard of the round: the boxes that ask for something, those that stay shut, and what comes. */
export function YardRound({ round }: { readonly round: Round }) {
  const { registry, on } = useStore();
  const day = dayNumber(on.value);
  const yard = round.yard && registry.value.yards.get(round.yard);
  const stops = round.colonies.filter((each) => {
    const { now, slipped } = sortTasks(each, day);
    return now.length + slipped.length > 0 || asksWhoSheIs(registry.value, each, on.value);
  });
  const shut = round.colonies.filter((each) => !stops.includes(each) && sortTasks(each, day).shut);
  const coming = round.colonies
    .flatMap((each) => sortTasks(each, day).coming.map((task) => ({ colony: each.colony, task })))
    .sort((a, b) => a.task.from - b.task.from || a.task.to - b.task.to);
  const name = yard?.name ?? 'Without a yard';
  return (
    <section class={styles.yard} aria-label={name}>
      <h2>{name}</h2>
      {stops.length === 0 && <p class={styles.quiet}>Nothing asks to be looked at here today.</p>}
      <ul>
        {stops.map((each) => (
          <ColonyStop key={each.colony} round={each} />
        ))}
      </ul>
      {shut.length > 0 && (
        <div class={styles.group}>
          <h3>Leave shut</h3>
          <ul>
            {shut.map((each) => {
              const closed = sortTasks(each, day).shut;
              return (
                <li key={each.colony} class={styles.line}>
                  <ColonyLabel colony={each.colony} />
                  <span>
                    {closed &&
                      windowText({ first: dayOfNumber(closed.from), last: dayOfNumber(closed.to) }, on.value)}
                  </span>
                </li>
              );
            })}
          </ul>
        </div>
      )}
      {coming.length > 0 && (
        <details class={styles.group}>
          <summary>
            <h3>Coming ({coming.length})</h3>
          </summary>
          <ul>
            {coming.map(({ colony, task }) => (
              <li key={task.uid} class={styles.line}>
                <ColonyLabel colony={colony} />
                <span>{taskTitle(task)}</span>
                <span class={styles.when}>
                  {windowText({ first: dayOfNumber(task.from), last: dayOfNumber(task.to) }, on.value)}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
