/**
 * The drone side: from which day the drones of a colony are ripe for mating, and whether a virgin planned for
 * a day meets ripe ones.
 *
 *   egg laid = day of the sight - age of what was seen
 *   ripe     = egg laid + droneEmergence + droneRipe       (24 + 12 = 36 days as a rule)
 *   flights  = emergence of the queen + matingFlight       (7 days as a rule)
 *   meets    = ripe <= flights, compared at the ends and at the likely days of both windows
 *
 * So drone eggs must be laid about 36 - 22 = 14 days before the egg of a queen who first flies on day 22. Sources:
 * biology.ts. Cost O(sights). No drones or drone brood seen: undefined, not 'none'.
 */
import { BIOLOGY, type Day, type Window } from './biology.ts';

/** none: looked for, neither drone brood nor drones. flying: drones at the entrance or on the combs. */
export type DroneStage = 'none' | 'eggs' | 'open-brood' | 'capped-brood' | 'flying';

export interface DroneSight {
  readonly day: Day;
  readonly stage: DroneStage;
}

/** Days from the egg of a drone that is seen in each stage; the age of a flying drone is open upwards. */
const AGE: Readonly<Record<Exclude<DroneStage, 'none'>, { least: number; likely: number; most: number }>> = {
  eggs: { least: 0, likely: 2, most: BIOLOGY.eggHatch.latest },
  'open-brood': { least: BIOLOGY.eggHatch.earliest, likely: 6, most: BIOLOGY.droneCapped.latest },
  'capped-brood': { least: BIOLOGY.droneCapped.earliest, likely: 16, most: BIOLOGY.droneEmergence.latest },
  flying: { least: BIOLOGY.droneEmergence.earliest, likely: 34, most: 60 },
};

/** From the drone's egg to the day he is ripe. */
export const DRONE_EGG_TO_RIPE = Object.freeze({
  earliest: BIOLOGY.droneEmergence.earliest + BIOLOGY.droneRipe.earliest,
  likely: BIOLOGY.droneEmergence.likely + BIOLOGY.droneRipe.likely,
  latest: BIOLOGY.droneEmergence.latest + BIOLOGY.droneRipe.latest,
});

/**
 * From when the first drones of a colony are ripe: not before `earliest`, surely by `latest`. A day on which there
 * were none bounds it from below. Undefined when none were ever seen.
 */
export function droneRipeness(sights: readonly DroneSight[]): Window | undefined {
  const laid = sights.flatMap(({ day, stage }) => {
    if (stage === 'none') return [];
    const { least, likely, most } = AGE[stage];
    return [{ earliest: day - most, likely: day - likely, latest: day - least }];
  });
  if (laid.length === 0) return undefined;
  const latest = Math.min(...laid.map((egg) => egg.latest));
  // Larvae are plain to see: with none on a day, no drone egg was older than it takes to hatch.
  const none = sights.filter(({ stage }) => stage === 'none').map(({ day }) => day - BIOLOGY.eggHatch.latest);
  const bound = Math.max(...none.filter((day) => day <= latest), Number.NEGATIVE_INFINITY);
  const earliest = Math.max(bound, Math.min(...laid.map((egg) => egg.earliest)));
  const likely = Math.min(latest, Math.max(earliest, Math.min(...laid.map((egg) => egg.likely))));
  return {
    earliest: earliest + DRONE_EGG_TO_RIPE.earliest,
    likely: likely + DRONE_EGG_TO_RIPE.likely,
    latest: latest + DRONE_EGG_TO_RIPE.latest,
  };
}

/** First mating flights of a queen who emerges within a window. */
export function flightsAfter(emergence: Window): Window {
  const { earliest, likely, latest } = BIOLOGY.matingFlight;
  return {
    earliest: emergence.earliest + earliest,
    likely: emergence.likely + likely,
    latest: emergence.latest + latest,
  };
}

export type DroneMeeting = 'ripe' | 'likely-ripe' | 'likely-too-early' | 'too-early' | 'unknown';

export interface MeetingForecast {
  readonly meeting: DroneMeeting;
  /** Days by which the likely flights come before the likely ripeness; 0 when they do not. */
  readonly daysShort: number;
  /** Drone eggs laid by this day are ripe by the likely flights. */
  readonly droneEggsBy: Day;
}

/** Whether a virgin with these flights meets ripe drones of a colony ripe within this window. */
export function meetsRipeDrones(flights: Window, ripe: Window | undefined): MeetingForecast {
  const droneEggsBy = flights.likely - DRONE_EGG_TO_RIPE.likely;
  if (!ripe) return { meeting: 'unknown', daysShort: 0, droneEggsBy };
  const daysShort = Math.max(0, ripe.likely - flights.likely);
  if (ripe.latest <= flights.earliest) return { meeting: 'ripe', daysShort, droneEggsBy };
  if (ripe.likely <= flights.likely) return { meeting: 'likely-ripe', daysShort, droneEggsBy };
  const meeting = ripe.earliest <= flights.latest ? 'likely-too-early' : 'too-early';
  return { meeting, daysShort, droneEggsBy };
}
