import { describe, expect, it } from 'vitest';
import type { EntryId } from '../../../../src/journal/ids.ts';
import { markOf, savedWords } from '../../../../views/exchange/last-saved.ts';

const entry = (id: string, recordedAt: string) => ({ id: id as EntryId, recordedAt });
const two = [entry('a', '2026-05-01T08:00:00.000Z'), entry('b', '2026-05-02T08:00:00.000Z')];
const saved = { at: '2026-06-01T12:00:00.000Z', mark: markOf(two) };

describe('the mark of a set of entries', () => {
  it('does not depend on their order, and tells other sets of the same size apart', () => {
    expect(markOf(two.toReversed())).toBe(markOf(two));
    expect(markOf([...two.slice(1), entry('c', '2026-05-01T08:00:00.000Z')])).not.toBe(markOf(two));
    expect(markOf([])).not.toBe(markOf(two));
  });
});

describe('when the records were last saved', () => {
  it('is said to be all of it while nothing has changed', () => {
    expect(savedWords(two, saved)).toBe(
      '2 entries on this device; all of it was saved to a file on 1 June 2026.',
    );
  });

  it('is said with what was written since', () => {
    expect(savedWords([...two, entry('c', '2026-06-02T08:00:00.000Z')], saved)).toBe(
      '3 entries on this device. Last saved to a file on 1 June 2026; 1 entry written since.',
    );
  });

  it('is not all of it when older entries came in with a file', () => {
    expect(savedWords([...two, entry('c', '2020-06-02T08:00:00.000Z')], saved)).toContain('come in or gone');
  });

  it('is said to be never where no file is known of', () => {
    expect(savedWords(two.slice(1), undefined)).toBe(
      '1 entry on this device, not saved to a file from here yet.',
    );
  });
});
