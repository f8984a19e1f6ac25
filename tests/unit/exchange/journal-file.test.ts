import { describe, expect, it } from 'vitest';
import {
  type JournalFile,
  journalFileName,
  readJournalFile,
  writeJournalFile,
} from '../../../src/exchange/journal-file/index.ts';
import { jsonPlaces, lineFinder } from '../../../src/exchange/journal-file/json-places.ts';
import type { PhotoId } from '../../../src/journal/ids.ts';
import { JOURNAL_VERSION } from '../../../src/journal/migrations/index.ts';
import type { Problem } from '../../../src/journal/problems.ts';
import { device, unwrap } from '../../helpers/devices.ts';
import { family } from '../../helpers/family.ts';

function sample(): JournalFile {
  const { entries, by, newId } = family();
  return {
    exported: '2026-06-01T10:00:00.000Z',
    by: { id: by.keeper, name: 'Ida' },
    scope: { of: 'all' },
    entries,
    photos: [{ id: newId() as PhotoId, type: 'image/jpeg', bytes: new Uint8Array([0, 255, 10, 34]).buffer }],
  };
}

/** Changes the line that holds this text, and says which line that is. */
function changed(
  text: string,
  holding: string,
  change: (line: string) => string,
): { text: string; line: number } {
  const lines = text.split('\n');
  const index = lines.findIndex((line) => line.includes(holding));
  lines[index] = change(lines[index]!);
  return { text: lines.join('\n'), line: index + 1 };
}

function problemsOf(text: string): readonly Problem[] {
  const read = readJournalFile(text, 'yard.damline.json');
  if (read.ok) throw new Error('The file was read.');
  return read.problems;
}

describe('a journal file', () => {
  it('read back gives what was written, photographs too', () => {
    const file = sample();
    const read = unwrap(readJournalFile(writeJournalFile(file), 'yard.damline.json'));
    expect(read).toEqual({ ...file, entries: [...file.entries].sort((a, b) => (a.id < b.id ? -1 : 1)) });
    expect([...new Uint8Array(read.photos[0]!.bytes)]).toEqual([0, 255, 10, 34]);
  });

  it('has the same bytes for the same records in whatever order and key order they come', () => {
    const file = sample();
    const shuffled = file.entries
      .toReversed()
      .map((entry) => Object.fromEntries(Object.entries(entry).reverse()) as typeof entry);
    expect(writeJournalFile({ ...file, entries: shuffled })).toBe(writeJournalFile(file));
  });

  it('is named after its scope and day', () => {
    const { queens } = family();
    const exported = '2026-06-01T10:00:00.000Z';
    expect(journalFileName({ scope: { of: 'all' }, exported })).toBe('records-2026-06-01.damline.json');
    expect(
      journalFileName({ scope: { of: 'queen', queen: queens.birch, name: 'Grüne Birke / 7' }, exported }),
    ).toBe('queen-grune-birke-7-2026-06-01.damline.json');
  });

  it('is read with a byte order mark and with other line breaks', () => {
    const text = writeJournalFile(sample()).replaceAll('\n', '\r\n');
    expect(readJournalFile(`\uFEFF${text}`, 'x').ok).toBe(true);
  });

  it('names the line and the field of every fault, and gives nothing else back', () => {
    const one = changed(writeJournalFile(sample()), '"kind":"inspection"', (line) =>
      line.replace('3.5', '9'),
    );
    const two = changed(one.text, '"kind":"yard-opened"', (line) =>
      line.replace('2021-04-01"', '2021-02-30"'),
    );
    const problems = problemsOf(two.text);
    expect(problems).toHaveLength(2);
    expect(problems).toContainEqual(
      expect.objectContaining({ where: `yard.damline.json, line ${one.line}`, field: 'gentle', found: '9' }),
    );
    expect(problems).toContainEqual(
      expect.objectContaining({
        where: `yard.damline.json, line ${two.line}`,
        field: 'day',
        found: '"2021-02-30"',
      }),
    );
  });

  it('names the line of the field itself in a file that was laid out anew', () => {
    const text = JSON.stringify(JSON.parse(writeJournalFile(sample())), null, 2);
    const one = changed(text, '"gentle"', (line) => line.replace('3.5', '"tame"'));
    expect(problemsOf(one.text)[0]?.where).toBe(`yard.damline.json, line ${one.line}`);
  });

  it('of a newer app is refused by its version alone', () => {
    const { text } = changed(
      writeJournalFile(sample()),
      '"version"',
      () => `"version": ${JOURNAL_VERSION + 1},`,
    );
    expect(problemsOf(text)).toMatchObject([
      { code: 'newer-than-this-app', field: 'version', where: 'yard.damline.json, line 3' },
    ]);
  });

  it('with a kind or a field that is not known here is refused with the advice to get the newer app', () => {
    const text = writeJournalFile(sample());
    const kind = changed(text, '"kind":"inspection"', (line) =>
      line.replace('"inspection"', '"drone-census"'),
    );
    expect(problemsOf(kind.text)).toMatchObject([
      {
        code: 'newer-than-this-app',
        field: 'kind',
        found: '"drone-census"',
        remedy: expect.stringContaining('Reload'),
      },
    ]);
    const field = changed(text, '"kind":"mating"', (line) =>
      line.replace('"share":1', '"share":1,"sperm":2'),
    );
    expect(problemsOf(field.text)).toMatchObject([
      { code: 'newer-than-this-app', field: 'way.droneMothers.0.sperm' },
    ]);
  });

  it('cut short names the line where it ends', () => {
    const text = writeJournalFile(sample());
    const cut = text.slice(0, Math.floor(text.length / 2));
    expect(problemsOf(cut)).toMatchObject([
      { code: 'not-a-journal', where: `yard.damline.json, line ${cut.split('\n').length}` },
    ]);
  });

  it('that holds one id with two contents is refused', () => {
    const file = sample();
    const twin = { ...file.entries[1]!, day: '2020' as never };
    expect(problemsOf(writeJournalFile({ ...file, entries: [...file.entries, twin] }))).toMatchObject([
      { code: 'entry-altered' },
    ]);
  });

  it.each([
    ['nothing', ''],
    ['a table', 'queen,dam\nBirch,Alder'],
    ['another JSON', '{"a": 1}'],
    ['a list', '[]'],
    ['a version that is no number', '{"format":"damline-journal","version":"one"}'],
    ['no entries', '{"format":"damline-journal","version":1}'],
    ['entries that are no list', '{"format":"damline-journal","version":1,"entries":{"a":1}}'],
    ['a number for an entry', '{"format":"damline-journal","version":1,"entries":[7]}'],
    ['a broken photograph', '{"format":"damline-journal","version":1,"entries":[],"photos":[{"id":"x"}]}'],
  ])('is refused with problems when it is %s', (_what, text) => {
    expect(problemsOf(text).length).toBeGreaterThan(0);
    for (const problem of problemsOf(text)) expect(problem.where).toMatch(/^yard\.damline\.json, line \d+$/);
  });
});

describe('the places of values in a JSON text', () => {
  it('are found for lists, objects and strings with signs of syntax in them', () => {
    const text = '{"a": [1, {"b\\"]": "}{\\u0041"}],\n "c": null}';
    const { places, faultAt } = jsonPlaces(text, 9);
    expect(faultAt).toBeUndefined();
    expect(text.slice(places.get('a/1/b"]'))).toMatch(/^"\}\{/);
    expect(text.slice(places.get('c'))).toBe('null}');
    expect(lineFinder(text)(places.get('c')!)).toBe(2);
  });

  it.each(['', '{', '[1,]', '{"a" 1}', '"abc', '01', '[1] 2', '"\\x"', '\u00a0[]', 'tru', '"a\nb"'])(
    'end at the fault where JSON.parse refuses %j',
    (text) => {
      expect(() => JSON.parse(text)).toThrow();
      expect(jsonPlaces(text, 3).faultAt).toBeDefined();
    },
  );
});

describe('records exported, wiped and brought in again', () => {
  it('give the same registry and the same journal', async () => {
    const phone = device();
    const store = await phone.open();
    unwrap(
      await store.unite(
        family({ keeper: store.keeper.value.id, now: () => new Date(2026, 5, 1), newId: phone.newId })
          .entries,
      ),
    );
    const photo = unwrap(await store.savePhoto(new Blob(['comb'], { type: 'image/png' })));
    const before = { registry: store.registry.value, journal: new Map(store.journal.value) };
    const text = writeJournalFile({
      exported: '2026-06-01T10:00:00.000Z',
      by: store.keeper.value,
      scope: { of: 'all' },
      entries: [...store.journal.value.values()],
      photos: await store.photos(),
    });
    await store.wipe();
    expect(store.registry.value.queens.size).toBe(0);
    const file = unwrap(readJournalFile(text, 'x'));
    unwrap(await store.unite(file.entries, file.photos, file.by.id));
    const { revision: _, ...registry } = store.registry.value;
    const { revision: __, ...same } = before.registry;
    expect(registry).toEqual(same);
    expect(new Map(store.journal.value)).toEqual(before.journal);
    expect(await (await store.photo(photo))?.text()).toBe('comb');
    expect(store.keeper.value.name).toBe('Ida');
  });

  it('leave the records untouched when the file has a fault', async () => {
    const phone = device();
    const store = await phone.open();
    unwrap(await store.unite(family().entries));
    const journal = store.journal.value;
    const bad = changed(writeJournalFile(sample()), '"kind":"inspection"', (line) =>
      line.replace('3.5', '9'),
    ).text;
    expect(readJournalFile(bad, 'x').ok).toBe(false);
    expect(store.journal.value).toBe(journal);
  });
});
