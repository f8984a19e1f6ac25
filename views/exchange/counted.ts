import type { RoughDay } from '../../src/journal/day.ts';
import { dayText } from '../parts/days.ts';

/** "1 entry", "1,104 entries". */
export function counted(value: number, one: string, many = `${one}s`): string {
  return `${value.toLocaleString('en')} ${value === 1 ? one : many}`;
}

/** The text with days as the screens say them: "2024-05-14" becomes "14 May 2024". */
export function plainDays(text: string): string {
  return text.replace(/\b(?:19|20)\d\d-\d\d(?:-\d\d)?\b/g, (day) => dayText(day as RoughDay));
}
