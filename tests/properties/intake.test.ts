import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessColumns, type IntakePlan, planIntake, readTable } from '../../src/exchange/intake/index.ts';
import { plainWords } from '../../src/exchange/intake/plain-words.ts';
import { readDay } from '../../src/exchange/intake/values/day.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import { firstDay, lastDay } from '../../src/journal/day.ts';
import { unite } from '../../src/journal/journal.ts';
import { type Projection, startProjection } from '../../src/registry/project.ts';
import { countingIds, scribe, written } from '../helpers/devices.ts';
import { family } from '../helpers/family.ts';

const today = '2026-06-01' as PlainDay;
const EMPTY = startProjection(new Map());
const FAMILY = startProjection(family(scribe(countingIds(1))).journal);
/** New ids rise above all that are on record, as ids made later do. */
const LATER = 1_000_000;

function plan(
  text: string,
  projection: Projection,
  leaveOut: readonly number[] = [],
  start = LATER,
): IntakePlan {
  const table = readTable(text);
  return planIntake(table, guessColumns(table, today), projection, {
    today,
    newId: countingIds(5, start),
    answers: {},
    leaveOut: new Set(leaveOut),
  });
}

/** Cells as keepers write them, right and wrong, for each column of a table of everything. */
const CELLS: Readonly<Record<string, readonly string[]>> = {
  queen: [
    'Birch',
    'Alder',
    'Birch 2021',
    'Cedar (d. of Birch)',
    'Old Alder',
    'daughter of Fern',
    '?',
    '',
    'Birch',
    'no queen',
    '12',
  ],
  dam: [
    'Alder',
    'daughter of Birch',
    'Birch x unknown',
    'Cedar?',
    'Alder or Birch',
    '?',
    '',
    'box 2',
    'swarm from 3',
    'Birch 2021',
  ],
  year: ['2020', '2021', '22', '', '2025', 'spring 2023', '5/6/2024', 'never'],
  hive: ['1', '2', 'Box 1', 'Blue', '', '?'],
  yard: ['Hill', 'Brook', ''],
  date: ['2024-05-01', '1.6.24', '3/4/2025', 'May 2025', '2023', '', 'soon', '2031-01-01'],
  'winter 2023/24': ['yes', 'no', 'dead - mites', 'alive, strong; gentle 3.5', '', 'hm'],
  status: ['alive', 'dead', 'sold to Jon', 'superseded', ''],
  'lost on': ['2024-03', '', '2022', '2026'],
  gentle: ['3', '3,5', '4', '7', '3; windy', 'nice', ''],
  frames: ['5', '8 frames', '70', ''],
  mites: ['6/300', '2 %', '5', '12 in 3 days', ''],
  honey: ['12,5 kg', '20 lb', 'lots', ''],
  colour: ['blue 3', 'red', 'no', ''],
  notes: ['quiet', '"with; signs, in it"', ''],
};
const NAMES = Object.keys(CELLS);

const messyTable = fc
  .tuple(fc.subarray(NAMES, { minLength: 1 }), fc.constantFrom(',', ';', '\t', '|'))
  .chain(([columns, delimiter]) =>
    fc
      .array(fc.tuple(...columns.map((name) => fc.constantFrom(...(CELLS[name] ?? [''])))), {
        minLength: 1,
        maxLength: 12,
      })
      .map((rows) =>
        [columns, ...rows]
          .map((row) => row.map((cell) => quoted(cell, delimiter)).join(delimiter))
          .join('\n'),
      ),
  );

function quoted(cell: string, delimiter: string): string {
  return cell.includes(delimiter) && !cell.startsWith('"') ? `"${cell}"` : cell;
}

/** Tables in order: one queen a row, each in a box of her own, every cell right. */
const orderlyTable = fc
  .array(
    fc.tuple(
      fc.constantFrom('', 'the row above', 'daughter of Elm', 'old Fern'),
      fc.constantFrom('2024-05-01', '1.6.24', 'May 2025'),
      fc.constantFrom('yes', 'no', ''),
      fc.constantFrom('3', '3,5', ''),
      fc.constantFrom('6/300', '12 in 3 days', ''),
      fc.constantFrom('12,5 kg', ''),
      fc.constantFrom('quiet', ''),
    ),
    { minLength: 1, maxLength: 10 },
  )
  .map((rows) =>
    [
      'queen;hive;dam;year;date;winter 2023/24;gentle;mites;honey;notes',
      ...rows.map(([dam, ...cells], index) => {
        const named =
          dam === 'the row above' && index > 0 ? `Queen ${index}` : dam.replace('the row above', '');
        return [`Queen ${index + 1}`, `Box ${index + 1}`, named, 2010 + index, ...cells].join(';');
      }),
    ].join('\n'),
  );

describe('the intake of a table', () => {
  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string({ unit: 'binary' }),
          messyTable,
          fc.array(fc.string()).map((rows) => rows.join('\n')),
        ),
        (text) => {
          plan(text, EMPTY);
          plan(text, FAMILY);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('finds every accepted row again in the records, and contradicts nothing', () => {
    fc.assert(
      fc.property(messyTable, fc.boolean(), (text, beside) => {
        const before = beside ? FAMILY : EMPTY;
        const { drafts, rows } = plan(text, before);
        const { journal } = unite(before.journal, written(drafts, scribe(countingIds(9, 2 * LATER))));
        const { registry } = startProjection(journal);
        expect(registry.contradictions).toEqual(before.registry.contradictions);
        const table = readTable(text);
        for (const { line, status, queen, colony } of rows) {
          if (status === 'problem') expect([queen, colony]).toEqual([undefined, undefined]);
          if (status !== 'ready' && status !== 'partly') continue;
          expect(queen ?? colony).toBeDefined();
          if (queen) expect(registry.queens.has(queen)).toBe(true);
          if (colony) expect(registry.colonies.has(colony)).toBe(true);
          const name = queen && registry.queens.get(queen)?.name;
          const said = table.rows.find((row) => row.line === line)?.cells[table.header.indexOf('queen')];
          if (name && said) expect(plainWords(said)).toContain(plainWords(name));
        }
      }),
      { numRuns: 100 },
    );
  });

  it('gives every row one answer, and every problem a place, a reason and a way out', () => {
    fc.assert(
      fc.property(messyTable, (text) => {
        const { rows } = plan(text, EMPTY);
        expect(rows.map(({ line }) => line)).toEqual(readTable(text).rows.map(({ line }) => line));
        for (const { status, problems } of rows) {
          if (status === 'problem' || status === 'partly') expect(problems.length).toBeGreaterThan(0);
          for (const { where, because, remedy } of problems) {
            expect(where).toMatch(/^Row \d+/);
            expect(because.length).toBeGreaterThan(8);
            expect(remedy.length).toBeGreaterThan(8);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('leaves out what the keeper leaves out', () => {
    fc.assert(
      fc.property(messyTable, (text) => {
        const all = readTable(text).rows.map(({ line }) => line);
        expect(plan(text, EMPTY, all).drafts).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it('brought in twice adds nothing the second time', () => {
    fc.assert(
      fc.property(orderlyTable, (text) => {
        const first = plan(text, EMPTY);
        const entries = written(first.drafts, scribe(countingIds(6, 2 * LATER)));
        const again = plan(
          text,
          startProjection(new Map(entries.map((entry) => [entry.id, entry]))),
          [],
          3 * LATER,
        );
        expect(again.drafts).toEqual([]);
        const accepted = first.rows.filter(({ status }) => status !== 'problem').length;
        expect(again.rows.filter(({ status }) => status === 'same')).toHaveLength(accepted);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a sheet with merged cells', () => {
  /** Yards of so many hives each, no yard twice running. */
  const yards = fc
    .array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 5 })
    .filter((hives) => hives.reduce((sum, count) => sum + count - 1, 0) * 2 >= hives.length)
    .filter((hives) => hives.some((count) => count > 1));
  const sheet = (hives: readonly number[], merged: boolean) => {
    const rows = hives.flatMap((count, yard) =>
      Array.from({ length: count }, (_, at) => (at > 0 && merged ? '' : `Yard ${yard}`)),
    );
    return ['yard,hive,queen,year', ...rows.map((yard, at) => `${yard},H${at},Queen ${at},2021`)].join('\n');
  };

  it('gives what the same sheet gives with every cell written out', () => {
    fc.assert(
      fc.property(yards, (hives) => {
        const merged = plan(sheet(hives, true), EMPTY);
        expect(merged.questions.map(({ id }) => id)).toContain('fill-down:0');
        expect(merged.drafts).toEqual(plan(sheet(hives, false), EMPTY).drafts);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a day of any text', () => {
  it('is a day of the calendar or is refused', () => {
    const near = fc
      .tuple(fc.nat(40), fc.constantFrom('.', '/', '-', ' '), fc.nat(40), fc.nat(3000))
      .map(([a, sign, b, c]) => `${a}${sign}${b}${sign}${c}`);
    fc.assert(
      fc.property(fc.oneof(fc.string(), near), (text) => {
        const read = readDay(text, today);
        if (read.is === 'day') expect(firstDay(read.day) <= lastDay(read.day)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
