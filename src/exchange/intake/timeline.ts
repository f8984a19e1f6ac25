import { firstDay, type PlainDay, type RoughDay, yearOf } from '../../journal/day.ts';
import type { Cast, PlannedQueen } from './cast.ts';
import type { ReadRow } from './row.ts';

/**
 * The day from which each queen stands in the records. It is no birth: a table that first speaks of her in 2024 puts
 * her on record then. She is there before anything is said of her or of her daughters.
 */
export function entryDays(cast: Cast, today: PlainDay): ReadonlyMap<PlannedQueen, RoughDay> {
  const days = new Map<PlannedQueen, RoughDay>();
  for (const queen of cast.queens) days.set(queen, ownDay(queen) ?? (today as string as RoughDay));
  // Days only ever go down to one of those found above, so this comes to rest.
  for (let moved = true; moved; ) {
    moved = false;
    for (const queen of cast.queens) {
      const day = days.get(queen);
      for (const { queen: dam } of queen.dams) {
        const damDay = days.get(dam);
        if (!day || !damDay || firstDay(damDay) <= firstDay(day)) continue;
        days.set(dam, day);
        moved = true;
      }
    }
  }
  return notBeforeKnownDams(cast, days);
}

/** A daughter of a queen on record is entered no earlier than that queen was. */
function notBeforeKnownDams(
  cast: Cast,
  days: Map<PlannedQueen, RoughDay>,
): ReadonlyMap<PlannedQueen, RoughDay> {
  for (const queen of cast.queens) {
    for (const { queen: dam } of queen.dams) {
      const first = dam.known?.entries[0]?.day;
      const day = days.get(queen);
      if (first && day && firstDay(first) > firstDay(day)) days.set(queen, first);
    }
  }
  return days;
}

/** The earliest day that her rows speak of her. */
function ownDay(queen: PlannedQueen): RoughDay | undefined {
  const born = queen.rows.flatMap((row) => row.born ?? [])[0];
  const year = born ? yearOf(born) : queen.year;
  const days = queen.rows.flatMap((row) => [
    ...(row.born ? [row.born] : []),
    ...evidenceDays(row).filter((day) => year === undefined || yearOf(day) >= year),
  ]);
  if (days.length === 0) return queen.year === undefined ? undefined : (String(queen.year) as RoughDay);
  return earliest(days);
}

/** Days on which the row says that something was there. A winter reaches back into the autumn before it. */
export function evidenceDays(row: ReadRow): readonly RoughDay[] {
  return [
    ...(row.date ? [row.date] : row.season === undefined ? [] : [String(row.season) as RoughDay]),
    ...row.inspections.map(({ day }) => day),
    ...row.mites.map(({ day }) => day),
    ...row.harvests.map(({ day }) => day),
    ...row.winters.map(({ winter }) => `${winter - 1}-10` as RoughDay),
    ...(row.ended ? [row.ended] : []),
  ];
}

export function earliest(days: readonly RoughDay[]): RoughDay | undefined {
  return days.reduce<RoughDay | undefined>(
    (first, day) => (first === undefined || firstDay(day) < firstDay(first) ? day : first),
    undefined,
  );
}

/**
 * The day written for the outcome of a winter: that of the row when it falls in the spring after it, else the year
 * alone, which stands before anything else of that year.
 */
export function outcomeDay(row: ReadRow, winter: number, today: PlainDay): RoughDay {
  const inSpring =
    row.date && row.date >= `${winter}-01-15` && row.date <= `${winter}-06-30` && row.date.length === 10;
  if (row.date && inSpring) return row.date;
  return (winter > yearOf(today) ? today : String(winter)) as string as RoughDay;
}
