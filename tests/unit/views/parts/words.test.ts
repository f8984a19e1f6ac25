import { describe, expect, it } from 'vitest';
import { dayText } from '../../../../src/journal/day-words.ts';
import {
  dayInYear,
  monthsText,
  plainDays,
  relativeDay,
  shortDay,
  weekday,
  windowText,
} from '../../../../views/parts/days.ts';
import { inspectionWords } from '../../../../views/parts/entries/inspection-words.ts';
import { miteWords } from '../../../../views/parts/entries/mite-words.ts';
import { colourOfYear } from '../../../../views/parts/marking.ts';
import { count, frameText, list, number, winterText } from '../../../../views/parts/words.ts';
import { day, rough, testId } from '../../../helpers/story.ts';

describe('months in words', () => {
  it('are spans where they follow each other, over the turn of the year too', () => {
    expect(monthsText([4, 5, 6, 7, 8, 9, 10])).toBe('Apr to Oct');
    expect(monthsText([11, 12, 1, 2, 6])).toBe('Jun and Nov to Feb');
    expect(monthsText([8])).toBe('Aug');
    expect(monthsText([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])).toBe('all year');
  });
});

describe('days in words', () => {
  it('say a rough day as roughly as it is known', () => {
    expect([dayText(rough('2026-05-14')), dayText(rough('2026-05')), dayText(rough('2026'))]).toEqual([
      '14 May 2026',
      'May 2026',
      '2026',
    ]);
  });

  it('stand in a sentence of the registry as a keeper writes them', () => {
    expect(plainDays('emerged 2026-05-14, there by 2026-04')).toBe(
      'emerged 14 May 2026, there by April 2026',
    );
    expect(plainDays('8 of 2026')).toBe('8 of 2026');
  });

  it('leave the year out where it is that of the day shown', () => {
    expect(dayInYear(rough('2026-05-14'), day('2026-06-01'))).toBe('14 May');
    expect(dayInYear(rough('2025-05-14'), day('2026-06-01'))).toBe('14 May 2025');
    expect(shortDay(rough('2026'), day('2026-06-01'))).toBe('2026');
  });

  it('count near days and name far ones', () => {
    const on = day('2026-06-11');
    expect(relativeDay(day('2026-06-11'), on)).toBe('today');
    expect(relativeDay(day('2026-06-10'), on)).toBe('yesterday');
    expect(relativeDay(day('2026-06-14'), on)).toBe('in 3 days');
    expect(relativeDay(day('2026-04-01'), on)).toBe('1 April');
  });

  it('say a window as between its ends, the month once', () => {
    const on = day('2026-05-01');
    expect(windowText({ first: day('2026-05-18'), last: day('2026-05-24') }, on)).toBe(
      'between 18 and 24 May',
    );
    expect(windowText({ first: day('2026-05-30'), last: day('2026-06-04') }, on)).toBe(
      'between 30 May and 4 June',
    );
    expect(windowText({ first: day('2026-05-18'), last: day('2026-05-18') }, on)).toBe('on 18 May');
  });

  it('name the weekday without regard to the time zone', () => {
    // 1 January 2000 was a Saturday (a fact of the calendar).
    expect(weekday(day('2000-01-01'))).toBe('Saturday');
  });
});

describe('figures in words', () => {
  it('write halves and quarters as a keeper does', () => {
    expect([number(8.5), number(0.5), number(0.25), number(7)]).toEqual(['8½', '½', '¼', '7']);
    expect(count(1, 'frame')).toBe('1 frame');
    expect(list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(winterText(2026)).toBe('winter 2025/26');
  });

  it('name frames by their kind and leave out what was not given', () => {
    expect(frameText({ openBrood: 1, stores: 2, cells: 0 })).toBe('1 frame of open brood, 2 of stores');
  });

  it('say of no mites found what it rules out, never none', () => {
    // Clopper-Pearson, 0 of 300: 1 - 0.025^(1/300) = 1.22 %.
    expect(miteWords({ method: 'wash', mites: 0, bees: 300 })).toBe(
      'Wash: 0 mites on 300 bees, below 1.2 %.',
    );
  });

  it('give a count with its limits', () => {
    // R 4.2.2, binom.test(9, 300): 3.0 % (1.4 to 5.6 %).
    expect(miteWords({ method: 'wash', mites: 9, bees: 300 })).toContain('3.0 % (1.4 to 5.6 %)');
  });

  it('say of an inspection only what was looked at', () => {
    const base = { kind: 'inspection', day: rough('2026-06-11'), colony: testId(1) as never } as const;
    expect(inspectionWords({ ...base, eggs: true, youngBrood: false, openCells: 0 })).toBe(
      'Eggs, no young brood. No queen cells.',
    );
    expect(inspectionWords({ ...base, cappedCells: 3 })).toBe('Queen cells: 3 capped.');
    expect(inspectionWords({ ...base, occasion: 'calendar', cappedCells: 1 })).toBe('Queen cells: capped.');
    expect(inspectionWords(base)).toBe('');
  });
});

describe('the marking colours', () => {
  it('follow the international convention by the last digit of the year', () => {
    // 1 and 6 white, 2 and 7 yellow, 3 and 8 red, 4 and 9 green, 5 and 0 blue: common practice.
    const colours = [2021, 2022, 2023, 2024, 2025, 2026, 2027, 2028, 2029, 2030].map(colourOfYear);
    expect(colours).toEqual([
      'white',
      'yellow',
      'red',
      'green',
      'blue',
      'white',
      'yellow',
      'red',
      'green',
      'blue',
    ]);
  });
});
