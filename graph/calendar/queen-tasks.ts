/**
 * The tasks that a queen's calendar gives: look for this, leave closed, do that, and until when.
 *
 *   look for cells       capped.likely .. emerged.earliest - 2; no longer asked from laying.likely on
 *   leave closed         emerged.earliest - 1 .. laying.likely - 1   (about to emerge, or flying)
 *   look for eggs        laying.likely .. laying.latest (the give-up day); after a look in vain again 6 days later
 *   look for her brood   cappedBrood.likely .. cappedBrood.latest + 7
 *
 * Each stands until something seen answers it. Sources: biology.ts; the days for grafts and cages are common
 * practice, no source. Cost O(observations). Unknown windows give no task.
 */
import { BIOLOGY, type Day } from './biology.ts';
import type { QueenCalendar } from './infer.ts';
import { raisesCells } from './making.ts';
import type { Observation } from './observation.ts';
import { type Draft, NO_QUEEN, type Situation, situation, TASK_DEFAULTS } from './situation.ts';
import { dueTasks, type Task } from './task.ts';
import { troubleTasks } from './trouble-tasks.ts';

export interface ColonyCalendar {
  /** Id of the colony. */
  readonly colony: string;
  /** Id of what made the queen; part of every uid, so that a second attempt has tasks of its own. */
  readonly key: string;
  readonly calendar: QueenCalendar;
  /** True when the new queen is marked already. */
  readonly marked?: boolean;
}

const sawCells = ({ openCells, cappedCells, emergedCells, tornCells, queen }: Observation): boolean =>
  Boolean(openCells || cappedCells || emergedCells || tornCells || queen);

function cellTasks({ calendar, making, seen, waiting }: Situation): readonly Draft[] {
  const { capped, emerged, laying } = calendar.windows;
  if (!waiting || !raisesCells(making) || seen.some(sawCells) || !capped || !emerged) return [];
  // Once eggs can be looked for they answer what the cells would have told.
  if (laying && calendar.on >= laying.likely) return [];
  const to = Math.max(emerged.earliest - 2, making.day + BIOLOGY.lastCellStarted.likely);
  const from = Math.min(capped.likely, to);
  const cells: Draft = {
    code: 'look-for-cells',
    kind: 'look',
    span: [from, to, to],
    lastUseful: to,
    fallbacks: NO_QUEEN,
    findings: ['cells-capped', 'cells-open', 'no-cells', 'eggs', 'cell-emerged', 'old-queen'],
  };
  if (making.kind !== 'graft') return [cells];
  const [first, best, last] = TASK_DEFAULTS.takenGrafts.map((days) => making.day + days) as [Day, Day, Day];
  const taken: Draft = {
    code: 'look-for-taken-grafts',
    kind: 'look',
    span: [first, best, last],
    fallbacks: ['look-again'],
    findings: ['cells-open', 'no-cells'],
  };
  return [taken, cells];
}

function closedTask({ calendar, making, waiting }: Situation): readonly Draft[] {
  const { emerged, laying } = calendar.windows;
  if (!waiting || !laying) return [];
  const from = emerged ? Math.max(emerged.earliest - 1, making.day) : making.day;
  const [release] = TASK_DEFAULTS.release;
  const to = emerged ? laying.likely - 1 : making.day + release - 1;
  return to < from ? [] : [{ code: 'leave-closed', kind: 'leave-closed', span: [from, from, to] }];
}

function releaseTask({ making, seen, waiting }: Situation): readonly Draft[] {
  if (!waiting || making.kind !== 'mated-queen-given' || seen.some(({ queen }) => queen)) return [];
  const [first, best, last] = TASK_DEFAULTS.release.map((days) => making.day + days) as [Day, Day, Day];
  return [
    {
      code: 'look-for-release',
      kind: 'look',
      span: [first, best, last],
      fallbacks: ['give-queen', 'give-young-brood', 'join'],
      findings: ['queen-free', 'queen-laying', 'cells-open', 'queen-dead'],
    },
  ];
}

function eggTask({ calendar, seen, waiting }: Situation): readonly Draft[] {
  const { laying } = calendar.windows;
  if (!waiting || !laying) return [];
  // Several eggs in cells are a young queen's or workers': a week on, one to a cell tells which.
  const inVain = seen
    .filter(
      ({ day, eggs, severalEggsInCells }) => (eggs === false || severalEggsInCells) && day >= laying.earliest,
    )
    .at(-1);
  const next = inVain ? inVain.day + TASK_DEFAULTS.lookAgainAfter : laying.likely;
  const from = Math.min(Math.max(laying.likely, next), laying.latest);
  return [
    {
      code: 'look-for-eggs',
      kind: 'look',
      span: [from, Math.min(from + 2, laying.latest), laying.latest],
      lastUseful: laying.latest,
      fallbacks: ['look-again', ...NO_QUEEN],
      findings: [
        'eggs',
        'queen-laying',
        'no-eggs',
        'virgin',
        'several-eggs',
        'drone-brood-only',
        'old-queen',
      ],
    },
  ];
}

function layingTasks({ calendar, seen }: Situation, marked: boolean): readonly Draft[] {
  const { cappedBrood, allHers } = calendar.windows;
  const { hersSince } = calendar.evidence;
  if (hersSince === undefined || !cappedBrood || !allHers) return [];
  const { broodGrace, markWithin } = TASK_DEFAULTS;
  const shown = seen.some(
    ({ day, cappedWorkerBrood }) => cappedWorkerBrood && day >= hersSince && day >= cappedBrood.earliest,
  );
  const brood: Draft = {
    code: 'look-for-worker-brood',
    kind: 'look',
    span: [cappedBrood.likely, cappedBrood.latest, cappedBrood.latest + broodGrace],
    fallbacks: ['look-again', 'give-queen', 'join'],
    findings: ['worker-brood', 'drone-brood-only', 'several-eggs', 'no-brood', 'cells-capped'],
  };
  const mark: Draft = {
    code: 'mark-queen',
    kind: 'do',
    span: [cappedBrood.likely, cappedBrood.latest, cappedBrood.latest + markWithin],
    findings: ['done'],
  };
  const records: Draft = {
    code: 'her-records-begin',
    kind: 'know',
    span: [allHers.earliest, allHers.likely, allHers.latest],
  };
  return [...(shown ? [] : [brood]), ...(marked ? [] : [mark]), records];
}

/**
 * The tasks of a queen's calendar that begin by `on` + `horizonDays`, and all that are unanswered from before, in
 * order of day. Days are whole days since 1970-01-01.
 */
export function tasksFor(colonyCalendar: ColonyCalendar, on: Day, horizonDays: number): readonly Task[] {
  const { colony, key, calendar, marked } = colonyCalendar;
  const now = situation(calendar);
  const drafts = [
    ...cellTasks(now),
    ...closedTask(now),
    ...releaseTask(now),
    ...eggTask(now),
    ...layingTasks(now, marked ?? false),
    ...troubleTasks(now),
  ];
  const tasks = drafts.map(({ code, kind, span: [from, likely, to], lastUseful, fallbacks, findings }) => ({
    uid: `${colony}:${key}:${code}`,
    colony,
    code,
    kind,
    from,
    likely,
    to,
    ...(lastUseful !== undefined && { lastUseful }),
    fallbacks: fallbacks ?? [],
    findings: findings ?? [],
    overdue: false,
  }));
  return dueTasks(tasks, on, horizonDays);
}
