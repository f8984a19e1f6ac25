import {
  type ColonyCalendar,
  inferQueenCalendar,
  type QueenCalendar,
  type Task,
  tasksFor,
  type YearSettings,
  yearTasksFor,
} from '../../graph/calendar/index.ts';
import { pushTo } from '../../graph/grouping.ts';
import { dayNumber, dayOfNumber, firstDay, lastDay, type PlainDay, yearOf } from '../journal/day.ts';
import type { ColonyId, KeeperId, YardId } from '../journal/ids.ts';
import { ALL_HERS_DAYS } from './attribution.ts';
import { calendarFacts } from './calendar.ts';
import { byLabel, headOn, isLiving, tenureOn, yardOn, yardsOf } from './queries.ts';
import type { Colony, Registry } from './state.ts';
import { beganBeforeWinter } from './winters-of-queen.ts';
import { yearState } from './year-state.ts';

/** What the rounds need to know of one colony: its queen's calendar, if one runs, and its tasks. */
export interface ColonyRound {
  readonly colony: ColonyId;
  readonly calendar?: QueenCalendar;
  /** Unanswered tasks that have begun or begin within the horizon, in order of day. */
  readonly tasks: readonly Task[];
}

export interface YardRound {
  readonly yard: YardId | undefined;
  readonly colonies: readonly ColonyRound[];
}

export interface RoundsOptions {
  /** Only the yards at which this keeper has recorded something; absent: all. */
  readonly keeper?: KeeperId;
  readonly on: PlainDay;
  readonly horizonDays: number;
  readonly year: YearSettings;
}

/** The rounds by yard in the order of driving, each colony by label. O(entries of the living colonies). */
export function rounds(registry: Registry, options: RoundsOptions): readonly YardRound[] {
  const byYard = new Map<YardId | undefined, ColonyRound[]>();
  const mine = options.keeper && yardsOf(registry, options.keeper);
  const living = [...registry.colonies.values()]
    .filter((colony) => isLiving(colony, options.on))
    .filter((colony) => !mine || mine.has(yardOn(colony, options.on) as YardId))
    .sort(byLabel);
  for (const colony of living) {
    pushTo(byYard, yardOn(colony, options.on), colonyRound(registry, colony, options));
  }
  const place = (yard: YardId | undefined) => {
    const record = yard && registry.yards.get(yard);
    return [record?.roundOrder ?? Number.MAX_SAFE_INTEGER, record?.name ?? ''] as const;
  };
  return [...byYard]
    .map(([yard, colonies]) => ({ yard, colonies }))
    .sort((a, b) => {
      const [orderA, nameA] = place(a.yard);
      const [orderB, nameB] = place(b.yard);
      return orderA - orderB || nameA.localeCompare(nameB, 'en');
    });
}

/** The calendar and the tasks of one colony. Tasks that the keeper settled are left out. */
export function colonyRound(registry: Registry, colony: Colony, options: RoundsOptions): ColonyRound {
  const on = dayNumber(options.on);
  const calendar = colonyCalendar(registry, colony, options.on);
  const settled = new Set(
    colony.entries.flatMap((entry) => (entry.kind === 'task-settled' ? [entry.task] : [])),
  );
  const queenTasks = calendar ? tasksFor(calendar, on, options.horizonDays) : [];
  const yearTasks = yearTasksFor(
    yearState(registry, colony, options.on, calendar),
    options.year,
    on,
    options.horizonDays,
  );
  const tasks = [...queenTasks, ...yearTasks]
    .filter((task) => !settled.has(task.uid) && concerns(task, colony, calendar !== undefined))
    .sort((a, b) => a.from - b.from || a.to - b.to || (a.uid < b.uid ? -1 : 1));
  return { colony: colony.id, ...(calendar ? { calendar: calendar.calendar } : {}), tasks };
}

/**
 * Whether a task of the year asks something that this colony can answer: one begun since has no winter and no spring
 * behind it, one divided since no longer has the strength it came out of winter with, and one with cells or a virgin is
 * left alone before its mites are counted.
 */
function concerns({ code, from }: Task, colony: Colony, awaiting: boolean): boolean {
  if (code === 'winter-outcome') return beganBeforeWinter(colony.started, yearOf(dayOfNumber(from)));
  const started = dayNumber(lastDay(colony.started));
  if (code === 'spring-strength') return started < from && !dividedSince(colony, from);
  if (code === 'mite-count') return !awaiting && started + SETTLING_DAYS <= from;
  return true;
}

function dividedSince(colony: Colony, from: number): boolean {
  return colony.entries.some((entry) => entry.kind === 'split' && dayNumber(firstDay(entry.day)) >= from);
}

/** Days that a new colony is given before its mites are counted: one round of worker brood and a half. */
const SETTLING_DAYS = 30;

/** The running queen calendar of a colony; nothing once all workers are hers, or where no queen was made here. */
export function colonyCalendar(registry: Registry, colony: Colony, on: PlainDay): ColonyCalendar | undefined {
  const facts = calendarFacts(registry, colony, on);
  const [first] = facts?.makings ?? [];
  if (!facts || !first) return undefined;
  const { makings, observations } = facts;
  const calendar = inferQueenCalendar({ making: makings, observations, on: dayNumber(on) });
  const over = calendar.windows.allHers;
  if (over && over.latest < dayNumber(on) && calendar.evidence.hersSince !== undefined) return undefined;
  const tenure = tenureOn(colony, on);
  const laying = tenure && dayNumber(firstDay(tenure.layingFrom ?? tenure.from));
  const lastMade = Math.max(...makings.map(({ day }) => day));
  if (laying !== undefined && laying >= lastMade && dayNumber(on) > laying + ALL_HERS_DAYS) return undefined;
  const head = headOn(registry, colony, on);
  return {
    colony: colony.id,
    key: facts.queens.at(-1) ?? `${first.day}`,
    calendar,
    marked: head?.mark !== undefined,
  };
}

/** Month-and-day spans of the keeper's year as days of the year that `on` lies in. */
export function yearSettings(
  spans: Readonly<Record<SpanName, { readonly from: string; readonly to: string }>>,
  countEveryDays: number,
  on: PlainDay,
): YearSettings {
  const year = on.slice(0, 4);
  const span = (name: SpanName) => ({ from: dayIn(year, spans[name].from), to: dayIn(year, spans[name].to) });
  return {
    swarmSeason: span('swarmSeason'),
    miteSeason: { ...span('miteSeason'), everyDays: countEveryDays },
    autumnPreparation: span('autumnPreparation'),
    winterOutcome: span('winterOutcome'),
    springStrength: span('springStrength'),
  };
}

type SpanName = 'swarmSeason' | 'miteSeason' | 'autumnPreparation' | 'winterOutcome' | 'springStrength';

function dayIn(year: string, monthDay: string): number {
  return dayNumber(`${year}-${monthDay}` as PlainDay);
}
