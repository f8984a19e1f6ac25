import { describe, expect, it } from 'vitest';
import type { QueenId } from '../../../../src/journal/ids.ts';
import { project } from '../../../../src/registry/project.ts';
import { mitesByLine } from '../../../../views/mites/by-line.ts';
import { cautionWords, ratesWords, ratioWords, roundWords } from '../../../../views/mites/by-line-words.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const HIVES = { '1': 'Ash A', '2': 'Ash B', '3': 'Ash C', '4': 'Elm A', '5': 'Elm B', '6': 'Elm C' };

/** Six hives of two lines, by the first word of the queen's name; mites on 300 bees by hive and day. */
function yard(
  counts: readonly (readonly [label: string, on: string, mites: number])[],
  treated: readonly string[] = [],
) {
  const story = new Story();
  story.begin('Mill', '2024-05-01', HIVES);
  for (const label of treated) {
    const colonies = [story.colony(label)];
    story.write({ kind: 'treatment', day: rough('2025-07-25'), colonies, active: 'thymol' });
  }
  for (const [label, on, mites] of counts) {
    const sample = { method: 'wash' as const, mites, bees: 300 };
    story.write({ kind: 'mite-count', day: rough(on), colony: story.colony(label), sample });
  }
  const registry = project(story.journal());
  const lineOf = (queen: string) => {
    const word = registry.queens.get(queen as QueenId)?.name?.split(' ')[0];
    return word ? story.queen(`${word} A`) : undefined;
  };
  return { story, rounds: mitesByLine(registry, day('2025-08-10'), lineOf) };
}

const AUGUST = [
  ['1', '2025-08-01', 3],
  ['2', '2025-08-01', 3],
  ['3', '2025-08-02', 3],
  ['4', '2025-08-02', 12],
  ['5', '2025-08-02', 12],
  ['6', '2025-08-03', 12],
] as const;

describe('line beside line', () => {
  it('is a ratio with limits on the colonies there are: 9 mites against 36 are a quarter of theirs', () => {
    const { story, rounds } = yard(AUGUST);
    const [round] = rounds;
    const [ash, elm] = round?.lines ?? [];
    expect([ash?.line, elm?.line]).toEqual([story.queen('Ash A'), story.queen('Elm A')]);
    expect(ash?.comparison.ratio).toBeCloseTo(1 / 4, 12);
    // No spread beyond counting: se = sqrt((1 - 0.01)/9 + (1 - 0.04)/36) = 0.36968, t of 4 degrees 2.77645 (Student's table).
    expect(ash?.comparison.ratioInterval.low).toBeCloseTo(0.25 * Math.exp(-2.77645 * 0.36968), 4);
    expect(ash && ratioWords(ash)).toBe(
      '0.25 times the mites of the others (0.09 to 0.70): fewer than luck alone would bring, a hint and no more.',
    );
    expect(ash && ratesWords(ash)).toBe('1.0\u00a0% of bees in 3 colonies; in the 3 others 4.0\u00a0%.');
    expect(round && roundWords(round, day('2025-08-10'))).toMatch(/^Wash, 1 Aug to 3 Aug;/);
    expect(round && cautionWords(round)).toContain('fewer than 5 colonies or fewer than 10 mites');
  });

  it('allows for colonies of one line that differ: the same mites in one clump are not told from luck', () => {
    const clumped = AUGUST.map(([label, on, mites]) =>
      Number(label) < 4 ? ([label, on, mites] as const) : ([label, on, label === '4' ? 36 : 0] as const),
    );
    const [round] = yard(clumped).rounds;
    const [ash] = round?.lines ?? [];
    expect(ash?.comparison.ratio).toBeCloseTo(1 / 4, 12);
    expect(ash && ratioWords(ash)).toMatch(/: not told from luck\.$/);
    expect(round && cautionWords(round)).toMatch(/colonies vary up to \d\d times as much as counting alone/);
  });

  it('takes the last count of each colony, none of a month before, and none that a treatment spoilt', () => {
    const earlier = AUGUST.map(([label, , mites]) => [label, '2025-06-20', 10 * mites] as const);
    const { rounds } = yard([...earlier, ['1', '2025-07-28', 40], ...AUGUST], ['6']);
    expect(rounds[0]).toMatchObject({ from: '2025-08-01', to: '2025-08-02' });
    expect(rounds[0]?.lines.map(({ colonies }) => colonies)).toEqual([
      [3, 2],
      [2, 3],
    ]);
    expect(rounds[0]?.lines[0]?.comparison.rates[1]).toBeCloseTo(0.01, 12);
  });

  it('is not there with one line, or with fewer than three colonies', () => {
    expect(yard(AUGUST.slice(0, 3)).rounds).toEqual([]);
    expect(yard([AUGUST[0], AUGUST[3]]).rounds).toEqual([]);
  });
});
