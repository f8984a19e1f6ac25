import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/journal/entry.ts';
import { whoseEggs } from '../../../../src/registry/brood.ts';
import { reading } from '../../../helpers/reading.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Splits, cells and grafts as keepers do them: whose daughters stand where afterwards. */

const NAMES = ['Alder', 'Birch', 'Cedar', 'cells', 'One 2026', 'Three 2026', 'second', 'G1', 'G2', 'G3'];

function splitYard(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch', Four: 'Cedar' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  return story;
}

function whose(story: Story, label: string, on: string, youngest = 3, oldest = 16) {
  const { registry } = reading(story, NAMES);
  const dams = whoseEggs(registry, story.colony(label), day(on), { youngest, oldest });
  const name = (id: string) => NAMES.find((each) => story.queen(each) === id) ?? 'another';
  return Object.fromEntries(dams.map((dam) => [name(dam.queen), Math.round(dam.probability * 100) / 100]));
}

const cells = (story: Story, on: string, from: string, to: string, dam: string): Draft => ({
  kind: 'cells-given',
  day: rough(on),
  from: story.colony(from),
  to: story.colony(to),
  expected: story.queen('cells'),
  parentage: story.of(dam),
  age: 'unknown',
});

const found = (story: Story, on: string, label: string, queen = 'second'): Draft => ({
  kind: 'queen-expected',
  day: rough(on),
  queen: story.queen(queen),
  colony: story.colony(label),
  reason: 'emergency',
});

describe('a three-way split whose cells are carried to a third box a week later', () => {
  it('gives daughters of the old queen, whichever part they are taken from', () => {
    for (const part of ['One', 'Three', 'Nucleus']) {
      expect(whose(splitYard(), part, '2026-05-17')).toEqual({ Alder: 1 });
    }
  });

  it('takes cells named as hers from any part, and refuses those named as another’s', () => {
    for (const part of ['One', 'Three', 'Nucleus']) {
      const story = splitYard();
      story.write(
        { kind: 'queen-lost', day: rough('2026-05-12'), queen: story.queen('Birch'), cause: 'killed' },
        cells(story, '2026-05-17', part, 'Two', 'Alder'),
      );
      expect(reading(story, NAMES).codes).toEqual([]);
      const wrong = splitYard();
      wrong.write(
        { kind: 'queen-lost', day: rough('2026-05-12'), queen: wrong.queen('Birch'), cause: 'killed' },
        cells(wrong, '2026-05-17', part, 'Two', 'Cedar'),
      );
      expect(reading(wrong, NAMES).codes).toEqual(['eggs-of-absent-queen']);
    }
  });

  it('knows whose the cells are that are found in a part which never had a queen', () => {
    const story = splitYard();
    story.write(found(story, '2026-05-16', 'Three'));
    const { codes, dams } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(dams('second')).toEqual({ Alder: 1 });
  });

  it('follows them on through the box that they were carried to', () => {
    const story = splitYard();
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-01'), queen: story.queen('Birch'), cause: 'killed' },
      cells(story, '2026-05-17', 'Three', 'Two', 'Alder'),
    );
    expect(whose(story, 'Two', '2026-05-19')).toEqual({ Alder: 1 });
  });
});

describe('cells in a box with a queen into which a frame of another’s eggs was hung', () => {
  function mixed(frames: { eggs?: number; stores?: number }): Story {
    const story = splitYard();
    story.write(
      {
        kind: 'frames-moved',
        day: rough('2026-06-02'),
        from: story.colony('Four'),
        to: story.colony('Two'),
        frames,
      },
      found(story, '2026-06-10', 'Two'),
    );
    return story;
  }

  it('may be of either queen', () => {
    const dams = reading(mixed({ eggs: 1 }), NAMES).dams('second');
    expect(Object.keys(dams).sort()).toEqual(['Birch', 'Cedar']);
    expect(Object.values(dams).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1);
  });

  it('are her own where the frame held stores', () => {
    expect(reading(mixed({ stores: 1 }), NAMES).dams('second')).toEqual({ Birch: 1 });
  });
});

describe('brood carried away before a queen began to lay', () => {
  it('is not hers in the box that it went to', () => {
    const story = splitYard();
    story.write(
      {
        kind: 'frames-moved',
        day: rough('2026-05-20'),
        from: story.colony('Three'),
        to: story.colony('Two'),
        frames: { openBrood: 1 },
      },
      {
        kind: 'queen-confirmed',
        day: rough('2026-06-06'),
        queen: story.queen('Three 2026'),
        colony: story.colony('Three'),
        seen: 'eggs',
      },
      { kind: 'queen-lost', day: rough('2026-06-06'), queen: story.queen('Birch'), cause: 'killed' },
      cells(story, '2026-06-07', 'Two', 'Four', 'Three 2026'),
    );
    expect(reading(story, NAMES).codes).toContain('eggs-of-absent-queen');
  });
});

describe('a split of a split on the same day', () => {
  it('leaves the old queen in the last part that got her, and her daughters in the others', () => {
    const story = splitYard();
    story.write(
      {
        kind: 'colony-started',
        day: rough('2026-05-10'),
        colony: story.colony('Five'),
        yard: story.yard('Mill'),
        label: 'Five',
        how: 'split',
      },
      {
        kind: 'split',
        day: rough('2026-05-10'),
        source: story.colony('Nucleus'),
        parts: [
          { colony: story.colony('Five'), queen: { how: 'old-queen' } },
          {
            colony: story.colony('Nucleus'),
            queen: {
              how: 'raises-own',
              expected: story.queen('second'),
              parentage: story.of('Alder'),
              from: 'eggs',
            },
          },
        ],
      },
    );
    const { codes, head, expected, workers } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('Five', '2026-06-01')).toBe('Alder');
    expect(head('Nucleus', '2026-06-01')).toBeUndefined();
    expect(expected('Nucleus')).toEqual(['second']);
    expect(workers('Five', '2026-05-20')).toBe('Alder');
    expect(workers('Nucleus', '2026-05-20')).toBe('Alder');
  });
});

describe('a split that gives a queen', () => {
  function giving(queens: readonly [string, string], source: 'none' | 'raises'): Story {
    const story = splitYard();
    const start = (label: string): Draft => ({
      kind: 'colony-started',
      day: rough('2026-06-01'),
      colony: story.colony(label),
      yard: story.yard('Mill'),
      label,
      how: 'split',
    });
    const given = (queen: string) => ({ how: 'given-queen' as const, queen: story.queen(queen) });
    story.write(start('Five'), start('Six'), {
      kind: 'split',
      day: rough('2026-06-01'),
      source: story.colony('Two'),
      parts: [
        { colony: story.colony('Five'), queen: given(queens[0]) },
        { colony: story.colony('Six'), queen: given(queens[1]) },
        {
          colony: story.colony('Two'),
          queen:
            source === 'none'
              ? { how: 'none' }
              : {
                  how: 'raises-own',
                  expected: story.queen('second'),
                  parentage: story.of('Birch'),
                  from: 'eggs',
                },
        },
      ],
    });
    return story;
  }

  it('may give one part the very queen of the source', () => {
    const { codes, head } = reading(giving(['Birch', 'Cedar'], 'raises'), NAMES);
    expect(codes).toEqual([]);
    expect(head('Five', '2026-06-02')).toBe('Birch');
    expect(head('Six', '2026-06-02')).toBe('Cedar');
    expect(head('Four', '2026-06-02')).toBeUndefined();
  });

  it('cannot give one queen to two parts', () => {
    expect(reading(giving(['Cedar', 'Cedar'], 'none'), NAMES).codes).toEqual(
      expect.arrayContaining(['queen-in-two-colonies']),
    );
  });
});

describe('a mother and a daughter side by side, split with one in each part', () => {
  it('head a part each', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write({
      kind: 'queen-found',
      day: rough('2026-04-20'),
      queen: story.queen('second'),
      colony: story.colony('One'),
    });
    story.write({
      kind: 'queen-confirmed',
      day: rough('2026-04-20'),
      queen: story.queen('Alder'),
      colony: story.colony('One'),
      seen: 'queen-laying',
      overruled: [{ rule: 'two-queens-in-colony', reason: 'both seen on one comb' }],
    });
    story.write(
      {
        kind: 'colony-started',
        day: rough('2026-05-10'),
        colony: story.colony('Two'),
        yard: story.yard('Mill'),
        label: 'Two',
        how: 'split',
      },
      {
        kind: 'split',
        day: rough('2026-05-10'),
        source: story.colony('One'),
        parts: [
          { colony: story.colony('One'), queen: { how: 'old-queen', queen: story.queen('Alder') } },
          { colony: story.colony('Two'), queen: { how: 'old-queen', queen: story.queen('second') } },
        ],
      },
    );
    const { codes, head } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2026-05-11')).toBe('Alder');
    expect(head('Two', '2026-05-11')).toBe('second');
  });
});

describe('a divided box', () => {
  it('is two colonies under one roof, each with its own queen, bees and end', () => {
    const story = splitYard();
    story.write(
      {
        kind: 'colony-started',
        day: rough('2026-05-20'),
        colony: story.colony('Left'),
        yard: story.yard('Mill'),
        label: '7 left',
        how: 'split',
        place: { stand: '7', entrance: 'W' },
      },
      {
        kind: 'colony-started',
        day: rough('2026-05-20'),
        colony: story.colony('Right'),
        yard: story.yard('Mill'),
        label: '7 right',
        how: 'split',
        place: { stand: '7', entrance: 'E', underRoofWith: story.colony('Left') },
      },
      {
        kind: 'split',
        day: rough('2026-05-20'),
        source: story.colony('Two'),
        parts: [
          { colony: story.colony('Two'), queen: { how: 'old-queen' } },
          ...(['Left', 'Right'] as const).map((side) => ({
            colony: story.colony(side),
            queen: {
              how: 'raises-own' as const,
              expected: story.queen(side === 'Left' ? 'G1' : 'G2'),
              parentage: story.of('Birch'),
              from: 'eggs' as const,
            },
          })),
        ],
      },
      {
        kind: 'queen-confirmed',
        day: rough('2026-06-18'),
        queen: story.queen('G2'),
        colony: story.colony('Right'),
        seen: 'eggs',
      },
      { kind: 'queen-lost', day: rough('2026-06-20'), queen: story.queen('G1'), cause: 'failed-to-mate' },
      {
        kind: 'colonies-joined',
        day: rough('2026-06-20'),
        colony: story.colony('Left'),
        into: story.colony('Right'),
        queenKept: 'of-the-receiving',
      },
    );
    const { codes, head, state, workers, registry } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('Two', '2026-07-01')).toBe('Birch');
    expect(head('Right', '2026-07-01')).toBe('G2');
    expect(state('G1')).toBe('failed: failed-to-mate');
    expect(workers('Right', '2026-06-25')).toBe('Birch');
    expect(registry.colonies.get(story.colony('Right'))?.stays[0]?.place).toMatchObject({ entrance: 'E' });
  });
});

describe('a graft in a cell builder', () => {
  function grafted(dam = 'Birch', on = '2026-06-01'): Story {
    const story = splitYard();
    story.write({
      kind: 'graft',
      day: rough(on),
      builder: story.colony('Four'),
      name: 'June',
      parentage: story.of(dam),
      larvae: 20,
      larvaAgeDays: 1,
    });
    return story;
  }

  it('makes the cells daughters of the queen grafted from, in however many boxes they emerge', () => {
    const story = grafted();
    story.write(
      ...['One', 'Three'].map(
        (to, index): Draft => ({
          kind: 'cells-given',
          day: rough('2026-06-11'),
          from: story.colony('Four'),
          to: story.colony(to),
          expected: story.queen(`G${index + 1}`),
          parentage: story.of('Birch'),
          age: 'capped',
          graft: 'June',
          eggsLaid: day('2026-05-27'),
        }),
      ),
    );
    const { codes, dams, queen, registry } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(dams('G1')).toEqual({ Birch: 1 });
    expect(registry.makings.get(queen('G2').madeBy!)?.how).toBe('graft');
    expect(queen('G1').born).toEqual({ first: '2026-06-11', last: '2026-06-13' });
  });

  it('is what cells in the builder are taken to be of, though another queen lays there', () => {
    expect(whose(grafted(), 'Four', '2026-06-10')).toEqual({ Birch: 1 });
  });

  it('cannot be of a queen who is long gone', () => {
    const story = splitYard();
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-20'), queen: story.queen('Birch'), cause: 'killed' },
      {
        kind: 'graft',
        day: rough('2026-06-10'),
        builder: story.colony('Four'),
        name: 'too late',
        parentage: story.of('Birch'),
        larvae: 20,
      },
    );
    expect(reading(story, NAMES).codes).toEqual(['eggs-of-absent-queen']);
  });

  it('cannot be of a queen of whom there is no record', () => {
    const story = grafted('a stranger');
    expect(reading(story, NAMES).codes).toEqual(['queen-unknown']);
  });
});
