import ICAL from 'ical.js';
import { afterEach, describe, expect, it } from 'vitest';
import { writeCalendarFile } from '../../../src/exchange/calendar-file.ts';
import { dayNumber } from '../../../src/journal/day.ts';
import { day } from '../../helpers/story.ts';

/** Read back by ical.js, a general RFC 5545 parser. */
function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
}

const EGGS = {
  uid: 'colony:look-for-eggs:key',
  day: dayNumber(day('2026-03-28')),
  lastDay: dayNumber(day('2026-03-30')),
  title: 'Hive 3: look for eggs; or, else',
  description: 'A long text, with commas; semicolons\nand lines, '.repeat(5),
};
const zone = process.env.TZ;

afterEach(() => {
  process.env.TZ = zone;
});

describe('a calendar file', () => {
  it('is read back by a general parser as whole days, the last one included', () => {
    for (const name of ['UTC', 'Europe/Helsinki', 'America/Anchorage', 'Pacific/Kiritimati']) {
      process.env.TZ = name;
      const [event] = readBack(
        writeCalendarFile([EGGS], { name: 'Rounds', now: new Date('2026-03-20T10:00:00Z') }),
      );
      expect([name, event?.startDate.toString(), event?.endDate.toString()]).toEqual([
        name,
        '2026-03-28',
        '2026-03-31',
      ]);
      expect(event?.startDate.isDate).toBe(true);
    }
  });

  it('keeps every character of title and text through folding and escaping', () => {
    const [event] = readBack(
      writeCalendarFile([EGGS], { name: 'Rounds', now: new Date('2026-03-20T10:00:00Z') }),
    );
    expect(event?.summary).toBe(EGGS.title);
    expect(event?.description).toBe(EGGS.description);
  });

  it('made again keeps the uid and raises the sequence, so that a calendar updates what it has', () => {
    const read = (now: string) =>
      readBack(writeCalendarFile([EGGS], { name: 'Rounds', now: new Date(now) }))[0];
    const first = read('2026-03-20T10:00:00Z');
    const second = read('2026-03-21T10:00:00Z');
    expect(second?.uid).toBe(first?.uid);
    expect(second?.sequence).toBeGreaterThan(first?.sequence ?? 0);
  });

  it('has lines of at most 75 octets, ended by CR and LF, as RFC 5545 section 3.1 asks', () => {
    const text = writeCalendarFile([EGGS], { name: 'Rounds', now: new Date('2026-03-20T10:00:00Z') });
    const lines = text.split('\r\n');
    expect(lines.join('\n')).not.toContain('\r');
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  });
});
