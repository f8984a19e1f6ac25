/**
 * Tasks as the entries of a calendar file: whole days, a title and a text. The uid is the task's own, so that a
 * file made again updates the entries of the one before. Writing the file is not done here. Cost O(tasks).
 */
import type { Day } from './biology.ts';
import { cautionsFor, taskText, taskTitle } from './sentences.ts';
import type { Task } from './task.ts';

export interface CalendarEvent {
  readonly uid: string;
  /** First and last day, both included, as days since 1970-01-01. */
  readonly day: Day;
  readonly lastDay: Day;
  readonly title: string;
  readonly description: string;
}

export interface CalendarEventOptions {
  /** What the keeper calls a colony; its id where absent. */
  readonly nameOf?: (colony: string) => string;
  /** The day of writing: what is overdue by then stands in the calendar up to it, and not in the past alone. */
  readonly on?: Day;
}

/** One event a task, in order of day, then uid. */
export function calendarEvents(
  tasks: readonly Task[],
  { nameOf = (colony) => colony, on }: CalendarEventOptions = {},
): readonly CalendarEvent[] {
  return tasks
    .map((task) => ({
      uid: task.uid,
      day: task.from,
      lastDay: task.overdue && on !== undefined ? Math.max(task.to, on) : task.to,
      title: `${nameOf(task.colony)}: ${taskTitle(task)}`,
      description: [taskText(task), ...cautionsFor(task)].join(' '),
    }))
    .sort((a, b) => a.day - b.day || (a.uid < b.uid ? -1 : a.uid > b.uid ? 1 : 0));
}
