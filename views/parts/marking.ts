import type { MarkColour } from '../../src/journal/entries/queen.ts';

const BY_LAST_DIGIT: readonly MarkColour[] = ['blue', 'white', 'yellow', 'red', 'green'];

/**
 * The international convention for marking queens, by the last digit of the year she emerged in: 1 and 6 white,
 * 2 and 7 yellow, 3 and 8 red, 4 and 9 green, 5 and 0 blue. Common practice.
 */
export function colourOfYear(year: number): MarkColour {
  return BY_LAST_DIGIT[year % 5] ?? 'other';
}
