import type { PlainDay, RoughDay } from './day.ts';

/** Days and winters in words, the same on every screen, in every file and in every locale of the device. */

export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "14 May 2026", "May 2026" or "2026", as far as it is known. */
export function dayText(day: RoughDay | PlainDay): string {
  const [year = '', month, date] = day.split('-');
  const named = month === undefined ? year : `${MONTHS[Number(month) - 1]} ${year}`;
  return date === undefined ? named : `${Number(date)} ${named}`;
}

/** "2022/23": a winter goes by the year of its spring, here 2023. */
export function winterYears(spring: number): string {
  return `${spring - 1}/${String(spring).slice(2)}`;
}
