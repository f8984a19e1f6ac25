import { describe, expect, it } from 'vitest';
import { guessColumns, planIntake, readTable } from '../../../../src/exchange/intake/index.ts';
import { readDay } from '../../../../src/exchange/intake/values/day.ts';
import { readMark } from '../../../../src/exchange/intake/values/mark.ts';
import { nameKey, readDam, readQueen } from '../../../../src/exchange/intake/values/name.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';
import { startProjection } from '../../../../src/registry/project.ts';
import { countingIds } from '../../../helpers/devices.ts';

/** Tables as keepers of other cold countries write them. The words are common ones, from memory. */
const today = '2026-06-01' as PlainDay;

const CZECH = [
  'úl;matka;matka matky;rok;značka;stanoviště;datum;mírnost;rámků;spad;poznámka',
  '1;Lípa;;2021;bílá;Zahrada;3.5.24;4;7;12/3 dny;klidná',
  '2;Olše;dcera Lípa;2022;žlutá 7;Zahrada;17. 5. 2024;3;5;;',
  '3;Jíva;dcera od Lípa;2023;červená;Louka;3. V. 2025;2,5;4;;',
].join('\n');

describe('a table in Czech', () => {
  const table = readTable(CZECH);

  it('has its columns known', () => {
    expect(guessColumns(table, today).map(({ field }) => field)).toEqual(
      'colony queen dam born mark yard date gentle frames-of-bees mites note'.split(' '),
    );
  });

  it('is taken in whole, dams, days, colours and mite drop', () => {
    const plan = planIntake(table, guessColumns(table, today), startProjection(new Map()), {
      today,
      newId: countingIds(7),
      answers: {},
      leaveOut: new Set(),
    });
    expect(plan.rows.map(({ status }) => status)).toEqual(['ready', 'ready', 'ready']);
    expect(plan.rows.map(({ summary }) => summary)).toEqual([
      expect.stringContaining('12 mites in 3 days (2024-05-03)'),
      expect.stringContaining('daughter of Lípa'),
      expect.stringMatching(/daughter of Lípa.*gentle 2.5 \(2025-05-03\)/),
    ]);
  });
});

describe('words of other languages', () => {
  it.each([
    ['3.5.24', '2024-05-03'],
    ['3. V. 2024', '2024-05-03'],
    ['17. května 2024', '2024-05-17'],
    ['14 czerwca 2023', '2023-06-14'],
    ['5 kesäkuuta 2024', '2024-06-05'],
    ['14 september 2022', '2022-09-14'],
  ])('%s is a day', (text, day) => {
    expect(readDay(text, today)).toMatchObject({ is: 'day', day });
  });

  it.each([
    ['bílá 12', 'white', '12'],
    ['żółta', 'yellow', undefined],
    ['röd 4', 'red', '4'],
    ['rød', 'red', undefined],
    ['зелений', 'green', undefined],
    ['sininen 9', 'blue', '9'],
  ])('%s is a mark', (text, colour, number) => {
    const mark = readMark(text);
    expect(mark).toMatchObject({ is: 'marked', colour, ...(number ? { number } : {}) });
  });

  it.each(['dcera od Lípa', 'córka Lípa', 'dotter till Lípa', 'datter av Lípa'])('%s names a dam', (text) => {
    expect(readDam(text)).toMatchObject({ is: 'named', dams: [{ name: 'Lípa' }] });
  });
});

describe('names', () => {
  it('in other scripts are told apart by their letters, and not by their numbers alone', () => {
    expect(nameKey('Липа 2')).not.toBe(nameKey('Верба 2'));
    expect(nameKey('Липа 2')).toBe(nameKey('  липа-2 '));
    expect(nameKey('Łąka')).toBe('laka');
    expect(nameKey('Sønder')).toBe('sonder');
  });

  it.each(['ohne Name', 'no name', '(unnamed)', 'bez jména'])('%s is none', (text) => {
    expect(readQueen(text).queen).toBeUndefined();
  });
});

describe('a dam', () => {
  it('may be told as the queen of a box, or as one of two', () => {
    expect(readDam('daughter of the queen in 3')).toMatchObject({ is: 'named', dams: [{ name: '3' }] });
    expect(readDam('Q3 (or Q4)')).toMatchObject({ is: 'named', dams: [{ name: 'Q3' }, { name: 'Q4' }] });
  });

  it.each(['self', 'supersedure', 'emergency', 'swarm cells'])('is not named by "%s"', (text) => {
    expect(readDam(text).is).toBe('unclear');
  });
});

describe('a header', () => {
  it('of unknown words over numbers and days names its columns', () => {
    const table = readTable('kovan;ana;tarih;not\nA;Ihlamur;3.5.24;sakin\nB;Söğüt;4.5.24;\n');
    expect(table.header).toEqual(['kovan', 'ana', 'tarih', 'not']);
    expect(table.rows).toHaveLength(2);
  });

  it('is not made of a first row of values', () => {
    expect(readTable('Birch;Alder;2021;blue\nCedar;Birch;2022;red\n').header).toEqual(['', '', '', '']);
    expect(readTable('Birch;Alder;Home\nCedar;Birch;Home\n').rows).toHaveLength(2);
  });
});
