import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { Contributions } from '../../graph/choice/contribution-problem.ts';

/** The curve of gain against kinship in pixels: kinship to the right, gain upwards. */

export type CurvePoint = Pick<Contributions, 'gain' | 'groupKinship'>;

export interface CurveFrame {
  readonly width: number;
  readonly height: number;
  readonly margin: {
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
    readonly left: number;
  };
}

export interface CurveDrawing {
  readonly path: string;
  readonly places: readonly { readonly point: number; readonly x: number; readonly y: number }[];
  readonly kinshipTicks: readonly { readonly value: number; readonly x: number }[];
  readonly gainTicks: readonly { readonly value: number; readonly y: number }[];
}

/** `gainOf`: gain of a point as it is shown. */
export function drawCurve(
  points: readonly CurvePoint[],
  gainOf: (point: CurvePoint) => number,
  { width, height, margin }: CurveFrame,
): CurveDrawing {
  const [least = 0, most = 0] = extent(points, ({ groupKinship }) => groupKinship);
  const [low = 0, high = 0] = extent(points, gainOf);
  const x = scaleLinear(widened(least, most, 0.01), [margin.left, width - margin.right]);
  const y = scaleLinear(widened(Math.min(0, low), high, 0.1), [height - margin.bottom, margin.top]).nice(4);
  const places = points.map((point, k) => ({
    point: k,
    x: round(x(point.groupKinship)),
    y: round(y(gainOf(point))),
  }));
  return {
    path:
      line<(typeof places)[number]>()
        .x((place) => place.x)
        .y((place) => place.y)(places) ?? '',
    places,
    kinshipTicks: x
      .ticks(Math.max(2, Math.floor(width / 90)))
      .map((value) => ({ value, x: round(x(value)) })),
    gainTicks: y.ticks(4).map((value) => ({ value, y: round(y(value)) })),
  };
}

/** The point of the curve that lies nearest to a place across. */
export function nearestPoint(places: CurveDrawing['places'], x: number): number {
  let best = 0;
  places.forEach((place, k) => {
    if (Math.abs(place.x - x) < Math.abs((places[best]?.x ?? 0) - x)) best = k;
  });
  return best;
}

function widened(low: number, high: number, least: number): [number, number] {
  return high - low < least ? [low - least / 2, high + least / 2] : [low, high];
}

function round(value: number): number {
  return Math.round(10 * value) / 10;
}
