import { calendarText, contradictionText, type QueenCalendar } from '../../graph/calendar/index.ts';
import { dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { ColonyRound } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { NOBODY_COMES } from '../parts/awaited.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { UnmarkedAsk } from '../parts/UnmarkedAsk.tsx';
import styles from './ColonyStop.module.css';
import { sortTasks } from './grouping.ts';
import { TaskItem } from './TaskItem.tsx';

/** What stands where the name of a queen would, while none is known to lay; nothing where the sentence below tells it. */
function withoutHead(calendar: QueenCalendar | undefined): string | undefined {
  if (!calendar) return 'no queen known';
  return NOBODY_COMES.has(calendar.state.code) ? undefined : 'a queen on her way';
}

/** One stop of the round: the box, who heads it or what is on its way, and what it asks for. */
export function ColonyStop({ round }: { readonly round: ColonyRound }) {
  const { registry, on } = useStore();
  const colony = registry.value.colonies.get(round.colony);
  if (!colony) return null;
  const day = dayNumber(on.value);
  const { slipped, now, shut } = sortTasks(round, day);
  const head = headOn(registry.value, colony, on.value);
  const { calendar } = round;
  const headline = head ? <QueenName queen={head} /> : withoutHead(calendar);
  return (
    <li class={styles.stop}>
      <div class={styles.head}>
        <ColonyLabel colony={colony} size="large" />
        {headline && <p>{headline}</p>}
      </div>
      {shut && (
        <p class={styles.shut}>
          <b>Leave shut</b> until {dayInYear(dayOfNumber(shut.to), on.value)}
        </p>
      )}
      {calendar && !head && <p class={styles.story}>{calendarText(calendar)}</p>}
      {calendar?.contradictions.map((each) => (
        <p key={`${each.code} ${each.day}`} class={styles.puzzle}>
          {contradictionText(each)}
        </p>
      ))}
      <UnmarkedAsk colony={colony} />
      {[...slipped, ...now].map((task) => (
        <TaskItem key={task.uid} task={task} />
      ))}
    </li>
  );
}
