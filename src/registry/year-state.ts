import type { ColonyCalendar, RunningTreatment, YearState } from '../../graph/calendar/index.ts';
import { addDays, dayNumber, firstDay, isExactDay, lastDay, type PlainDay } from '../journal/day.ts';
import type { Entry, EntryKind, EntryOf } from '../journal/entry.ts';
import type { ColonyId } from '../journal/ids.ts';
import { headOn } from './queries.ts';
import type { Colony, Registry } from './state.ts';

/**
 * What has been looked at, counted and treated in a colony by a day, as the tasks of its year need it. Whatever the look
 * was made for, frames of bees in spring are its strength, and frames of stores in autumn that it was seen to.
 */
export function yearState(
  registry: Registry,
  colony: Colony,
  on: PlainDay,
  calendar: ColonyCalendar | undefined,
): YearState {
  const head = headOn(registry, colony, on);
  const looks = exactEntries(colony, 'inspection', on);
  const lastCount = exactEntries(colony, 'mite-count', on).at(-1);
  const winter = exactEntries(colony, 'winter-outcome', on).at(-1);
  const opened = lastOpened(colony, on);
  const entries = {
    lastLook: opened,
    lastMiteCount: lastCount,
    winterRecorded: winter,
    autumnPrepared: looks.findLast(({ framesOfStores }) => framesOfStores !== undefined),
    springRecorded: lastStrength(looks, winter),
  };
  const days = Object.fromEntries(
    Object.entries(entries).flatMap(([name, entry]) =>
      entry ? [[name, dayNumber(firstDay(entry.day))]] : [],
    ),
  );
  return {
    colony: colony.id,
    queen: head ? 'laying' : calendar || colony.expected.length > 0 ? 'awaiting' : 'unknown',
    swarmSigns: opened?.kind === 'inspection' && showsSwarmSigns(opened),
    treatments: runningTreatments(registry, colony.id, on),
    ...days,
  };
}

/** The last that tells of its strength: a look that counted its frames of bees, or the winter walk where it did. */
function lastStrength(
  looks: readonly EntryOf<'inspection'>[],
  winter: EntryOf<'winter-outcome'> | undefined,
): Entry | undefined {
  const look = looks.findLast(({ framesOfBees }) => framesOfBees !== undefined);
  const walk = winter?.springFramesOfBees === undefined ? undefined : winter;
  return walk && (!look || firstDay(look.day) < firstDay(walk.day)) ? walk : look;
}

const OPENS: readonly EntryKind[] = ['inspection', 'split', 'colonies-joined', 'colony-started'];

/** The last entry that tells of it opened: looked into, divided, joined or begun; a split does away with the signs seen before it. */
function lastOpened(colony: Colony, on: PlainDay): Entry | undefined {
  return colony.entries.findLast(
    ({ kind, day }) => OPENS.includes(kind) && isExactDay(day) && firstDay(day) <= on,
  );
}

function exactEntries<K extends EntryKind>(colony: Colony, kind: K, on: PlainDay): readonly EntryOf<K>[] {
  return colony.entries.filter(
    (entry: Entry): entry is EntryOf<K> =>
      entry.kind === kind && isExactDay(entry.day) && firstDay(entry.day) <= on,
  );
}

/** Cells, or a swarm tendency of 3 or less by the protocol (cells that could be stopped), at an inspection. */
export function showsSwarmSigns({
  openCells = 0,
  cappedCells = 0,
  swarmTendency = 4,
}: EntryOf<'inspection'>): boolean {
  return openCells > 0 || cappedCells > 0 || swarmTendency <= 3;
}

function runningTreatments(registry: Registry, colony: ColonyId, on: PlainDay): readonly RunningTreatment[] {
  return [...registry.treatments.values()]
    .filter(({ colonies, from }) => colonies.includes(colony) && firstDay(from) <= on)
    .map(({ id, entry, to }) => {
      const ended = to !== undefined && lastDay(to) <= on;
      const wait = entry.honeyWaitDays;
      const honeyFrom =
        to !== undefined && wait !== undefined ? dayNumber(addDays(lastDay(to), wait)) : undefined;
      return {
        id,
        ended,
        ...(entry.end ? { plannedEnd: dayNumber(entry.end) } : {}),
        ...(honeyFrom === undefined ? {} : { honeyFrom }),
      };
    });
}
