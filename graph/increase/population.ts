/**
 * House bees and foragers from day to day, after Khoury, Myerscough & Barron.
 *
 *   N = H + F                    bees of the colony: house bees and foragers
 *   R = a - s F / N              house bees that begin to forage a day (negative: foragers go back to house work)
 *   H' = H + E - H R             E bees emerge that day
 *   F' = F + H R - m F           m foragers are lost a day
 *   eggs that become bees a day = L N / (w + N), from the day the queen lays
 *
 * Brood does not come at once, as in the paper, but by its age: capped brood over workerEmergence - workerCapped days,
 * open brood after it over workerCapped days, eggs workerEmergence days after they are laid.
 * Source: Khoury, Myerscough & Barron 2011, PLoS ONE 6:e18491 (abstract read; equations from memory, and checked
 * by its published limit m = 0.355). Cost O(days). House bees do not die at work in the hive; brood is all fed.
 */
import { BIOLOGY } from '../calendar/biology.ts';

export interface Rates {
  /** a, share a day. */
  readonly firstForaging: number;
  /** s, share a day. */
  readonly foragingHeldBack: number;
  /** m, share a day. */
  readonly foragerLoss: number;
}

export interface Bees {
  readonly house: number;
  readonly foragers: number;
}

/** The bees one day later, when so many emerge that day. */
export function nextDay({ house, foragers }: Bees, emerging: number, rates: Rates): Bees {
  const all = house + foragers;
  if (all <= 0) return { house: emerging, foragers: 0 };
  const begin = rates.firstForaging - (rates.foragingHeldBack * foragers) / all;
  const moved = Math.max(house * begin, -foragers);
  return {
    house: Math.max(0, house + emerging - moved),
    foragers: Math.max(0, foragers + moved - rates.foragerLoss * foragers),
  };
}

/** Eggs that become bees, a day, in a colony of so many bees. */
export function layingRate(bees: number, mostEggs: number, halfStrength: number): number {
  return bees <= 0 ? 0 : (mostEggs * bees) / (halfStrength + bees);
}

export interface BroodStart {
  readonly openBrood: number;
  readonly cappedBrood: number;
  /** Share of this brood that emerges, 0..1. */
  readonly survival: number;
}

const CAPPED_DAYS = BIOLOGY.workerEmergence.likely - BIOLOGY.workerCapped.likely;
const OPEN_DAYS = BIOLOGY.workerCapped.likely;

/** Bees that emerge on a day (1 is tomorrow) from the brood there is now, its ages spread evenly. */
export function emergingFrom({ openBrood, cappedBrood, survival }: BroodStart, day: number): number {
  if (day < 1 || day > CAPPED_DAYS + OPEN_DAYS) return 0;
  const perDay = day <= CAPPED_DAYS ? cappedBrood / CAPPED_DAYS : openBrood / OPEN_DAYS;
  return perDay * survival;
}

export interface ColonyStart {
  readonly bees: Bees;
  readonly brood: BroodStart;
  readonly storesKg: number;
  /** Days from now until a queen lays here; absent when none will. */
  readonly layingFrom?: number;
}

export interface Feeding {
  /** Food of a bee and of an open brood cell, g a day. */
  readonly adultFood: number;
  readonly broodFood: number;
}

export interface Laying {
  readonly mostEggs: number;
  readonly halfStrength: number;
}

/** A colony on one day. Stores are what is left if nothing is brought in; they may run below 0. */
export interface DayState {
  readonly day: number;
  readonly bees: number;
  readonly foragers: number;
  readonly openBrood: number;
  readonly cappedBrood: number;
  readonly storesKg: number;
}

/** What is left of the brood there was at the start, so many days on. */
function firstBroodOn({ openBrood, cappedBrood }: BroodStart, day: number): { open: number; capped: number } {
  const cappedSince = openBrood * Math.min(1, day / OPEN_DAYS);
  const emergedOfThem = openBrood * Math.min(1, Math.max(0, (day - CAPPED_DAYS) / OPEN_DAYS));
  return {
    open: openBrood - cappedSince,
    capped: cappedBrood * Math.max(0, 1 - day / CAPPED_DAYS) + cappedSince - emergedOfThem,
  };
}

/** Day by day from today (day 0) to the last day, both included. */
export function followColony(
  start: ColonyStart,
  rates: Rates & Feeding & Laying,
  lastDay: number,
): readonly DayState[] {
  const states: DayState[] = [];
  const laid: number[] = [];
  let bees = start.bees;
  let storesKg = start.storesKg;
  // Her own brood by age: eggs of the last OPEN_DAYS days are open, those of the CAPPED_DAYS before them capped.
  const hers = { open: 0, capped: 0 };
  for (let day = 0; day <= lastDay; day++) {
    if (day > 0) {
      const fromEggs = laid[day - CAPPED_DAYS - OPEN_DAYS] ?? 0;
      bees = nextDay(bees, emergingFrom(start.brood, day) + fromEggs, rates);
    }
    const all = bees.house + bees.foragers;
    const lays = start.layingFrom !== undefined && day >= start.layingFrom;
    laid.push(lays ? layingRate(all, rates.mostEggs, rates.halfStrength) : 0);
    const closing = laid[day - OPEN_DAYS] ?? 0;
    hers.open += laid[day]! - closing;
    hers.capped += closing - (laid[day - CAPPED_DAYS - OPEN_DAYS] ?? 0);
    const first = firstBroodOn(start.brood, day);
    const [openBrood, cappedBrood] = [first.open + hers.open, first.capped + hers.capped];
    states.push({ day, bees: all, foragers: bees.foragers, openBrood, cappedBrood, storesKg });
    storesKg -= (all * rates.adultFood + openBrood * rates.broodFood) / 1000;
  }
  return states;
}
