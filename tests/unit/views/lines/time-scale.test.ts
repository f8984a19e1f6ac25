import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../../src/journal/day.ts';
import { beeYearOf, drawnYears, monthTicks, timeScale } from '../../../../views/lines/time-scale.ts';
import { day } from '../../../helpers/story.ts';

const number = (text: string) => dayNumber(day(text));

describe('the scale of time', () => {
  const scale = timeScale(number('2024-05-01'), day('2026-06-11'), 100);

  it('begins with the bee year of the first day and ends today', () => {
    expect(scale.x(number('2024-03-01'))).toBe(0);
    expect(scale.x(number('2026-06-11'))).toBe(scale.width);
    expect(scale.years.map(({ year }) => year)).toEqual([2024, 2025, 2026]);
  });

  it('counts January and February to the bee year before', () => {
    expect(beeYearOf(number('2025-02-28'))).toBe(2024);
    expect(beeYearOf(number('2025-03-01'))).toBe(2025);
  });

  it('gives every whole year the same width', () => {
    expect(scale.x(number('2025-03-01'))).toBe(100);
    expect(scale.x(number('2026-03-01'))).toBe(200);
  });

  it('rises with every day, and leads back from a place to its day', () => {
    for (let at = number('2024-03-01'); at < number('2026-06-11'); at += 1) {
      expect(scale.x(at + 1)).toBeGreaterThan(scale.x(at));
    }
    const midsummer = number('2025-06-21');
    expect(scale.day(scale.x(midsummer))).toBeCloseTo(midsummer, 6);
  });

  it('draws a day of May wider than a day of January', () => {
    const width = (from: string, to: string) => scale.x(number(to)) - scale.x(number(from));
    expect(width('2025-05-10', '2025-05-11')).toBeGreaterThan(2 * width('2025-01-10', '2025-01-11'));
  });

  it('never leads past today', () => {
    expect(scale.x(number('2027-01-01'))).toBe(scale.width);
  });

  it('shows a winter as over only once March has come', () => {
    const winters = scale.years.map(({ winter }) => winter?.over);
    expect(winters).toEqual([true, true, undefined]);
    const inWinter = timeScale(number('2025-05-01'), day('2026-01-15'), 100);
    expect(inWinter.years[0]?.winter?.over).toBe(false);
    expect(inWinter.years[0]?.winter?.spring).toBe(2026);
  });

  it('counts the year that is not over by the part of it that is drawn', () => {
    expect(drawnYears(number('2024-03-01'), day('2026-03-01'))).toBeCloseTo(2, 9);
    expect(drawnYears(number('2024-03-01'), day('2025-12-01'))).toBeCloseTo(1.84, 9);
  });

  it('names the months only where there is room for them', () => {
    expect(monthTicks(2025, scale, 1)).toEqual([]);
    expect(monthTicks(2025, scale, 8).map(({ name }) => name)).toContain('May');
  });
});
