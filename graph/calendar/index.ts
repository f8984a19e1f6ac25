/** The queen calendar, the tasks of the colony's year, and the drone side. Days are whole days since 1970-01-01. */
export {
  type Basis,
  BIOLOGY,
  type BiologyName,
  type Day,
  type Duration,
  type Window,
  windowAfter,
} from './biology.ts';
export { type CalendarEvent, type CalendarEventOptions, calendarEvents } from './calendar-events.ts';
export type { Contradiction, ContradictionCode } from './contradiction.ts';
export {
  DRONE_EGG_TO_RIPE,
  type DroneMeeting,
  type DroneSight,
  type DroneStage,
  droneRipeness,
  flightsAfter,
  type MeetingForecast,
  meetsRipeDrones,
} from './drones.ts';
export { EVENTS, type EventName } from './events.ts';
export {
  inferQueenCalendar,
  type QueenCalendar,
  type QueenCalendarInput,
  type Remark,
  type RemarkCode,
  type Scenario,
} from './infer.ts';
export { type BroodLeft, type CellAge, type Making, type MakingKind, raisesCells } from './making.ts';
export type { Observation, Seen, SeenField } from './observation.ts';
export { type ColonyCalendar, tasksFor } from './queen-tasks.ts';
export type { ReadingCode } from './readings.ts';
export {
  calendarText,
  cautionsFor,
  closedSpan,
  contradictionText,
  dayText,
  fallbackText,
  findingText,
  meetingText,
  readingText,
  spanText,
  stateText,
  stretchText,
  type TaskTextOptions,
  taskText,
  taskTitle,
  titleOfTaskUid,
  windowText,
} from './sentences.ts';
export { TASK_DEFAULTS } from './situation.ts';
export type { Windows } from './solve.ts';
export type { Evidence, QueenState, StateCode } from './state.ts';
export {
  type Answer,
  answersFor,
  dueTasks,
  type FallbackCode,
  type FindingCode,
  type QueenTaskCode,
  type Task,
  type TaskCode,
  type TaskKind,
  type YearTaskCode,
} from './task.ts';
export {
  type DaySpan,
  type RunningTreatment,
  type YearSettings,
  type YearState,
  yearTasksFor,
} from './year-tasks.ts';
