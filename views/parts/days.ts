import { daysBetween, firstDay, type PlainDay, type RoughDay } from '../../src/journal/day.ts';
import { dayText, MONTHS } from '../../src/journal/day-words.ts';
import type { DayWindow } from '../../src/registry/state.ts';
import { list } from './words.ts';

/** Days in words, the same on every screen and in every locale of the device. */

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** "May", for 5. */
export function monthName(month: number): string {
  return MONTHS[month - 1] ?? '';
}

/** "Sep", for 9. */
export function shortMonth(month: number): string {
  return monthName(month).slice(0, 3);
}

/** Months in words, those that follow each other as a span, over the turn of the year too: "Apr to Oct", "Jun and Nov to Feb". */
export function monthsText(months: readonly number[]): string {
  const chosen = new Set(months);
  if (chosen.size === 12) return 'all year';
  const before = (month: number) => ((month + 10) % 12) + 1;
  const starts = [...chosen].filter((month) => !chosen.has(before(month))).sort((a, b) => a - b);
  const spans = starts.map((first) => {
    let last = first;
    while (chosen.has((last % 12) + 1)) last = (last % 12) + 1;
    return first === last ? shortMonth(first) : `${shortMonth(first)} to ${shortMonth(last)}`;
  });
  return list(spans);
}

/** "Saturday". */
export function weekday(day: PlainDay): string {
  return WEEKDAYS[new Date(`${day}T00:00:00Z`).getUTCDay()] ?? '';
}

/** The text with days as the screens say them: "2024-05-14" becomes "14 May 2024". */
export function plainDays(text: string): string {
  return text.replace(/\b(?:19|20)\d\d-\d\d(?:-\d\d)?\b/g, (day) => dayText(day as RoughDay));
}

/** "14 May", with the year only where it is not that of `on`. */
export function dayInYear(day: RoughDay | PlainDay, on: PlainDay): string {
  const text = dayText(day);
  return day.length > 4 && day.slice(0, 4) === on.slice(0, 4) ? text.slice(0, -5) : text;
}

/** "14 May" or "14 May 26", for narrow columns. */
export function shortDay(day: RoughDay | PlainDay, on?: PlainDay): string {
  const [year = '', month, date] = day.split('-');
  if (!month) return year;
  const sameYear = on?.slice(0, 4) === year;
  const name = shortMonth(Number(month));
  if (!date) return `${name} ${year}`;
  return sameYear ? `${Number(date)} ${name}` : `${Number(date)} ${name} ${year}`;
}

/** "today", "yesterday", "5 days ago", "in 3 days"; further off, the day itself. */
export function relativeDay(day: RoughDay | PlainDay, on: PlainDay): string {
  if (day.length < 10) return dayText(day);
  const days = daysBetween(firstDay(day as RoughDay), on);
  if (days === 0) return 'today';
  if (days === 1) return 'yesterday';
  if (days === -1) return 'tomorrow';
  if (days > 1 && days <= 30) return `${days} days ago`;
  if (days < -1 && days >= -30) return `in ${-days} days`;
  return dayInYear(day, on);
}

/** "between 18 and 24 May", "on 14 May", "between 30 May and 4 June". */
export function windowText(window: DayWindow, on: PlainDay): string {
  if (window.first === window.last) return `on ${dayInYear(window.first, on)}`;
  const sameMonth = window.first.slice(0, 7) === window.last.slice(0, 7);
  const first = sameMonth ? String(Number(window.first.slice(8))) : dayInYear(window.first, on);
  return `between ${first} and ${dayInYear(window.last, on)}`;
}
