import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { HerTrait, Neighbour } from './her-traits.ts';

/** Where the dots of a comparison group stand: better always to the right, dots of one place one above the other. */

export interface Dot extends Neighbour {
  readonly x: number;
  /** Row above the line, 0 on it. */
  readonly row: number;
}

/** Places of values in pixels for a trait, the same for all its groups: worst seen at `from`, best seen at `to`. */
export function betterScale(
  { groups, better }: HerTrait,
  from: number,
  to: number,
): { readonly x: (value: number) => number; readonly worst: number; readonly best: number } {
  const values = groups.flatMap(({ members }) => members.map(({ value }) => value));
  const [low = 0, high = 0] = extent(values);
  const [worst, best] = better === 'higher' ? [low, high] : [high, low];
  if (worst === best) return { x: () => (from + to) / 2, worst, best };
  return { x: scaleLinear([worst, best], [from, to]), worst, best };
}

/** Dots stand at most so many above one another; more of one value go aside, towards the middle of the strip. */
const MOST_ROWS = 3;

/** Dots in order of value, hers first and on the line; one that would touch another goes up a row, then aside. */
export function dots(
  members: readonly Neighbour[],
  x: (value: number) => number,
  diameter: number,
  width: number,
): readonly Dot[] {
  const rows: number[][] = Array.from({ length: MOST_ROWS }, () => []);
  const order = [...members].sort(
    (a, b) => Number(b.hers) - Number(a.hers) || x(a.value) - x(b.value) || (a.queen < b.queen ? -1 : 1),
  );
  return order.map((member) => {
    const place = x(member.value);
    const inward = place > width / 2 ? -diameter : diameter;
    for (let aside = 0; ; aside += 1) {
      const at = place + aside * inward;
      const row = rows.findIndex((taken) => taken.every((other) => Math.abs(other - at) >= diameter - 1e-6));
      if (row < 0) continue;
      rows[row]?.push(at);
      return { ...member, x: at, row };
    }
  });
}
