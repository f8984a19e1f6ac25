import ICAL from 'ical.js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { CalendarEvent } from '../../../graph/calendar/index.ts';
import { writeCalendarFile } from '../../../src/exchange/calendar-file.ts';
import { dayNumber, type PlainDay } from '../../../src/journal/day.ts';

const day = (text: string) => dayNumber(text as PlainDay);
const now = new Date('2026-05-30T08:15:00Z');

const EVENTS: readonly CalendarEvent[] = [
  {
    uid: 'eggs-due/box-3',
    day: day('2026-06-10'),
    lastDay: day('2026-06-14'),
    title: 'Box 3: look for eggs; "Birch", perhaps',
    description:
      'Between 10 and 14 June, or later.\nLeave shut until then; a virgin flies. Grüne Königin – 100 % ruhig, so bleibt sie es.',
  },
  {
    uid: 'wash/box-4',
    day: day('2026-03-29'),
    lastDay: day('2026-03-29'),
    title: 'Box 4: wash',
    description: '',
  },
];

/** The events as a general parser of RFC 5545 reads them. */
async function readBack(events: readonly CalendarEvent[]) {
  const text = await writeCalendarFile(events, { name: 'Rounds', now });
  const component = new ICAL.Component(ICAL.parse(text));
  return {
    text,
    component,
    events: component.getAllSubcomponents('vevent').map((each) => new ICAL.Event(each)),
  };
}

describe('a calendar file', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('is read back by a general parser with titles and texts as they were', async () => {
    const { events, component } = await readBack(EVENTS);
    expect(events.map(({ uid }) => uid)).toEqual(['eggs-due/box-3', 'wash/box-4']);
    expect(events.map(({ summary }) => summary)).toEqual(EVENTS.map(({ title }) => title));
    expect(events[0]?.description).toBe(EVENTS[0]?.description);
    expect(component.getFirstPropertyValue('version')).toBe('2.0');
    expect(component.getFirstPropertyValue('prodid')).toContain('Damline');
  });

  it.each(['UTC', 'America/Los_Angeles', 'Pacific/Auckland', 'Europe/Berlin', 'Pacific/Kiritimati'])(
    'has whole days that do not shift in %s, not even on the night the clock changes',
    async (zone) => {
      vi.stubEnv('TZ', zone);
      expect(new Date(2026, 5, 10).getTimezoneOffset() === 0).toBe(zone === 'UTC');
      const { events, text } = await readBack(EVENTS);
      expect(events.map(({ startDate }) => [startDate.isDate, startDate.toString()])).toEqual([
        [true, '2026-06-10'],
        [true, '2026-03-29'],
      ]);
      // RFC 5545, section 3.6.1: DTEND is the non-inclusive end of the event.
      expect(events.map(({ endDate }) => endDate.toString())).toEqual(['2026-06-15', '2026-03-30']);
      expect(text).toContain('DTSTART;VALUE=DATE:20260610');
    },
  );

  it('is made of lines of at most 75 octets that end in CRLF (RFC 5545, section 3.1)', async () => {
    const { text } = await readBack(EVENTS);
    const lines = text.split('\r\n');
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  });

  it('made again keeps the uids and has a later sequence, so that entries are updated', async () => {
    const first = await readBack(EVENTS);
    const text = await writeCalendarFile(EVENTS, {
      name: 'Rounds',
      now: new Date(now.getTime() + 3_600_000),
    });
    const again = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .map((each) => new ICAL.Event(each));
    expect(again.map(({ uid }) => uid)).toEqual(first.events.map(({ uid }) => uid));
    again.forEach((event, index) => {
      expect(event.sequence).toBeGreaterThan(first.events[index]!.sequence);
    });
  });

  it('without tasks is a calendar without events', async () => {
    expect((await readBack([])).events).toEqual([]);
  });
});
