/**
 * The calendar in sentences, for screens, print and calendar files: plain, in the present, windows and never
 * a lone date. Words are in words.ts; here they are only joined. Cost O(length). What is unknown is left out.
 */
import type { Day, Window } from './biology.ts';
import type { Contradiction } from './contradiction.ts';
import type { DroneMeeting, MeetingForecast } from './drones.ts';
import type { QueenCalendar } from './infer.ts';
import type { Making } from './making.ts';
import type { ReadingCode } from './readings.ts';
import { situation } from './situation.ts';
import type { Windows } from './solve.ts';
import type { FallbackCode, FindingCode, Task, TaskCode } from './task.ts';
import {
  CAUTIONS,
  CONTRADICTION_WORDS,
  FALLBACK_WORDS,
  FINDING_MEANS,
  FINDING_WORDS,
  READING_WORDS,
  STATE_WORDS,
  TASK_WORDS,
  TOO_LATE,
} from './words.ts';

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September'].concat(
  ['October', 'November', 'December'],
);
const MILLISECONDS_A_DAY = 86_400_000;

function parts(day: Day): { date: number; month: string } {
  const [, month, date] = new Date(day * MILLISECONDS_A_DAY).toISOString().slice(0, 10).split('-');
  return { date: Number(date), month: MONTHS[Number(month) - 1]! };
}

/** A day of the year in words: 14 May. */
export function dayText(day: Day): string {
  const { date, month } = parts(day);
  return `${date} ${month}`;
}

/** A span of days in words: 'between 14 and 18 May', 'between 28 May and 3 June', 'on or about 14 May'. */
export function spanText(from: Day, to: Day): string {
  if (from === to) return `on or about ${dayText(from)}`;
  const [first, last] = [parts(from), parts(to)];
  return first.month === last.month
    ? `between ${first.date} and ${last.date} ${last.month}`
    : `between ${dayText(from)} and ${dayText(to)}`;
}

/** A stretch of days that are all meant: 'from 8 to 25 May'. */
export function stretchText(from: Day, to: Day): string {
  const [first, last] = [parts(from), parts(to)];
  const start = first.month === last.month ? String(first.date) : dayText(from);
  return from === to ? `on ${dayText(from)}` : `from ${start} to ${dayText(to)}`;
}

/** A window with its likely day, where that tells more than the ends. */
export function windowText({ earliest, likely, latest }: Window): string {
  const span = spanText(earliest, latest);
  return latest - earliest < 4 ? span : `${span}, most likely about ${dayText(likely)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function listed(items: readonly string[], word: 'and' | 'or'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`;
}

function makingText(making: Making): string {
  const brood = { eggs: 'eggs', 'young-brood': 'young larvae', both: 'eggs and young larvae' };
  switch (making.kind) {
    case 'made-queenless':
      return `No queen. Has ${brood[making.left ?? 'both']} to raise one from.`;
    case 'brood-given':
      return `No queen. Was given ${brood[making.left ?? 'both']} to raise one from.`;
    case 'cells-given':
      return making.age === 'unknown' ? 'Was given queen cells.' : `Was given ${making.age} queen cells.`;
    case 'cells-left':
      return making.age === 'unknown'
        ? 'Was left with queen cells.'
        : `Was left with ${making.age} queen cells.`;
    case 'graft':
      return 'Was given grafted larvae.';
    case 'virgin-given':
      return 'Was given a virgin.';
    default:
      return making.caged ? 'Was given a mated queen, in a cage.' : 'Was given a mated queen.';
  }
}

const COMING: readonly (readonly [keyof Windows, string])[] = [
  ['capped', 'capped cells'],
  ['emerged', 'a virgin'],
  ['laying', 'eggs'],
];

function comingSpan(event: keyof Windows, window: Window, on: Day): string {
  if (window.earliest <= on) return `by ${dayText(window.latest)}`;
  return event === 'laying' ? windowText(window) : spanText(window.earliest, window.latest);
}

function comingText(calendar: QueenCalendar): string[] {
  const { windows, on } = calendar;
  const still = COMING.flatMap(([event, name]) => {
    const window = windows[event];
    return window && window.latest > on ? [`${name} ${comingSpan(event, window, on)}`] : [];
  });
  return still.length > 0 ? [`${capital(listed(still, 'and'))}.`] : [];
}

/** Days from which to which the hive is best left closed; undefined when no queen is awaited. */
export function closedSpan(calendar: QueenCalendar): { from: Day; to: Day } | undefined {
  const { waiting } = situation(calendar);
  const { emerged, laying } = calendar.windows;
  if (!waiting || !emerged || !laying) return undefined;
  const from = Math.max(emerged.earliest - 1, calendar.makings[calendar.scenarios[0]!.making]!.day);
  return laying.likely - 1 >= from ? { from, to: laying.likely - 1 } : undefined;
}

/** What this colony now is and what will happen, in a few sentences. */
export function calendarText(calendar: QueenCalendar): string {
  const making = calendar.makings[calendar.scenarios[0]!.making]!;
  const { waiting } = situation(calendar);
  if (!waiting) return STATE_WORDS[calendar.state.code];
  const closed = closedSpan(calendar);
  const shut =
    closed && closed.to >= calendar.on ? [`Leave closed ${stretchText(closed.from, closed.to)}.`] : [];
  const { giveUp } = calendar;
  const end = giveUp === undefined ? [] : [`If there are no eggs by ${dayText(giveUp)}, take her for lost.`];
  return [makingText(making), ...comingText(calendar), ...shut, ...end].join(' ');
}

/** The state in words, marked as likely where it is not sure. */
export function stateText({ code, sure }: QueenCalendar['state']): string {
  return sure
    ? STATE_WORDS[code]
    : `Likely: ${STATE_WORDS[code].charAt(0).toLowerCase()}${STATE_WORDS[code].slice(1)}`;
}

export function readingText(code: ReadingCode): string {
  return READING_WORDS[code];
}

/** A contradiction with its likely readings. */
export function contradictionText({ code, day, readings }: Contradiction): string {
  const said = `${CONTRADICTION_WORDS[code]} (${dayText(day)}).`;
  if (readings.length === 0) return `${said} Nothing known explains it: look at the days recorded.`;
  const words = readings.map((reading) => READING_WORDS[reading]);
  return words.length === 1 ? `${said} Most likely ${words[0]}.` : `${said} Either ${words.join('; or ')}.`;
}

export function taskTitle({ code }: Task): string {
  return TASK_WORDS[code].title;
}

/** The title of a task of which only the uid is at hand, as in an entry that settled it; undefined if it is none of ours. */
export function titleOfTaskUid(uid: string): string | undefined {
  const code = uid.split(':').find((part): part is TaskCode => Object.hasOwn(TASK_WORDS, part));
  return code && TASK_WORDS[code].title;
}

export interface TaskTextOptions {
  /** False leaves out what to do instead, where the screen offers it by itself. */
  readonly ways?: boolean;
}

/** A task in full: when, what, how long it is of use, and what to do when what is hoped for is not there. */
export function taskText(task: Task, { ways: tellsWays = true }: TaskTextOptions = {}): string {
  const { code, kind, from, to, lastUseful, overdue } = task;
  const fallbacks = tellsWays ? task.fallbacks : [];
  const { what } = TASK_WORDS[code];
  const when = kind === 'leave-closed' ? capital(stretchText(from, to)) : capital(spanText(from, to));
  const late = overdue ? ' Overdue.' : '';
  const useful = usefulWords(to, lastUseful);
  const past = overdue && lastUseful !== undefined && lastUseful <= to && TOO_LATE[code];
  const ways = fallbacks.map((fallback) => FALLBACK_WORDS[fallback]);
  const condition = kind === 'look' ? 'If what you hope for is not there' : 'Ways';
  const help = ways.length === 0 ? '' : ` ${condition}: ${listed(ways, 'or')}.`;
  return `${when}, ${what}.${past ? ` ${past}` : late + useful}${help}`;
}

/** A day from which it is of no use any more; one inside the span is a day by which it is better done. */
function usefulWords(to: Day, lastUseful: Day | undefined): string {
  if (lastUseful === undefined) return '';
  return lastUseful < to
    ? ` The sooner the better, best by ${dayText(lastUseful)}.`
    : ` Of use until ${dayText(lastUseful)}.`;
}

/** Cautions that belong to a task and to its fallbacks; empty when there are none. */
export function cautionsFor({ code, fallbacks }: Task): readonly string[] {
  return [code, ...fallbacks].flatMap((word) => CAUTIONS[word] ?? []);
}

/** What is offered for one tap, and what it means. */
export function findingText(finding: FindingCode): { readonly name: string; readonly means: string } {
  return { name: FINDING_WORDS[finding], means: FINDING_MEANS[finding] };
}

/** What to do instead, as a line of its own: "Join with a neighbour". */
export function fallbackText(fallback: FallbackCode): string {
  return capital(FALLBACK_WORDS[fallback]);
}

const MEETING_WORDS: Readonly<Record<DroneMeeting, string>> = {
  ripe: 'These drones are ripe before her first flights.',
  'likely-ripe': 'These drones are likely ripe when she flies.',
  'likely-too-early': 'She likely flies before these drones are ripe',
  'too-early': 'She flies before these drones are ripe',
  unknown: 'No drones or drone brood recorded here: whether any are ripe is not known',
};

/** Whether the virgin meets ripe drones, with the day by which drone eggs had to be laid. */
export function meetingText({ meeting, daysShort, droneEggsBy }: MeetingForecast): string {
  if (meeting === 'ripe' || meeting === 'likely-ripe') return MEETING_WORDS[meeting];
  const short = daysShort > 0 ? `, by about ${daysShort} days` : '';
  return `${MEETING_WORDS[meeting]}${short}. Drone eggs laid by about ${dayText(droneEggsBy)} are ripe in time.`;
}
