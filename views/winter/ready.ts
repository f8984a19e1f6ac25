import { firstDay, type PlainDay, yearOf } from '../../src/journal/day.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Colony, Registry, Yard } from '../../src/registry/state.ts';
import type { Settings } from '../../src/store/settings.ts';
import { type CountSaid, countsOf } from '../mites/counts.ts';
import { byRoof, yardsInOrder } from '../parts/colony-facts.ts';

/** What was last seen of something in the autumn, and when. */
export interface SeenInAutumn<T> {
  readonly value: T;
  readonly day: EntryOf<'inspection'>['day'];
}

/** One colony before winter: what was seen of it in the autumn. What nobody looked at is absent. */
export interface Readiness {
  readonly colony: Colony;
  readonly bees?: SeenInAutumn<number>;
  readonly stores?: SeenInAutumn<number>;
  readonly mites?: CountSaid;
  /** The queen was seen, or, without her, eggs were. */
  readonly queen?: SeenInAutumn<'seen' | 'eggs'>;
}

/** The autumn that a day speaks of: the one under way from August on, else the last. */
export function autumnOf(on: PlainDay): number {
  return on.slice(5) >= '08-01' ? yearOf(on) : yearOf(on) - 1;
}

/** Every living colony with what the autumn's inspections and counts say of it, yard by yard along the stands. */
export function readiness(
  registry: Registry,
  on: PlainDay,
  { miteThresholds }: Pick<Settings, 'miteThresholds'>,
): readonly { readonly yard: Yard; readonly colonies: readonly Readiness[] }[] {
  const autumn = autumnOf(on);
  return yardsInOrder(registry)
    .map((yard) => ({
      yard,
      colonies: byRoof(coloniesAt(registry, yard.id, on), on)
        .flat()
        .filter((colony) => firstDay(colony.started) <= `${autumn}-11-30`)
        .map((colony) => readinessOf(registry, colony, on, autumn, miteThresholds)),
    }))
    .filter(({ colonies }) => colonies.length > 0);
}

function readinessOf(
  registry: Registry,
  colony: Colony,
  on: PlainDay,
  autumn: number,
  thresholds: Settings['miteThresholds'],
): Readiness {
  const within = (day: EntryOf<'inspection'>['day']) =>
    firstDay(day) >= `${autumn}-08-01` && firstDay(day) <= `${autumn}-11-30` && firstDay(day) <= on;
  const looks = colony.entries.filter(
    (entry): entry is EntryOf<'inspection'> => entry.kind === 'inspection' && within(entry.day),
  );
  const last = <K extends keyof EntryOf<'inspection'>>(field: K) =>
    looks.findLast((entry) => entry[field] !== undefined);
  const bees = last('framesOfBees');
  const stores = last('framesOfStores');
  const mites = countsOf(registry, colony, on, thresholds).findLast(({ entry }) => within(entry.day));
  const queen = looks.findLast(
    (entry) => entry.queenSeen === 'seen-marked' || entry.queenSeen === 'seen-unmarked',
  );
  const eggs = looks.findLast((entry) => entry.eggs === true);
  return {
    colony,
    ...(bees?.framesOfBees === undefined ? {} : { bees: { value: bees.framesOfBees, day: bees.day } }),
    ...(stores?.framesOfStores === undefined
      ? {}
      : { stores: { value: stores.framesOfStores, day: stores.day } }),
    ...(mites ? { mites } : {}),
    ...(queen
      ? { queen: { value: 'seen' as const, day: queen.day } }
      : eggs
        ? { queen: { value: 'eggs' as const, day: eggs.day } }
        : {}),
  };
}

/** What is still to be looked at. */
export function missingOf({ bees, stores, mites, queen }: Readiness): readonly string[] {
  return [
    bees ? '' : 'strength',
    stores ? '' : 'stores',
    mites ? '' : 'mites',
    queen ? '' : 'queen or eggs',
  ].filter((word) => word !== '');
}
