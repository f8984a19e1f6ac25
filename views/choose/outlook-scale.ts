import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import type { Bands } from '../../graph/numerics/bands.ts';

/** Bands over seasons in pixels. */

export type Figure = 'gain' | 'inbreeding' | 'alleles' | 'lines';

export interface OutlookFrame {
  readonly width: number;
  readonly height: number;
  readonly margin: {
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
    readonly left: number;
  };
}

export interface OutlookDrawing {
  readonly band: string;
  readonly median: string;
  /** Median of the run before; absent without one. */
  readonly before: string | undefined;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  readonly seasons: readonly { readonly season: number; readonly x: number }[];
}

interface Point extends Bands {
  readonly season: number;
}

/** The seasons in which the figure is known. */
export function pointsOf(seasons: readonly SeasonOutlook[], figure: Figure): readonly Point[] {
  return seasons.flatMap((each) => {
    const bands = each[figure];
    return bands ? [{ ...bands, season: each.season }] : [];
  });
}

export function drawOutlook(
  now: readonly SeasonOutlook[],
  before: readonly SeasonOutlook[] | undefined,
  figure: Figure,
  { width, height, margin }: OutlookFrame,
): OutlookDrawing {
  const points = pointsOf(now, figure);
  const earlier = before && pointsOf(before, figure);
  const last = Math.max(
    1,
    ...points.map(({ season }) => season),
    ...(earlier ?? []).map(({ season }) => season),
  );
  const [low = 0, high = 1] = extent(
    [
      ...points.flatMap((point) => [point.low, point.high]),
      ...(earlier ?? []).map(({ median }) => median),
    ].concat(0),
  );
  const x = scaleLinear([0, last], [margin.left, width - margin.right]);
  const y = scaleLinear([low, high === low ? low + 1 : high], [height - margin.bottom, margin.top]).nice(3);
  const place = (value: number) => Math.round(10 * value) / 10;
  const middle = line<Point>()
    .x(({ season }) => place(x(season)))
    .y(({ median }) => place(y(median)));
  const band = area<Point>()
    .x(({ season }) => place(x(season)))
    .y0((point) => place(y(point.low)))
    .y1((point) => place(y(point.high)));
  return {
    band: band(points) ?? '',
    median: middle(points) ?? '',
    before: earlier && (middle(earlier) ?? undefined),
    ticks: y.ticks(3).map((value) => ({ value, y: place(y(value)) })),
    seasons: x
      .ticks(Math.min(last, 5))
      .filter(Number.isInteger)
      .map((season) => ({ season, x: place(x(season)) })),
  };
}
