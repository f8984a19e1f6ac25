import { dayNumber, firstDay, lastDay, type PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { FrameCounts, Parentage, PossibleDam } from '../journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import type { Colony, Registry, Tenure } from './state.ts';

/** Whose brood hangs in a colony. It is that of the queen who laid it, through however many boxes it was carried. */

/** Oldest age (days since the egg was laid) that brood used for raising queens may have. */
export const OLDEST_DAYS = {
  eggs: 3,
  'young-brood': 6,
  'open-cells': 8,
  'capped-cells': 16,
  cells: 16,
} as const;

/** Boxes through which brood is followed back. */
export const MOST_CARRIES = 3;

/** The colonies of a registry, or of one in the making. */
export interface Colonies {
  get(id: ColonyId): Colony | undefined;
}

/** Days, by number, between which eggs were laid, and the day until which frames may have been carried. */
interface Window {
  readonly from: number;
  readonly to: number;
  readonly until: number;
}

/** Who laid the eggs that are so many days old in a colony on a day, each with her share of the laying. */
export function whoseEggs(
  registry: Pick<Registry, 'colonies'>,
  colony: ColonyId,
  on: PlainDay,
  age: { readonly youngest: number; readonly oldest: number },
): readonly PossibleDam[] {
  const day = dayNumber(on);
  const window = { from: day - age.oldest, to: day - age.youngest, until: day };
  return layersOf(registry.colonies, colony, window);
}

/** Ages (days since the egg was laid) at which a queen cell can be told from a cup. */
const CELL_AGES = { youngest: 3, oldest: OLDEST_DAYS.cells } as const;

/** Who laid the eggs of the queen cells that hang in a colony on a day, or some time in a span of days. */
export function whoseCells(
  colonies: Colonies,
  colony: ColonyId,
  first: PlainDay,
  last: PlainDay,
): readonly PossibleDam[] {
  const window = {
    from: dayNumber(first) - CELL_AGES.oldest,
    to: dayNumber(last) - CELL_AGES.youngest,
    until: dayNumber(last),
  };
  return layersOf(colonies, colony, window);
}

/**
 * Who laid in a window of days what hangs in a colony, each as likely as the share of those days in which she did. In a
 * cell builder the cells are of the graft, whoever else lays there.
 */
function layersOf(colonies: Colonies, id: ColonyId, window: Window): readonly PossibleDam[] {
  const days: DaysOf = new Map();
  const forCells = window.until - window.from >= OLDEST_DAYS.cells;
  const grafts = forCells ? graftsIn(colonies.get(id), window) : [];
  if (grafts.length > 0) for (const { parentage } of grafts) addStated(days, parentage, 1);
  else addLayers(days, colonies, id, window, [id]);
  const sum = [...days.values()].reduce((total, each) => total + each, 0);
  return [...days].flatMap(([queen, each]) => (queen ? [{ queen, probability: each / sum }] : []));
}

/** Days in which each queen laid; under `undefined` those in which a queen did of whom nobody knows. */
type DaysOf = Map<QueenId | undefined, number>;

function addDays(days: DaysOf, queen: QueenId | undefined, more: number): void {
  if (more > 0) days.set(queen, (days.get(queen) ?? 0) + more);
}

function graftsIn(colony: Colony | undefined, { from, until }: Window) {
  return (colony?.entries ?? []).flatMap((entry) =>
    entry.kind === 'graft' && entry.builder === colony?.id && wasBetween(entry, from, until) ? [entry] : [],
  );
}

function wasBetween({ day }: Entry, from: number, until: number): boolean {
  return dayNumber(lastDay(day)) >= from && dayNumber(firstDay(day)) <= until;
}

function addStated(days: DaysOf, { dams }: Parentage, weight: number): void {
  for (const { queen, probability } of dams) addDays(days, queen, probability * weight);
  const known = dams.reduce((total, { probability }) => total + probability, 0);
  if (known < 1 - 1e-9) addDays(days, undefined, (1 - known) * weight);
}

function addLayers(
  days: DaysOf,
  colonies: Colonies,
  id: ColonyId,
  window: Window,
  path: readonly ColonyId[],
): void {
  const colony = colonies.get(id);
  if (!colony) return;
  for (const tenure of colony.tenures) addTenure(days, tenure, window);
  if (path.length > MOST_CARRIES) return;
  for (const entry of colony.entries) {
    if (!wasBetween(entry, window.from, window.until)) continue;
    const from = youngBroodFrom(entry, id);
    if (from === undefined || path.includes(from)) continue;
    const carried = dayNumber(lastDay(entry.day));
    const before = { from: window.from, to: Math.min(window.to, carried), until: carried };
    if (entry.kind === 'cells-given' || entry.kind === 'eggs-given') {
      addStated(days, entry.parentage, Math.max(1, before.to - before.from + 1));
    } else {
      addLayers(days, colonies, from, before, [...path, from]);
    }
  }
}

/** Of the days in which she may have been replaced unseen, half count as hers: as likely before the change as after it. */
const HERS_IN_DOUBT = 0.5;

function addTenure(days: DaysOf, tenure: Tenure, { from, to }: Window): void {
  const start = Math.max(dayNumber(firstDay(tenure.layingFrom ?? tenure.from)), from);
  const end = Math.min(
    tenure.to === undefined ? Number.POSITIVE_INFINITY : dayNumber(lastDay(tenure.to)),
    to,
  );
  const sure = Math.min(end, tenure.surelyUntil === undefined ? end : dayNumber(tenure.surelyUntil));
  const surely = Math.max(0, sure - start + 1);
  const doubtful = Math.max(0, end - start + 1) - surely;
  addDays(days, tenure.queen, surely + HERS_IN_DOUBT * doubtful);
  addDays(days, undefined, (1 - HERS_IN_DOUBT) * doubtful);
}

/** The colony from which an entry brought brood into another, of whatever age. */
export function broodFrom(entry: Entry, to: ColonyId): ColonyId | undefined {
  switch (entry.kind) {
    case 'frames-moved':
    case 'eggs-given':
    case 'cells-given':
      return entry.to === to ? entry.from : undefined;
    case 'split':
      return entry.parts.some((part) => part.colony === to) ? entry.source : undefined;
    case 'colonies-joined':
      return entry.into === to ? entry.colony : undefined;
    default:
      return undefined;
  }
}

/** The same for brood of which queens can be raised: frames said to hold something else do not count. */
function youngBroodFrom(entry: Entry, to: ColonyId): ColonyId | undefined {
  if (entry.kind === 'frames-moved' && !holdsYoungBrood(entry.frames)) return undefined;
  if (entry.kind === 'split') {
    const parts = entry.parts.filter((part) => part.colony === to);
    if (parts.every(({ frames }) => frames && tellsFrames(frames) && !holdsYoungBrood(frames))) {
      return undefined;
    }
  }
  return broodFrom(entry, to);
}

function holdsYoungBrood({ eggs = 0, openBrood = 0, cells = 0 }: FrameCounts): boolean {
  return eggs + openBrood + cells > 0;
}

function tellsFrames(frames: FrameCounts): boolean {
  return Object.values(frames).some((count) => count !== undefined && count > 0);
}
