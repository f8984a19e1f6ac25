import type { PlainDay } from '../../src/journal/day.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import type { UnmarkedSeen } from '../../src/registry/unmarked.ts';
import { dayInYear } from './days.ts';
import { sentence } from './words.ts';

/** "An unmarked queen was seen on 3 August; Brook was marked." A day known to the month or year is said with "in". */
export function unmarkedText({ head, seen }: UnmarkedSeen, on: PlainDay): string {
  const when = `${seen.length === 10 ? 'on' : 'in'} ${dayInYear(seen, on)}`;
  return sentence(`an unmarked queen was seen ${when}; ${queenTitle(head)} was marked.`);
}
