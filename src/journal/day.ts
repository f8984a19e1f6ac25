import './schema-mode.ts';
import * as z from 'zod';

/**
 * Days are calendar days without hour or time zone, written as ISO 8601. This is the one file that reads and
 * reckons with them. A rough day may be a month (2024-05) or a year (2024) where the keeper knows no better.
 */

const MILLISECONDS_A_DAY = 86_400_000;
const PLAIN = /^\d{4}-\d{2}-\d{2}$/;
const ROUGH = /^\d{4}(-\d{2}(-\d{2})?)?$/;

function isRealDate(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
}

function isRealRoughDay(text: string): boolean {
  if (!ROUGH.test(text)) return false;
  return isRealDate(`${text}-01-01`.slice(0, Math.max(10, text.length)));
}

/** A day known to the day: 2026-05-14. Every plain day is also a rough day. */
export const PlainDay = z
  .string()
  .refine((text) => PLAIN.test(text) && isRealDate(text), 'a day of the calendar, written 2026-05-14')
  .brand<'RoughDay'>()
  .brand<'PlainDay'>();
export type PlainDay = z.infer<typeof PlainDay>;

/** A day, a month or a year: 2026-05-14, 2026-05 or 2026. */
export const RoughDay = z
  .string()
  .refine(isRealRoughDay, 'a day, a month or a year, written 2026-05-14, 2026-05 or 2026')
  .brand<'RoughDay'>();
export type RoughDay = z.infer<typeof RoughDay>;

/** Whole days since 1970-01-01. The engine reckons in these. */
export function dayNumber(day: PlainDay): number {
  return Date.parse(`${day}T00:00:00Z`) / MILLISECONDS_A_DAY;
}

/** The calendar day of a day number. */
export function dayOfNumber(number: number): PlainDay {
  return new Date(number * MILLISECONDS_A_DAY).toISOString().slice(0, 10) as PlainDay;
}

/** The day so many days later (or earlier, when negative). */
export function addDays(day: PlainDay, days: number): PlainDay {
  return dayOfNumber(dayNumber(day) + days);
}

/** Days from the first to the second; negative when the second is earlier. */
export function daysBetween(from: PlainDay, to: PlainDay): number {
  return dayNumber(to) - dayNumber(from);
}

/** The first day a rough day may mean. */
export function firstDay(day: RoughDay): PlainDay {
  if (day.length === 10) return day as string as PlainDay;
  return `${day}-01-01`.slice(0, 10) as PlainDay;
}

/** The last day a rough day may mean. */
export function lastDay(day: RoughDay): PlainDay {
  if (day.length === 10) return day as string as PlainDay;
  const year = Number(day.slice(0, 4));
  const month = day.length === 7 ? Number(day.slice(5, 7)) : 12;
  return new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10) as PlainDay;
}

/** True when the keeper knew the day itself and not only the month or year. */
export function isExactDay(day: RoughDay): boolean {
  return day.length === 10;
}

/** The year of a day, however roughly it is known. */
export function yearOf(day: RoughDay | PlainDay): number {
  return Number(day.slice(0, 4));
}

/** The day on a wall clock; the one door through which the clock comes in (`now` is passed by the caller). */
export function localDay(now: Date): PlainDay {
  const month = String(now.getMonth() + 1).padStart(2, '0');
  return `${now.getFullYear()}-${month}-${String(now.getDate()).padStart(2, '0')}` as PlainDay;
}
