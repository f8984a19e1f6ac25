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

/** Dots in order of value; one that would touch another of its row goes a row up. Hers come first, on the line. */
export function dots(
  members: readonly Neighbour[],
  x: (value: number) => number,
  diameter: number,
): readonly Dot[] {
  const rows: number[][] = [];
  const order = [...members].sort(
    (a, b) => Number(b.hers) - Number(a.hers) || x(a.value) - x(b.value) || (a.queen < b.queen ? -1 : 1),
  );
  return order.map((member) => {
    const place = x(member.value);
    let row = 0;
    while (rows[row]?.some((other) => Math.abs(other - place) < diameter)) row += 1;
    rows[row] = [...(rows[row] ?? []), place];
    return { ...member, x: place, row };
  });
}
