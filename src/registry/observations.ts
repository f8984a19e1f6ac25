import { pushTo } from '../../graph/grouping.ts';
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
import type { Entry, EntryKind, EntryOf } from '../journal/entry.ts';
import type { ColonyId } from '../journal/ids.ts';
import { workersOf } from './attribution.ts';
import { yardOn } from './queries.ts';
import type { Registry, TreatmentSpan } from './state.ts';
import { winterOf } from './winters.ts';

/**
 * The observations of a registry as the traits read them: each with the queen whose workers made it, the yard and
 * season it is compared in, and for a mite count the treatment that may have spoilt it. O(entries).
 */
export function traitObservations(registry: Registry): readonly TraitObservation[] {
  const beside = { treatments: treatmentsByColony(registry), divided: firstDivisions(registry) };
  const winters = new Map<string, WinterObservation>();
  const observations: TraitObservation[] = [];
  for (const entry of registry.entries) {
    const winter = winterOf(registry, entry);
    if (winter) {
      const key = `${winter.colony} ${winter.season}`;
      if (entry.kind === 'winter-outcome' || !winters.has(key)) winters.set(key, winter);
      continue;
    }
    const observation = observationOf(registry, entry, beside);
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

/** What else was done to a colony and bears on what is seen in it. */
interface Beside {
  readonly treatments: ReadonlyMap<ColonyId, readonly TreatmentSpan[]>;
  /** By colony and year, the first day on which bees or brood were taken from it or given to it. */
  readonly divided: ReadonlyMap<string, PlainDay>;
}

function observationOf(
  registry: Registry,
  entry: Entry,
  { treatments, divided }: Beside,
): TraitObservation | undefined {
  switch (entry.kind) {
    case 'inspection':
      return { kind: 'inspection', ...shared(registry, entry, entry.colony), ...inspected(entry, divided) };
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
  entry: EntryOf<'inspection'>,
  divided: Beside['divided'],
): Partial<Record<(typeof SCORED)[number], number>> {
  const since = divided.get(seasonKey(entry.colony, entry.day));
  const worked = since !== undefined && since <= firstDay(entry.day);
  const fields = worked ? SCORED.filter((field) => !STRENGTH.has(field)) : SCORED;
  const figures: Partial<Record<(typeof SCORED)[number], number>> = {};
  for (const field of fields) {
    const figure = entry[field];
    if (figure !== undefined) figures[field] = figure;
  }
  return figures;
}

const STRENGTH: ReadonlySet<string> = new Set(['framesOfBees', 'framesOfBrood']);

function seasonKey(colony: ColonyId, day: RoughDay): string {
  return `${colony} ${yearOf(day)}`;
}

const DIVIDES: ReadonlySet<EntryKind> = new Set<EntryKind>(['split', 'frames-moved', 'colonies-joined']);

/**
 * When bees or brood were first taken from or given to each colony in each season: its strength then tells of the
 * keeper's work, and the best colonies, which are the ones split, would look slow.
 */
function firstDivisions(registry: Registry): ReadonlyMap<string, PlainDay> {
  const first = new Map<string, PlainDay>();
  for (const colony of registry.colonies.values()) {
    for (const { kind, day } of colony.entries) {
      if (!DIVIDES.has(kind)) continue;
      const key = seasonKey(colony.id, day);
      const known = first.get(key);
      if (known === undefined || firstDay(day) < known) first.set(key, firstDay(day));
    }
  }
  return first;
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
    for (const colony of treatment.colonies) pushTo(byColony, colony, treatment);
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
