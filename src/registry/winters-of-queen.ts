import { firstDay, lastDay, type PlainDay, type RoughDay, yearOf } from '../journal/day.ts';
import type { Entry, EntryKind } from '../journal/entry.ts';
import type { Queen } from './state.ts';

/** Which winters a queen went into and came out of, as far as the records show it. */

/** Winters (1 December to 1 March) that a queen headed one colony or other right through, up to a day. */
export function wintersHeaded(queen: Queen, on: PlainDay): number {
  return wintersCrossed(queen, on).length;
}

/**
 * Those winters by the year of their spring, in order: 2026 is the winter 2025/26. A winter counts once something on
 * record shows that she was there after it: that nobody has written of her since is no sign that she lives. A colony
 * found dead in spring died in the winter, whatever the day it was found on. A winter in which nobody knows when one
 * queen followed the other is counted for neither.
 */
export function wintersCrossed(queen: Queen, on: PlainDay): readonly number[] {
  const years = new Set<number>();
  const seen = lastSign(queen, on);
  for (const tenure of queen.tenures) {
    const end = tenure.surelyUntil ?? (tenure.to === undefined ? seen : firstDay(tenure.to));
    if (end === undefined) continue;
    const until = end < on ? end : on;
    const from = tenure.layingFrom ?? tenure.from;
    for (let year = yearOf(from) + 1; year <= yearOf(until); year += 1) {
      if (beganBeforeWinter(from, year) && until >= `${year}-03-01`) years.add(year);
    }
  }
  for (const entry of queen.entries) {
    if (entry.kind === 'winter-outcome' && !entry.alive) years.delete(entry.winter);
    if (entry.kind === 'colony-ended' && entry.cause === 'winter') years.delete(yearOf(entry.day));
  }
  return [...years].sort((a, b) => a - b);
}

/**
 * Winters that a queen went into as the head of a colony, and of which it is on record whether she came out, up to a
 * day; by the year of their spring. Where her end went unseen, no winter after she was last known to be there is hers.
 */
export function wintersEntered(queen: Queen, on: PlainDay): readonly number[] {
  const years = new Set<number>();
  const seen = lastSign(queen, on);
  const over = on.slice(5) >= '03-01' ? yearOf(on) : yearOf(on) - 1;
  for (const { from, to, surelyUntil } of queen.tenures) {
    for (let year = yearOf(from) + 1; year <= over; year += 1) {
      const told = to !== undefined || (seen !== undefined && seen >= `${year}-03-01`);
      const there = to === undefined || firstDay(to) >= `${year - 1}-12-01`;
      const inDoubt = surelyUntil !== undefined && surelyUntil < `${year}-03-01`;
      if (told && there && !inDoubt && beganBeforeWinter(from, year)) years.add(year);
    }
  }
  return [...years].sort((a, b) => a - b);
}

/**
 * True when a time that began on this day had begun before the winter that ended in this year. A year alone is taken to
 * mean its season: where winters are cold, no queen is made or put in after November (common practice, no source).
 */
export function beganBeforeWinter(from: RoughDay, year: number): boolean {
  return from.length === 4 ? yearOf(from) < year : lastDay(from) < `${year - 1}-12-01`;
}

/** Entries about a queen that do not show her alive on their day. */
const NO_SIGN: ReadonlySet<EntryKind> = new Set<EntryKind>([
  'colony-ended',
  'mating',
  'note',
  'parentage-stated',
  'queen-lost',
  'queen-named',
]);

/** The last day, up to this one, on which something on record shows that she lived. */
function lastSign(queen: Queen, on: PlainDay): PlainDay | undefined {
  let last: PlainDay | undefined;
  for (const entry of queen.entries) {
    if (NO_SIGN.has(entry.kind) || firstDay(entry.day) > on) continue;
    const sign = signOf(entry);
    if (sign !== undefined && (last === undefined || sign > last)) last = sign;
  }
  return last;
}

/** An outcome known to the year was seen after its winter. */
function signOf(entry: Entry): PlainDay | undefined {
  const day = firstDay(entry.day);
  if (entry.kind !== 'winter-outcome') return day;
  if (!entry.alive) return undefined;
  const spring = `${entry.winter}-03-01` as PlainDay;
  return lastDay(entry.day) >= spring && day < spring ? spring : day;
}
