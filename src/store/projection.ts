import { firstDay, type PlainDay } from '../journal/day.ts';
import type { Draft, Entry } from '../journal/entry.ts';
import type { Problem } from '../journal/problems.ts';
import { contradictionsOf, type Projection } from '../registry/project.ts';
import type { Contradiction } from '../registry/state.ts';

/** Contradictions that these entries would bring on the day `today`. Nothing is written. */
export function newContradictions(
  projection: Projection,
  entries: readonly Entry[],
  today: PlainDay,
): readonly Contradiction[] {
  const future = entries
    .filter((entry) => firstDay(entry.day) > today)
    .map((entry) => inFuture(entry, today));
  return [...future, ...contradictionsOf(projection, entries)];
}

/** The registry has no clock; that a day has not come yet is known here. */
function inFuture(entry: Entry, today: PlainDay): Contradiction {
  const overruled = entry.overruled?.find(({ rule }) => rule === 'day-in-future')?.reason;
  return {
    code: 'day-in-future',
    entry: entry.id,
    day: entry.day,
    found: entry.day,
    because: `This day has not come yet; today is ${today}.`,
    remedies: ['Give the day on which it happened.'],
    ...(overruled === undefined ? {} : { overruled }),
  };
}

/** Contradictions that stop a write: those that no draft overrules with a reason. */
export function standingContradictions(
  contradictions: readonly Contradiction[],
  drafts: readonly Draft[],
): readonly Contradiction[] {
  const overruled = new Set(drafts.flatMap((draft) => (draft.overruled ?? []).map(({ rule }) => rule)));
  return contradictions.filter(({ code, overruled: reason }) => reason === undefined && !overruled.has(code));
}

/** A contradiction as the problem that refuses an action. */
export function contradictionProblem(contradiction: Contradiction, where: string): Problem {
  const { code, found, because, remedies } = contradiction;
  const remedy =
    remedies.length > 0 ? remedies.join(' Or: ') : 'Correct it, or say why it is so all the same.';
  return { code, where, found, because, remedy };
}
