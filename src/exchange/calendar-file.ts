import type { CalendarEvent } from '../../graph/calendar/index.ts';

/**
 * Writes the tasks of the rounds as a calendar file (iCalendar, RFC 5545). Dates are days without hour or zone
 * (VALUE=DATE); DTEND is the day after the last one, as the standard wants it. The uid of an event stays the same from
 * file to file and SEQUENCE rises with the time of writing, so a calendar that takes a new file updates its entries.
 */
export interface CalendarFileOptions {
  readonly name: string;
  /** When the file is written: its DTSTAMP. */
  readonly now: Date;
}

const MILLISECONDS_A_DAY = 86_400_000;

/** The text of the file. The writer is loaded only when a keeper asks for a file. */
export async function writeCalendarFile(
  events: readonly CalendarEvent[],
  { name, now }: CalendarFileOptions,
): Promise<string> {
  const { ICalCalendar } = await import('ical-generator');
  const calendar = new ICalCalendar({
    name,
    prodId: { company: 'Damline', product: 'Rounds', language: 'EN' },
  });
  const sequence = Math.floor(now.getTime() / 60_000);
  for (const event of events) {
    calendar.createEvent({
      id: event.uid,
      sequence,
      stamp: now,
      allDay: true,
      start: midnight(event.day),
      end: midnight(event.lastDay + 1),
      summary: event.title,
      description: event.description,
    });
  }
  return calendar.toString();
}

/** The writer takes the day of a date in UTC. */
function midnight(day: number): Date {
  return new Date(day * MILLISECONDS_A_DAY);
}
