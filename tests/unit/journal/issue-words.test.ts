import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEntry } from '../../../src/journal/write.ts';
import { everyKind } from '../../helpers/every-kind.ts';

/** What the schemas refuse, as a keeper reads it. */

const ENTRIES = everyKind();

function of(kind: string, change: Record<string, unknown>) {
  const entry = ENTRIES.find((each) => each.kind === kind);
  const read = readEntry({ ...entry, ...change }, 'file.json, line 7');
  return read.ok ? undefined : read.problems[0];
}

describe('a field out of its range', () => {
  it('says which field it is, what stands there, what it must be and what to do', () => {
    expect(of('inspection', { gentle: 7 })).toEqual({
      code: 'field-invalid',
      where: 'file.json, line 7',
      field: 'gentle',
      found: '7',
      because: '"Gentle, 1 to 4" must be 4 at most.',
      remedy: 'Correct this field, or leave it out if it is not known.',
    });
    expect(of('inspection', { framesOfBees: -1 })?.because).toBe('"Frames of bees" must be 0 or more.');
    expect(of('inspection', { gentle: 2.3 })?.because).toBe('"Gentle, 1 to 4" must go in steps of 0.5.');
    expect(of('inspection', { openCells: 1.5 })?.because).toBe(
      '"Open queen cells (at least)" must be a whole number.',
    );
    expect(of('feeding', { kilograms: 0 })?.because).toBe('"Amount (kg)" must be more than 0.');
  });

  it('is named inside a group and inside a list', () => {
    const sample = { method: 'wash', mites: 3, bees: 0 };
    expect(of('mite-count', { sample })).toMatchObject({
      field: 'sample.bees',
      found: '0',
      because: '"Bees in the sample" must be 1 or more.',
      remedy: 'Correct this field.',
    });
    expect(of('treatment', { colonies: [] })?.because).toMatch(/ must name at least one\.$/);
  });
});

describe('a field that is not what it must be', () => {
  it('is told from one that is missing', () => {
    expect(of('harvest', { kilograms: undefined })).toMatchObject({
      found: 'nothing',
      because: '"Honey (kg)" is missing; it must be a number.',
      remedy: 'Fill this field in.',
    });
    expect(of('harvest', { kilograms: 'twelve' })).toMatchObject({
      found: '"twelve"',
      because: '"Honey (kg)" must be a number.',
    });
    expect(of('yard-opened', { name: '' })?.because).toBe('"Name of the yard" must not be empty.');
  });

  it('names the choices, and the way in which a day is written', () => {
    expect(of('queen-confirmed', { seen: 'a queen' })?.because).toBe(
      '"What was seen" must be one of "eggs", "worker-brood", "queen-laying".',
    );
    expect(of('harvest', { day: '31.5.2026' })?.because).toBe(
      '"When it happened" must be a day, a month or a year, written 2026-05-14, 2026-05 or 2026.',
    );
    expect(of('hygienic-test', { cells: 20, notCleared: 30 })?.because).toBe(
      '"Cells not cleared" must be at most the number of cells tested.',
    );
    expect(of('mite-count', { sample: { method: 'guess' } })?.because).toBe(
      '"method" must be one of "wash", "sugar-shake", "natural-drop".',
    );
  });
});

/** Every place in an entry, by its path. */
function places(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, each]) =>
    places(each, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return path.length === 0 ? inner : [path, ...inner];
}

function withChange(value: unknown, [key, ...rest]: readonly (string | number)[], put: unknown): unknown {
  if (key === undefined) return put;
  if (Array.isArray(value)) {
    return value.map((each: unknown, index) => (index === key ? withChange(each, rest, put) : each));
  }
  const record = value as Record<string, unknown>;
  return { ...record, [key]: withChange(record[key], rest, put) };
}

describe('whatever stands wherever', () => {
  it('every refusal is a whole sentence in words of the trade, with a way out', () => {
    const wrong = fc.constantFrom<unknown>(
      undefined,
      null,
      '',
      'x',
      -1,
      0,
      0.3,
      1e9,
      Number.NaN,
      true,
      [],
      {},
      [null],
      [1],
      '2026-02-30',
    );
    const entryAndPlace = fc
      .constantFrom(...ENTRIES)
      .chain((entry) => fc.tuple(fc.constant(entry), fc.constantFrom(...places(entry))));
    fc.assert(
      fc.property(entryAndPlace, wrong, ([entry, path], put) => {
        const read = readEntry(withChange(entry, path, put), 'here');
        if (read.ok) return;
        for (const { field, found, because, remedy } of read.problems) {
          expect(field).not.toBe('');
          expect(found).not.toBe('');
          expect(because).toMatch(/^".+" (must|is missing; it must|holds) .+\.$/);
          expect(because).not.toMatch(/[<>]=?|[Ii]nvalid|expected|received|undefined|Too (big|small)/);
          expect(remedy).toMatch(/^[A-Z].+\.$/);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('what is no entry at all is refused in the same way', () => {
    for (const value of [undefined, null, 3, 'text', [], {}, { kind: 'dance' }]) {
      const read = readEntry(value, 'here');
      if (read.ok) throw new Error('That was no entry.');
      expect(read.problems[0]?.because).toMatch(/^".+" .+\.$/);
    }
  });
});
