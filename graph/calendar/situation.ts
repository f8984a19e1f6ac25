/**
 * What the tasks of a queen's calendar are reckoned from: the calendar, the making held likeliest, what was seen
 * since, and whether a queen is still awaited. Sources: the days for grafts and cages are common practice, no source.
 * Cost O(observations).
 */
import type { Day } from './biology.ts';
import type { QueenCalendar } from './infer.ts';
import type { Making } from './making.ts';
import type { Observation } from './observation.ts';
import type { FallbackCode, FindingCode, QueenTaskCode, TaskKind } from './task.ts';

export const TASK_DEFAULTS = Object.freeze({
  /** Days after which a look for eggs in vain is repeated. */
  lookAgainAfter: 6,
  /** Days after the last likely day within which her brood is judged. */
  broodGrace: 7,
  /** Days allowed for marking, once her brood is seen. */
  markWithin: 21,
  /** Days after a contradiction within which to look for the queen. */
  settleWithin: 7,
  /** Days after grafting on which taken cells are counted, and after caging on which she should be free. */
  takenGrafts: [1, 2, 3] as const,
  release: [3, 5, 7] as const,
});

export type Span = readonly [from: Day, likely: Day, to: Day];

/** A task before it has its colony and uid. */
export interface Draft {
  readonly code: QueenTaskCode;
  readonly kind: TaskKind;
  readonly span: Span;
  readonly lastUseful?: Day;
  readonly fallbacks?: readonly FallbackCode[];
  readonly findings?: readonly FindingCode[];
}

/** What helps a colony that has no queen on the way, best first while there is time. */
export const NO_QUEEN: readonly FallbackCode[] = ['give-young-brood', 'give-cells', 'give-queen', 'join'];
/** Readings under which a queen is on her way. */
const AWAITING = [
  'as-recorded',
  'cells-older',
  'first-virgin-left',
  'late-start',
  'replaced-since',
  'not-accepted',
];

export interface Situation {
  readonly calendar: QueenCalendar;
  readonly making: Making;
  /** What was seen since the making. */
  readonly seen: readonly Observation[];
  /** A queen is awaited and has not been seen to lay. */
  readonly waiting: boolean;
}

/**
 * What the tasks are worked out from: the likeliest scenario, what was seen since, whether a queen is still
 * awaited.
 */
export function situation(calendar: QueenCalendar): Situation {
  const first = calendar.scenarios[0]!;
  const making = calendar.makings[first.making]!;
  const { hersSince, noCells } = calendar.evidence;
  const waiting = AWAITING.includes(first.code) && hersSince === undefined && !noCells;
  return { calendar, making, seen: calendar.observations.filter(({ day }) => day > making.day), waiting };
}
