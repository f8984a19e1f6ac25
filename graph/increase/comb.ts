/**
 * From frames as a keeper judges them to bees, brood cells and stores.
 *
 *   bees  = 2 x side area x beesPerDm2 x share covered          (or the keeper's own full count x share)
 *   cells = 2 x side area x cellsPerDm2 x share of the comb     (or twice the cells of a side x share)
 *   kg    = 2 x side area x storesPerDm2 x share of the comb
 *
 * Any frame size the keeper sets, of any box, several in one hive. Sources: assumptions.ts. Cost O(frames).
 * A share that was not judged is unknown and counts as nothing here: the planner asks for it, it does not guess.
 */
import { type Case, type OwnAssumptions, valueIn } from './assumptions.ts';

/** A frame size as the keeper sets it: area of one comb side, or the worker cells of one side. */
export type FrameSize = {
  readonly name: string;
  /** Bees on a frame covered on both sides, where the keeper has counted or weighed. */
  readonly fullBees?: number;
} & ({ readonly sideDm2: number } | { readonly sideCells: number });

/**
 * Sizes to begin with; the keeper's own measure is better. Langstroth deep 8.8 dm2 a side (Delaplane et al. 2013,
 * from memory); the medium two thirds of it and the shallow 0.57 (from memory).
 */
export const FRAME_SIZES: readonly FrameSize[] = [
  { name: 'Langstroth deep', sideDm2: 8.8 },
  { name: 'Langstroth medium', sideDm2: 5.9 },
  { name: 'Langstroth shallow', sideDm2: 5 },
];

/** One frame. Shares are of both sides together, 0..1; brood and stores share one comb. */
export interface CombFrame {
  readonly id: string;
  readonly size: FrameSize;
  /** Share of the comb covered by bees, 0..1. */
  readonly bees: number;
  /** Eggs and larvae. */
  readonly openBrood: number;
  readonly cappedBrood: number;
  readonly stores: number;
  /** True where eggs or just hatched larvae were seen: a queen can be raised from it. */
  readonly eggs?: boolean;
  /** True for the frame on which the queen was found. */
  readonly queen?: boolean;
  /** True where queen cells hang on it. */
  readonly cells?: boolean;
}

export interface CombContent {
  readonly bees: number;
  /** Cells of open brood (eggs and larvae) and of capped brood. */
  readonly openBrood: number;
  readonly cappedBrood: number;
  readonly storesKg: number;
  /** Comb taken by brood, dm2 of one side. */
  readonly broodDm2: number;
}

const DEFAULT_CELLS = 400;

/** Area of one comb side in dm2; from a count of cells by 400 cells a dm2. */
export function sideDm2(size: FrameSize): number {
  return 'sideDm2' in size ? size.sideDm2 : size.sideCells / DEFAULT_CELLS;
}

/** Bees, brood and stores on one frame in one case. */
export function contentOf(frame: CombFrame, one: Case, own?: OwnAssumptions): CombContent {
  const { size } = frame;
  const both = 2 * sideDm2(size);
  const fullBees = size.fullBees ?? both * valueIn('beesPerDm2', one, own);
  const fullCells = 'sideCells' in size ? 2 * size.sideCells : both * valueIn('cellsPerDm2', one, own);
  return {
    bees: fullBees * frame.bees,
    openBrood: fullCells * frame.openBrood,
    cappedBrood: fullCells * frame.cappedBrood,
    storesKg: both * valueIn('storesPerDm2', one, own) * frame.stores,
    broodDm2: both * (frame.openBrood + frame.cappedBrood),
  };
}

/** What several frames hold together. */
export function sumContent(contents: readonly CombContent[]): CombContent {
  const sum = { bees: 0, openBrood: 0, cappedBrood: 0, storesKg: 0, broodDm2: 0 };
  for (const content of contents) {
    sum.bees += content.bees;
    sum.openBrood += content.openBrood;
    sum.cappedBrood += content.cappedBrood;
    sum.storesKg += content.storesKg;
    sum.broodDm2 += content.broodDm2;
  }
  return sum;
}
