/** Invented combs for the split planner: shares of both sides of a deep frame. */
import { type CombFrame, FRAME_SIZES } from '../../graph/increase/comb.ts';

const deep = FRAME_SIZES[0]!;

/** A deep frame: covered, open brood, capped brood, stores, as shares of both sides. */
export function comb(
  id: string,
  [bees, openBrood, cappedBrood, stores]: readonly [number, number, number, number],
  marks: Pick<CombFrame, 'eggs' | 'queen' | 'cells'> = {},
): CombFrame {
  return { id, size: deep, bees, openBrood, cappedBrood, stores, ...marks };
}

/** A strong colony in two boxes before swarming: 16 frames, about 12 of them full of bees, 8 with brood. */
export const STRONG: readonly CombFrame[] = [
  comb('1', [0.6, 0, 0, 0.9]),
  comb('2', [0.9, 0, 0.2, 0.5]),
  comb('3', [1, 0.3, 0.4, 0.2], { eggs: true }),
  comb('4', [1, 0.5, 0.3, 0.1], { eggs: true }),
  comb('5', [1, 0.2, 0.7, 0.1], { eggs: true, queen: true }),
  comb('6', [1, 0.1, 0.8, 0.1]),
  comb('7', [1, 0.4, 0.4, 0.1], { eggs: true }),
  comb('8', [0.9, 0.1, 0.6, 0.2]),
  comb('9', [0.8, 0, 0.1, 0.7]),
  comb('10', [0.5, 0, 0, 0.9]),
  comb('11', [0.8, 0, 0, 0.8]),
  comb('12', [1, 0.2, 0.5, 0.2]),
  comb('13', [1, 0.3, 0.5, 0.1], { eggs: true }),
  comb('14', [0.9, 0, 0.5, 0.3]),
  comb('15', [0.8, 0, 0, 0.6]),
  comb('16', [0.5, 0, 0, 0.9]),
];

/** A weak colony: five frames, three of them half covered. */
export const WEAK: readonly CombFrame[] = [
  comb('1', [0.3, 0, 0, 0.6]),
  comb('2', [0.6, 0.3, 0.1, 0.1], { eggs: true, queen: true }),
  comb('3', [0.6, 0.2, 0.3, 0.1], { eggs: true }),
  comb('4', [0.5, 0, 0.3, 0.2]),
  comb('5', [0.2, 0, 0, 0.5]),
];
