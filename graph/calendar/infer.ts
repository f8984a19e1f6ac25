/**
 * The queen calendar of a colony by inference: from how she was made and everything seen since, the window of each
 * event in her life, what contradicts the record and what may explain it, and the state of the colony.
 *
 *   windows = hull over the makings that agree with all sights; if none agrees, those of the likeliest reading
 *             that does; if none does either, the record with the contradicting sights set aside
 *
 * The making taken as likeliest is the latest that agrees: a keeper gives brood or cells because the earlier
 * hope has faded. Sources: biology.ts, solve.ts. Cost one `solve` a making, and a few more at a contradiction.
 * Unknown: fields not looked at say nothing; a queen not seen says nothing.
 */
import { BIOLOGY, type Day, type Window, windowAfter } from './biology.ts';
import { agreement, byPlausibility, type Contradiction } from './contradiction.ts';
import { EVENTS, type EventName } from './events.ts';
import { historyOf, type Outcome, outcomeOf, statementsAbout } from './history.ts';
import { type Making, raisesCells } from './making.ts';
import { inOrder, type Observation } from './observation.ts';
import { READINGS, type ReadingCode } from './readings.ts';
import type { Windows } from './solve.ts';
import { type Evidence, type QueenState, stateOn } from './state.ts';

export interface QueenCalendarInput {
  /** Every way by which a queen may have come, in order of day; at least one. */
  readonly making: Making | readonly Making[];
  readonly observations: readonly Observation[];
  readonly on: Day;
}

/** A history held possible. `making` is the index of the making it starts from. */
export interface Scenario extends Outcome {
  readonly code: ReadingCode;
  readonly making: number;
}

export type RemarkCode = 'no-cells' | 'several-eggs' | 'torn-cells';

/** A sight that agrees with the record and still asks for a second look. */
export interface Remark {
  readonly code: RemarkCode;
  readonly day: Day;
}

export interface QueenCalendar {
  readonly makings: readonly Making[];
  readonly observations: readonly Observation[];
  readonly on: Day;
  /** Likeliest first; never empty. */
  readonly scenarios: readonly Scenario[];
  readonly windows: Windows;
  readonly contradictions: readonly Contradiction[];
  readonly remarks: readonly Remark[];
  readonly state: QueenState;
  readonly evidence: Evidence;
  /** A queen who has not laid by this day is taken to have failed. Absent where none is awaited, or she lays. */
  readonly giveUp?: Day;
  /** When laying workers are to be feared if no queen follows. */
  readonly layingWorkers: Window;
}

function hull(scenarios: readonly Scenario[]): Windows {
  const found = EVENTS.map((event): [EventName, Window] | undefined => {
    const windows = scenarios.flatMap((scenario) => scenario.windows[event] ?? []);
    const [first] = windows;
    if (!first) return undefined;
    const earliest = Math.min(...windows.map((window) => window.earliest));
    const latest = Math.max(...windows.map((window) => window.latest));
    return [event, { earliest, likely: first.likely, latest }];
  });
  return Object.fromEntries(found.filter((entry) => entry !== undefined)) as Windows;
}

function asRecorded(makings: readonly Making[], observations: readonly Observation[]): Scenario[] {
  return makings
    .map((_, index): Scenario | undefined => {
      const history = historyOf(makings, index);
      const outcome = outcomeOf(history, statementsAbout(history, observations));
      return outcome && { code: 'as-recorded', making: index, ...outcome };
    })
    .filter((scenario) => scenario !== undefined)
    .reverse();
}

interface Explained {
  readonly scenarios: readonly Scenario[];
  readonly windows: Windows;
  readonly contradictions: readonly Contradiction[];
}

function explain(makings: readonly Making[], observations: readonly Observation[]): Explained {
  const index = makings.length - 1;
  const history = historyOf(makings, index);
  const { windows, setAside } = agreement(history, statementsAbout(history, observations));
  const agreeing = READINGS.flatMap(([code, reading]) => {
    const found = reading({ makings, index, observations });
    return found ? [{ code, making: index, ...found }] : [];
  });
  const codes = agreeing.map(({ code }) => code);
  const order = byPlausibility(setAside[0]!.code, codes, observations);
  const scenarios = order.map((code) => agreeing.find((scenario) => scenario.code === code)!);
  const contradictions = setAside.map(({ code, day, field, found }) => ({
    code,
    day,
    field,
    found,
    readings: byPlausibility(code, codes, observations),
  }));
  if (scenarios[0]) return { scenarios, windows: scenarios[0].windows, contradictions };
  return { scenarios: [{ code: 'as-recorded', making: index, windows }], windows, contradictions };
}

function remarksOf(
  makings: readonly Making[],
  observations: readonly Observation[],
  windows: Windows,
): Remark[] {
  const making = makings.at(-1)!;
  const cellsBy = making.day + BIOLOGY.lastCellStarted.likely;
  return observations
    .filter(({ day }) => day >= making.day)
    .flatMap((seen): Remark[] => {
      const { day } = seen;
      const none =
        seen.openCells === false && seen.cappedCells === false && !seen.emergedCells && !seen.tornCells;
      const awaited = raisesCells(making) && day >= cellsBy && day < (windows.emerged?.earliest ?? day);
      return [
        ...(none && awaited ? [{ code: 'no-cells' as const, day }] : []),
        ...(seen.severalEggsInCells ? [{ code: 'several-eggs' as const, day }] : []),
        ...(seen.tornCells ? [{ code: 'torn-cells' as const, day }] : []),
      ];
    });
}

/** No cells where cells must hang, and none seen since. */
function noCellsStands(remarks: readonly Remark[], observations: readonly Observation[]): boolean {
  const none = remarks.filter(({ code }) => code === 'no-cells').at(-1);
  return (
    none !== undefined &&
    !observations.some(
      ({ day, openCells, cappedCells, emergedCells }) =>
        day >= none.day && (openCells || cappedCells || emergedCells),
    )
  );
}

/** Laying workers are held off by brood: reckoned from the last day on which the colony had a queen's eggs. */
function layingWorkersWindow(makings: readonly Making[]): Window {
  const withBrood = makings.filter(({ kind }) => kind === 'made-queenless' || kind === 'brood-given');
  return windowAfter((withBrood.at(-1) ?? makings[0]!).day, 'layingWorkers');
}

/**
 * The calendar of one colony. Days are whole days since 1970-01-01. Adding an honest observation never widens a
 * window, and the windows hold the truth as long as the biology table and the record do.
 */
export function inferQueenCalendar({ making, observations, on }: QueenCalendarInput): QueenCalendar {
  const makings = Array.isArray(making) ? (making as readonly Making[]) : [making as Making];
  if (makings.length === 0) throw new Error('A queen calendar needs at least one making.');
  const seen = inOrder(observations).filter(({ day }) => day <= on);
  const recorded = asRecorded(makings, seen);
  const { scenarios, windows, contradictions } =
    recorded.length > 0
      ? { scenarios: recorded, windows: hull(recorded), contradictions: [] }
      : explain(makings, seen);
  const first = scenarios[0]!;
  const remarks = remarksOf(makings, seen, windows);
  const { hersSince } = first;
  const evidence = { ...(hersSince !== undefined && { hersSince }), noCells: noCellsStands(remarks, seen) };
  const state = stateOn(first.code, first.windows, evidence, on);
  const shared = { makings, observations: seen, on, scenarios, windows, contradictions, remarks };
  const layingWorkers = layingWorkersWindow(makings);
  const giveUp = hersSince === undefined && windows.laying && { giveUp: windows.laying.latest };
  return { ...shared, state, evidence, ...giveUp, layingWorkers };
}
