import { describe, expect, it } from 'vitest';
import { ownWords, unionWords } from '../../../../../views/exchange/in/union-words.ts';

const some = (count: number) => Array.from({ length: count }) as never[];
const union = (added: number, same: number, disagreements = 0, contradictions = 0, altered = 0) => ({
  preview: {
    added: some(added),
    same,
    altered: [],
    disagreements: some(disagreements),
    contradictions: some(contradictions),
  },
  altered: some(altered),
});

describe('a union in words', () => {
  it('says what is new and what is here already', () => {
    expect(unionWords(union(14, 1398), 0)).toBe('14 entries are new and 1,398 you have already.');
    expect(unionWords(union(1, 0), 2)).toBe('1 entry is new and 2 photographs are new.');
  });

  it('says that there is nothing to take in', () => {
    expect(unionWords(union(0, 5), 0)).toBe('5 you have already. There is nothing to take in.');
    expect(unionWords(union(0, 0), 0)).toBe('There is nothing to take in.');
  });

  it('says what was altered, disagreed on, and does not fit', () => {
    expect(unionWords(union(3, 0, 1, 2, 1), 0)).toBe(
      '3 entries are new. 1 entry was altered and stays out. You disagree on 1 entry. 2 things do not fit together.',
    );
  });
});

describe('entries of this keeper in the file of another', () => {
  it('are said to be what was told with a pedigree, on its way back', () => {
    expect(ownWords(0, 15)).toBe('');
    expect(ownWords(9, 15)).toMatch(/^You wrote 9 of them yourself: .* comes back with the file\.$/);
    expect(ownWords(3, 3)).toBe('You wrote all of them yourself.');
  });
});
