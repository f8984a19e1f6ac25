import type { TraitObservation, TreatmentState, WinterObservation } from '../../graph/merit/observations.ts';
import {
  addDays,
  dayNumber,
  firstDay,
  isExactDay,
  lastDay,
  type PlainDay,
  type RoughDay,
  yearOf,
} from '../journal/day.ts';
import type { Entry, EntryOf } from '../journal/entry.ts';
import type { ColonyId } from '../journal/ids.ts';
import { workersOf } from './attribution.ts';
import { yardOn } from './queries.ts';
import type { Colony, Registry, TreatmentSpan } from './state.ts';

/**
 * The observations of a registry as the traits read them: each with the queen whose workers made it, the yard and
 * season it is compared in, and for a mite count the treatment that may have spoilt it. O(entries).
 */
export function traitObservations(registry: Registry): readonly TraitObservation[] {
  const treatments = treatmentsByColony(registry);
  const winters = new Map<string, WinterObservation>();
  const observations: TraitObservation[] = [];
  for (const entry of registry.entries) {
    const winter = winterOf(registry, entry);
    if (winter) {
      const key = `${winter.colony} ${winter.season}`;
      if (entry.kind === 'winter-outcome' || !winters.has(key)) winters.set(key, winter);
      continue;
    }
    const observation = observationOf(registry, entry, treatments);
    if (observation) observations.push(observation);
  }
  return [...observations, ...winters.values()];
}

/** What every observation has. The day of one known only to the month or year is the last it may be. */
function shared(registry: Registry, entry: Entry, colony: ColonyId) {
  const record = registry.colonies.get(colony);
  const yard = record && yardOn(record, lastDay(entry.day));
  return {
    id: entry.id,
    day: dayNumber(lastDay(entry.day)),
    dayExact: isExactDay(entry.day),
    colony,
    ...(yard ? { yard } : {}),
    season: yearOf(entry.day),
    workers: workersOf(registry, colony, entry.day),
  };
}

function observationOf(
  registry: Registry,
  entry: Entry,
  treatments: ReadonlyMap<ColonyId, readonly TreatmentSpan[]>,
): TraitObservation | undefined {
  switch (entry.kind) {
    case 'inspection':
      return { kind: 'inspection', ...shared(registry, entry, entry.colony), ...inspected(registry, entry) };
    case 'mite-count': {
      const treatment = treatmentOn(treatments.get(entry.colony) ?? [], entry.day);
      const about = shared(registry, entry, entry.colony);
      return { kind: 'mite-count', ...about, sample: entry.sample, ...(treatment ? { treatment } : {}) };
    }
    case 'hygienic-test': {
      const { method, cells, notCleared, hours } = entry;
      return {
        kind: 'hygienic-test',
        ...shared(registry, entry, entry.colony),
        method,
        cells,
        notCleared,
        hours,
      };
    }
    case 'harvest':
      return { kind: 'harvest', ...shared(registry, entry, entry.colony), kilograms: entry.kilograms };
    default:
      return undefined;
  }
}

const SCORED = ['gentle', 'calm', 'swarmTendency', 'framesOfBees', 'framesOfBrood', 'broodPattern'] as const;

function inspected(
  registry: Registry,
  entry: EntryOf<'inspection'>,
): Partial<Record<(typeof SCORED)[number], number>> {
  const fields = dividedBefore(registry, entry) ? SCORED.filter((field) => !STRENGTH.has(field)) : SCORED;
  return Object.fromEntries(
    fields.flatMap((field) => (entry[field] === undefined ? [] : [[field, entry[field]]])),
  );
}

const STRENGTH: ReadonlySet<string> = new Set(['framesOfBees', 'framesOfBrood']);

/**
 * Whether bees or brood were taken from or given to the colony earlier in the season: its strength then tells of the
 * keeper's work, and the best colonies, which are the ones split, would look slow.
 */
function dividedBefore(registry: Registry, { colony, day }: EntryOf<'inspection'>): boolean {
  return (registry.colonies.get(colony)?.entries ?? []).some(
    (entry) =>
      (entry.kind === 'split' || entry.kind === 'frames-moved' || entry.kind === 'colonies-joined') &&
      yearOf(entry.day) === yearOf(day) &&
      firstDay(entry.day) <= firstDay(day),
  );
}

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
function winterOf(registry: Registry, entry: Entry): WinterObservation | undefined {
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
  const counted = (colony?.entries ?? []).flatMap((entry) =>
    entry.kind === 'inspection' && entry.framesOfBees !== undefined && isExactDay(entry.day)
      ? [{ day: firstDay(entry.day) as string, frames: entry.framesOfBees }]
      : [],
  );
  const autumn = counted.findLast(({ day }) => day >= `${season - 1}-09-01` && day <= `${season - 1}-12-31`);
  const spring = counted.find(({ day }) => day >= `${season}-03-01` && day <= `${season}-05-15`);
  return {
    ...(autumn ? { autumnFramesOfBees: autumn.frames } : {}),
    ...(spring ? { springFramesOfBees: spring.frames } : {}),
  };
}

/**
 * Days that a treatment is taken to act when nobody wrote down its end: the longest on a label known to us (amitraz
 * strips, up to 70 days; from memory, read the label). Better to set aside a count too many than to trust one too many.
 */
export const LONGEST_TREATMENT_DAYS = 70;

function treatmentsByColony(registry: Registry): ReadonlyMap<ColonyId, readonly TreatmentSpan[]> {
  const byColony = new Map<ColonyId, TreatmentSpan[]>();
  for (const treatment of registry.treatments.values()) {
    if (treatment.entry.against) continue;
    for (const colony of treatment.colonies) {
      const list = byColony.get(colony);
      if (list) list.push(treatment);
      else byColony.set(colony, [treatment]);
    }
  }
  return byColony;
}

/**
 * The treatment that matters for a count: one that acts, else the one that stopped last before it. A count on the day a
 * treatment begins was made before it: that is what one counts for on that day.
 */
export function treatmentOn(treatments: readonly TreatmentSpan[], on: RoughDay): TreatmentState | undefined {
  const day = lastDay(on);
  let latest: TreatmentState | undefined;
  for (const { from, to, entry } of treatments) {
    if (firstDay(from) >= day) continue;
    const end = to ? lastDay(to) : addDays(lastDay(from), LONGEST_TREATMENT_DAYS);
    if (end >= firstDay(on)) return { acting: true, active: entry.active };
    const daysSinceEnd = dayNumber(day) - dayNumber(end);
    if (!latest || latest.acting || daysSinceEnd < latest.daysSinceEnd) {
      latest = { acting: false, active: entry.active, daysSinceEnd };
    }
  }
  return latest;
}
