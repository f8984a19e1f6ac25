import type { DrawnQueen, Geometry, Joint } from './geometry.ts';
import { type View, viewX, viewY } from './view.ts';

/** Queens and joints sorted by height, so that those in sight are found without looking at all of them. */
export interface CullingIndex {
  readonly queens: readonly DrawnQueen[];
  readonly joints: readonly Joint[];
  /** For each joint, the highest lower end of it and of all before it: how far down earlier joints may hang. */
  readonly lowest: Float64Array;
}

/** Joints and queens by height, so that only those in sight are drawn. */
export function cullingIndex({ queens, joints }: Geometry): CullingIndex {
  const sorted = [...joints].sort((a, b) => a.y - b.y);
  const lowest = new Float64Array(sorted.length);
  let deepest = Number.NEGATIVE_INFINITY;
  sorted.forEach((joint, index) => {
    deepest = Math.max(deepest, joint.daughters.at(-1)?.y ?? joint.y);
    lowest[index] = deepest;
  });
  return { queens: [...queens].sort((a, b) => a.y - b.y), joints: sorted, lowest };
}

/** Pixels beyond the window that still count as in sight: names and marks stand out of their lanes. */
const MARGIN = 40;

/** What is to be drawn for a window of this size. */
export function inSight(
  index: CullingIndex,
  view: View,
  width: number,
  height: number,
): { readonly queens: readonly DrawnQueen[]; readonly joints: readonly Joint[] } {
  const top = (-MARGIN - view.y) / view.ky;
  const bottom = (height + MARGIN - view.y) / view.ky;
  const queens: DrawnQueen[] = [];
  for (
    let k = firstAtLeast(index.queens.length, (i) => index.queens[i]?.y ?? 0, top);
    k < index.queens.length;
    k += 1
  ) {
    const queen = index.queens[k];
    if (!queen || queen.y > bottom) break;
    if (viewX(view, queen.from) <= width + MARGIN && endsInSight(queen, view)) queens.push(queen);
  }
  const joints: Joint[] = [];
  for (
    let k = firstAtLeast(index.lowest.length, (i) => index.lowest[i] ?? 0, top);
    k < index.joints.length;
    k += 1
  ) {
    const joint = index.joints[k];
    if (!joint || joint.y > bottom) break;
    const x = viewX(view, joint.x);
    const low = viewY(view, joint.daughters.at(-1)?.y ?? joint.y);
    if (x >= -MARGIN && x <= width + MARGIN && low >= -MARGIN) joints.push(joint);
  }
  return { queens, joints };
}

/** Whoever is alive today has her name beside the drawing, whatever part of time is in sight. */
function endsInSight(queen: DrawnQueen, view: View): boolean {
  const { fate } = queen.life;
  return fate === 'living' || fate === 'expected' || viewX(view, queen.reach) >= -MARGIN;
}

function firstAtLeast(length: number, value: (index: number) => number, least: number): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (value(middle) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
