import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJournalFile, writeJournalFile } from '../../src/exchange/journal-file/index.ts';
import type { Draft, Entry } from '../../src/journal/entry.ts';
import type { ColonyId, EntryId, KeeperId } from '../../src/journal/ids.ts';
import { canonicalText, type Journal, liveEntries, unite } from '../../src/journal/journal.ts';
import { extendProjection, project, startProjection } from '../../src/registry/project.ts';
import { countingIds, day, unwrap, written } from '../helpers/devices.ts';
import { randomStory } from '../helpers/random-journal.ts';

/**
 * A pool of entries of two keepers about one colony: inspections, corrections of them, withdrawals of anything,
 * withdrawals of withdrawals. Each journal is a random part of the pool, as files that come in any order are.
 */
const pool = fc
  .array(
    fc.record({
      what: fc.constantFrom('inspection', 'correction', 'withdrawal'),
      keeper: fc.constantFrom(0, 1),
      target: fc.nat(20),
      on: fc.integer({ min: 1, max: 28 }),
      gentle: fc.constantFrom(1, 2, 3, 4),
    }),
    { minLength: 1, maxLength: 20 },
  )
  .map((rows) => {
    const newId = countingIds();
    const keepers = [newId() as KeeperId, newId() as KeeperId];
    const colony = newId() as ColonyId;
    const entries: Entry[] = [];
    for (const { what, keeper, target, on, gentle } of rows) {
      const about = entries[target % Math.max(1, entries.length)];
      const draft = draftOf(what, about, colony, on, gentle);
      entries.push(
        ...written([draft], {
          keeper: keepers[keeper]!,
          now: () => new Date(2026, 0, entries.length + 1),
          newId,
        }),
      );
    }
    return entries;
  });

function draftOf(
  what: string,
  about: Entry | undefined,
  colony: ColonyId,
  on: number,
  gentle: number,
): Draft {
  const date = day(`2025-05-${String(on).padStart(2, '0')}`);
  if (what === 'withdrawal' && about) return { kind: 'withdrawal', day: date, withdraws: [about.id] };
  const inspection = { kind: 'inspection', day: date, colony, gentle } as const;
  return what === 'correction' && about?.kind === 'inspection'
    ? { ...inspection, supersedes: about.id }
    : inspection;
}

const journals = pool.chain((entries) => {
  const part = fc.subarray(entries).map((list): Journal => new Map(list.map((entry) => [entry.id, entry])));
  return fc.tuple(part, part, part);
});

const joined = (a: Journal, b: Journal) => unite(a, b.values()).journal;
const contents = (journal: Journal) => [...journal.values()].map(canonicalText).sort();

describe('the union of journals', () => {
  it('is commutative, associative and idempotent', () => {
    fc.assert(
      fc.property(journals, ([a, b, c]) => {
        expect(contents(joined(a, b))).toEqual(contents(joined(b, a)));
        expect(contents(joined(joined(a, b), c))).toEqual(contents(joined(a, joined(b, c))));
        expect(contents(joined(a, a))).toEqual(contents(a));
        expect(contents(joined(joined(a, b), b))).toEqual(contents(joined(a, b)));
      }),
    );
  });

  it('is so of entries of every kind, also where files were altered on their way', () => {
    const altered = randomStory.chain(({ entries }) => {
      const version = (entry: Entry) =>
        fc.constantFrom(entry, entry, { ...entry, remark: 'one hand' }, { ...entry, remark: 'another' });
      const part = fc
        .subarray(entries)
        .chain((list) => fc.tuple(...list.map(version)))
        .map((list): Journal => new Map(list.map((entry) => [entry.id, entry])));
      return fc.tuple(part, part, part);
    });
    fc.assert(
      fc.property(altered, ([a, b, c]) => {
        const left = joined(joined(a, b), c);
        const right = joined(a, joined(b, c));
        expect(contents(left)).toEqual(contents(right));
        expect(contents(joined(a, b))).toEqual(contents(joined(b, a)));
        expect(contents(joined(left, b))).toEqual(contents(left));
        expect({ ...project(left), revision: 0 }).toEqual({
          ...project(joined(c, joined(b, a))),
          revision: 0,
        });
        const extended = [a, b, c].reduce(
          (projection, journal) => extendProjection(projection, [...journal.values()]),
          startProjection(new Map()),
        );
        expect({ ...extended.registry, revision: 0 }).toEqual({ ...project(left), revision: 0 });
      }),
      { numRuns: 150 },
    );
  });

  it('loses no entry and makes none up', () => {
    fc.assert(
      fc.property(journals, ([a, b]) => {
        const both = joined(a, b);
        expect(new Set(both.keys())).toEqual(new Set([...a.keys(), ...b.keys()]));
      }),
    );
  });

  it('gives the same live entries, disagreements and registry from either side', () => {
    fc.assert(
      fc.property(journals, ([a, b]) => {
        const mine = joined(a, b);
        const theirs = joined(b, a);
        expect(liveEntries(mine).live).toEqual(liveEntries(theirs).live);
        const ids = (journal: Journal) =>
          liveEntries(journal)
            .disagreements.map(({ about }) => about)
            .sort();
        expect(ids(mine)).toEqual(ids(theirs));
        expect(project(mine)).toEqual(project(theirs));
      }),
    );
  });

  it('keeps the same of two contents under one id, whichever came first', () => {
    fc.assert(
      fc.property(pool, fc.nat(19), (entries, index) => {
        const entry = entries[index % entries.length]!;
        const altered = { ...entry, remark: 'changed by hand' };
        const journal = (each: Entry): Journal => new Map([[each.id, each]]);
        const kept = (one: Entry, other: Entry) =>
          unite(journal(one), [other]).journal.get(entry.id as EntryId);
        expect(kept(entry, altered)).toEqual(kept(altered, entry));
        expect(unite(journal(entry), [altered]).altered).toHaveLength(1);
      }),
    );
  });

  it('through a file is the union itself, and the file is the same from either side', () => {
    fc.assert(
      fc.property(journals, ([a, b]) => {
        const file = (journal: Journal) =>
          writeJournalFile({
            exported: '2026-06-01T10:00:00.000Z',
            by: { id: countingIds()() as KeeperId, name: 'Ida' },
            scope: { of: 'all' },
            entries: [...journal.values()],
            photos: [],
          });
        expect(file(joined(a, b))).toBe(file(joined(b, a)));
        const read = unwrap(readJournalFile(file(b), 'x'));
        expect(contents(unite(a, read.entries).journal)).toEqual(contents(joined(a, b)));
      }),
      { numRuns: 40 },
    );
  });
});

describe('the reader of journal files', () => {
  it('never throws, whatever the text', () => {
    const close = fc.tuple(pool, fc.nat(4000), fc.string({ maxLength: 5 })).map(([entries, at, noise]) => {
      const text = writeJournalFile({
        exported: '2026-06-01T10:00:00.000Z',
        by: { id: countingIds()() as KeeperId, name: '' },
        scope: { of: 'all' },
        entries,
        photos: [],
      });
      return text.slice(0, at) + noise + text.slice(at + noise.length);
    });
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), close), (text) => {
        const read = readJournalFile(text, 'file');
        if (!read.ok) for (const { where } of read.problems) expect(where).toMatch(/^file, line \d+$/);
      }),
      { numRuns: 400 },
    );
  });
});
