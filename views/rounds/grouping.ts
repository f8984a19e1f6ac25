import type { Task } from '../../graph/calendar/index.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyRound } from '../../src/registry/rounds.ts';
import type { Registry } from '../../src/registry/state.ts';
import { unmarkedSeenIn } from '../../src/registry/unmarked.ts';

/** The tasks of one colony by what they ask of the keeper on a day. */
export interface Sorted {
  /** Past their last day and unanswered. */
  readonly slipped: readonly Task[];
  /** Within their window now. */
  readonly now: readonly Task[];
  /** The box stays shut. */
  readonly shut?: Task;
  /** Later within the horizon. */
  readonly coming: readonly Task[];
}

/** Looks that a missed day does not make more pressing than a virgin left in peace. */
const OF_THE_YEAR: ReadonlySet<Task['code']> = new Set<Task['code']>([
  'spring-strength',
  'autumn-preparation',
  'swarm-check',
  'mite-count',
]);

export function sortTasks({ tasks }: ColonyRound, on: number): Sorted {
  const shut = tasks.find(({ kind, from, to }) => kind === 'leave-closed' && from <= on && to >= on);
  const asks = tasks.filter(({ kind }) => kind !== 'leave-closed');
  // A box that stays shut is not opened for anything that can wait until it may be opened again.
  const waits = (task: Task) =>
    shut !== undefined && task.kind !== 'know' && (!task.overdue || OF_THE_YEAR.has(task.code));
  return {
    slipped: asks.filter((task) => task.overdue && !waits(task)),
    now: asks
      .filter((task) => !task.overdue && task.from <= on && !waits(task))
      .sort((a, b) => a.to - b.to || a.from - b.from),
    coming: tasks.filter(
      (task) =>
        (!task.overdue && task.from > on) || (waits(task) && task !== shut && task.kind !== 'leave-closed'),
    ),
    ...(shut ? { shut } : {}),
  };
}

/** An unmarked queen was seen there, and nobody has said whether she is another one: asked at every round. */
export function asksWhoSheIs(registry: Registry, { colony: id }: ColonyRound, on: PlainDay): boolean {
  const colony = registry.colonies.get(id);
  return colony !== undefined && unmarkedSeenIn(registry, colony, on) !== undefined;
}

/** How many boxes ask for something now, stay shut, or have something let slip. */
export function countBoxes(
  rounds: readonly ColonyRound[],
  on: number,
): {
  readonly now: number;
  readonly shut: number;
  readonly slipped: readonly ColonyRound[];
} {
  const sorted = rounds.map((round) => sortTasks(round, on));
  return {
    now: sorted.filter(({ now, slipped }) => now.length + slipped.length > 0).length,
    shut: sorted.filter(({ shut }) => shut !== undefined).length,
    slipped: rounds.filter((_, index) => (sorted[index]?.slipped.length ?? 0) > 0),
  };
}
