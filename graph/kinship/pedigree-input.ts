/**
 * What the numerics are told about a registry: queens, the drones they met, and the populations nobody
 * recorded. Plain ids and numbers, in any order; `compilePedigree` checks it and puts it in birth order.
 *
 * The registry (journal -> state) and the command line's tables both produce this one shape.
 */

/** A share (0..1) of something named: a possible dam, a drone mother, a background. */
export interface Share {
  readonly of: string;
  /** Coefficient, 0..1. */
  readonly share: number;
}

/**
 * A population without records. `kinship` is that of two random gametes of it (0..1), the metafounder's
 * theta of Legarra et al. 2015, Genetics 200:455.
 */
export interface BackgroundInput {
  readonly id: string;
  readonly kinship: number;
}

/** The drones flying at one yard in one season. Shares of mothers and backgrounds together sum to 1. */
export interface DronePoolInput {
  readonly id: string;
  readonly droneMothers: readonly Share[];
  readonly backgrounds: readonly Share[];
}

/** One drone known by itself (single-drone insemination, split semen): haploid, with a mother only. */
export interface DroneInput {
  readonly id: string;
  readonly mother: string;
}

/** The drones one queen met. */
export type MatingInput =
  | { readonly kind: 'pool'; readonly pool: string }
  | {
      readonly kind: 'drone-mothers';
      readonly droneMothers: readonly Share[];
      readonly backgrounds: readonly Share[];
    }
  | { readonly kind: 'drones'; readonly drones: readonly Share[] };

export interface QueenInput {
  readonly id: string;
  /** Possible dams with probabilities that sum to 1; empty for a founder drawn from `background`. */
  readonly dams: readonly Share[];
  /** The population a founder was drawn from; unused when `dams` is not empty. */
  readonly background: string;
  /** Absent while she has not mated (a cell, a virgin) or nothing is to be computed through her mates. */
  readonly mating?: MatingInput;
  /**
   * Drones her own father was among, where more is known than her dam's mating tells: the one drone a marker
   * test names, or one of several matings of a dam. Absent: one of the drones her dam met. Unused for a founder.
   */
  readonly father?: MatingInput;
  /** Effective number of mates (>= 1); unequal sperm use enters only here. */
  readonly effectiveMates: number;
}

export interface PedigreeInput {
  readonly backgrounds: readonly BackgroundInput[];
  readonly pools: readonly DronePoolInput[];
  readonly drones: readonly DroneInput[];
  readonly queens: readonly QueenInput[];
}
