import type { Metrics } from './geometry.ts';

/** Sizes of the drawing for a width in pixels and a number of queens. */

/** Up to so many queens the drawing is SVG; above it a canvas that draws only what is in sight. */
const SVG_QUEENS = 400;
const NARROW = 560;

/** Whether there are too many queens for SVG, and a canvas draws them. */
export function isLarge(queens: number): boolean {
  return queens > SVG_QUEENS;
}

/** Heights of lanes and heads in pixels, for a width and a number of queens. */
export function metricsFor(width: number, queens: number): Metrics {
  return {
    lane: width < NARROW ? 27 : 25,
    stripHead: 36,
    label: 14,
    keepRoomForNames: !isLarge(queens),
  };
}

/** A year is never narrower than this; the years that do not fit are reached by dragging. */
const LEAST_YEAR = { narrow: 50, wide: 84 };

/** How the width is shared between the lives and the names beside them, and how wide a year of so many is. */
export function plotFor(
  width: number,
  years: number,
): { readonly plot: number; readonly gutter: number; readonly yearWidth: number } {
  const narrow = width < NARROW;
  const gutter = narrow ? 116 : width < 900 ? 170 : 210;
  const plot = Math.max(0, width - gutter);
  const least = narrow ? LEAST_YEAR.narrow : LEAST_YEAR.wide;
  return { plot, gutter, yearWidth: Math.max(least, plot / Math.max(0.5, years)) };
}

/** A drawing that stands whole in the page is as high as it must be; a large one is seen through a window. */
export function windowHeight(height: number, large: boolean): number {
  return large ? Math.min(height, 640) : height;
}
