/**
 * What an observation says about the days of the new queen, given how she was made. Days are whole, and an event of
 * the day of the visit may fall before or after the visit: 'seen on t' means event <= t, 'not yet on t' means
 * event >= t.
 *
 *   eggs seen on t          laying <= t, unless eggs of another queen can still be about (t <= eggsUntil + hatch)
 *   no eggs on t            laying >= t
 *   no larvae on t          laying >= t - eggHatch.latest
 *   capped cells on t       capped <= t, and t <= lastCellEgg + queenEmergence.latest
 *   no capped cells on t    t <= capped  or  emerged <= t        (a disjunction)
 *   emerged cell on t       emerged <= t;  none though others stand: emerged >= t
 *   virgin on t             emerged <= t <= laying
 *
 * A statement is a list of alternatives, each a conjunction of bounds; an empty list cannot be true of this
 * history. Once she lays she is taken to go on laying. Sources: biology.ts. Cost O(observations x fields).
 */
import { BIOLOGY, type Day } from './biology.ts';
import { by, notBefore } from './events.ts';
import type { MakingModel } from './making.ts';
import type { Bound } from './network.ts';
import { type Observation, SEEN_FIELDS, type SeenField } from './observation.ts';

export interface Statement {
  readonly day: Day;
  readonly field: SeenField;
  readonly found: boolean;
  readonly anyOf: readonly (readonly Bound[])[];
}

/** Eggs that were not hers: brought in or laid from day `from`, none later than `until`. */
export interface OtherEggs {
  readonly from: Day;
  readonly until: Day;
}

/** Cells of another making. Cells begun on brood given tell that no virgin was there on that day. */
export interface OtherCells {
  readonly from: Day;
  readonly onBroodGiven: boolean;
}

/** One history, as far as it decides what a sight can mean. */
export interface HistoryContext {
  readonly model: MakingModel;
  readonly otherEggs: readonly OtherEggs[];
  /** Other makings whose cells may be the ones seen. */
  readonly otherCells: readonly OtherCells[];
}

/** True of every history: the sight says nothing. */
const SILENT: readonly (readonly Bound[])[] = [[]];
const IMPOSSIBLE: readonly (readonly Bound[])[] = [];
/** Days for which cells of before may hang in a colony that was given a queen. */
const CELLS_LEFT_OVER = 3;

const OF_QUEENS: readonly SeenField[] = ['queen', 'severalEggsInCells', 'droneBroodOnly'];
const OF_CELLS: readonly SeenField[] = ['cappedCells', 'openCells', 'emergedCells', 'tornCells'];

const only = (...bounds: readonly Bound[]): readonly (readonly Bound[])[] => [bounds];

function othersExplain(context: HistoryContext, day: Day, life: number): boolean {
  return context.otherEggs.some(({ from, until }) => from <= day && day <= until + life);
}

/** What cells mean that may be those of another making; undefined when no other can have them. */
function cellsOfOthers(context: HistoryContext, day: Day, life: number): Statement['anyOf'] | undefined {
  const possible = context.otherCells.filter(({ from }) => from <= day && day <= from + life);
  if (possible.length === 0) return undefined;
  const later = possible.every(({ from, onBroodGiven }) => onBroodGiven && from > context.model.day);
  return later ? only(notBefore('emerged', Math.min(...possible.map(({ from }) => from)))) : SILENT;
}

function broodStatement(context: HistoryContext, day: Day, life: number, age: number): Statement['anyOf'] {
  return othersExplain(context, day, life) ? SILENT : only(by('laying', day - age));
}

function cellSeen(context: HistoryContext, seen: Observation, field: SeenField): Statement['anyOf'] {
  const { day } = seen;
  const { model } = context;
  const others = cellsOfOthers(context, day, BIOLOGY.queenEmergence.latest);
  if (others) return others;
  if (!model.hasCells) return day <= model.day + CELLS_LEFT_OVER ? SILENT : IMPOSSIBLE;
  if (field === 'openCells')
    return day <= model.lastCellEgg + BIOLOGY.queenCapped.latest ? SILENT : IMPOSSIBLE;
  return day <= model.lastCellEgg + BIOLOGY.queenEmergence.latest ? only(by('capped', day)) : IMPOSSIBLE;
}

/** Torn cells say nothing for sure: workers tear them down too. */
function openedCell(context: HistoryContext, seen: Observation): Statement['anyOf'] {
  const { day, emergedCells, cappedCells, openCells } = seen;
  if (!context.model.hasCells || cellsOfOthers(context, day, Number.POSITIVE_INFINITY)) return SILENT;
  if (emergedCells) return only(by('emerged', day));
  return cappedCells || openCells ? only(notBefore('emerged', day)) : SILENT;
}

function queenStatement(seen: Observation): Statement['anyOf'] {
  const { day } = seen;
  switch (seen.queen) {
    case 'old':
      return IMPOSSIBLE;
    case 'virgin':
      return only(by('emerged', day), notBefore('laying', day));
    case 'unmarked':
      return only(by('emerged', day));
    default:
      return only(by('laying', day));
  }
}

function noCappedCells(context: HistoryContext, seen: Observation): Statement['anyOf'] {
  const { day } = seen;
  if (!context.model.hasCells) return SILENT;
  const own = !cellsOfOthers(context, day, Number.POSITIVE_INFINITY);
  if (own && seen.openCells && seen.emergedCells === false) return only(notBefore('capped', day));
  return [[notBefore('capped', day)], [by('emerged', day)]];
}

function broodAlternatives(
  context: HistoryContext,
  seen: Observation,
  field: SeenField,
): Statement['anyOf'] | undefined {
  const { day } = seen;
  const hatch = BIOLOGY.eggHatch;
  switch (field) {
    case 'eggs':
      return seen.eggs ? broodStatement(context, day, hatch.latest, 0) : only(notBefore('laying', day));
    case 'youngBrood':
      return seen.youngBrood
        ? broodStatement(context, day, hatch.latest + 3, hatch.earliest)
        : only(notBefore('laying', day - hatch.latest));
    case 'openBrood':
      return seen.openBrood
        ? broodStatement(context, day, BIOLOGY.workerCapped.latest, hatch.earliest)
        : only(notBefore('laying', day - hatch.latest));
    case 'cappedWorkerBrood':
      if (!seen.cappedWorkerBrood) return only(notBefore('cappedBrood', day));
      return othersExplain(context, day, BIOLOGY.workerEmergence.latest)
        ? SILENT
        : only(by('cappedBrood', day));
    default:
      return undefined;
  }
}

function alternatives(context: HistoryContext, seen: Observation, field: SeenField): Statement['anyOf'] {
  const brood = broodAlternatives(context, seen, field);
  if (brood) return brood;
  switch (field) {
    case 'openCells':
      return seen.openCells ? cellSeen(context, seen, field) : SILENT;
    case 'cappedCells':
      return seen.cappedCells ? cellSeen(context, seen, field) : noCappedCells(context, seen);
    case 'emergedCells':
      return openedCell(context, seen);
    case 'queen':
      return queenStatement(seen);
    case 'severalEggsInCells': {
      const young = only(by('laying', seen.day), notBefore('laying', seen.day - BIOLOGY.severalEggs.latest));
      return seen.severalEggsInCells ? young : SILENT;
    }
    case 'droneBroodOnly':
      return seen.droneBroodOnly ? IMPOSSIBLE : SILENT;
    default:
      return SILENT;
  }
}

/**
 * The statements of one observation about one history, in the order of `SEEN_FIELDS`; silent ones and those of
 * days before the making are left out.
 */
export function statementsOf(context: HistoryContext, seen: Observation): readonly Statement[] {
  const { day, broughtIn } = context.model;
  if (seen.day < day) return [];
  // On the day itself the sight may come before the work: the old queen is found and taken out, cells are hung.
  const before = seen.day > day ? [] : broughtIn ? [...OF_QUEENS, ...OF_CELLS] : OF_QUEENS;
  return SEEN_FIELDS.filter((field) => seen[field] !== undefined && !before.includes(field))
    .map((field) => ({
      day: seen.day,
      field,
      found: seen[field] !== false,
      anyOf: alternatives(context, seen, field),
    }))
    .filter(({ anyOf }) => !anyOf.some((bounds) => bounds.length === 0));
}
