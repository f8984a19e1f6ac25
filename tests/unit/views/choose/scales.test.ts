import { describe, expect, it } from 'vitest';
import type { SeasonOutlook } from '../../../../graph/choice/look-ahead/look-ahead.ts';
import { drawCurve, nearestPoint } from '../../../../views/choose/curve-scale.ts';
import { HALF, meritScale, NINE_TENTHS } from '../../../../views/choose/merit-scale.ts';
import { drawOutlook, pointsOf } from '../../../../views/choose/outlook-scale.ts';

const frame = { width: 300, height: 200, margin: { top: 10, right: 10, bottom: 30, left: 40 } };

describe('the scale of merits', () => {
  const rows = [
    { merit: 1, error: 1 },
    { merit: -0.5, error: 0.5 },
  ];

  it('holds the band of nine in ten of everybody, and the starting stock', () => {
    const { at } = meritScale(rows);
    expect(at(1 + NINE_TENTHS)).toBeLessThanOrEqual(99);
    expect(at(-0.5 - NINE_TENTHS * 0.5)).toBeGreaterThanOrEqual(1);
    expect(at(0)).toBeGreaterThan(at(-0.5));
    expect(meritScale([{ merit: 5, error: 0.1 }]).at(0)).toBe(1);
  });

  it('has bands of one half and nine tenths of a normal spread', () => {
    // Quartile and 95 % point of the normal curve: 0.6745 and 1.6449 (any table of it).
    expect([HALF, NINE_TENTHS]).toEqual([0.6745, 1.6449]);
  });

  it('stands where nobody has a merit yet', () => {
    expect(meritScale([]).at(0)).toBe(50);
  });
});

describe('the curve of gain against kinship', () => {
  const points = [
    { gain: 0.5, groupKinship: 0.3 },
    { gain: 0.4, groupKinship: 0.2 },
    { gain: 0, groupKinship: 0.1 },
  ];
  const drawing = drawCurve(points, ({ gain }) => gain, frame);

  it('has kinship to the right and gain upwards, inside its frame', () => {
    const xs = drawing.places.map(({ x }) => x);
    const ys = drawing.places.map(({ y }) => y);
    expect(xs).toEqual([...xs].sort((a, b) => b - a));
    expect(ys).toEqual([...ys].sort((a, b) => a - b));
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(frame.margin.left);
    expect(Math.max(...ys)).toBeLessThanOrEqual(frame.height - frame.margin.bottom);
  });

  it('is taken hold of at the nearest point', () => {
    const [most, middle, least] = drawing.places;
    expect(nearestPoint(drawing.places, (most?.x ?? 0) + 100)).toBe(0);
    expect(nearestPoint(drawing.places, (middle?.x ?? 0) + 2)).toBe(1);
    expect(nearestPoint(drawing.places, (least?.x ?? 0) - 100)).toBe(2);
  });

  it('is drawn for one point alone', () => {
    const one = drawCurve(points.slice(0, 1), ({ gain }) => gain, frame);
    expect(one.places).toHaveLength(1);
    expect(Number.isFinite(one.places[0]?.x)).toBe(true);
  });
});

describe('the bands of a look-ahead', () => {
  const bands = (median: number) => ({ mean: median, low: median - 1, median, high: median + 1 });
  const seasons = [
    { season: 0, gain: bands(0), alleles: bands(9), lines: bands(4), colonies: bands(9), lost: 0 },
    { season: 1, gain: bands(1), alleles: bands(8), lines: bands(3), colonies: bands(9), lost: 0 },
    { season: 2, alleles: bands(8), lines: bands(3), colonies: bands(0), lost: 1 },
  ] as readonly SeasonOutlook[];

  it('leave out the seasons in which no history has a colony left', () => {
    expect(pointsOf(seasons, 'gain').map(({ season }) => season)).toEqual([0, 1]);
    expect(pointsOf(seasons, 'lines').map(({ season }) => season)).toEqual([0, 1, 2]);
  });

  it('share one scale with the run before, which may have been longer', () => {
    const alone = drawOutlook(seasons.slice(0, 2), undefined, 'lines', frame);
    expect(alone.before).toBeUndefined();
    const both = drawOutlook(seasons.slice(0, 2), seasons, 'lines', frame);
    expect(both.before).toBeDefined();
    expect(both.seasons.at(-1)?.season).toBe(2);
    expect(alone.seasons.at(-1)?.season).toBe(1);
  });

  it('have their axis from nought on for what is counted', () => {
    const { ticks } = drawOutlook(seasons, undefined, 'lines', frame);
    expect(Math.min(...ticks.map(({ value }) => value))).toBe(0);
  });
});
