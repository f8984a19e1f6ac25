import type { EventName, QueenCalendar } from '../../graph/calendar/index.ts';
import { addDays, dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import { useStore } from '../app/store-context.ts';
import { WindowBand } from '../parts/WindowBand.tsx';
import styles from './CalendarBands.module.css';

/** The events that a keeper can see or must heed, in order. */
const SHOWN: readonly (readonly [EventName, string])[] = [
  ['capped', 'Cells capped'],
  ['emerged', 'Virgin emerges'],
  ['mated', 'She flies to mate'],
  ['laying', 'First eggs'],
  ['cappedBrood', 'Her brood capped'],
  ['allHers', 'All workers hers'],
];

/** Events over by so many days are history and not drawn. */
const PAST_DAYS = 2;
const FAR_DAYS = 60;

/** The windows of a queen's calendar under one another on one scale, from today to the last of them. */
export function CalendarBands({ calendar }: { readonly calendar: QueenCalendar }) {
  const on = useStore().on.value;
  const today = dayNumber(on);
  const coming = SHOWN.flatMap(([event, label]) => {
    const window = calendar.windows[event];
    const shown = window && window.latest >= today - PAST_DAYS && window.earliest <= today + FAR_DAYS;
    return shown ? [{ event, label, window }] : [];
  });
  const last = coming.at(-1);
  if (!last) return null;
  const first = Math.min(today, ...coming.map(({ window }) => window.earliest));
  const scale = {
    first: addDays(dayOfNumber(Math.max(first, today - 14)), -1),
    last: dayOfNumber(last.window.latest + 1),
  };
  return (
    <div class={styles.bands}>
      {coming.map(({ event, label, window }) => (
        <WindowBand
          key={event}
          label={label}
          window={{ first: dayOfNumber(window.earliest), last: dayOfNumber(window.latest) }}
          likely={{ first: dayOfNumber(window.likely), last: dayOfNumber(window.likely) }}
          scale={scale}
          on={on}
        />
      ))}
    </div>
  );
}
