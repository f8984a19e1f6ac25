import { dayNumber, type PlainDay } from '../../src/journal/day.ts';
import type { DayWindow } from '../../src/registry/state.ts';
import { dayInYear, windowText } from './days.ts';
import styles from './WindowBand.module.css';

export interface WindowBandProps {
  /** What happens in the window, such as "Virgin emerges". */
  readonly label: string;
  readonly window: DayWindow;
  /** Its likely middle. */
  readonly likely?: DayWindow | undefined;
  /** The span that the band is drawn on; the same for bands under one another. */
  readonly scale: DayWindow;
  readonly on: PlainDay;
}

/** A window of days drawn to scale, with its likely middle and today; the words beside it say the same. */
export function WindowBand({ label, window, likely, scale, on }: WindowBandProps) {
  const start = dayNumber(scale.first);
  const days = Math.max(1, dayNumber(scale.last) - start + 1);
  const place = (span: DayWindow) => {
    const from = Math.max(0, dayNumber(span.first) - start);
    const to = Math.min(days, dayNumber(span.last) - start + 1);
    return { left: `${(100 * from) / days}%`, width: `${(100 * Math.max(0, to - from)) / days}%` };
  };
  const today = dayNumber(on) - start + 0.5;
  return (
    <div class={styles.band}>
      <p class={styles.words}>
        <span>{label}</span> <span class={styles.when}>{windowText(window, on)}</span>
      </p>
      <div class={styles.scale} aria-hidden="true">
        <div class={styles.window} style={place(window)} />
        {likely && <div class={styles.likely} style={place(likely)} />}
        {today >= 0 && today <= days && (
          <div
            class={styles.today}
            style={{ left: `${(100 * today) / days}%` }}
            title={`Today, ${dayInYear(on, on)}`}
          />
        )}
      </div>
    </div>
  );
}
