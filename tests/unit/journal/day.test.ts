import { describe, expect, it } from 'vitest';
import {
  addDays,
  dayNumber,
  dayOfNumber,
  daysBetween,
  firstDay,
  lastDay,
  localDay,
  PlainDay,
  RoughDay,
} from '../../../src/journal/day.ts';

const plain = (text: string) => PlainDay.parse(text);
const rough = (text: string) => RoughDay.parse(text);

describe('days', () => {
  it.each(['2024-02-29', '1999-12-31'])('%s is a day', (text) => {
    expect(PlainDay.safeParse(text).success).toBe(true);
    expect(RoughDay.safeParse(text).success).toBe(true);
  });

  it.each(['2023-02-29', '2024-13-01', '2024-00-10', '24-05-01', '2024-5-1', '', '2024-05-01T00:00'])(
    '%j is none',
    (text) => {
      expect(PlainDay.safeParse(text).success).toBe(false);
      expect(RoughDay.safeParse(text).success).toBe(false);
    },
  );

  it('may be a month or a year where no more is known, and span it', () => {
    expect(firstDay(rough('2024'))).toBe('2024-01-01');
    expect(lastDay(rough('2024'))).toBe('2024-12-31');
    expect(firstDay(rough('2024-02'))).toBe('2024-02-01');
    expect(lastDay(rough('2024-02'))).toBe('2024-02-29');
    expect(RoughDay.safeParse('2024-13').success).toBe(false);
    expect(PlainDay.safeParse('2024-02').success).toBe(false);
  });

  it('are counted without time zone or daylight saving', () => {
    expect(daysBetween(plain('2024-03-30'), plain('2024-04-01'))).toBe(2);
    expect(addDays(plain('2024-12-31'), 1)).toBe('2025-01-01');
    expect(dayNumber(plain('1970-01-01'))).toBe(0);
    for (const text of ['2024-02-29', '1969-12-31']) expect(dayOfNumber(dayNumber(plain(text)))).toBe(text);
  });

  it('on the clock are those of the wall, also just before midnight', () => {
    expect(localDay(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
    expect(localDay(new Date(2026, 0, 5, 0, 0))).toBe('2026-01-05');
  });
});
