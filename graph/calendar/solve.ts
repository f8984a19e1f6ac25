/**
 * The windows of one history: every day on which each event can have happened, given the biology, how the queen
 * was made, and all statements of what was seen.
 *
 *   window(event) = hull, over all choices of one alternative per statement that agree, of the network's range
 *   likely        = the history that follows the usual lengths most closely:
 *                   sum over events of |day - day of its forerunner - usual length| least among the choices
 *
 * Statements with one alternative left are added at once; the rest are tried in turn. Exact: no day inside a
 * single choice's range is impossible, and none outside the hull is possible. Adding a statement only removes
 * choices, so windows never widen.
 * Source: Dechter, Meiri & Pearl 1991, Artificial Intelligence 49:61, sections 2 and 4 (from memory).
 * Cost O(n^2) a bound, n about ten, times the choices that agree; the only disjunctions are 'before she was capped
 * or after she emerged', ordered in time, so k of them leave at most k + 1 choices.
 */
import { BIOLOGY, type BiologyName, type Day, type Window } from './biology.ts';
import { type EventName, eventsFrom, VARIABLE } from './events.ts';
import {
  agrees,
  type Bound,
  copyNetwork,
  follows,
  type Network,
  rangeOf,
  tighten,
  withBounds,
} from './network.ts';
import type { Statement } from './statements.ts';

export type Windows = Readonly<Partial<Record<EventName, Window>>>;

/** Where the likely history starts. */
export interface Start {
  readonly firstEvent: EventName;
  readonly likelyFirst: Day;
}

const USUAL: Readonly<Partial<Record<EventName, readonly [EventName, BiologyName]>>> = {
  hatched: ['laid', 'eggHatch'],
  capped: ['laid', 'queenCapped'],
  emerged: ['laid', 'queenEmergence'],
  mated: ['emerged', 'matingFlight'],
  laying: ['emerged', 'firstEggs'],
  cappedBrood: ['laying', 'workerCapped'],
  firstWorkers: ['laying', 'workerEmergence'],
  allHers: ['laying', 'allHers'],
};

function possible(network: Network, bounds: readonly Bound[]): boolean {
  if (bounds.length === 1) return agrees(network, bounds[0]!);
  return withBounds(network, bounds) !== undefined;
}

/** Adds in place every statement that has come down to one alternative. The rest, or undefined at a contradiction. */
function settle(network: Network, statements: readonly Statement[]): readonly Statement[] | undefined {
  let open = statements;
  for (let moved = true; moved; ) {
    moved = false;
    const next: Statement[] = [];
    for (const statement of open) {
      const left = statement.anyOf.filter((bounds) => possible(network, bounds));
      if (left.length === 0) return undefined;
      if (left.length === 1) {
        for (const bound of left[0]!) if (!tighten(network, bound)) return undefined;
        moved = true;
      } else if (!left.some((bounds) => bounds.every((bound) => follows(network, bound))))
        next.push(statement);
    }
    open = next;
  }
  return open;
}

function forEachChoice(
  network: Network,
  statements: readonly Statement[],
  visit: (choice: Network) => void,
): void {
  const own = copyNetwork(network);
  const open = settle(own, statements);
  if (!open) return;
  const [next, ...rest] = open;
  if (!next) {
    visit(own);
    return;
  }
  for (const bounds of next.anyOf) {
    const branch = withBounds(own, bounds);
    if (branch) forEachChoice(branch, rest, visit);
  }
}

function clip(day: number, { earliest, latest }: { earliest: number; latest: number }): number {
  return Math.min(latest, Math.max(earliest, day));
}

function likelyHistory(choice: Network, start: Start): { days: Map<EventName, Day>; strain: number } {
  const network = copyNetwork(choice);
  const days = new Map<EventName, Day>();
  let strain = 0;
  for (const event of eventsFrom(start.firstEvent)) {
    const usual = USUAL[event];
    const before = usual && days.get(usual[0]);
    const wanted = before === undefined ? start.likelyFirst : before + BIOLOGY[usual![1]].likely;
    const day = clip(wanted, rangeOf(network, VARIABLE[event]));
    tighten(network, { from: 0, to: VARIABLE[event], max: day });
    tighten(network, { from: VARIABLE[event], to: 0, max: -day });
    days.set(event, day);
    strain += Math.abs(day - wanted);
  }
  return { days, strain };
}

/** Windows of all events from the first that the making dates; undefined when nothing agrees with the statements. */
export function solve(network: Network, statements: readonly Statement[], start: Start): Windows | undefined {
  const events = eventsFrom(start.firstEvent);
  const hull = new Map<EventName, { earliest: number; latest: number }>();
  let best: { days: Map<EventName, Day>; strain: number } | undefined;
  forEachChoice(network, statements, (choice) => {
    for (const event of events) {
      const range = rangeOf(choice, VARIABLE[event]);
      const old = hull.get(event) ?? range;
      hull.set(event, {
        earliest: Math.min(old.earliest, range.earliest),
        latest: Math.max(old.latest, range.latest),
      });
    }
    const history = likelyHistory(choice, start);
    if (!best || history.strain < best.strain) best = history;
  });
  const chosen = best;
  if (!chosen) return undefined;
  return Object.fromEntries(
    events.map((event) => [event, { ...hull.get(event)!, likely: chosen.days.get(event)! }]),
  ) as Windows;
}
