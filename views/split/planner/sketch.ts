import type { CombFrame, FrameSize } from '../../../graph/increase/comb.ts';
import { FRAME_SIZES } from '../../../graph/increase/comb.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { Colony } from '../../../src/registry/state.ts';
import type { FrameSizeSetting } from '../../../src/store/settings.ts';
import { lastObserved } from '../../parts/colony-facts.ts';

/**
 * A colony on paper: its boxes and frames as a keeper judges them, in quarters of a comb. It begins as a sketch from the
 * last inspection, said to be one; the keeper corrects it frame by frame. Nothing of it is a record.
 */
export type Quarter = 0 | 0.25 | 0.5 | 0.75 | 1;

export interface SketchFrame {
  readonly id: string;
  /** Share of both sides covered by bees. */
  readonly bees: Quarter;
  /** Share of the comb with brood, and of which age most of it is. */
  readonly brood: Quarter;
  readonly age: 'open' | 'both' | 'capped';
  readonly stores: Quarter;
  /** Eggs or just hatched larvae on it: a queen can be raised from it. */
  readonly eggs: boolean;
  readonly cells: boolean;
  readonly queen: boolean;
}

export interface SketchBox {
  readonly key: string;
  /** Name of the frame size. */
  readonly size: string;
  readonly frames: readonly SketchFrame[];
}

export interface Wish {
  readonly parts: 2 | 3 | 4;
  readonly queenStays: boolean;
  readonly takenAway: boolean;
}

/** What the planner keeps while the keeper is at it; the lowest box first. */
export interface Sketch {
  readonly boxes: readonly SketchBox[];
  readonly wish: Wish;
}

/** What of the sketch the last inspections said; absent where nobody looked. */
export interface SketchBasis {
  readonly bees?: Observed<'framesOfBees'>;
  readonly brood?: Observed<'framesOfBrood'>;
  readonly stores?: Observed<'framesOfStores'>;
  readonly eggs?: Observed<'eggs'>;
}
type Observed<K extends keyof EntryOf<'inspection'>> = NonNullable<ReturnType<typeof lastObserved<K>>>;

/** What was last observed of bees, brood, stores and eggs, each with its day. */
export function sketchBasis(colony: Colony, on: PlainDay): SketchBasis {
  const bees = lastObserved(colony, on, 'framesOfBees');
  const brood = lastObserved(colony, on, 'framesOfBrood');
  const stores = lastObserved(colony, on, 'framesOfStores');
  const eggs = lastObserved(colony, on, 'eggs');
  return {
    ...(bees ? { bees } : {}),
    ...(brood ? { brood } : {}),
    ...(stores ? { stores } : {}),
    ...(eggs ? { eggs } : {}),
  };
}

/** Frames in a box where the keeper has not said otherwise. */
const USUAL_BOX = 10;
/** Brood on the inner and on the outermost brood frames: about three fifths on average (common practice, no source). */
const INNER_BROOD: Quarter = 0.75;
const OUTER_BROOD: Quarter = 0.5;

/**
 * A sketch from the last inspection: brood in the middle, stores outside, bees from the brood outward. Frames of eggs are
 * taken to be those of brood where eggs were seen; where the queen is, nobody says.
 */
export function firstSketch(basis: SketchBasis, size: string, newKey: () => string): Sketch {
  const bees = basis.bees?.value ?? 0;
  const brood = Math.min(basis.brood?.value ?? 0, 60);
  const stores = basis.stores?.value ?? 0;
  const count = Math.max(USUAL_BOX, Math.ceil(bees), Math.ceil(brood) + Math.ceil(stores));
  const middleFirst = fromTheMiddle(count);
  const frames = Array.from({ length: count }, () => emptyFrame(newKey()));
  middleFirst.forEach((at, turn) => {
    const frame = frames[at];
    if (!frame) return;
    const outermost = turn >= Math.ceil(brood) - 2;
    const broodHere = turn < brood ? (outermost ? OUTER_BROOD : INNER_BROOD) : 0;
    const storesTurn = count - 1 - turn;
    frames[at] = {
      ...frame,
      bees: quarter(bees - turn),
      brood: broodHere,
      stores: quarter(Math.min(stores - storesTurn, 1 - broodHere)),
      eggs: broodHere > 0 && basis.eggs?.value === true,
    };
  });
  return {
    boxes: inBoxes(frames, size, newKey),
    wish: { parts: 2, queenStays: false, takenAway: false },
  };
}

function inBoxes(frames: readonly SketchFrame[], size: string, newKey: () => string): readonly SketchBox[] {
  const boxes = Math.ceil(frames.length / 12);
  const each = Math.ceil(frames.length / boxes);
  return Array.from({ length: boxes }, (_, at) => ({
    key: newKey(),
    size,
    frames: frames.slice(at * each, (at + 1) * each),
  }));
}

/** Places from the middle outward: of five, 2, 3, 1, 4, 0. */
export function fromTheMiddle(count: number): readonly number[] {
  const middle = Math.floor((count - 1) / 2);
  return Array.from({ length: count }, (_, turn) => {
    const step = Math.ceil(turn / 2);
    return turn % 2 === 1 ? middle + step : middle - step;
  });
}

export function emptyFrame(id: string): SketchFrame {
  return { id, bees: 0, brood: 0, age: 'both', stores: 0, eggs: false, cells: false, queen: false };
}

export function quarter(value: number): Quarter {
  return (Math.round(4 * Math.min(1, Math.max(0, value))) / 4) as Quarter;
}

/** A frame with one thing corrected. Brood and stores share the comb, so the one gives way to the other. */
export function corrected(frame: SketchFrame, change: Partial<SketchFrame>): SketchFrame {
  const next = { ...frame, ...change };
  if (change.brood !== undefined) next.stores = quarter(Math.min(next.stores, 1 - next.brood));
  if (change.stores !== undefined) next.brood = quarter(Math.min(next.brood, 1 - next.stores));
  return next.brood === 0 ? { ...next, eggs: change.eggs === true } : next;
}

/** The sketch with one frame corrected; the queen can be on one frame only. */
export function correctFrame(sketch: Sketch, id: string, change: Partial<SketchFrame>): Sketch {
  const boxes = sketch.boxes.map((box) => ({
    ...box,
    frames: box.frames.map((frame) => {
      if (frame.id === id) return corrected(frame, change);
      return change.queen ? { ...frame, queen: false } : frame;
    }),
  }));
  return { ...sketch, boxes };
}

/** A box with more or fewer frames; new ones are empty, and the last ones go first. */
export function resizeBox(box: SketchBox, count: number, newKey: () => string): SketchBox {
  const kept = box.frames.slice(0, count);
  const more = Array.from({ length: Math.max(0, count - kept.length) }, () => emptyFrame(newKey()));
  return { ...box, frames: [...kept, ...more] };
}

/** Sizes to choose from: the keeper's own first, then those of common boxes. */
export function frameSizes(own: readonly FrameSizeSetting[]): readonly FrameSize[] {
  const mine = own.map(({ name, sideDm2, fullBees }) => ({
    name,
    sideDm2,
    ...(fullBees === undefined ? {} : { fullBees }),
  }));
  const names = new Set(mine.map(({ name }) => name));
  return [...mine, ...FRAME_SIZES.filter(({ name }) => !names.has(name))];
}

/** Open brood of a frame of both ages: egg and larva are nine of the twenty-one days. */
const OPEN_OF_BOTH = 9 / 21;
const OPEN_SHARE = { open: 0.75, both: OPEN_OF_BOTH, capped: 0.25 } as const;

/** The sketch as the planner reckons with it. A size that is no longer known counts as the first of those that are. */
export function combFrames(sketch: Sketch, sizes: readonly FrameSize[]): readonly CombFrame[] {
  const [first] = sizes;
  if (!first) return [];
  return sketch.boxes.flatMap((box) => {
    const size = sizes.find(({ name }) => name === box.size) ?? first;
    return box.frames.map(({ id, bees, brood, age, stores, eggs, cells, queen }) => ({
      id,
      size,
      bees,
      openBrood: brood * OPEN_SHARE[age],
      cappedBrood: brood * (1 - OPEN_SHARE[age]),
      stores,
      eggs,
      cells,
      queen,
    }));
  });
}

/** True where something was judged: an empty sketch gives no plan. */
export function hasContent(sketch: Sketch): boolean {
  return sketch.boxes.some(({ frames }) => frames.some(({ bees, brood }) => bees > 0 && brood > 0));
}
