/**
 * The days in the life of a colony that raises or is given a queen, and the biology that ties them together.
 *
 *   hatched - laid in eggHatch, capped - laid in queenCapped, emerged - laid in queenEmergence, ...
 *
 * Cells of one making are a brood of sisters of several ages: laid, hatched, capped and emerged mean the first
 * among those that come to be capped, and the first to emerge heads the colony unless she leaves with a swarm. The differences of the
 * table hold for the first of each as they hold for a single cell (the first to emerge was capped no
 * earlier than the first capped, and the first capped emerges no earlier than the first to emerge).
 * Sources: those of biology.ts. Cost O(1).
 */
import { BIOLOGY, type BiologyName, type Day } from './biology.ts';
import { type Bound, ORIGIN } from './network.ts';

export const EVENTS = [
  'laid',
  'hatched',
  'capped',
  'emerged',
  'mated',
  'laying',
  'cappedBrood',
  'firstWorkers',
  'allHers',
] as const;

/**
 * laid, hatched, capped, emerged: her egg and cell. mated: first mating flight. laying: her first eggs. cappedBrood:
 * her first capped worker brood. firstWorkers: her first workers emerge. allHers: all workers are her daughters.
 */
export type EventName = (typeof EVENTS)[number];

/** Variable of each event in the network; 0 is the origin. */
export const VARIABLE: Readonly<Record<EventName, number>> = Object.freeze(
  Object.fromEntries(EVENTS.map((name, index) => [name, index + 1])) as Record<EventName, number>,
);

export const VARIABLES = EVENTS.length + 1;

/** From event, to event, and the row of the table that holds between them. */
const LINKS: readonly (readonly [EventName, EventName, BiologyName])[] = [
  ['laid', 'hatched', 'eggHatch'],
  ['hatched', 'capped', 'queenLarvaFed'],
  ['laid', 'capped', 'queenCapped'],
  ['capped', 'emerged', 'queenCappedToEmergence'],
  ['laid', 'emerged', 'queenEmergence'],
  ['emerged', 'mated', 'matingFlight'],
  ['mated', 'laying', 'flightToEggs'],
  ['emerged', 'laying', 'firstEggs'],
  ['laying', 'cappedBrood', 'workerCapped'],
  ['cappedBrood', 'firstWorkers', 'workerCappedToEmergence'],
  ['laying', 'firstWorkers', 'workerEmergence'],
  ['laying', 'allHers', 'allHers'],
];

/** The event happens on this day or earlier. */
export function by(event: EventName, day: Day): Bound {
  return { from: ORIGIN, to: VARIABLE[event], max: day };
}

/** The event happens on this day or later. */
export function notBefore(event: EventName, day: Day): Bound {
  return { from: VARIABLE[event], to: ORIGIN, max: -day };
}

/** The second event follows the first by at least and at most so many days. */
function between(first: EventName, second: EventName, least: number, most: number): readonly Bound[] {
  return [
    { from: VARIABLE[first], to: VARIABLE[second], max: most },
    { from: VARIABLE[second], to: VARIABLE[first], max: -least },
  ];
}

/** Least and greatest lengths of the table's rows. */
export type Lengths = Readonly<Record<BiologyName, { readonly earliest: number; readonly latest: number }>>;

/** The bounds of the table for all links from this event onward; what came before it belongs to another life. */
export function biologyBounds(firstEvent: EventName, lengths: Lengths = BIOLOGY): Bound[] {
  return LINKS.filter(([first]) => VARIABLE[first] >= VARIABLE[firstEvent]).flatMap(([first, second, name]) =>
    between(first, second, lengths[name].earliest, lengths[name].latest),
  );
}

/** The events from this one onward, in order. */
export function eventsFrom(firstEvent: EventName): readonly EventName[] {
  return EVENTS.slice(VARIABLE[firstEvent] - 1);
}
