/**
 * What a keeper saw on one day. A field that is absent was not looked at; `false` means looked for and not
 * there. A queen not seen is no observation: she is easily missed.
 */
import type { Day } from './biology.ts';

export interface Seen {
  /** Single eggs on the bottom of worker cells. */
  readonly eggs?: boolean;
  /** Larvae curled on the bottom of their cells, up to three days from hatching. */
  readonly youngBrood?: boolean;
  /** Larvae of any age in worker cells. */
  readonly openBrood?: boolean;
  readonly cappedWorkerBrood?: boolean;
  readonly openCells?: boolean;
  readonly cappedCells?: boolean;
  /** A queen cell opened at its tip, from within. */
  readonly emergedCells?: boolean;
  /** A queen cell opened at its side. */
  readonly tornCells?: boolean;
  /** old: the queen known from before. unmarked: another queen. laying: another queen seen laying or big with eggs. */
  readonly queen?: 'old' | 'virgin' | 'unmarked' | 'laying';
  readonly severalEggsInCells?: boolean;
  /** Drone brood scattered in worker cells, and no worker brood. */
  readonly droneBroodOnly?: boolean;
}

export interface Observation extends Seen {
  readonly day: Day;
}

export type SeenField = keyof Seen;

/** Order in which the fields of one observation are read; fixed, so that results never depend on key order. */
export const SEEN_FIELDS: readonly SeenField[] = [
  'cappedCells',
  'openCells',
  'emergedCells',
  'tornCells',
  'queen',
  'eggs',
  'youngBrood',
  'openBrood',
  'cappedWorkerBrood',
  'severalEggsInCells',
  'droneBroodOnly',
];

/** Observations in order of day; those of one day keep the order in which they were given. */
export function inOrder(observations: readonly Observation[]): readonly Observation[] {
  return observations
    .map((observation, index) => ({ observation, index }))
    .sort((a, b) => a.observation.day - b.observation.day || a.index - b.index)
    .map(({ observation }) => observation);
}
