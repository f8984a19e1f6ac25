import ICAL from 'ical.js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { CalendarEvent } from '../../../graph/calendar/index.ts';
import { writeCalendarFile } from '../../../src/exchange/calendar-file.ts';
import { CalendarRecord, nextCalendar } from '../../../src/exchange/calendar-record.ts';
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
  const text = await writeCalendarFile(events, { name: 'Rounds', now, sequence: 1, cancelled: [] });
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

  it('without tasks is a calendar without events', async () => {
    expect((await readBack([])).events).toEqual([]);
  });
});

/** A keeper's calendar that takes files as RFC 5545 means SEQUENCE (3.8.7.4) and STATUS (3.8.1.11). */
class KeepersCalendar {
  readonly #events = new Map<string, { readonly sequence: number; readonly title: string | undefined }>();
  #record = CalendarRecord.parse({});

  /** The rounds make a file of what is due; the keeper opens it, or leaves it. */
  async file(
    due: readonly CalendarEvent[],
    at: Date,
    { opened = true, on = '2026-05-30', today = on }: { opened?: boolean; on?: string; today?: string } = {},
  ): Promise<string> {
    const writing = { now: at, on: day(on), today: day(today) };
    const { sequence, cancelled, record } = nextCalendar(this.#record, due, writing);
    this.#record = CalendarRecord.parse(JSON.parse(JSON.stringify(record)));
    const text = await writeCalendarFile(due, { name: 'Rounds', now: at, sequence, cancelled });
    if (opened) this.#take(text);
    return text;
  }

  #take(text: string): void {
    for (const event of new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent')) {
      const { uid, sequence, summary } = new ICAL.Event(event);
      if (sequence <= (this.#events.get(uid)?.sequence ?? -1)) continue;
      const cancelled = event.getFirstPropertyValue('status') === 'CANCELLED';
      this.#events.set(uid, { sequence, title: cancelled ? undefined : summary });
    }
  }

  get titles(): readonly string[] {
    return [...this.#events.values()].flatMap(({ title }) => title ?? []);
  }
}

describe('calendar files made one after another', () => {
  const [eggs, wash] = EVENTS as readonly [CalendarEvent, CalendarEvent];

  it('update what the calendar has, also within one minute and with a clock set back', async () => {
    const calendar = new KeepersCalendar();
    await calendar.file([eggs], now);
    for (const [title, at] of [
      ['a second later', new Date(now.getTime() + 1000)],
      ['clock set back', new Date(now.getTime() - 3_600_000)],
    ] as const) {
      await calendar.file([{ ...eggs, title }], at);
      expect(calendar.titles).toEqual([title]);
    }
  });

  it('take out what is settled and leave what is still due', async () => {
    const calendar = new KeepersCalendar();
    await calendar.file([eggs, wash], now);
    const text = await calendar.file([wash], now);
    expect(calendar.titles).toEqual([wash.title]);
    expect(text.match(/STATUS:CANCELLED/g)).toHaveLength(1);
    const taken = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .map((event) => new ICAL.Event(event))
      .find(({ uid }) => uid === eggs.uid);
    expect(taken?.startDate.toString()).toBe('2026-06-10');
  });

  it('take it out also where the file in between was never opened', async () => {
    const calendar = new KeepersCalendar();
    await calendar.file([eggs, wash], now);
    await calendar.file([wash], now, { opened: false });
    await calendar.file([wash], now);
    expect(calendar.titles).toEqual([wash.title]);
  });

  it('bring back what is due again', async () => {
    const calendar = new KeepersCalendar();
    for (const due of [[eggs], [], [eggs]]) await calendar.file(due, now);
    expect(calendar.titles).toEqual([eggs.title]);
  });

  it('forget what was taken out a month after its last day', async () => {
    const calendar = new KeepersCalendar();
    await calendar.file([eggs], now);
    const cancelledOn = async (on: string) =>
      (await calendar.file([], now, { on })).includes('STATUS:CANCELLED');
    expect(await cancelledOn('2026-07-14')).toBe(true);
    expect(await cancelledOn('2026-07-15')).toBe(true);
    expect(await cancelledOn('2026-07-16')).toBe(false);
  });

  it('made while looking at another day take nothing out, and what they bring can be taken out later', async () => {
    const calendar = new KeepersCalendar();
    await calendar.file([eggs], now);
    await calendar.file([wash], now, { on: '2026-03-20', today: '2026-05-30' });
    expect(calendar.titles).toEqual([eggs.title, wash.title]);
    await calendar.file([], now);
    expect(calendar.titles).toEqual([]);
  });
});
