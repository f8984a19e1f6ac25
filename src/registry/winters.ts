import type { WinterObservation } from '../../graph/merit/observations.ts';
import { dayNumber, isExactDay, lastDay, type PlainDay, yearOf } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { ColonyId } from '../journal/ids.ts';
import { workersOf } from './attribution.ts';
import { yardOn } from './queries.ts';
import type { Colony, Registry } from './state.ts';

/** Winters as observations: who came through, who did not, and how strong before and after. */

/** Causes of an end that a winter may have. A colony sold in January was not lost to it. */
const WINTER_LOSS: ReadonlySet<string> = new Set([
  'winter',
  'starved',
  'mites',
  'queenless',
  'damp-or-cold',
  'animal-or-weather',
  'disease',
  'unknown',
]);

/**
 * The winter that an entry tells of: an outcome, or the end of a colony between 1 November and 30 April by a cause
 * that a winter may have. Strength that the outcome leaves out is taken from the inspections around that winter.
 */
export function winterOf(registry: Registry, entry: Entry): WinterObservation | undefined {
  if (entry.kind === 'winter-outcome') {
    const { autumnFramesOfBees, springFramesOfBees } = entry;
    return winter(registry, entry, entry.colony, entry.winter, entry.alive, {
      ...(autumnFramesOfBees === undefined ? {} : { autumnFramesOfBees }),
      ...(springFramesOfBees === undefined ? {} : { springFramesOfBees }),
      ...(entry.cause ? { cause: entry.cause } : {}),
    });
  }
  if (entry.kind !== 'colony-ended' || !WINTER_LOSS.has(entry.cause) || !isExactDay(entry.day))
    return undefined;
  const month = Number(entry.day.slice(5, 7));
  if (month > 4 && month < 11) return undefined;
  const spring = month >= 11 ? yearOf(entry.day) + 1 : yearOf(entry.day);
  return winter(registry, entry, entry.colony, spring, false, { cause: entry.cause });
}

function winter(
  registry: Registry,
  entry: Entry,
  colony: ColonyId,
  season: number,
  alive: boolean,
  facts: Pick<WinterObservation, 'cause' | 'autumnFramesOfBees' | 'springFramesOfBees'>,
): WinterObservation {
  const record = registry.colonies.get(colony);
  const intoWinter = `${season - 1}-12-01` as PlainDay;
  const yard = record && yardOn(record, intoWinter);
  return {
    kind: 'winter',
    id: entry.id,
    day: dayNumber(lastDay(entry.day)),
    dayExact: isExactDay(entry.day),
    colony,
    ...(yard ? { yard } : {}),
    season,
    alive,
    workers: workersOf(registry, colony, intoWinter),
    ...strengthAround(record, season),
    ...facts,
  };
}

/** Frames of bees at the last inspection from September to December, and at the first from March to mid May. */
function strengthAround(
  colony: Colony | undefined,
  season: number,
): Pick<WinterObservation, 'autumnFramesOfBees' | 'springFramesOfBees'> {
  const counted = (first: string, last: string) => (entry: Entry) =>
    entry.kind === 'inspection' &&
    entry.framesOfBees !== undefined &&
    isExactDay(entry.day) &&
    entry.day >= first &&
    entry.day <= last;
  const entries = colony?.entries ?? [];
  const autumn = framesIn(entries.findLast(counted(`${season - 1}-09-01`, `${season - 1}-12-31`)));
  const spring = framesIn(entries.find(counted(`${season}-03-01`, `${season}-05-15`)));
  return {
    ...(autumn === undefined ? {} : { autumnFramesOfBees: autumn }),
    ...(spring === undefined ? {} : { springFramesOfBees: spring }),
  };
}

function framesIn(entry: Entry | undefined): number | undefined {
  return entry?.kind === 'inspection' ? entry.framesOfBees : undefined;
}
