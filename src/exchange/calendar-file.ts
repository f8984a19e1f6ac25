import type { CalendarEvent } from '../../graph/calendar/index.ts';
import type { WrittenEvent } from './calendar-record.ts';

/**
 * Writes the tasks of the rounds as a calendar file (iCalendar, RFC 5545). Dates are days without hour or zone
 * (VALUE=DATE); DTEND is the day after the last one, as the standard wants it. The uid of an event stays the same from
 * file to file and SEQUENCE rises, so a calendar that takes a new file updates its entries; what is no longer due
 * comes once more as STATUS:CANCELLED, which takes it out.
 */
export interface CalendarFileOptions {
  readonly name: string;
  /** When the file is written: its DTSTAMP. */
  readonly now: Date;
  readonly sequence: number;
  /** Events of earlier files to take out. */
  readonly cancelled: readonly WrittenEvent[];
}

const MILLISECONDS_A_DAY = 86_400_000;

/** The text of the file. The writer is loaded only when a keeper asks for a file. */
export async function writeCalendarFile(
  events: readonly CalendarEvent[],
  { name, now, sequence, cancelled }: CalendarFileOptions,
): Promise<string> {
  const { ICalCalendar, ICalEventStatus } = await import('ical-generator');
  const calendar = new ICalCalendar({
    name,
    prodId: { company: 'Damline', product: 'Rounds', language: 'EN' },
  });
  const write = (event: WrittenEvent, status: (typeof ICalEventStatus)[keyof typeof ICalEventStatus]) =>
    calendar.createEvent({
      id: event.uid,
      sequence,
      stamp: now,
      status,
      allDay: true,
      start: midnight(event.day),
      end: midnight(event.lastDay + 1),
      summary: event.title,
    });
  for (const event of events) write(event, ICalEventStatus.CONFIRMED).description(event.description);
  for (const event of cancelled) write(event, ICalEventStatus.CANCELLED);
  return calendar.toString();
}

/** The writer takes the day of a date in UTC. */
function midnight(day: number): Date {
  return new Date(day * MILLISECONDS_A_DAY);
}
