import ical from 'ical-generator';
import type { CalendarEvent } from '../../graph/calendar/index.ts';

const MILLISECONDS_A_DAY = 86_400_000;

export interface CalendarFileOptions {
  /** Name of the calendar, as calendar programs show it. */
  readonly name: string;
  /** When the file was made: the DTSTAMP and SEQUENCE of every event. */
  readonly now: Date;
}

/**
 * Tasks as an iCalendar file (RFC 5545). Events are whole days (VALUE=DATE) without hour or zone, so that no clock
 * change moves them; DTEND is the day after the last, as section 3.6.1 has it. The uid of a task never changes, and
 * the sequence rises with time, so that a file made again updates the events of the one before.
 */
export function writeCalendarFile(
  events: readonly CalendarEvent[],
  { name, now }: CalendarFileOptions,
): string {
  const calendar = ical({ name, prodId: { company: 'Damline', product: 'Damline rounds', language: 'EN' } });
  const sequence = Math.floor(now.getTime() / 60_000);
  for (const { uid, day, lastDay, title, description } of events) {
    calendar.createEvent({
      id: `${uid}@damline.invalid`,
      sequence,
      stamp: now,
      allDay: true,
      start: new Date(day * MILLISECONDS_A_DAY),
      end: new Date((lastDay + 1) * MILLISECONDS_A_DAY),
      summary: title,
      description,
    });
  }
  return calendar.toString();
}
