import { describe, expect, it } from 'vitest';
import { writeJournalFile } from '../../../../../src/exchange/journal-file/index.ts';
import type { KeeperId } from '../../../../../src/journal/ids.ts';
import { decodeText, lineOfEntry, readIncoming } from '../../../../../views/exchange/in/read-incoming.ts';
import { countingIds, scribe, smallYard, written } from '../../../../helpers/devices.ts';

function smallFile() {
  const newId = countingIds();
  const by = scribe(newId);
  const entries = written(smallYard(newId).drafts, by);
  const text = writeJournalFile({
    exported: '2026-06-01T10:00:00.000Z',
    by: { id: by.keeper as KeeperId, name: 'Ada' },
    scope: { of: 'all' },
    entries,
    photos: [],
  });
  return { entries, text };
}

describe('what came in', () => {
  it('is a file of records when it holds one, whatever its name', () => {
    const { text, entries } = smallFile();
    const read = readIncoming(`\uFEFF${text}`, 'letter.txt');
    expect(read).toMatchObject({ is: 'journal', file: { by: { name: 'Ada' } } });
    expect(read.is === 'journal' && read.file.entries).toHaveLength(entries.length);
  });

  it('is a table when it is other text', () => {
    const read = readIncoming('Queen;Year\nBirch;2024\n', 'queens.csv');
    expect(read).toMatchObject({ is: 'table', table: { header: ['Queen', 'Year'] } });
  });

  it('is refused with the line of the entry that was altered against its rules', () => {
    const { text } = smallFile();
    const line = text.split('\n').findIndex((each) => each.includes('"label"')) + 1;
    const altered = text.replace('"label":"Box 1"', '"label":7');
    expect(readIncoming(altered, 'mine.damline.json')).toMatchObject({
      is: 'refused',
      problems: [{ where: `mine.damline.json, line ${line}`, field: 'label', found: '7' }],
    });
  });

  it.each([
    ['nothing', ' \n', 'nothing'],
    ['a workbook', 'PK\u0003\u0004 xl/workbook.xml', 'workbook'],
    ['a picture', '\u0089PNG\r\n\u001a\n\0', 'picture'],
    ['another JSON file', '{"rows": []}', 'JSON without a format'],
  ])('is refused when it is %s, with the way out', (_name, text, found) => {
    const read = readIncoming(text, 'x');
    expect(read).toMatchObject({ is: 'refused', problems: [{ where: expect.stringContaining('x') }] });
    const problem = read.is === 'refused' ? read.problems[0] : undefined;
    expect(problem?.found).toContain(found);
    expect(problem?.remedy).not.toBe('');
  });
});

describe('the text of a file', () => {
  // The four encodings of "Süß" by the Encoding Standard (WHATWG), written out by hand.
  it.each([
    ['UTF-8', [0x53, 0xc3, 0xbc, 0xc3, 0x9f]],
    ['UTF-16, little end first', [0xff, 0xfe, 0x53, 0, 0xfc, 0, 0xdf, 0]],
    ['UTF-16, big end first', [0xfe, 0xff, 0, 0x53, 0, 0xfc, 0, 0xdf]],
    ['Windows-1252', [0x53, 0xfc, 0xdf]],
  ])('is read from %s', (_name, bytes) => {
    expect(decodeText(Uint8Array.from(bytes))).toBe('Süß');
  });
});

describe('the line of an entry', () => {
  it('is counted from 1 and found by its own id, not where another entry names it', () => {
    const { text, entries } = smallFile();
    const second = entries[1]!.id;
    const lines = text.split('\n');
    expect(lines[lineOfEntry(text, second)! - 1]).toContain(`"id":"${second}"`);
    expect(lineOfEntry(`{"supersedes":"${second}"}\n${text}`, second)).toBe(lineOfEntry(text, second)! + 1);
    expect(lineOfEntry(text, '019f0000-0000-7000-8000-00000000ffff')).toBeUndefined();
  });
});
