import type { Making } from '../../graph/calendar/making.ts';
import type { Observation } from '../../graph/calendar/observation.ts';
import { dayNumber, firstDay, isExactDay, lastDay, type PlainDay, type RoughDay } from '../journal/day.ts';
import type { SplitPart } from '../journal/entries/increase.ts';
import type { Entry, EntryOf } from '../journal/entry.ts';
import type { QueenId } from '../journal/ids.ts';
import type { Colony, Registry } from './state.ts';

/**
 * What the queen calendar is told of a colony: every way by which its next queen may have come since the last one was
 * settled, and everything seen from then on. Entries known only to the month or year tell a calendar nothing.
 */
export interface CalendarFacts {
  readonly makings: readonly Making[];
  readonly observations: readonly Observation[];
  /** Expected or confirmed queens that these makings may have brought, in order. */
  readonly queens: readonly QueenId[];
}

interface Regime {
  makings: Making[];
  observations: Observation[];
  queens: QueenId[];
  settled: boolean;
  /** While cells hang beside a queen who lays on, until when she was there. */
  oldUntil?: number;
}

/** The calendar's facts for a colony by a day, or nothing where no queen was ever made or given there. O(entries of the colony). */
export function calendarFacts(registry: Registry, colony: Colony, on: PlainDay): CalendarFacts | undefined {
  let regime: Regime = { makings: [], observations: [], queens: [], settled: true };
  for (const entry of colony.entries) {
    if (!isExactDay(entry.day) || entry.day > on) continue;
    const made = makingOf(registry, colony, entry);
    if (made) {
      if (regime.settled || made.afresh)
        regime = { makings: [], observations: [], queens: [], settled: false };
      regime.makings.push(made.making);
      if (made.queen) regime.queens.push(made.queen);
      if (made.oldUntil !== undefined) regime.oldUntil = made.oldUntil;
      continue;
    }
    if (entry.kind === 'queen-found') regime = { makings: [], observations: [], queens: [], settled: true };
    if (entry.kind === 'queen-confirmed') regime.settled = true;
    const seen = observationOf(registry, entry);
    if (seen && regime.makings.length > 0) regime.observations.push(beside(seen, regime.oldUntil));
  }
  return regime.makings.length === 0 ? undefined : regime;
}

interface Made {
  readonly making: Making;
  readonly queen?: QueenId;
  readonly oldUntil?: number;
  /** Whatever was on its way before is settled by it. */
  readonly afresh?: boolean;
}

/** A sight of the old queen is no riddle while she is known to be there still. */
function beside(seen: Observation, oldUntil: number | undefined): Observation {
  if (oldUntil === undefined || seen.day > oldUntil || (seen.queen !== 'old' && seen.queen !== 'laying'))
    return seen;
  const { queen: _, ...rest } = seen;
  return rest;
}

/** Last day on which the queen who headed the colony then was there; far ahead while she still is. */
function oldQueenUntil(colony: Colony, day: RoughDay): number | undefined {
  const tenure = colony.tenures.findLast(
    ({ from, to }) => firstDay(from) <= firstDay(day) && (to === undefined || firstDay(to) > firstDay(day)),
  );
  if (!tenure) return undefined;
  return tenure.to === undefined ? number(day) + LAYS_ON_DAYS : dayNumber(lastDay(tenure.to));
}

/** Longer than any queen from these cells can take to lay. */
const LAYS_ON_DAYS = 60;

function makingOf(registry: Registry, colony: Colony, entry: Entry): Made | undefined {
  const day = number(entry.day);
  const eggs = eggsUntil(colony, entry.day);
  switch (entry.kind) {
    case 'split': {
      const part = entry.parts.find((each) => each.colony === colony.id);
      return part && partMaking(registry, part, day);
    }
    case 'cells-given': {
      if (entry.to !== colony.id) return undefined;
      const laid = entry.eggsLaid ? { eggsLaid: number(entry.eggsLaid) } : {};
      return {
        making: { kind: 'cells-given', day, age: entry.age, ...laid, ...eggs },
        queen: entry.expected,
      };
    }
    case 'eggs-given':
      if (entry.to !== colony.id) return undefined;
      return { making: { kind: 'brood-given', day, left: 'both' }, queen: entry.expected };
    case 'queen-expected': {
      const oldUntil = oldQueenUntil(colony, entry.day);
      const until = oldUntil === undefined ? eggs : { eggsUntil: oldUntil };
      const making: Making = { kind: 'cells-left', day, age: 'unknown', ...until };
      return { making, queen: entry.queen, ...(oldUntil === undefined ? {} : { oldUntil }) };
    }
    case 'queen-moved':
      if (entry.to !== colony.id) return undefined;
      return { making: givenQueen(registry, entry.queen, day, entry.how !== 'direct'), queen: entry.queen };
    case 'queen-entered':
      if (entry.laying !== false) return undefined;
      return { making: { kind: 'virgin-given', day, ...eggs }, queen: entry.queen };
    case 'colonies-joined':
      return entry.into === colony.id ? joinedQueen(colony, entry) : undefined;
    case 'queen-lost':
      return headedUntil(colony, entry)
        ? { making: { kind: 'made-queenless', day, left: 'both' } }
        : undefined;
    default:
      return undefined;
  }
}

/** A laying queen who came with the bees of another colony: she is let in without a cage and ends all waiting here. */
function joinedQueen(colony: Colony, { day, queenKept }: EntryOf<'colonies-joined'>): Made | undefined {
  if (queenKept === 'of-the-receiving') return undefined;
  const came = colony.tenures.find(({ from, layingFrom }) => from === day && layingFrom !== undefined);
  if (!came) return undefined;
  const making: Making = { kind: 'mated-queen-given', day: number(day), caged: false };
  return { making, queen: came.queen, afresh: true };
}

/** What a part of a split means for the calendar; nothing where the old queen lays on or nothing is awaited. */
export function partMaking(registry: Registry, part: SplitPart, day: number): Made | undefined {
  const { queen } = part;
  switch (queen.how) {
    case 'raises-own': {
      const making: Making =
        queen.from === 'open-cells' || queen.from === 'capped-cells'
          ? { kind: 'cells-left', day, age: queen.from === 'open-cells' ? 'open' : 'capped' }
          : { kind: 'made-queenless', day, left: 'both' };
      return { making, queen: queen.expected };
    }
    case 'given-cells':
      return { making: { kind: 'cells-given', day, age: queen.age }, queen: queen.expected };
    case 'given-queen':
      return { making: givenQueen(registry, queen.queen, day, true), queen: queen.queen };
    case 'old-queen':
    case 'none':
      return undefined;
  }
}

function givenQueen(registry: Registry, id: QueenId, day: number, caged: boolean): Making {
  const queen = registry.queens.get(id);
  const laid = queen?.tenures.some(({ layingFrom }) => layingFrom !== undefined && number(layingFrom) < day);
  return laid ? { kind: 'mated-queen-given', day, caged } : { kind: 'virgin-given', day };
}

/** Last day on which a queen before this one laid here; her eggs may still be seen for some days. */
function eggsUntil(colony: Colony, day: RoughDay): { readonly eggsUntil?: number } {
  const before = colony.tenures.findLast(({ to }) => to !== undefined && firstDay(to) <= firstDay(day));
  const brought = colony.entries.findLast(
    (entry) =>
      entry.kind === 'frames-moved' && entry.to === colony.id && firstDay(entry.day) <= firstDay(day),
  );
  const days = [before?.to, brought?.day].flatMap((each) => (each ? [dayNumber(lastDay(each))] : []));
  return days.length === 0 ? {} : { eggsUntil: Math.max(...days) };
}

function headedUntil(colony: Colony, entry: EntryOf<'queen-lost'>): boolean {
  return colony.tenures.some((tenure) => tenure.queen === entry.queen && tenure.to === entry.day);
}

function number(day: RoughDay): number {
  return dayNumber(firstDay(day));
}

const CONFIRMED = {
  eggs: { eggs: true },
  'worker-brood': { cappedWorkerBrood: true },
  'queen-laying': { queen: 'laying' },
} as const satisfies Record<EntryOf<'queen-confirmed'>['seen'], Partial<Observation>>;

/** One entry as the calendar sees it. A queen not seen says nothing; a count of cells says whether there were any. */
function observationOf(registry: Registry, entry: Entry): Observation | undefined {
  if (entry.kind === 'queen-confirmed') return { day: number(entry.day), ...CONFIRMED[entry.seen] };
  if (entry.kind !== 'inspection') return undefined;
  const { eggs, youngBrood, cappedWorkerBrood, severalEggsInCells, droneBroodOnly } = entry;
  const queen = queenSeen(registry, entry);
  const seen: Record<string, unknown> = {
    eggs,
    youngBrood,
    cappedWorkerBrood,
    severalEggsInCells,
    droneBroodOnly,
    openCells: any(entry.openCells),
    cappedCells: any(entry.cappedCells),
    emergedCells: any(entry.emergedCells),
    tornCells: any(entry.tornCells),
    queen,
  };
  const known = Object.fromEntries(Object.entries(seen).filter(([, value]) => value !== undefined));
  return Object.keys(known).length === 0 ? undefined : { day: number(entry.day), ...known };
}

function any(count: number | undefined): boolean | undefined {
  return count === undefined ? undefined : count > 0;
}

function queenSeen(registry: Registry, entry: EntryOf<'inspection'>): Observation['queen'] {
  switch (entry.queenSeen) {
    case 'virgin':
      return 'virgin';
    case 'seen-unmarked':
      return 'unmarked';
    case 'seen-marked': {
      const colony = registry.colonies.get(entry.colony);
      const head = colony?.tenures.findLast(({ from }) => firstDay(from) <= firstDay(entry.day));
      const young = head?.to === undefined && head?.layingFrom !== undefined;
      return young ? 'laying' : 'old';
    }
    default:
      return undefined;
  }
}
