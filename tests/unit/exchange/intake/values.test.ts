import { describe, expect, it } from 'vitest';
import { readMixed } from '../../../../src/exchange/intake/mixed.ts';
import { scaled } from '../../../../src/exchange/intake/settings.ts';
import { provenOrder, readDay } from '../../../../src/exchange/intake/values/day.ts';
import { readMark } from '../../../../src/exchange/intake/values/mark.ts';
import { miteHeader, readMites } from '../../../../src/exchange/intake/values/mites.ts';
import { readDam, readName, readQueen } from '../../../../src/exchange/intake/values/name.ts';
import { readNumber } from '../../../../src/exchange/intake/values/number.ts';
import { readOutcome, readWinter } from '../../../../src/exchange/intake/values/outcome.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';

const today = '2026-06-01' as PlainDay;

describe('days', () => {
  it.each([
    ['2024-05-14', '2024-05-14'],
    ['2024-05-14 00:00', '2024-05-14'],
    ['14.5.24', '2024-05-14'],
    ['14.05.2024', '2024-05-14'],
    ['14/5/2024', '2024-05-14'],
    ['5/14/2024', '2024-05-14'],
    ['May 2024', '2024-05'],
    ['5/2024', '2024-05'],
    ['14 May 2024', '2024-05-14'],
    ['May 14, 2024', '2024-05-14'],
    ['3rd of June 2022', '2022-06-03'],
    ['14. Mai 2024', '2024-05-14'],
    ['14 février 2025', '2025-02-14'],
    ['2023', '2023'],
    ["'24", '2024'],
    ['24', '2024'],
    ['99', '1999'],
    ['spring 2023', '2023'],
    ['Frühjahr 23', '2023'],
    ['ca. 2022', '2022'],
  ])('%s is %s', (text, day) => {
    expect(readDay(text, today)).toMatchObject({ is: 'day', day });
  });

  it('of a spreadsheet kept as a number are found again (day 45,426 is 14 May 2024 counted from 30 December 1899)', () => {
    const days = (Date.UTC(2024, 4, 14) - Date.UTC(1899, 11, 30)) / 86_400_000;
    expect(readDay(String(days), today)).toMatchObject({ is: 'day', day: '2024-05-14' });
  });

  it('keep the words of a season, of which only the year is known', () => {
    expect(readDay('late summer 2021', today)).toMatchObject({ remark: 'written as "late summer 2021"' });
  });

  it('that could be either way round are said to be so, unless the order is known', () => {
    expect(readDay('5/6/2024', today)).toEqual({
      is: 'either',
      dayFirst: '2024-06-05',
      monthFirst: '2024-05-06',
    });
    expect(readDay('5/6/2024', today, 'month-first')).toMatchObject({ day: '2024-05-06' });
    expect(readDay('6/6/2024', today)).toMatchObject({ day: '2024-06-06' });
  });

  it.each(['31.2.2024', 'abc', '', '7', '14.5.', '0/0/2024', '1/1/1066'])('%j is none', (text) => {
    expect(readDay(text, today)).toMatchObject({ is: 'unreadable' });
  });

  it('of one column prove their order by one cell', () => {
    expect(provenOrder(['3/4/2024', '23/4/2024'])).toBe('day-first');
    expect(provenOrder(['3/4/2024', '4/23/2024'])).toBe('month-first');
    expect(provenOrder(['23/4/2024', '4/23/2024'])).toBe('both');
    expect(provenOrder(['3/4/2024', 'May 2024'])).toBeUndefined();
  });
});

describe('names and dams', () => {
  it.each([
    ['Birch', { name: 'Birch' }],
    ['Birch 2021', { name: 'Birch', year: 2021 }],
    ['Birch (2021)', { name: 'Birch', year: 2021 }],
    ["Birch '21", { name: 'Birch', year: 2021 }],
    ['2021', { name: '2021' }],
    ['Hive 12', { name: 'Hive 12' }],
  ])('%s', (text, named) => {
    expect(readName(text)).toEqual(named);
  });

  it.each([
    'Birch',
    'daughter of Birch',
    'd. of Birch',
    'd/o Birch',
    'dtr of Birch',
    'F1 of Birch',
    'ex Birch',
    'Birch x unknown',
    'Birch × ?',
    "Birch's daughter",
    'Birch F1',
    'Tochter von Birch',
    'fille de Birch',
    'grafted from Birch',
    'split from Birch',
  ])('%s names the dam Birch, for sure', (text) => {
    expect(readDam(text)).toMatchObject({ is: 'named', dams: [{ name: 'Birch' }], doubtful: false });
  });

  it('keep a doubt, several dams, a year and the mates', () => {
    expect(readDam('Birch?')).toMatchObject({ dams: [{ name: 'Birch' }], doubtful: true });
    expect(readDam('Birch or Alder')).toMatchObject({ dams: [{ name: 'Birch' }, { name: 'Alder' }] });
    expect(readDam('daughter of Birch 2021')).toMatchObject({ dams: [{ name: 'Birch', year: 2021 }] });
    expect(readDam('Birch x hill drones')).toMatchObject({ remark: 'Mated with: hill drones' });
  });

  it('are not made of a granddam or a swarm', () => {
    expect(readDam('granddaughter of Birch')).toMatchObject({ is: 'unclear' });
    expect(readDam('swarm from box 3')).toMatchObject({ is: 'unclear' });
    for (const text of ['?', 'unknown', '-', 'n/a', 'unbekannt'])
      expect(readDam(text)).toEqual({ is: 'unknown' });
  });

  it('may stand together in one cell', () => {
    expect(readQueen('Elder (d. of Cedar)')).toMatchObject({
      queen: { name: 'Elder' },
      dam: { dams: [{ name: 'Cedar' }] },
    });
    expect(readQueen('Elder, daughter of Cedar')).toMatchObject({
      queen: { name: 'Elder' },
      dam: { dams: [{ name: 'Cedar' }] },
    });
    expect(readQueen('Elder (2024)')).toEqual({ queen: { name: 'Elder', year: 2024 } });
    expect(readQueen('daughter of Cedar')).toMatchObject({ dam: { dams: [{ name: 'Cedar' }] } });
    expect(readQueen('daughter of Cedar').queen).toBeUndefined();
    expect(readQueen('Elder (nice)')).toEqual({ queen: { name: 'Elder' }, remark: 'nice' });
    expect(readQueen('?')).toEqual({});
  });
});

describe('numbers, marks and fates', () => {
  it.each([
    ['3.5', 3.5, ''],
    ['3,5', 3.5, ''],
    ['3½', 3.5, ''],
    ['½', 0.5, ''],
    ['12,5 kg', 12.5, 'kg'],
    ['7 frames', 7, 'frames'],
  ])('%s', (text, value, unit) => {
    expect(readNumber(text)).toEqual({ value, unit });
  });

  it.each(['', '.', 'kg', '3-4', '1,234,5', '3/4', '--'])('%j is no number', (text) => {
    expect(readNumber(text)).toBeUndefined();
  });

  it('read colours in several languages, with numbers', () => {
    expect(readMark('blue 23')).toEqual({ is: 'marked', colour: 'blue', number: '23' });
    expect(readMark('b23')).toEqual({ is: 'marked', colour: 'blue', number: '23' });
    expect(readMark('grün')).toEqual({ is: 'marked', colour: 'green' });
    expect(readMark('unmarked')).toEqual({ is: 'unmarked' });
    expect(readMark('checked')).toEqual({ is: 'unreadable' });
  });

  it.each([
    ['yes', { is: 'alive' }],
    ['lebt', { is: 'alive' }],
    ['✓', { is: 'alive' }],
    ['dead', { is: 'dead' }],
    ['dead - mites', { is: 'dead', cause: 'mites' }],
    ['tot, verhungert', { is: 'dead', cause: 'starved' }],
    ['starved', { is: 'dead', cause: 'starved' }],
    ['superseded', { is: 'queen-lost', cause: 'superseded' }],
    ['given to Jon', { is: 'queen-lost', cause: 'given-away', to: 'Jon' }],
    ['united with 4', { is: 'joined' }],
  ])('%s', (text, outcome) => {
    expect(readOutcome(text)).toEqual(outcome);
  });

  it('make no fate of other words', () => {
    for (const text of ['swarmy but nice', 'requires feeding', 'blue', ''])
      expect(readOutcome(text)).toBeUndefined();
  });

  it('name a winter by the year of its spring', () => {
    expect(readWinter('Winter 22/23')).toBe(2023);
    expect(readWinter('2022/2023')).toBe(2023);
    expect(readWinter('overwintered 2024')).toBe(2024);
    expect(readWinter('winter 22/25')).toBeUndefined();
    expect(readWinter('winter')).toBeUndefined();
  });

  it('take a cell with several meanings apart', () => {
    expect(readMixed('alive, strong; gentle 3.5')).toMatchObject({
      outcome: { is: 'alive' },
      inspections: [{ field: 'gentle', value: 3.5 }],
      rest: 'strong',
    });
    expect(readMixed('temper 3,5; 8 frames of bees')).toMatchObject({
      inspections: [
        { field: 'gentle', value: 3.5 },
        { field: 'framesOfBees', value: 8 },
      ],
    });
  });

  it('turn scores of another scale over in half points, ends on ends', () => {
    for (const [scale, worst, best] of [
      ['1-5', 1, 5],
      ['5-1', 5, 1],
      ['1-10', 1, 10],
      ['10-1', 10, 1],
      ['1-4', 1, 4],
    ] as const) {
      expect(scaled(worst, scale)).toBe(1);
      expect(scaled(best, scale)).toBe(4);
    }
    expect(scaled(3, '1-5')).toBe(2.5);
    expect(scaled(6, '1-5')).toBeUndefined();
    expect(scaled(3.25, '1-4')).toBeUndefined();
  });
});

describe('mite counts', () => {
  it.each([
    ['6/300', {}, { method: 'wash', mites: 6, bees: 300 }],
    ['6 of 300', {}, { method: 'wash', mites: 6, bees: 300 }],
    ['1 von 300', {}, { method: 'wash', mites: 1, bees: 300 }],
    ['6', miteHeader('mites per 300'), { method: 'wash', mites: 6, bees: 300 }],
    ['6/300', miteHeader('sugar shake'), { method: 'sugar-shake', mites: 6, bees: 300 }],
    ['12 in 3 days', {}, { method: 'natural-drop', mites: 12, days: 3 }],
    ['4/day', {}, { method: 'natural-drop', mites: 4, days: 1 }],
    ['4', miteHeader('Milbenfall pro Tag'), { method: 'natural-drop', mites: 4, days: 1 }],
  ])('%s', (text, header, sample) => {
    expect(readMites(text, header)).toMatchObject({ is: 'count', sample });
  });

  it.each(['2 %', '2,5%', '6', 'many', '6/0'])('are not made of %s: the sample is not known', (text) => {
    const read = readMites(text, {});
    expect(read.is).not.toBe('count');
    if (read.is !== 'count') expect(read.remedy).toContain('6/300');
  });
});
