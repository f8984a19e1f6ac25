/**
 * An invented colony whose whole truth is known: every egg, larva and cell with its own days, and what an honest
 * keeper would see on any day. It is written forward from the biology (each insect develops by itself) and shares
 * no code with the inference that it tests; only the ranges come from the same table.
 */
import { BIOLOGY, type BiologyName } from '../../graph/calendar/biology.ts';
import type { EventName } from '../../graph/calendar/events.ts';
import type { Making } from '../../graph/calendar/making.ts';
import type { Observation, Seen } from '../../graph/calendar/observation.ts';

/** A small seeded generator (mulberry32, public domain): numbers in 0..1. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export type Chance = () => number;

/** Whole number from..to, both included. */
export const between = (chance: Chance, from: number, to: number): number =>
  from + Math.floor(chance() * (to - from + 1));

const length = (chance: Chance, name: BiologyName): number =>
  between(chance, BIOLOGY[name].earliest, BIOLOGY[name].latest);

const within = (value: number, name: BiologyName): boolean =>
  value >= BIOLOGY[name].earliest && value <= BIOLOGY[name].latest;

/** Times are days with a fraction: the hour counts only against the hour of the visit. */
const atSomeHour = (chance: Chance, day: number): number => day + chance() * 0.98 + 0.01;

interface Worker {
  readonly laid: number;
  readonly hatched: number;
  readonly capped: number;
  readonly emerged: number;
}

interface Cell extends Worker {
  readonly started: number;
  tornDown: number;
}

function worker(chance: Chance, laid: number): Worker {
  for (;;) {
    const capped = laid + length(chance, 'workerCapped');
    const emerged = laid + length(chance, 'workerEmergence');
    if (!within(emerged - capped, 'workerCappedToEmergence')) continue;
    const hatched = laid + length(chance, 'eggHatch');
    const [at, hatchedAt] = [atSomeHour(chance, laid), atSomeHour(chance, hatched)];
    return {
      laid: at,
      hatched: hatchedAt,
      capped: atSomeHour(chance, capped),
      emerged: atSomeHour(chance, emerged),
    };
  }
}

function queenDays(chance: Chance, laid: number): { hatched: number; capped: number; emerged: number } {
  for (;;) {
    const hatched = laid + length(chance, 'eggHatch');
    const capped = hatched + length(chance, 'queenLarvaFed');
    const emerged = capped + length(chance, 'queenCappedToEmergence');
    if (within(capped - laid, 'queenCapped') && within(emerged - laid, 'queenEmergence'))
      return { hatched, capped, emerged };
  }
}

/** A cell whose days satisfy `accept`; eggs tried from `from` to `to`. */
function cell(
  chance: Chance,
  [from, to]: readonly [number, number],
  started: (hatched: number) => number,
  accept: (days: { laid: number; hatched: number; capped: number; emerged: number }) => boolean,
): Cell {
  for (let tries = 0; tries < 10_000; tries++) {
    const laid = between(chance, from, to);
    const days = { laid, ...queenDays(chance, laid) };
    if (!accept(days)) continue;
    return {
      laid: atSomeHour(chance, days.laid),
      hatched: atSomeHour(chance, days.hatched),
      capped: atSomeHour(chance, days.capped),
      emerged: atSomeHour(chance, days.emerged),
      started: Math.min(atSomeHour(chance, started(days.hatched)), days.capped),
      tornDown: Number.POSITIVE_INFINITY,
    };
  }
  throw new Error('No cell fits: the helper asks for the impossible.');
}

export interface Truth {
  readonly making: Making;
  /** The true day of each event. */
  readonly days: Readonly<Record<EventName, number>>;
  readonly see: (time: number, chance: Chance) => Observation;
}

const KINDS = [
  'made-queenless',
  'brood-given',
  'cells-given',
  'cells-left',
  'graft',
  'virgin-given',
  'mated-queen-given',
] as const;

type Kind = (typeof KINDS)[number];

interface Begun {
  readonly making: Making;
  readonly cells: Cell[];
  readonly othersUntil: number;
}

function begin(chance: Chance, day: number, kinds: readonly Kind[] = KINDS): Begun {
  const kind = kinds[between(chance, 0, kinds.length - 1)]!;
  const many = between(chance, 1, 7);
  const cells = (make: () => Cell): Cell[] => Array.from({ length: many }, make);
  const emergency = (hatched: number): number => Math.max(day, hatched) + between(chance, 0, 2);
  switch (kind) {
    case 'made-queenless':
    case 'brood-given': {
      const left = (['eggs', 'young-brood', 'both'] as const)[between(chance, 0, 2)]!;
      const fits = (hatched: number): boolean =>
        left === 'eggs' ? hatched >= day : hatched >= day - 3 && (left === 'both' || hatched <= day);
      const made = cells(() => cell(chance, [day - 7, day], emergency, ({ hatched }) => fits(hatched)));
      return { making: { kind, day, left }, cells: made, othersUntil: day };
    }
    case 'cells-given':
    case 'cells-left': {
      const age = (['open', 'capped', 'emerging', 'unknown'] as const)[between(chance, 0, 3)]!;
      const made = cells(() =>
        cell(
          chance,
          [day - 17, day],
          (hatched) => hatched - 3,
          ({ capped, emerged }) =>
            emerged >= day &&
            (age === 'open'
              ? capped >= day
              : age === 'unknown' || (capped <= day && (age === 'capped' || emerged <= day + 3))),
        ),
      );
      return { making: { kind, day, age }, cells: made, othersUntil: day };
    }
    case 'graft': {
      const [first, second] = [chance() * 2, chance() * 2];
      const [from, to] = [Math.min(first, second), Math.max(first, second)];
      const made = cells(() =>
        cell(
          chance,
          [day - 8, day],
          () => day,
          ({ hatched }) => hatched >= day - Math.ceil(to) && hatched <= day - Math.floor(from),
        ),
      );
      return {
        making: { kind, day, larvaAgeFrom: from, larvaAgeTo: to },
        cells: made,
        othersUntil: day,
      };
    }
    case 'virgin-given': {
      const emerged = day - length(chance, 'virginAge');
      const known = chance() < 0.5;
      return { making: { kind, day, ...(known && { emerged }) }, cells: [], othersUntil: day };
    }
    default:
      return { making: { kind, day, caged: chance() < 0.5 }, cells: [], othersUntil: day };
  }
}

/** First day of something among the cells that come to be capped. */
function firstDay(cells: readonly Cell[], of: (cell: Cell) => number): number {
  return Math.floor(Math.min(...cells.filter(({ capped, tornDown }) => tornDown > capped).map(of)));
}

/** Tears down what the first virgin finds; now and then workers tear one down before it is capped. */
function tearDown(chance: Chance, cells: Cell[]): void {
  const out = Math.min(...cells.map(({ emerged }) => emerged));
  for (const one of cells) {
    if (one.emerged === out) one.tornDown = out + 4 + chance() * 10;
    else one.tornDown = out + chance() * 3;
  }
  const spare = cells.find(({ emerged }) => emerged !== out);
  if (spare && chance() < 0.3) spare.tornDown = Math.min(spare.tornDown, spare.capped - 0.01 - chance());
}

/** Draws one colony; everything about it follows from the seed. */
export function colonyTruth(seed: number, day = 20_000): Truth {
  const chance = seeded(seed);
  const { making, cells, othersUntil } = begin(chance, day);
  const given = making.kind === 'virgin-given' || making.kind === 'mated-queen-given';
  if (!given) tearDown(chance, cells);
  let emerged = given ? day : firstDay(cells, (one) => one.emerged);
  if (making.kind === 'virgin-given') emerged = making.emerged ?? day - length(chance, 'virginAge');
  let mated = 0;
  let laying = 0;
  do {
    mated = emerged + length(chance, 'matingFlight');
    laying = mated + length(chance, 'flightToEggs');
  } while (!within(laying - emerged, 'firstEggs'));
  if (making.kind === 'mated-queen-given') {
    laying = day + length(chance, making.caged ? 'cagedQueenLays' : 'freeQueenLays');
  }
  const others = Array.from({ length: 30 }, (_, back) => worker(chance, othersUntil - back));
  const hers = Array.from({ length: 80 }, (_, after) => worker(chance, laying + after));
  const days = {
    laid: firstDay(cells, (one) => one.laid),
    hatched: firstDay(cells, (one) => one.hatched),
    capped: firstDay(cells, (one) => one.capped),
    emerged,
    mated,
    laying,
    cappedBrood: Math.floor(Math.min(...hers.map(({ capped }) => capped))),
    firstWorkers: Math.floor(Math.min(...hers.map((one) => one.emerged))),
    allHers: laying + length(chance, 'allHers'),
  };
  const firstEgg = hers[0]!.laid;
  const out = given ? emerged : Math.min(...cells.map((one) => one.emerged));
  const brood = [...others, ...hers];
  return { making, days, see: (time, hour) => sight({ making, brood, cells, firstEgg, out }, time, hour) };
}

interface Inside {
  readonly making: Making;
  readonly brood: readonly Worker[];
  readonly cells: readonly Cell[];
  readonly firstEgg: number;
  readonly out: number;
}

/** What an honest keeper sees at a time, of the fields that chance makes them look at. */
function sight({ making, brood, cells, firstEgg, out }: Inside, time: number, chance: Chance): Observation {
  const standing = cells.filter(({ tornDown }) => time < tornDown);
  const all: Seen = {
    eggs: brood.some(({ laid, hatched }) => laid <= time && time < hatched),
    youngBrood: brood.some(({ hatched, capped }) => hatched <= time && time < Math.min(hatched + 3, capped)),
    openBrood: brood.some(({ hatched, capped }) => hatched <= time && time < capped),
    cappedWorkerBrood: brood.some(({ capped, emerged }) => capped <= time && time < emerged),
    openCells: standing.some(({ started, capped }) => started <= time && time < capped),
    cappedCells: standing.some(({ capped, emerged }) => capped <= time && time < emerged),
    emergedCells: standing.some(({ emerged }) => emerged <= time),
    tornCells: cells.some(({ tornDown }) => tornDown <= time && time < tornDown + 6),
  };
  const looked = Object.fromEntries(Object.entries(all).filter(() => chance() < 0.5)) as Seen;
  const day = Math.floor(time);
  const queen = time < out ? undefined : time >= firstEgg ? 'laying' : 'virgin';
  if (!queen || chance() < 0.7) return { day, ...looked };
  if (making.kind === 'mated-queen-given' && queen === 'virgin') return { day, ...looked };
  return { day, ...looked, queen: chance() < 0.3 ? 'unmarked' : queen };
}

/**
 * A colony with two hopes: made queenless, and given cells a few days later. The first virgin of either heads it; her
 * days are those of the making she comes from.
 */
export function twoHopes(seed: number, day = 20_000): Truth & { readonly makings: readonly Making[] } {
  const chance = seeded(seed);
  const own = begin(chance, day, ['made-queenless']);
  const given = begin(chance, day + between(chance, 0, 7), ['cells-given']);
  const cells = [...own.cells, ...given.cells];
  tearDown(chance, cells);
  const out = Math.min(...cells.map(({ emerged }) => emerged));
  const from = given.cells.some(({ emerged }) => emerged === out) ? given : own;
  const emerged = Math.floor(out);
  let mated = 0;
  let laying = 0;
  do {
    mated = emerged + length(chance, 'matingFlight');
    laying = mated + length(chance, 'flightToEggs');
  } while (!within(laying - emerged, 'firstEggs'));
  const others = Array.from({ length: 30 }, (_, back) => worker(chance, day - back));
  const hers = Array.from({ length: 80 }, (_, after) => worker(chance, laying + after));
  const days = {
    laid: firstDay(from.cells, (one) => one.laid),
    hatched: firstDay(from.cells, (one) => one.hatched),
    capped: firstDay(from.cells, (one) => one.capped),
    emerged,
    mated,
    laying,
    cappedBrood: Math.floor(Math.min(...hers.map(({ capped }) => capped))),
    firstWorkers: Math.floor(Math.min(...hers.map((one) => one.emerged))),
    allHers: laying + length(chance, 'allHers'),
  };
  const hungFrom = given.making.day;
  const inside = { making: own.making, brood: [...others, ...hers], firstEgg: hers[0]!.laid, out };
  const see = (time: number, hour: Chance): Observation =>
    sight({ ...inside, cells: time < hungFrom + 1 ? own.cells : cells }, time, hour);
  return { making: own.making, makings: [own.making, given.making], days, see };
}
