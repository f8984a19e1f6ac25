import {
  type ColonyCalendar,
  inferQueenCalendar,
  type QueenCalendar,
  type RunningTreatment,
  type Task,
  tasksFor,
  type YearSettings,
  type YearState,
  yearTasksFor,
} from '../../graph/calendar/index.ts';
import { addDays, dayNumber, firstDay, isExactDay, lastDay, type PlainDay } from '../journal/day.ts';
import type { Entry, EntryKind, EntryOf } from '../journal/entry.ts';
import type { ColonyId, KeeperId, YardId } from '../journal/ids.ts';
import { ALL_HERS_DAYS } from './attribution.ts';
import { calendarFacts } from './calendar.ts';
import { byLabel, headOn, isLiving, tenureOn, yardOn, yardsOf } from './queries.ts';
import type { Colony, Registry } from './state.ts';

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
    const yard = yardOn(colony, options.on);
    const list = byYard.get(yard);
    const round = colonyRound(registry, colony, options);
    if (list) list.push(round);
    else byYard.set(yard, [round]);
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
 * behind it, and is left alone with its cells and its virgin before its mites are counted.
 */
function concerns({ code, from }: Task, colony: Colony, awaiting: boolean): boolean {
  const started = dayNumber(lastDay(colony.started));
  if (code === 'winter-outcome') return started < from - WINTER_DAYS;
  if (code === 'spring-strength') return started < from;
  if (code === 'mite-count') return !awaiting && started + SETTLING_DAYS <= from;
  return true;
}

/** A colony begun within these days before the winter walk was not there when winter came. */
const WINTER_DAYS = 100;
/** Days that a new colony is given before its mites are counted: one round of worker brood and a half. */
const SETTLING_DAYS = 30;

/** The running queen calendar of a colony; nothing once all workers are hers, or where no queen was made here. */
export function colonyCalendar(registry: Registry, colony: Colony, on: PlainDay): ColonyCalendar | undefined {
  const facts = calendarFacts(registry, colony);
  const [first] = facts?.makings ?? [];
  if (!facts || !first || first.day > dayNumber(on)) return undefined;
  const makings = facts.makings.filter(({ day }) => day <= dayNumber(on));
  const calendar = inferQueenCalendar({
    making: makings,
    observations: facts.observations,
    on: dayNumber(on),
  });
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

function yearState(
  registry: Registry,
  colony: Colony,
  on: PlainDay,
  calendar: ColonyCalendar | undefined,
): YearState {
  const head = headOn(registry, colony, on);
  const looks = exactEntries(colony, 'inspection', on);
  const last = looks.at(-1);
  const lastCount = exactEntries(colony, 'mite-count', on).at(-1);
  const winter = exactEntries(colony, 'winter-outcome', on).at(-1);
  const lastOf = (occasion: 'autumn' | 'spring') => looks.findLast((entry) => entry.occasion === occasion);
  const state = { lastLook: last, lastMiteCount: lastCount, winterRecorded: winter } as const;
  const days = Object.fromEntries(
    Object.entries({ ...state, autumnPrepared: lastOf('autumn'), springRecorded: lastOf('spring') }).flatMap(
      ([name, entry]) => (entry ? [[name, dayNumber(firstDay(entry.day))]] : []),
    ),
  );
  return {
    colony: colony.id,
    queen: head ? 'laying' : calendar || colony.expected.length > 0 ? 'awaiting' : 'unknown',
    swarmSigns: last !== undefined && showsSwarmSigns(last),
    treatments: runningTreatments(registry, colony.id, on),
    ...days,
  };
}

function exactEntries<K extends EntryKind>(colony: Colony, kind: K, on: PlainDay): readonly EntryOf<K>[] {
  return colony.entries.filter(
    (entry: Entry): entry is EntryOf<K> =>
      entry.kind === kind && isExactDay(entry.day) && firstDay(entry.day) <= on,
  );
}

/** Cells, or a swarm tendency of 3 or less by the protocol (cells that could be stopped), at an inspection. */
export function showsSwarmSigns({
  openCells = 0,
  cappedCells = 0,
  swarmTendency = 4,
}: EntryOf<'inspection'>): boolean {
  return openCells > 0 || cappedCells > 0 || swarmTendency <= 3;
}

function runningTreatments(registry: Registry, colony: ColonyId, on: PlainDay): readonly RunningTreatment[] {
  return [...registry.treatments.values()]
    .filter(({ colonies, from }) => colonies.includes(colony) && firstDay(from) <= on)
    .map(({ id, entry, to }) => {
      const ended = to !== undefined && lastDay(to) <= on;
      const wait = entry.honeyWaitDays;
      const honeyFrom =
        to !== undefined && wait !== undefined ? dayNumber(addDays(lastDay(to), wait)) : undefined;
      return {
        id,
        ended,
        ...(entry.end ? { plannedEnd: dayNumber(entry.end) } : {}),
        ...(honeyFrom === undefined ? {} : { honeyFrom }),
      };
    });
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
