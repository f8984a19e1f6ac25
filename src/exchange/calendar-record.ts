import * as z from 'zod';
import type { CalendarEvent } from '../../graph/calendar/index.ts';

/**
 * What the calendar files of this device have put into a calendar, so that the next one can take out what is settled.
 * A calendar keeps an event until a file cancels it; a task that is merely missing from a newer file stays.
 */
export const CalendarRecord = z.object({
  /** SEQUENCE of the last file; the next one is higher, however short the time and whatever the clock. */
  sequence: z.number().int().nonnegative().default(0),
  /** The events written, due or cancelled; days since 1970-01-01. */
  events: z
    .array(z.object({ uid: z.string(), day: z.number().int(), lastDay: z.number().int(), title: z.string() }))
    .default([]),
});
export type CalendarRecord = z.infer<typeof CalendarRecord>;
export type WrittenEvent = CalendarRecord['events'][number];

/** A keeper may not take in every file: a cancelled event is cancelled again until so long after its last day (ours). */
const CANCELLED_DAYS = 30;

export interface NextCalendar {
  readonly sequence: number;
  /** Written earlier and no longer due. */
  readonly cancelled: readonly WrittenEvent[];
  /** What to remember once the file is handed out. */
  readonly record: CalendarRecord;
}

export interface Writing {
  readonly now: Date;
  /** The day that the rounds speak of, and today, as days since 1970-01-01. */
  readonly on: number;
  readonly today: number;
}

/**
 * The file that follows those on record: its sequence, and what it cancels. The rounds of another day than today cancel
 * nothing: what is due today may not be due on that day.
 */
export function nextCalendar(
  before: CalendarRecord,
  due: readonly CalendarEvent[],
  { now, on, today }: Writing,
): NextCalendar {
  const uids = new Set(due.map(({ uid }) => uid));
  const notDue = before.events.filter(({ uid }) => !uids.has(uid));
  const sequence = Math.max(before.sequence + 1, Math.floor(now.getTime() / 60_000));
  const written = due.map(({ uid, day, lastDay, title }) => ({ uid, day, lastDay, title }));
  const kept = notDue.filter(({ lastDay }) => lastDay + CANCELLED_DAYS >= today);
  return {
    sequence,
    cancelled: on === today ? notDue : [],
    record: { sequence, events: [...written, ...kept] },
  };
}
