import {
  dayNumber,
  firstDay,
  isExactDay,
  lastDay,
  type PlainDay,
  type RoughDay,
} from '../../src/journal/day.ts';
import type { Entry, EntryOf } from '../../src/journal/entry.ts';
import type { ColonyId, EntryId, QueenId, YardId } from '../../src/journal/ids.ts';
import { damCertainty, likelyDam, queenTitle, yardOn } from '../../src/registry/queries.ts';
import type { MakingHow, Queen, Registry } from '../../src/registry/state.ts';
import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';

/** How a queen's time ended, as the drawing tells it; `living` and `expected` have not ended. */
export type Fate = 'living' | 'expected' | 'failed' | 'died' | 'left' | 'unknown';

/** One queen as a span of time: what the drawing of the lines is made of. Days are day numbers. */
export interface Life {
  readonly id: QueenId;
  /** Her name, or words that tell her from others without borrowing one. */
  readonly title: string;
  readonly named: boolean;
  /** Founder of her line by the most probable dams. */
  readonly line: QueenId;
  readonly dam?: QueenId;
  readonly damProbability?: number;
  readonly certainty: 'firm' | 'probable' | 'unknown';
  readonly making?: EntryId;
  readonly how?: MakingHow;
  /** Day of the event that made her, else of her emergence, else the first day she is known. */
  readonly start: number;
  /** False when the day of the start is known to the year only, or set between her neighbours. */
  readonly startSure: boolean;
  /** From this day she heads a colony; absent when she never did. */
  readonly laying?: number;
  readonly end?: number;
  readonly fate: Fate;
  /** Winters crossed, by the year of their spring. */
  readonly winters: readonly number[];
  /** Where she is now. */
  readonly colony?: { readonly id: ColonyId; readonly label: string };
  readonly yards: readonly YardId[];
  /** Living laying queens among her descent and herself. */
  readonly livingBelow: number;
  /** Probability that every step of her dam line up to the founder is right. */
  readonly lineProbability: number;
}

/** A start is taken as known when its window is no longer than this. */
const SURE_WINDOW_DAYS = 62;
/** Stands in for the age of a dam at her daughter's birth where one of the two days is not known. */
const USUAL_AGE_DAYS = 340;

/** All queens as spans of time, dams before daughters. */
export function livesOf(registry: Registry, on: PlainDay): readonly Life[] {
  const order = damsFirst(registry);
  const starts = startDays(registry, order, dayNumber(on));
  const lines = founders(order);
  const living = livingBelow(order);
  const sure = lineProbabilities(order);
  return order.map(({ queen, dam }) => {
    const start = starts.get(queen.id) ?? { day: dayNumber(on), sure: false };
    const making = queen.madeBy === undefined ? undefined : registry.makings.get(queen.madeBy);
    return {
      id: queen.id,
      title: queenTitle(queen),
      named: queen.name !== undefined,
      line: lines.get(queen.id) ?? queen.id,
      ...(dam ? { dam, damProbability: likelyDam(queen)?.probability ?? 0 } : {}),
      certainty: dam ? damCertainty(queen) : 'unknown',
      ...(making ? { making: making.id, how: making.how } : {}),
      start: start.day,
      startSure: start.sure,
      ...spanOf(queen, start.day, dayNumber(on)),
      fate: fateOf(queen),
      winters: wintersCrossed(queen, on),
      ...placeOf(registry, queen),
      yards: yardsOf(registry, queen),
      livingBelow: living.get(queen.id) ?? 0,
      lineProbability: sure.get(queen.id) ?? 1,
    };
  });
}

function fateOf({ state }: Queen): Fate {
  if (state.is === 'laying') return 'living';
  if (state.is !== 'gone') return state.is;
  if (state.cause === 'given-away' || state.cause === 'swarmed') return 'left';
  return state.cause === 'not-found' || state.cause === 'unknown' ? 'unknown' : 'died';
}

function mainDam(registry: Registry, queen: Queen): Queen | undefined {
  const dam = likelyDam(queen);
  return dam && dam.probability > 0 ? registry.queens.get(dam.queen) : undefined;
}

/** A queen with the dam she hangs on in the drawing. */
interface Ordered {
  readonly queen: Queen;
  readonly dam: QueenId | undefined;
}

/** Queens with dams before daughters; a circle of dams (a contradiction in the records) is cut where it closes. */
function damsFirst(registry: Registry): readonly Ordered[] {
  const done = new Set<QueenId>();
  const order: Ordered[] = [];
  for (const queen of registry.queens.values()) {
    const path: Queen[] = [];
    const open = new Set<QueenId>();
    for (
      let at: Queen | undefined = queen;
      at && !done.has(at.id) && !open.has(at.id);
      at = mainDam(registry, at)
    ) {
      path.push(at);
      open.add(at.id);
    }
    for (const each of path.reverse()) {
      const dam = mainDam(registry, each);
      order.push({ queen: each, dam: dam && done.has(dam.id) ? dam.id : undefined });
      done.add(each.id);
    }
  }
  return order;
}

function founders(order: readonly Ordered[]): ReadonlyMap<QueenId, QueenId> {
  const founder = new Map<QueenId, QueenId>();
  for (const { queen, dam } of order) founder.set(queen.id, (dam && founder.get(dam)) ?? queen.id);
  return founder;
}

function lineProbabilities(order: readonly Ordered[]): ReadonlyMap<QueenId, number> {
  const sure = new Map<QueenId, number>();
  for (const { queen, dam } of order) {
    const step = dam ? (likelyDam(queen)?.probability ?? 1) : 1;
    sure.set(queen.id, step * ((dam && sure.get(dam)) ?? 1));
  }
  return sure;
}

function livingBelow(order: readonly Ordered[]): ReadonlyMap<QueenId, number> {
  const below = new Map<QueenId, number>();
  for (const { queen, dam } of order.toReversed()) {
    const here = (below.get(queen.id) ?? 0) + (queen.state.is === 'laying' ? 1 : 0);
    below.set(queen.id, here);
    if (dam) below.set(dam, (below.get(dam) ?? 0) + here);
  }
  return below;
}

interface Start {
  readonly day: number;
  readonly sure: boolean;
}

function startDays(
  registry: Registry,
  order: readonly Ordered[],
  today: number,
): ReadonlyMap<QueenId, Start> {
  const starts = new Map<QueenId, Start>();
  const earliestDaughter = new Map<QueenId, number>();
  for (const { queen, dam } of order.toReversed()) {
    const known = knownStart(registry, queen);
    const daughter = earliestDaughter.get(queen.id);
    const day = known?.day ?? (daughter === undefined ? undefined : daughter - USUAL_AGE_DAYS);
    if (day === undefined) continue;
    starts.set(queen.id, {
      day: daughter === undefined ? day : Math.min(day, daughter),
      sure: known?.sure ?? false,
    });
    if (dam) earliestDaughter.set(dam, Math.min(day, earliestDaughter.get(dam) ?? day));
  }
  for (const { queen, dam } of order) {
    const above = dam && starts.get(dam)?.day;
    const own = starts.get(queen.id);
    if (!own) {
      starts.set(queen.id, { day: Math.min(today, (above ?? today) + USUAL_AGE_DAYS), sure: false });
    } else if (above !== undefined && own.day < above) starts.set(queen.id, { ...own, day: above });
  }
  return starts;
}

function knownStart(registry: Registry, queen: Queen): Start | undefined {
  const making = queen.madeBy === undefined ? undefined : registry.makings.get(queen.madeBy);
  if (making && making.how !== 'brought-in') return middle(making.day, queen);
  if (queen.born) return middleOf(dayNumber(queen.born.first), dayNumber(queen.born.last), queen);
  const first = queen.tenures[0]?.from;
  return first && { ...middle(first, queen), sure: false };
}

function middle(day: RoughDay, queen: Queen): Start {
  return middleOf(dayNumber(firstDay(day)), dayNumber(lastDay(day)), queen);
}

/** The middle of a window, but not after she already headed a colony. */
function middleOf(first: number, last: number, queen: Queen): Start {
  const headed = queen.tenures[0];
  const bound = headed ? Math.max(first, Math.min(last, dayNumber(lastDay(headed.from)))) : last;
  return { day: Math.round((first + bound) / 2), sure: last - first <= SURE_WINDOW_DAYS };
}

function spanOf(queen: Queen, start: number, today: number): { laying?: number; end?: number } {
  const first = queen.tenures[0];
  const laying = first && Math.max(start, dayNumber(firstDay(first.layingFrom ?? first.from)));
  const end = endOf(queen, today);
  return {
    ...(laying === undefined ? {} : { laying }),
    ...(end === undefined ? {} : { end: Math.max(end, laying ?? start) }),
  };
}

function endOf({ state, tenures, entries }: Queen, today: number): number | undefined {
  if (state.is === 'laying' || state.is === 'expected') return undefined;
  const day = state.is === 'unknown' ? (tenures.at(-1)?.to ?? entries.at(-1)?.day) : state.day;
  if (day === undefined) return today;
  const winter = isExactDay(day) ? undefined : entries.find(lostInWinter);
  if (winter) return Math.min(today, dayNumber(`${winter.winter}-03-01` as PlainDay));
  return Math.min(today, Math.round((dayNumber(firstDay(day)) + dayNumber(lastDay(day))) / 2));
}

/** Where only the year is known in which a colony was found dead, its end is drawn at that of the winter. */
function lostInWinter(entry: Entry): entry is EntryOf<'winter-outcome'> {
  return entry.kind === 'winter-outcome' && !entry.alive;
}

function placeOf(registry: Registry, queen: Queen): { colony?: { id: ColonyId; label: string } } {
  const open = queen.expectedIn ?? queen.tenures.findLast(({ to }) => to === undefined)?.colony;
  const colony = open && registry.colonies.get(open);
  return colony ? { colony: { id: colony.id, label: colony.label } } : {};
}

/** Every yard at which she headed or is expected in a colony. */
function yardsOf(registry: Registry, queen: Queen): readonly YardId[] {
  const yards = new Set<YardId>();
  const add = (id: ColonyId, on: PlainDay) => {
    const colony = registry.colonies.get(id);
    const yard = colony && yardOn(colony, on);
    if (yard) yards.add(yard);
  };
  for (const { colony, from } of queen.tenures) add(colony, firstDay(from));
  if (queen.expectedIn && queen.state.is === 'expected') add(queen.expectedIn, firstDay(queen.state.since));
  const stays = queen.tenures.at(-1);
  for (const stay of (stays && registry.colonies.get(stays.colony)?.stays) ?? []) {
    if (stays && firstDay(stay.from) >= firstDay(stays.from)) yards.add(stay.yard);
  }
  return [...yards];
}
