import { useMemo } from 'preact/hooks';
import { calendarText, contradictionText, stateText } from '../../graph/calendar/index.ts';
import { colonyRound, yearSettings } from '../../src/registry/rounds.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { TaskItem } from '../rounds/TaskItem.tsx';
import { CalendarBands } from './CalendarBands.tsx';
import styles from './Next.module.css';

/** Days ahead of which this page speaks. */
const HORIZON_DAYS = 21;

/** What is expected next in this colony: the queen's calendar while one runs, and what to look for or do. */
export function Next({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const { yearSpans, washEveryDays } = store.settings.value;
  const { calendar, tasks } = useMemo(
    () =>
      colonyRound(registry, colony, {
        on,
        horizonDays: HORIZON_DAYS,
        year: yearSettings(yearSpans, washEveryDays, on),
      }),
    [registry, colony, on, yearSpans, washEveryDays],
  );
  if (!calendar && tasks.length === 0) return null;
  return (
    <section class={styles.next} aria-labelledby="next">
      <h2 id="next">Next</h2>
      {calendar && (
        <>
          <p class={styles.state}>{stateText(calendar.state)}</p>
          <CalendarBands calendar={calendar} />
          {calendarText(calendar) !== stateText(calendar.state) && <p>{calendarText(calendar)}</p>}
          {calendar.contradictions.map((each) => (
            <p key={`${each.code} ${each.day}`} class={styles.contradiction}>
              {contradictionText(each)}
            </p>
          ))}
        </>
      )}
      {tasks.length > 0 && (
        <div>
          {tasks.map((task) => (
            <TaskItem key={task.uid} task={task} />
          ))}
        </div>
      )}
    </section>
  );
}
