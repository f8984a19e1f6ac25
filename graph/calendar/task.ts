/**
 * What is to be done or looked for at a colony, and what may be found: the shapes shared by the tasks of a queen's
 * calendar and those of the year. A task keeps its uid however its window moves, so that a calendar file made
 * again updates what it wrote before. Sources: none; cost O(1).
 */
import type { Day } from './biology.ts';
import type { Seen } from './observation.ts';

export type QueenTaskCode =
  | 'look-for-taken-grafts'
  | 'look-for-cells'
  | 'leave-closed'
  | 'look-for-release'
  | 'look-for-eggs'
  | 'look-for-worker-brood'
  | 'mark-queen'
  | 'look-for-queen'
  | 'help-queenless'
  | 'end-laying-workers'
  | 'replace-drone-layer'
  | 'her-records-begin';

export type YearTaskCode =
  | 'swarm-check'
  | 'mite-count'
  | 'autumn-preparation'
  | 'winter-outcome'
  | 'spring-strength'
  | 'end-treatment'
  | 'honey-wait';

export type TaskCode = QueenTaskCode | YearTaskCode;

/** look: open and see. do: act. leave-closed: do not open. know: nothing to do, but a day that matters. */
export type TaskKind = 'look' | 'do' | 'leave-closed' | 'know';

/** What to do when what was hoped for is not there. */
export type FallbackCode =
  | 'give-young-brood'
  | 'give-cells'
  | 'give-queen'
  | 'join'
  | 'look-again'
  | 'shake-out'
  | 'find-and-remove-her'
  | 'split-first';

export type FindingCode =
  | 'cells-open'
  | 'cells-capped'
  | 'no-cells'
  | 'cell-emerged'
  | 'cells-torn'
  | 'virgin'
  | 'eggs'
  | 'queen-laying'
  | 'no-eggs'
  | 'no-brood'
  | 'several-eggs'
  | 'drone-brood-only'
  | 'worker-brood'
  | 'old-queen'
  | 'new-queen'
  | 'queen-free'
  | 'queen-dead'
  | 'swarm-cells'
  | 'no-swarm-signs'
  | 'done'
  | 'alive'
  | 'dead';

export interface Task {
  /** The same for the same task of the same colony, whatever its window. */
  readonly uid: string;
  readonly colony: string;
  readonly code: TaskCode;
  readonly kind: TaskKind;
  /** First and last day, and the day in between on which it is best done. */
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** After this day it is too late to be of use. Absent: it is never too late. */
  readonly lastUseful?: Day;
  /** In the order in which to think of them. */
  readonly fallbacks: readonly FallbackCode[];
  readonly findings: readonly FindingCode[];
  /** Past its last day and not answered. */
  readonly overdue: boolean;
}

/** One finding offered for one tap: what it records, and whether an entry of its own must follow. */
export interface Answer {
  readonly finding: FindingCode;
  /** The fields of an observation that this finding fills; empty when it fills none. */
  readonly seen: Seen;
  /** 'observation': record it as seen. 'entry': the work itself is to be recorded (a count, a treatment, a loss). */
  readonly records: 'observation' | 'entry';
}

const SEEN: Readonly<Partial<Record<FindingCode, Seen>>> = {
  'cells-open': { openCells: true, cappedCells: false, emergedCells: false },
  'cells-capped': { cappedCells: true },
  'no-cells': { openCells: false, cappedCells: false, emergedCells: false },
  'cell-emerged': { emergedCells: true },
  'cells-torn': { tornCells: true, openCells: false, cappedCells: false },
  virgin: { queen: 'virgin' },
  eggs: { eggs: true },
  'queen-laying': { queen: 'laying', eggs: true },
  'no-eggs': { eggs: false },
  'no-brood': { eggs: false, youngBrood: false, openBrood: false },
  'several-eggs': { severalEggsInCells: true },
  'drone-brood-only': { droneBroodOnly: true },
  'worker-brood': { cappedWorkerBrood: true },
  'old-queen': { queen: 'old' },
  'new-queen': { queen: 'unmarked' },
  'queen-free': { queen: 'unmarked' },
  'swarm-cells': { openCells: true },
  'no-swarm-signs': { openCells: false, cappedCells: false },
};

/** The findings to offer for a task, in order of likelihood, each with the observation fields it fills. */
export function answersFor(task: Task): readonly Answer[] {
  return task.findings.map((finding) => {
    const seen = SEEN[finding];
    return { finding, seen: seen ?? {}, records: seen ? 'observation' : 'entry' };
  });
}

/** Tasks that begin by the end of the horizon and are not over, in order of day, then uid. */
export function dueTasks(tasks: readonly Task[], on: Day, horizonDays: number): readonly Task[] {
  return tasks
    .filter(
      ({ from, to, kind }) => from <= on + horizonDays && (to >= on || kind === 'look' || kind === 'do'),
    )
    .map((task) => ({ ...task, overdue: task.to < on && (task.kind === 'look' || task.kind === 'do') }))
    .sort((a, b) => a.from - b.from || a.to - b.to || (a.uid < b.uid ? -1 : 1));
}
