import type { PlainDay, RoughDay } from '../journal/day.ts';
import type { Draft } from '../journal/entry.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import { headOn, tenureOn } from './queries.ts';
import type { Colony, Queen, Registry } from './state.ts';

/** An unmarked queen seen where a marked one heads the colony: the open question, and what each answer writes. */

export interface UnmarkedSeen {
  /** The marked queen who heads the colony by the records. */
  readonly head: Queen;
  readonly seen: RoughDay;
}

/** The question of a colony whether its queen is still the one on record; nothing where none is open on that day. */
export function unmarkedSeenIn(registry: Registry, colony: Colony, on: PlainDay): UnmarkedSeen | undefined {
  const seen = tenureOn(colony, on)?.unmarkedSeen;
  const head = headOn(registry, colony, on);
  return seen && head ? { head, seen } : undefined;
}

/** Another queen: she is found on the day on which she was seen, in the place of the one on record. */
export function anotherFound(colony: ColonyId, { head, seen }: UnmarkedSeen, queen: QueenId): Draft {
  return { kind: 'queen-found', day: seen, queen, colony, insteadOf: head.id };
}

/** The queen on record has lost her mark. */
export function markLost(colony: ColonyId, head: QueenId, day: RoughDay): Draft {
  return { kind: 'task-settled', day, colony, task: taskOfUnmarked(colony, head), how: 'done' };
}

/** The task of saying who an unmarked queen is, by the colony and the queen on record in it. */
export function taskOfUnmarked(colony: ColonyId, head: QueenId): string {
  return `${colony}:${UNMARKED}:${head}`;
}

/** True for the name of such a task. */
export function isOfUnmarked(task: string): boolean {
  return task.split(':')[1] === UNMARKED;
}

const UNMARKED = 'unmarked-queen';
