import { scaleLinear } from 'd3-scale';

/** The one scale that all merits of a screen are drawn on. */

/** Standard errors either side that hold one half, and nine tenths, of a normal spread. */
export const HALF = 0.6745;
export const NINE_TENTHS = 1.6449;

export interface MeritScale {
  /** Place of a merit in percent of the width, 0 to 100. */
  readonly at: (merit: number) => number;
  readonly ticks: readonly number[];
}

/** Holds every nine-tenths band and the starting stock's 0. */
export function meritScale(rows: readonly { readonly merit: number; readonly error: number }[]): MeritScale {
  const ends = rows.flatMap(({ merit, error }) => [merit - NINE_TENTHS * error, merit + NINE_TENTHS * error]);
  const low = Math.min(0, ...ends);
  const high = Math.max(0, ...ends);
  const scale = scaleLinear(low === high ? [-1, 1] : [low, high], [1, 99]).clamp(true);
  const ticks = scale.ticks(5).filter(Number.isInteger);
  return { at: (merit) => Math.round(100 * scale(merit)) / 100, ticks: ticks.length > 0 ? ticks : [0] };
}
