import { describe, expect, it } from 'vitest';
import { inferQueenCalendar } from '../../../../graph/calendar/infer.ts';
import type { Making } from '../../../../graph/calendar/making.ts';
import type { Observation } from '../../../../graph/calendar/observation.ts';
import { tasksFor } from '../../../../graph/calendar/queen-tasks.ts';
import {
  calendarText,
  cautionsFor,
  contradictionText,
  dayText,
  spanText,
  stateText,
  stretchText,
  taskText,
  taskTitle,
  titleOfTaskUid,
  windowText,
} from '../../../../graph/calendar/sentences.ts';
import * as words from '../../../../graph/calendar/words.ts';

/** Days since 1970-01-01 of a day of the year 2026. */
const day = (month: number, date: number): number => Date.UTC(2026, month - 1, date) / 86_400_000;
const queenless: Making = { kind: 'made-queenless', day: day(5, 1) };

const calendar = (making: Making, observations: readonly Observation[], on: number) =>
  inferQueenCalendar({ making, observations, on });

describe('days in words', () => {
  it('are written with the month in full, across the turn of a year as well', () => {
    expect(dayText(day(5, 14))).toBe('14 May');
    expect(spanText(day(12, 30), day(12, 30) + 4)).toBe('between 30 December and 3 January');
  });

  it('name the month once where one does', () => {
    expect(spanText(day(5, 14), day(5, 18))).toBe('between 14 and 18 May');
    expect(stretchText(day(5, 14), day(5, 18))).toBe('from 14 to 18 May');
  });

  it('never leave one day to stand as if it were certain', () => {
    expect(spanText(day(5, 14), day(5, 14))).toBe('on or about 14 May');
  });

  it('add the likely day only to a wide window', () => {
    expect(windowText({ earliest: day(5, 14), likely: day(5, 15), latest: day(5, 17) })).toBe(
      'between 14 and 17 May',
    );
    expect(windowText({ earliest: day(5, 14), likely: day(5, 20), latest: day(5, 30) })).toBe(
      'between 14 and 30 May, most likely about 20 May',
    );
  });
});

describe('the calendar in sentences', () => {
  it('says what the part is, what comes when, when to leave it closed, and when to give up', () => {
    expect(calendarText(calendar({ ...queenless, left: 'eggs' }, [], day(5, 1)))).toBe(
      'No queen. Has eggs to raise one from. Capped cells between 5 and 10 May, a virgin between 12 and 18 May and ' +
        'eggs between 19 May and 15 June, most likely about 27 May. Leave closed from 11 to 26 May. ' +
        'If there are no eggs by 15 June, take her for lost.',
    );
  });

  it('leaves out what has passed and says "by" of what may be there already', () => {
    const text = calendarText(calendar(queenless, [], day(5, 12)));
    expect(text).not.toContain('apped cells');
    expect(text).toContain('A virgin by 18 May');
  });

  it('says of a colony that awaits none only what it is', () => {
    const lost = calendar(queenless, [{ day: day(6, 20), eggs: false }], day(6, 20));
    expect(calendarText(lost)).toBe('No queen, and none on the way.');
    expect(stateText(lost.state)).toBe('Likely: no queen, and none on the way.');
  });

  it('names the likely readings of a contradiction', () => {
    const [early] = calendar(queenless, [{ day: day(5, 8), eggs: true }], day(5, 8)).contradictions;
    expect(contradictionText(early!)).toBe(
      'Eggs or brood were seen before the new queen can have laid (8 May). Either a queen was overlooked and is in ' +
        'this part; or the cells are older than the split: they were getting ready to swarm or to replace their queen.',
    );
  });
});

describe('tasks in sentences', () => {
  const tasks = tasksFor(
    { colony: 'c', key: 'k', calendar: calendar(queenless, [], day(5, 1)) },
    day(5, 1),
    60,
  );

  it('say when, what, until when, and what else can be done', () => {
    expect(taskText(tasks[0]!)).toBe(
      'Between 6 and 7 May, look for queen cells. Of use until 7 May. If what you hope for is not there: give a ' +
        'frame with eggs and young larvae, give ripe queen cells, give a queen or join with a neighbour.',
    );
    expect(taskText(tasks[1]!)).toBe(
      'From 8 to 25 May, leave closed: a virgin is about to emerge or to fly, and may be lost if the hive is opened.',
    );
  });

  it('ask for haste where waiting to the end of the span does harm, and name no end before the span is over', () => {
    const hasty = taskText({ ...tasks[0]!, from: day(5, 6), to: day(5, 13), lastUseful: day(5, 6) });
    expect(hasty).toContain(
      'Between 6 and 13 May, look for queen cells. The sooner the better, best by 6 May.',
    );
    expect(hasty).not.toContain('Of use until');
  });

  it('carry the cautions of their fallbacks', () => {
    expect(cautionsFor(tasks[0]!).some((text) => text.includes('disease'))).toBe(true);
    expect(cautionsFor(tasks[1]!)).toEqual([]);
  });
});

describe('the words', () => {
  it('never cheer and never shout', () => {
    const texts = JSON.stringify(words);
    expect(texts).not.toContain('!');
    expect(texts.length).toBeGreaterThan(1000);
  });
});

describe('a task of which only the uid is at hand', () => {
  it('is called as the task itself is', () => {
    const seen = calendar(queenless, [], day(5, 4));
    const tasks = tasksFor({ colony: 'c', key: 'k', calendar: seen }, day(5, 4), 60);
    expect(tasks.length).toBeGreaterThan(1);
    for (const task of tasks) expect(titleOfTaskUid(task.uid)).toBe(taskTitle(task));
  });

  it('has no title when it is none of ours', () => {
    expect(titleOfTaskUid('c:something-else:2026')).toBeUndefined();
    expect(titleOfTaskUid('c:toString:2026')).toBeUndefined();
  });
});
