/**
 * The tasks of the year for a colony that is not (only) waiting for a queen: swarm checks, mite counts, treatments
 * that end, preparation for winter, and the walk in spring that says who came through.
 *
 *   swarm check   last look + 7 days where there were signs, + 9 where not, within the swarm season and over with it
 *   mite count    last count + the keeper's interval, within the keeper's season of counting
 *   strength      once within the span for spring, and up to 3 weeks after it
 *   others        once within the span of days that the keeper sets for the year
 *
 * The spans are the keeper's and depend on place and year: a span that is not set gives no task. Sources:
 * biology.ts (swarmCheck). Cost O(1) a colony. A colony never looked at is due on the first day of the span.
 */
import { BIOLOGY, type Day } from './biology.ts';
import {
  dueTasks,
  type FallbackCode,
  type FindingCode,
  type Task,
  type TaskKind,
  type YearTaskCode,
} from './task.ts';

export interface DaySpan {
  readonly from: Day;
  readonly to: Day;
}

/** The keeper's spans for one year. */
export interface YearSettings {
  readonly swarmSeason?: DaySpan;
  readonly miteSeason?: DaySpan & { readonly everyDays: number };
  readonly autumnPreparation?: DaySpan;
  readonly winterOutcome?: DaySpan;
  readonly springStrength?: DaySpan;
}

export interface RunningTreatment {
  readonly id: string;
  /** Day on which it is to be taken out, from the label; absent where nothing is left in the hive. */
  readonly plannedEnd?: Day;
  readonly ended: boolean;
  /** Honey may be taken from this day on, from the label. */
  readonly honeyFrom?: Day;
}

export interface YearState {
  readonly colony: string;
  /** 'laying': looked at through the year. 'awaiting': left to the queen's calendar. */
  readonly queen: 'laying' | 'awaiting' | 'unknown';
  readonly lastLook?: Day;
  /** Cups with eggs, cells, or a hive that is too full, at the last look. */
  readonly swarmSigns?: boolean;
  readonly lastMiteCount?: Day;
  readonly autumnPrepared?: Day;
  readonly winterRecorded?: Day;
  readonly springRecorded?: Day;
  readonly treatments?: readonly RunningTreatment[];
}

interface Draft {
  readonly code: YearTaskCode;
  readonly kind: TaskKind;
  /** What tells this one from the last of its kind. */
  readonly period: string | number;
  readonly from: Day;
  readonly likely?: Day;
  readonly to: Day;
  readonly lastUseful?: Day;
  readonly fallbacks?: readonly FallbackCode[];
  readonly findings?: readonly FindingCode[];
}

const within = (day: Day | undefined, { from, to }: DaySpan): boolean =>
  day !== undefined && day >= from && day <= to;

function swarmCheck(state: YearState, season: DaySpan | undefined, on: Day): readonly Draft[] {
  if (!season || on > season.to || state.queen === 'awaiting') return [];
  const { earliest, latest } = BIOLOGY.swarmCheck;
  const last = within(state.lastLook, season) ? state.lastLook : undefined;
  const from = last === undefined ? season.from : last + earliest;
  const to = last === undefined ? season.from + latest : last + (state.swarmSigns ? earliest : latest);
  if (from > season.to) return [];
  return [
    {
      code: 'swarm-check',
      kind: 'look',
      period: last ?? season.from,
      from,
      to,
      ...(state.swarmSigns && { lastUseful: to }),
      fallbacks: ['split-first'],
      findings: ['no-swarm-signs', 'swarm-cells', 'cells-capped', 'no-eggs'],
    },
  ];
}

function miteCount(state: YearState, season: YearSettings['miteSeason']): readonly Draft[] {
  if (!season) return [];
  const last = state.lastMiteCount;
  const from = Math.max(season.from, last === undefined ? season.from : last + season.everyDays);
  if (from > season.to) return [];
  const period = within(last, season) ? last! : season.from;
  return [{ code: 'mite-count', kind: 'do', period, from, to: from + 7, findings: ['done'] }];
}

function once(
  code: YearTaskCode,
  kind: TaskKind,
  span: DaySpan | undefined,
  done: Day | undefined,
  findings: readonly FindingCode[],
): readonly Draft[] {
  if (!span || (done !== undefined && done >= span.from)) return [];
  return [{ code, kind, period: span.from, from: span.from, to: span.to, findings }];
}

/** Once the span is over, a colony looked into since its beginning has shown by itself that it lives. */
function winterOutcome(state: YearState, span: DaySpan | undefined, on: Day): readonly Draft[] {
  const shown = span && on > span.to ? state.lastLook : undefined;
  return once('winter-outcome', 'look', span, state.winterRecorded ?? shown, ['alive', 'dead']);
}

/** Strength in spring: asked while it can still be told from what summer made of it. */
function springStrength(state: YearState, span: DaySpan | undefined, on: Day): readonly Draft[] {
  if (span && on > span.to + SPRING_GRACE) return [];
  return once('spring-strength', 'look', span, state.springRecorded, ['done', 'no-eggs', 'dead']);
}

/** Days after the keeper's span after which a strength is no longer that of spring (assumption: three weeks). */
const SPRING_GRACE = 21;

function treatmentTasks(treatments: readonly RunningTreatment[]): readonly Draft[] {
  return treatments.flatMap(({ id, plannedEnd, ended, honeyFrom }): readonly Draft[] => [
    ...(plannedEnd === undefined || ended
      ? []
      : [
          {
            code: 'end-treatment' as const,
            kind: 'do' as const,
            period: id,
            from: plannedEnd,
            to: plannedEnd + 2,
            findings: ['done'] as const,
          },
        ]),
    ...(honeyFrom === undefined
      ? []
      : [{ code: 'honey-wait' as const, kind: 'know' as const, period: id, from: honeyFrom, to: honeyFrom }]),
  ]);
}

/**
 * The tasks of the year of one colony that begin by `on` + `horizonDays`, and all unanswered ones from before, in
 * order of day. Days are whole days since 1970-01-01.
 */
export function yearTasksFor(
  state: YearState,
  settings: YearSettings,
  on: Day,
  horizonDays: number,
): readonly Task[] {
  const drafts = [
    ...swarmCheck(state, settings.swarmSeason, on),
    ...miteCount(state, settings.miteSeason),
    ...once('autumn-preparation', 'do', settings.autumnPreparation, state.autumnPrepared, ['done']),
    ...winterOutcome(state, settings.winterOutcome, on),
    ...springStrength(state, settings.springStrength, on),
    ...treatmentTasks(state.treatments ?? []),
  ];
  const tasks = drafts.map(({ code, kind, period, from, likely, to, lastUseful, fallbacks, findings }) => ({
    uid: `${state.colony}:${code}:${period}`,
    colony: state.colony,
    code,
    kind,
    from,
    likely: likely ?? Math.min(to, Math.max(from, to - 1)),
    to,
    ...(lastUseful !== undefined && { lastUseful }),
    fallbacks: fallbacks ?? [],
    findings: findings ?? [],
    overdue: false,
  }));
  return dueTasks(tasks, on, horizonDays);
}
