/**
 * What the traits read: plain observations of colonies, handed over by whoever keeps the journal. Days are whole
 * numbers (days since 1970-01-01); nothing here knows of entries, screens or storage. Nothing is computed.
 */

/** Whose daughters the workers of the colony were when it was looked at, or why that cannot be said. */
export type WorkersQueen =
  | { readonly known: true; readonly queen: string }
  | { readonly known: false; readonly because: 'changing-over' | 'nobody-known' | 'day-not-exact' };

/** Mite treatment of the colony at the time of a count; absent where none is on record. */
export type TreatmentState =
  | { readonly acting: true; readonly active: string }
  /** Whole days since the last one stopped acting, >= 0. */
  | { readonly acting: false; readonly active: string; readonly daysSinceEnd: number };

interface ObservationOf<Kind extends string> {
  readonly kind: Kind;
  /** The entry it comes from. */
  readonly id: string;
  readonly day: number;
  /** False when the keeper knows only the month or the year; `day` is then the last it may be. */
  readonly dayExact: boolean;
  readonly colony: string;
  /** Absent when nobody knows where the colony stood. */
  readonly yard?: string;
  /** The year that the season counts by; for a winter the year of its spring. */
  readonly season: number;
  /** For a winter: of the bees that went into it. */
  readonly workers: WorkersQueen;
}

export interface InspectionObservation extends ObservationOf<'inspection'> {
  /** 1 (worst) to 4 (best) by the published protocol, half points allowed; likewise the next two. */
  readonly gentle?: number;
  readonly calm?: number;
  readonly swarmTendency?: number;
  readonly framesOfBees?: number;
  readonly framesOfBrood?: number;
  /** Share of a full patch of cells that holds brood, percent. */
  readonly broodPattern?: number;
}

export interface MiteCountObservation extends ObservationOf<'mite-count'> {
  readonly sample:
    | { readonly method: 'wash' | 'sugar-shake'; readonly mites: number; readonly bees: number }
    | { readonly method: 'natural-drop'; readonly mites: number; readonly days: number };
  readonly treatment?: TreatmentState;
}

export interface WinterObservation extends ObservationOf<'winter'> {
  readonly alive: boolean;
  /** Cause of a loss, as the keeper named it. */
  readonly cause?: string;
  readonly autumnFramesOfBees?: number;
  readonly springFramesOfBees?: number;
}

export interface HygienicObservation extends ObservationOf<'hygienic-test'> {
  readonly method: 'pin' | 'freeze';
  readonly cells: number;
  readonly notCleared: number;
  readonly hours: number;
}

export interface HarvestObservation extends ObservationOf<'harvest'> {
  readonly kilograms: number;
}

export type TraitObservation =
  | InspectionObservation
  | MiteCountObservation
  | WinterObservation
  | HygienicObservation
  | HarvestObservation;
