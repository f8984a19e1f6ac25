import { dayNumber, type PlainDay } from '../../src/journal/day.ts';
import type { ColonyId, QueenId, YardId } from '../../src/journal/ids.ts';
import { type Worth, workersWorth, worth } from './worth.ts';

/** What is really in the hives of the story, as opposed to what the keeper writes. */
export interface Hive {
  readonly id: ColonyId;
  label: string;
  yard: string;
  /** 1 is a full colony of its season, 0.35 a nucleus. */
  size: number;
  sizeDay: number;
  /** Mites for each bee. */
  mites: number;
  mitesDay: number;
  /** The queens whose daughters fly here, each from the day she began to lay; the first without a beginning. */
  readonly mothers: { readonly queen: string; readonly from: number }[];
  /** The queen who heads it by the keeper's records, and those on their way. */
  head?: string | undefined;
  expected: string[];
  autumnFrames?: number | undefined;
  alive: boolean;
}

export interface StoryQueen {
  readonly id: QueenId;
  readonly own: Worth;
  mates?: Worth;
  readonly year: number;
  marked: boolean;
  /** False once she has been replaced without anybody's knowing. */
  present: boolean;
  expectedIn?: Hive | undefined;
}

export interface StoryYard {
  readonly id: YardId;
  /** Share of the drones that are the keeper's, this season. */
  ownShare: number;
}

/** Days after which the flying and nursing bees are a new queen's own. */
const WORKERS_HERS_DAYS = 42;
const NOBODY: Worth = worth(() => 0);

/** What the bees of a hive show on a day: the daughters of the queen who headed it six weeks before. */
export function shown(hive: Hive, queens: ReadonlyMap<string, StoryQueen>, day: PlainDay): Worth {
  const then = dayNumber(day) - WORKERS_HERS_DAYS;
  const mother = hive.mothers.findLast(({ from }) => from <= then) ?? hive.mothers[0];
  const queen = mother && queens.get(mother.queen);
  return queen ? workersWorth(queen.own, queen.mates ?? NOBODY) : NOBODY;
}

const FULL_FRAMES = 11;
const GROWTH_A_DAY = 0.012;
const FULL_SIZE = 1.05;

/** Frames of bees of a full colony through the year, as a share of its summer strength. */
const SEASON: readonly (readonly [day: string, share: number])[] = [
  ['01-01', 0.7],
  ['04-01', 0.55],
  ['05-01', 0.62],
  ['05-20', 0.82],
  ['06-10', 1],
  ['07-15', 1.1],
  ['08-15', 1],
  ['09-25', 0.85],
  ['12-31', 0.7],
];

function seasonShare(day: PlainDay): number {
  const year = day.slice(0, 4);
  const at = dayNumber(day);
  const points = SEASON.map(
    ([monthDay, share]) => [dayNumber(`${year}-${monthDay}` as PlainDay), share] as const,
  );
  const next = points.findIndex(([number]) => number >= at);
  const [toDay, toShare] = points[next] ?? [at, 0.7];
  const [fromDay, fromShare] = points[next - 1] ?? [at - 1, toShare];
  return fromShare + ((toShare - fromShare) * (at - fromDay)) / (toDay - fromDay);
}

/** Lets a hive grow up to a day: only from mid-April to mid-August, only with a laying queen. */
export function growTo(hive: Hive, day: PlainDay): void {
  const days = daysWithin(hive.sizeDay, dayNumber(day), { first: 105, last: 228 });
  hive.sizeDay = dayNumber(day);
  if (hive.head) hive.size += (FULL_SIZE - hive.size) * (1 - (1 - GROWTH_A_DAY) ** days);
}

/** How many of the days between two day numbers fall into a season given in days of the year. */
function daysWithin(
  from: number,
  to: number,
  season: { readonly first: number; readonly last: number },
): number {
  let days = 0;
  for (let at = from; at < to; at += 1) {
    const dayOfYear = at % 365.25;
    if (dayOfYear > season.first && dayOfYear < season.last) days += 1;
  }
  return days;
}

const BUILD_UP_SHARE = 0.14;

/** How far the season's growth has come: 0 at the end of winter, 1 from the tenth of June on. */
function springPassed(day: PlainDay): number {
  const days = dayNumber(day) - dayNumber(`${day.slice(0, 4)}-04-05` as PlainDay);
  return Math.min(1, Math.max(0, days / 66));
}

/** Frames of bees, before the keeper's eye rounds them. */
export function framesOfBees(hive: Hive, day: PlainDay, buildUp: number): number {
  growTo(hive, day);
  const ahead = 1 + BUILD_UP_SHARE * buildUp * springPassed(day);
  return Math.max(1, FULL_FRAMES * hive.size * seasonShare(day) * ahead);
}

const MITES_GROW_A_DAY = 0.021;
/** How much slower they grow where the bees are one standard deviation better at resisting them. */
const RESISTANCE_A_DAY = 0.01;
const MITES_FLOOR = 0.002;

/** Mites for each bee on a day: they grow with the brood, slower where the bees resist them. */
export function mitesOn(hive: Hive, resistance: number, day: PlainDay): number {
  const days = daysWithin(hive.mitesDay, dayNumber(day), { first: 108, last: 268 });
  hive.mites = Math.min(
    0.25,
    hive.mites * Math.exp((MITES_GROW_A_DAY - RESISTANCE_A_DAY * resistance) * days),
  );
  hive.mitesDay = dayNumber(day);
  return hive.mites;
}

/** A treatment leaves this share of the mites. */
export function treatMites(hive: Hive, left: number): void {
  hive.mites = Math.max(MITES_FLOOR, hive.mites * left);
}
