import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../../src/journal/day.ts';
import type { QueenId } from '../../../../src/journal/ids.ts';
import { project } from '../../../../src/registry/project.ts';
import { lineFacts } from '../../../../views/lines/facts.ts';
import {
  bornText,
  comingText,
  damHeading,
  endText,
  unknownShare,
} from '../../../../views/parts/queen-words.ts';
import { countsSentence, daughterCounts, daughtersOf } from '../../../../views/queen/daughter-counts.ts';
import { damLineDoubt, damLineWords, familyLives } from '../../../../views/queen/family-lives.ts';
import { meritFigures, ordinal, sureWords } from '../../../../views/queen/merit-figures.ts';
import { parentageFor, surenessOf } from '../../../../views/queen/parentage-choice.ts';
import { axisDays, tenureRows } from '../../../../views/queen/tenure-rows.ts';
import { reasons } from '../../../../views/queen/worth.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const ON = day('2026-06-11');

/** Alder (H1, 2023) split in 2024: she goes to N1; daughters in N2 (comes to nothing) and H1 (lays, winters twice). */
function told(): Story {
  const story = new Story();
  story.begin('Home', '2023-04-01', { H1: 'Alder' });
  story.threeWaySplit('2024-05-05', 'Home', 'H1', 'N1', 'N2', 'Alder');
  story.write({
    kind: 'queen-confirmed',
    day: rough('2024-06-10'),
    queen: story.queen('H1 2024'),
    colony: story.colony('H1'),
    seen: 'worker-brood',
  });
  story.write({
    kind: 'queen-lost',
    day: rough('2024-06-12'),
    queen: story.queen('N2 2024'),
    cause: 'failed-to-mate',
  });
  for (const label of ['H1', 'N1']) {
    for (const winter of [2025, 2026]) {
      const colony = story.colony(label);
      story.write({ kind: 'winter-outcome', day: rough(`${winter}-04-02`), colony, winter, alive: true });
    }
  }
  return story;
}

const story = told();
const registry = project(story.journal());
const queen = (name: string) => registry.queens.get(story.queen(name))!;
const { byId, lines } = lineFacts(registry, ON);

describe('a queen in words', () => {
  it('emerged in a window, and one who is awaited is due in it', () => {
    const born = { first: day('2024-05-18'), last: day('2024-05-24') };
    expect(bornText({ born, state: { is: 'laying' } }, ON)).toBe('emerged between 18 and 24 May 2024');
    expect(bornText({ born, state: { is: 'expected', since: rough('2024-05-05') } }, ON)).toContain(
      'due to emerge',
    );
    const year = { first: day('2023-01-01'), last: day('2023-12-31') };
    expect(bornText({ born: year, state: { is: 'laying' } }, ON)).toBe('emerged in 2023');
    expect(bornText({ state: { is: 'laying' } }, ON)).toBeUndefined();
  });

  it('tells queens expected in one box apart by what they come from, and says nothing of one who laid', () => {
    const awaited = new Story();
    awaited.begin('Home', '2026-04-01', { H1: 'Alder' });
    awaited.threeWaySplit('2026-05-10', 'Home', 'H1', 'N1', 'N2', 'Alder');
    awaited.write({
      kind: 'cells-given',
      day: rough('2026-05-17'),
      from: awaited.colony('H1'),
      to: awaited.colony('N2'),
      expected: awaited.queen('from cells'),
      parentage: awaited.of('Alder'),
      age: 'capped',
    });
    const then = project(awaited.journal());
    const words = then.colonies
      .get(awaited.colony('N2'))
      ?.expected.map((id) => comingText(then.queens.get(id)!, then, ON));
    expect(words).toEqual(['Raised in a split, 10 May', 'From cells carried over, 17 May']);
    expect(comingText(then.queens.get(awaited.queen('Alder'))!, then, ON)).toBeUndefined();
  });

  it('says what became of one who is no more, and nothing of one who lives', () => {
    expect(endText(queen('N2 2024'))).toBe('did not mate, 12 June 2024');
    expect(endText(queen('H1 2024'))).toBeUndefined();
  });

  it('tells firm, probable and unknown dams apart', () => {
    expect(damHeading(queen('H1 2024'))).toBe('Her dam');
    expect(damHeading(queen('Alder'))).toBe('Her dam is not known');
    const probable = {
      ...queen('H1 2024'),
      parentage: { dams: [{ queen: story.queen('Alder'), probability: 0.9 }], evidence: 'told' as const },
    };
    expect(damHeading(probable)).toContain('as far as it can be told');
    expect(unknownShare(probable)).toBeCloseTo(0.1, 12);
    expect(unknownShare(queen('H1 2024'))).toBe(0);
  });
});

describe('where she has been', () => {
  it('is one row for a colony, the time she was awaited there included', () => {
    const [row, ...others] = tenureRows(registry, queen('H1 2024'));
    expect(others).toEqual([]);
    expect(row).toMatchObject({
      colony: story.colony('H1'),
      awaitedFrom: dayNumber(day('2024-05-05')),
      from: dayNumber(day('2024-06-10')),
    });
    expect(row?.to).toBeUndefined();
  });

  it('is a row for each colony she headed', () => {
    const rows = tenureRows(registry, queen('Alder'));
    expect(rows.map(({ colony }) => colony)).toEqual([story.colony('H1'), story.colony('N1')]);
    expect(rows[0]?.to).toBe(dayNumber(day('2024-05-05')));
  });

  it('is only the time she was awaited for one who came to nothing', () => {
    const [row] = tenureRows(registry, queen('N2 2024'));
    expect(row).toMatchObject({
      awaitedFrom: dayNumber(day('2024-05-05')),
      to: dayNumber(day('2024-06-12')),
    });
    expect(row?.from).toBeUndefined();
    expect(row?.words).toContain('did not mate');
  });

  it('is drawn on an axis that ends soon after her', () => {
    const rows = tenureRows(registry, queen('N2 2024'));
    const { from, to } = axisDays(rows, ON);
    expect(from).toBeLessThan(dayNumber(day('2024-05-05')));
    expect(to < '2024-08-01').toBe(true);
    expect(axisDays(tenureRows(registry, queen('Alder')), ON).to).toBe(ON);
  });
});

describe('her family', () => {
  it('is her dam line, the sisters made with her, and her daughters', () => {
    const { lives, damLine } = familyLives(byId, story.queen('H1 2024'));
    expect(damLine.map(({ id }) => id)).toEqual([story.queen('Alder'), story.queen('H1 2024')]);
    expect(lives.map(({ id }) => id)).toContain(story.queen('N2 2024'));
  });

  it('is told from her up to the founder with the winters of each dam', () => {
    const { damLine } = familyLives(byId, story.queen('H1 2024'));
    expect(damLineWords(damLine)).toMatch(/to the founder: Alder \(winters 2023\/24 to 2025\/26\)\./);
    expect(damLineWords(familyLives(byId, story.queen('Alder')).damLine)).toBe('Alder founds her line.');
  });

  it('says how far the dam line can be doubted, and nothing where it cannot', () => {
    const family = familyLives(byId, story.queen('H1 2024'));
    expect(damLineDoubt(family)).toBeUndefined();
    const doubtful = family.damLine.map((life) =>
      life.dam ? { ...life, certainty: 'probable' as const, lineProbability: 0.9 } : life,
    );
    expect(damLineDoubt({ ...family, damLine: doubtful })).toContain('90\u00a0%');
  });
});

describe('her daughters', () => {
  const counts = daughterCounts(registry, daughtersOf(byId, story.queen('Alder')), ON);

  it('are counted by what became of them', () => {
    expect(counts).toMatchObject({ raised: 2, cameToLay: 1, failed: 1, awaited: 0, living: 1, probable: 0 });
    expect(countsSentence(counts)).toBe('2 on record: 1 came to lay, 1 came to nothing.');
  });

  it('came to lay in a share with its score interval', () => {
    // 1 of 2 at z = 1.959964: Wilson's limits are 1/2 -+ z / (2 sqrt(2 + z^2)), 9.45 % to 90.55 %.
    const reach = 1.959963985 / (2 * Math.sqrt(2 + 1.959963985 ** 2));
    expect(counts.layingShare?.value).toBe(0.5);
    expect(counts.layingShare?.low).toBeCloseTo(0.5 - reach, 8);
    expect(counts.layingShare?.high).toBeCloseTo(0.5 + reach, 8);
  });

  it('went into winters and came out of them', () => {
    expect(counts).toMatchObject({ wintersWentIn: 2, wintersCameOut: 2 });
  });
});

describe('reasons for and against multiplying her', () => {
  const none = {
    raised: 0,
    probable: 0,
    awaited: 0,
    cameToLay: 0,
    failed: 0,
    living: 0,
    wintersWentIn: 0,
    wintersCameOut: 0,
  };
  const facts = {
    queen: queen('H1 2024'),
    winters: [2025, 2026],
    line: lines[0],
    traits: [],
    daughters: none,
  };

  it('name the winters she came through, or that she has crossed none', () => {
    expect(reasons(facts).speaksFor[0]).toBe('She came through winters 2024/25, 2025/26.');
    expect(reasons({ ...facts, winters: [] }).holdsBack).toContain(
      'She has crossed no winter: nothing says yet that she is a survivor.',
    );
  });

  it('say that nothing can be compared where there is no record', () => {
    expect(reasons(facts).holdsBack).toContain('No record of her colonies can be compared with neighbours.');
  });

  it('name inbred brood from a sixteenth on', () => {
    const told = (broodInbreeding: number) => reasons({ ...facts, broodInbreeding }).holdsBack.join(' ');
    expect(told(0.08)).toContain('8\u00a0% inbred');
    expect(told(0.05)).not.toContain('inbred');
  });

  it('name traits in which she stands in the best or last third of enough neighbours in most groups', () => {
    const members = [1, 2, 3, 4, 5, 6].map((value) => ({
      queen: `q${value}` as QueenId,
      colony: 'c' as never,
      value,
      hers: value === 6,
    }));
    const group = { key: 'g', yard: 'Home', season: 2025, alike: '', members, queens: 6, small: false };
    const honey = (place: number) => ({
      trait: 'honey' as const,
      better: 'higher' as const,
      groups: [{ ...group, place }],
      aside: [],
    });
    expect(reasons({ ...facts, traits: [honey(1)] }).speaksFor.join(' ')).toContain('Honey (one group)');
    expect(reasons({ ...facts, traits: [honey(6)] }).holdsBack.join(' ')).toContain('Honey (one group)');
    const small = { ...honey(1), groups: [{ ...group, place: 1, small: true }] };
    expect(reasons({ ...facts, traits: [small] }).speaksFor.join(' ')).not.toContain('Honey');
    expect(reasons({ ...facts, traits: [small] }).holdsBack.join(' ')).toContain('may be luck');
  });
});

describe('a parentage stated', () => {
  const [dam, other] = [story.queen('Alder'), story.queen('H1 2024')];

  it('gives the rest of the probability to the second queen, or leaves it to one not on record', () => {
    const both = parentageFor({ dam, other, sure: 'likely', evidence: 'told' });
    expect(both.dams).toEqual([
      { queen: dam, probability: 0.7 },
      { queen: other, probability: 0.3 },
    ]);
    expect(parentageFor({ dam, other: undefined, sure: 'likely', evidence: 'told' }).dams).toHaveLength(1);
    expect(parentageFor({ dam, other, sure: 'certain', evidence: 'told' }).dams).toEqual([
      { queen: dam, probability: 1 },
    ]);
  });

  it('keeps the probability on record where the words for it were left as they are', () => {
    const kept = parentageFor({
      dam,
      other: undefined,
      sure: 'very-likely',
      recorded: 0.85,
      evidence: 'told',
    });
    expect(kept.dams).toEqual([{ queen: dam, probability: 0.85 }]);
    const changed = parentageFor({ dam, other: undefined, sure: 'even', recorded: 0.85, evidence: 'told' });
    expect(changed.dams).toEqual([{ queen: dam, probability: 0.5 }]);
  });

  it('is unknown without a dam', () => {
    expect(parentageFor({ dam: undefined, other, sure: undefined, evidence: 'told' }).dams).toEqual([]);
  });

  it('reads a probability back as the nearest words', () => {
    expect(surenessOf(1)).toBe('certain');
    expect(surenessOf(0.88)).toBe('very-likely');
    expect(surenessOf(0.55)).toBe('even');
    expect(surenessOf(undefined)).toBeUndefined();
  });
});

describe('the figures of the evaluation', () => {
  const ids = ['a', 'b', 'c'] as QueenId[];
  const evaluated = {
    work: { candidates: ['a', 'b'] },
    answer: {
      diagonal: Float64Array.of(1, 1, 1),
      evaluation: {
        queens: ids,
        traits: [
          {
            trait: 'honey',
            better: 'higher',
            sigma: 2,
            breedingValue: Float64Array.of(2, -2, 4),
            reliability: Float64Array.of(0.5, 0.2, 0.05),
          },
        ],
      },
    },
  } as unknown as Parameters<typeof meritFigures>[0];

  it('tell the place among the living by the keeper’s weights', () => {
    expect(meritFigures(evaluated, ids[0]!, { honey: 1 })?.placeWords).toBe('1st of 2 living queens');
    expect(meritFigures(evaluated, ids[1]!, { honey: 1 })?.placeWords).toBe('2nd of 2 living queens');
    expect(meritFigures(evaluated, ids[1]!, { honey: -1 })?.placeWords).toBe('1st of 2 living queens');
  });

  it('compare one who is gone with those who lay now', () => {
    expect(meritFigures(evaluated, ids[2]!, { honey: 1 })?.placeWords).toBe(
      'Better than 2 of the 2 queens who lay now',
    );
  });

  it('are none for a queen who was not evaluated, or without a weight on any trait', () => {
    expect(meritFigures(evaluated, 'z' as QueenId, { honey: 1 })).toBeUndefined();
    expect(meritFigures(evaluated, ids[0]!, {})).toBeUndefined();
  });

  it('say how sure they are', () => {
    expect([0.05, 0.2, 0.3, 0.5, 0.8].map(sureWords)).toEqual([
      'a guess',
      'very unsure',
      'unsure',
      'fairly sure',
      'sure',
    ]);
    expect([1, 2, 3, 4, 11, 12, 13, 21, 112].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '112th',
    ]);
  });
});
