import {
  calendarText,
  contradictionText,
  type QueenCalendar,
  type StateCode,
} from '../../graph/calendar/index.ts';
import { dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { ColonyRound } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './ColonyStop.module.css';
import { sortTasks } from './grouping.ts';
import { TaskItem } from './TaskItem.tsx';

/** What stands where the name of a queen would, while none is known to lay. */
function comingWords({ state }: QueenCalendar): string {
  return WITHOUT[state.code] ?? 'a queen on her way';
}

const WITHOUT: Readonly<Partial<Record<StateCode, string>>> = {
  queenless: 'no queen',
  'laying-workers': 'no queen',
  'drone-layer': 'a queen who lays drones only',
  'old-queen': 'the old queen, it seems',
};

/** One stop of the round: the box, who heads it or what is on its way, and what it asks for. */
export function ColonyStop({ round }: { readonly round: ColonyRound }) {
  const { registry, on } = useStore();
  const colony = registry.value.colonies.get(round.colony);
  if (!colony) return null;
  const day = dayNumber(on.value);
  const { slipped, now, shut } = sortTasks(round, day);
  const head = headOn(registry.value, colony, on.value);
  const { calendar } = round;
  return (
    <li class={styles.stop}>
      <div class={styles.head}>
        <ColonyLabel colony={colony} size="large" />
        <p>{head ? <QueenName queen={head} /> : calendar ? comingWords(calendar) : 'no queen known'}</p>
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
      {[...slipped, ...now].map((task) => (
        <TaskItem key={task.uid} task={task} />
      ))}
    </li>
  );
}
