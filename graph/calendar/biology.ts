/**
 * How long things take in a honey bee colony: one table of days from one event to another, each with its usual
 * value, its range and where it comes from. Every window of the calendar is reckoned from this table alone.
 *
 *   window of event B = day of event A + earliest .. latest, most likely + likely
 *
 * Days are whole calendar days: an egg laid on day 0 that takes 7.5 days is capped on day 7 or 8. Ranges are
 * for Apis mellifera of European origin in a brood nest kept warm; cool or weak colonies sit at the late end.
 * Basis: 'read' (read in the source named), 'from memory' (believed, not re-read), 'common practice' (what keepers
 * say, no source), 'derived' (follows from other rows), 'assumption' (ours, until somebody measures it).
 */

/** Days since 1970-01-01, a whole number. */
export type Day = number;

export type Basis = 'read' | 'from memory' | 'common practice' | 'derived' | 'assumption';

/** A length of time in whole days: never shorter than `earliest`, never longer than `latest`. */
export interface Duration {
  /** What is measured, from which event to which. */
  readonly about: string;
  readonly earliest: number;
  readonly likely: number;
  readonly latest: number;
  readonly unit: 'days';
  readonly source: string;
  readonly basis: Basis;
}

function duration(
  about: string,
  [earliest, likely, latest]: readonly [number, number, number],
  basis: Basis,
  source: string,
): Duration {
  return Object.freeze({ about, earliest, likely, latest, unit: 'days', source, basis });
}

const WINSTON = 'Winston 1987, The Biology of the Honey Bee, development times';
const FELL_MORSE = 'Fell & Morse 1984, Insectes Sociaux 31:221, abstract';
const PUNNETT_WINSTON = 'Punnett & Winston 1983, Insectes Sociaux 30:376, abstract';

export const BIOLOGY = Object.freeze({
  eggHatch: duration('egg laid to egg hatched', [3, 3, 4], 'from memory', WINSTON),
  queenLarvaFed: duration(
    'egg hatched to queen cell capped',
    [4, 5, 6],
    'derived',
    'queen cell capped less egg hatch',
  ),
  queenCapped: duration(
    'egg laid to queen cell capped',
    [7, 8, 9],
    'from memory',
    `${WINSTON} (day 8); day 7.5 read in general reference pages`,
  ),
  queenCappedToEmergence: duration(
    'queen cell capped to queen emerged',
    [7, 8, 9],
    'derived',
    'queen emergence less queen cell capped',
  ),
  queenEmergence: duration(
    'egg laid to queen emerged',
    [15, 16, 17],
    'read',
    `day 15.5 to 17 in general reference pages; ${WINSTON} (day 16, from memory)`,
  ),
  matingFlight: duration(
    'queen emerged to first mating flight',
    [5, 7, 21],
    'read',
    'Heidinger et al. 2014, Insects 5:513 (usually within a week of emergence); upper end from memory',
  ),
  flightToEggs: duration(
    'first mating flight to first eggs',
    [2, 5, 14],
    'from memory',
    '2 to 4 days after the last flight; flights may be spread over more than a week',
  ),
  firstEggs: duration(
    'queen emerged to first eggs',
    [7, 12, 28],
    'from memory',
    'usually 10 to 14 days, up to 3 or 4 weeks in poor weather; day 23 from the egg as earliest, read',
  ),
  workerCapped: duration('worker egg laid to cell capped', [8, 9, 10], 'from memory', WINSTON),
  workerCappedToEmergence: duration(
    'worker cell capped to worker emerged',
    [11, 12, 13],
    'derived',
    'worker emergence less worker capped',
  ),
  workerEmergence: duration('worker egg laid to worker emerged', [20, 21, 22], 'read', `21 days; ${WINSTON}`),
  allHers: duration(
    'first eggs of a queen to all workers hers',
    [35, 40, 60],
    'read',
    'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.1.4: about 40 days; the range is our assumption',
  ),
  droneCapped: duration('drone egg laid to cell capped', [9, 10, 11], 'from memory', WINSTON),
  droneEmergence: duration('drone egg laid to drone emerged', [23, 24, 25], 'read', `24 days; ${WINSTON}`),
  droneRipe: duration(
    'drone emerged to ripe for mating',
    [8, 12, 16],
    'from memory',
    'usually 10 to 14 days; Metz & Tarpy 2019, Insects 10:11 find no sperm at emergence, most about day 20',
  ),
  oldestLarva: duration(
    'age, from hatching, of a larva made into a queen when her colony lost its own',
    [0, 0, 3],
    'read',
    `${FELL_MORSE}: two thirds under 2 days when started; ${PUNNETT_WINSTON}: 91 in 100 were still eggs`,
  ),
  cellStarted: duration(
    'queen lost to first cell started',
    [0, 1, 2],
    'read',
    `${FELL_MORSE}: 12 to 48 hours`,
  ),
  lastCellStarted: duration('queen lost to last cell started', [2, 4, 9], 'read', FELL_MORSE),
  layingWorkers: duration(
    'queen lost to laying workers, where no queen follows',
    [14, 25, 40],
    'read',
    'Collison, Laying workers, Bee Culture (copy read): about two weeks at the earliest; later days common practice',
  ),
  cagedQueenLays: duration(
    'mated queen given in a cage to her first eggs',
    [1, 6, 14],
    'common practice',
    'no source: freed after 2 to 5 days, eggs within the week after',
  ),
  freeQueenLays: duration(
    'mated queen given without a cage to her first eggs',
    [0, 3, 10],
    'common practice',
    'no source',
  ),
  severalEggs: duration(
    'first eggs of a young queen to the last cell in which she puts several',
    [0, 3, 10],
    'common practice',
    'no source',
  ),
  virginAge: duration(
    'age of a virgin when she is given, where it is not known',
    [0, 1, 14],
    'common practice',
    'no source',
  ),
  swarmCheck: duration(
    'one look for swarm cells to the next',
    [7, 7, 9],
    'derived',
    'an egg in a cup becomes a capped cell in 8 to 9 days',
  ),
});

export type BiologyName = keyof typeof BIOLOGY;

/** A span of days in which something happens; `likely` lies within. */
export interface Window {
  readonly earliest: Day;
  readonly likely: Day;
  readonly latest: Day;
}

/** The window of what follows an event of a known day by a duration of the table. */
export function windowAfter(day: Day, name: BiologyName): Window {
  const { earliest, likely, latest } = BIOLOGY[name];
  return { earliest: day + earliest, likely: day + likely, latest: day + latest };
}
