import { describe, expect, it } from 'vitest';
import type { PlannedRow, RowStatus } from '../../../../../src/exchange/intake/index.ts';
import type { Draft } from '../../../../../src/journal/entry.ts';
import {
  countStatus,
  delimiterWords,
  draftsSentence,
  rowWords,
  statusSentence,
} from '../../../../../views/exchange/table/plan-words.ts';

const rows = (...statuses: RowStatus[]): PlannedRow[] =>
  statuses.map((status, index) => ({ line: index + 2, status, problems: [], summary: '' }));

describe('a planned table in words', () => {
  it('says how many rows are taken in and why the others are not', () => {
    const counts = countStatus(rows('ready', 'ready', 'partly', 'problem', 'same', 'left-out', 'skipped'));
    expect(statusSentence(counts)).toBe(
      '3 rows are taken in, 1 of them with cells kept as notes; 1 row stays out until mended; 1 is on record already; 1 left out by you; 1 holds no records.',
    );
  });

  it('says that no row can be taken in', () => {
    expect(statusSentence(countStatus(rows('problem', 'problem')))).toBe(
      'No row can be taken in yet; 2 rows stay out until mended.',
    );
  });

  it('counts what would be new by kind, and all that is left as other entries', () => {
    const kinds = ['yard-opened', 'queen-entered', 'queen-entered', 'queen-marked', 'colony-started', 'note'];
    const drafts = kinds.map((kind) => ({ kind }) as unknown as Draft);
    expect(draftsSentence({ drafts })).toBe('1 yard, 2 queens, 1 box, 1 note and 1 other entry about them');
    expect(draftsSentence({ drafts: [] })).toBe('nothing');
  });

  it('puts the records of one day together', () => {
    expect(
      rowWords(
        'Birch of 2022, in A1; winter 2024/25 alive; gentle 3 (2026-05-14); calm 4 (2026-05-14); a note',
      ),
    ).toBe('Birch of 2022, in A1; winter 2024/25 alive; 14 May 2026: gentle 3, calm 4; a note');
    expect(rowWords('gentle 3 (2024); gentle 2 (2025-04); lost (2025-04)')).toBe(
      '2024: gentle 3; April 2025: gentle 2, lost',
    );
  });

  it('leaves other words in brackets alone', () => {
    expect(rowWords('Reed of 2025, daughter of Sedge (80 %), in 10')).toBe(
      'Reed of 2025, daughter of Sedge (80 %), in 10',
    );
  });

  it('names what divides the cells', () => {
    expect(['\t', ';', ',', '|'].map(delimiterWords)).toEqual([
      'tabs',
      'semicolons',
      'commas',
      'upright bars',
    ]);
  });
});
