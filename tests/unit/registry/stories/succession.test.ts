import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/journal/entry.ts';
import { wintersCrossed } from '../../../../src/registry/winters-of-queen.ts';
import { reading } from '../../../helpers/reading.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Who follows whom in a box, and what is left in doubt where nobody saw it. */

const NAMES = ['Alder', 'Birch', 'Cedar', 'daughter', 'virgin', 'found', 'One 2026', 'Three 2026'];

function yard(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch', Three: 'Cedar' });
  return story;
}

const confirmed = (story: Story, on: string, queen: string, label: string): Draft => ({
  kind: 'queen-confirmed',
  day: rough(on),
  queen: story.queen(queen),
  colony: story.colony(label),
  seen: 'queen-laying',
});

const lost = (
  story: Story,
  on: string,
  queen: string,
  cause: Extract<Draft, { kind: 'queen-lost' }>['cause'],
): Draft => ({ kind: 'queen-lost', day: rough(on), queen: story.queen(queen), cause });

const moved = (story: Story, on: string, queen: string, label: string, how?: 'caged'): Draft => ({
  kind: 'queen-moved',
  day: rough(on),
  queen: story.queen(queen),
  to: story.colony(label),
  ...(how ? { how } : {}),
});

const cells = (
  story: Story,
  on: string,
  queen: string,
  label: string,
  reason: 'swarm' | 'supersedure' | 'emergency',
): Draft => ({
  kind: 'queen-expected',
  day: rough(on),
  queen: story.queen(queen),
  colony: story.colony(label),
  reason,
});

const found = (story: Story, on: string, label: string, more: { born?: string } = {}): Draft => ({
  kind: 'queen-found',
  day: rough(on),
  queen: story.queen('found'),
  colony: story.colony(label),
  ...(more.born ? { born: rough(more.born) } : {}),
});

describe('a queen who swarmed', () => {
  it('is found again in the swarm that was taken, and leaves the old box to her daughter', () => {
    const story = yard();
    story.write(
      cells(story, '2026-05-20', 'daughter', 'One', 'swarm'),
      lost(story, '2026-05-24', 'Alder', 'swarmed'),
      {
        kind: 'colony-started',
        day: rough('2026-05-24'),
        colony: story.colony('Swarm'),
        yard: story.yard('Mill'),
        label: 'Swarm',
        how: 'swarm-taken',
      },
      moved(story, '2026-05-26', 'Alder', 'Swarm'),
      confirmed(story, '2026-06-18', 'daughter', 'One'),
    );
    const { codes, head, dams, state } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('Swarm', '2026-06-01')).toBe('Alder');
    expect(head('One', '2026-06-01')).toBeUndefined();
    expect(head('One', '2026-07-01')).toBe('daughter');
    expect(dams('daughter')).toEqual({ Alder: 1 });
    expect(state('Alder')).toBe('laying');
  });

  it('is found at home after all, beside the daughter who was taken to have followed her', () => {
    const story = yard();
    story.write(
      cells(story, '2026-05-20', 'daughter', 'One', 'swarm'),
      confirmed(story, '2026-06-18', 'daughter', 'One'),
    );
    expect(reading(story, NAMES).state('Alder')).toBe('gone: swarmed');
    story.write(confirmed(story, '2026-06-25', 'Alder', 'One'));
    const { codes, state } = reading(story, NAMES);
    expect(codes).toEqual(['two-queens-in-colony']);
    expect(state('Alder')).toBe('laying');
  });
});

describe('a mother and her daughter laying side by side', () => {
  function sideBySide(): Story {
    const story = yard();
    story.write(found(story, '2026-06-01', 'One'), {
      ...confirmed(story, '2026-06-01', 'Alder', 'One'),
      overruled: [{ rule: 'two-queens-in-colony', reason: 'both on one comb' }],
    });
    return story;
  }

  it('both head the box, and nobody can tell their workers apart', () => {
    const { codes, state, workers } = reading(sideBySide(), NAMES);
    expect(codes).toEqual([]);
    expect([state('Alder'), state('found')]).toEqual(['laying', 'laying']);
    expect(workers('One', '2026-06-10')).toBe('Alder');
    expect(workers('One', '2026-09-01')).toBe('changing-over');
  });

  it('until one of them is gone: then the other heads it alone, and in time all workers are hers', () => {
    const story = sideBySide();
    story.write(lost(story, '2026-08-01', 'Alder', 'superseded'));
    const { head, workers } = reading(story, NAMES);
    expect(head('One', '2026-08-02')).toBe('found');
    expect(workers('One', '2026-09-05')).toBe('changing-over');
    expect(workers('One', '2026-09-11')).toBe('found');
    const other = sideBySide();
    other.write(lost(other, '2026-08-01', 'found', 'killed'));
    expect(reading(other, NAMES).head('One', '2026-08-02')).toBe('Alder');
    expect(reading(other, NAMES).workers('One', '2026-09-11')).toBe('Alder');
  });
});

describe('a silent supersedure found in the next spring', () => {
  function unmarkedFound(born?: string): Story {
    const story = yard();
    story.write(
      { kind: 'queen-marked', day: rough('2025-05-20'), queen: story.queen('Alder'), colour: 'blue' },
      {
        kind: 'inspection',
        day: rough('2025-07-10'),
        colony: story.colony('One'),
        queenSeen: 'seen-marked',
        gentle: 4,
      },
      { kind: 'inspection', day: rough('2025-09-10'), colony: story.colony('One'), eggs: true },
      found(story, '2026-04-20', 'One', born ? { born } : {}),
    );
    return story;
  }

  it('makes the one found a probable daughter, and the old queen gone without anyone having seen it', () => {
    const { codes, dams, queen, head } = reading(unmarkedFound(), NAMES);
    expect(codes).toEqual([]);
    expect(dams('found')).toEqual({ Alder: 0.9 });
    expect(queen('Alder').state).toMatchObject({ is: 'gone', cause: 'superseded', deduced: true });
    expect(head('One', '2026-04-21')).toBe('found');
  });

  it('leaves the workers in doubt from the day on which the old queen was last seen', () => {
    const { workers } = reading(unmarkedFound(), NAMES);
    expect(workers('One', '2025-07-31')).toBe('Alder');
    expect(workers('One', '2025-12-01')).toBe('nobody-known');
    expect(workers('One', '2026-05-25')).toBe('changing-over');
    expect(workers('One', '2026-06-10')).toBe('found');
  });

  it('counts the winter for neither of them', () => {
    const { queen } = reading(unmarkedFound(), NAMES);
    expect(wintersCrossed(queen('Alder'), day('2026-06-01'))).toEqual([]);
    expect(wintersCrossed(queen('found'), day('2026-06-01'))).toEqual([]);
  });

  it('counts the winter for the daughter where the keeper says that she emerged in August', () => {
    const { queen, workers } = reading(unmarkedFound('2025-08'), NAMES);
    expect(wintersCrossed(queen('found'), day('2026-06-01'))).toEqual([2026]);
    expect(workers('One', '2025-08-20')).toBe('Alder');
    expect(workers('One', '2025-10-01')).not.toBe('Alder');
    expect(workers('One', '2025-12-01')).not.toBe('Alder');
  });

  it('is refused where the queen she is found instead of was never in that box', () => {
    const story = yard();
    story.write({
      kind: 'queen-found',
      day: rough('2026-04-20'),
      queen: story.queen('found'),
      colony: story.colony('One'),
      insteadOf: story.queen('Birch'),
    });
    expect(reading(story, NAMES).codes).toEqual(['queen-not-there']);
  });
});

describe('a queen given to a colony that did not take her', () => {
  it('leaves no workers behind that would be taken for hers', () => {
    const story = yard();
    story.write(
      lost(story, '2026-05-01', 'Alder', 'killed'),
      moved(story, '2026-05-10', 'Birch', 'One', 'caged'),
      lost(story, '2026-05-16', 'Birch', 'killed'),
      moved(story, '2026-06-10', 'Cedar', 'One', 'caged'),
    );
    const { codes, head, state, workers } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(state('Birch')).toBe('gone: killed');
    expect(head('One', '2026-05-20')).toBeUndefined();
    expect(workers('One', '2026-05-25')).toBe('Alder');
    expect(workers('One', '2026-06-25')).toBe('changing-over');
    expect(workers('One', '2026-07-25')).toBe('Cedar');
  });
});

describe('a queen caged in her own colony', () => {
  it('heads it all along', () => {
    const story = yard();
    story.write(
      {
        kind: 'treatment',
        day: rough('2026-06-20'),
        colonies: [story.colony('One')],
        active: 'queen caged',
      },
      moved(story, '2026-07-14', 'Alder', 'One'),
    );
    const { codes, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(queen('Alder').tenures).toHaveLength(1);
  });
});

describe('a virgin kept in a bank', () => {
  it('is expected there, does not fail because the queen of the bank lays, and goes out to where she is put', () => {
    const story = yard();
    story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Four', 'Alder');
    story.write(
      {
        ...moved(story, '2026-05-25', 'One 2026', 'Two', 'caged'),
        overruled: [{ rule: 'two-queens-in-colony', reason: 'banked above the excluder' }],
      },
      confirmed(story, '2026-05-28', 'Birch', 'Two'),
    );
    const banked = reading(story, NAMES);
    expect(banked.codes).toEqual([]);
    expect(banked.expected('Two')).toEqual(['One 2026']);
    expect(banked.head('Two', '2026-05-29')).toBe('Birch');
    story.write(
      moved(story, '2026-06-01', 'One 2026', 'One'),
      confirmed(story, '2026-06-12', 'One 2026', 'One'),
    );
    const { codes, expected, head } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(expected('Two')).toEqual([]);
    expect(head('One', '2026-06-13')).toBe('One 2026');
  });
});

describe('a laying queen kept in a bank', () => {
  it('is said to be a second queen there, and leaves its own queen in charge when she goes', () => {
    const story = yard();
    story.write(moved(story, '2026-06-01', 'Birch', 'One', 'caged'));
    expect(reading(story, NAMES).codes).toEqual(['two-queens-in-colony']);
    story.write(moved(story, '2026-06-20', 'Birch', 'Two'));
    const { head, workers } = reading(story, NAMES);
    expect(head('One', '2026-06-21')).toBe('Alder');
    expect(head('Two', '2026-06-21')).toBe('Birch');
    expect(workers('One', '2026-08-15')).toBe('Alder');
  });
});

describe('a colony with laying workers', () => {
  it('has nobody known for a queen, and takes a frame of eggs from another as her daughters', () => {
    const story = yard();
    story.write(
      lost(story, '2026-05-01', 'Alder', 'killed'),
      cells(story, '2026-05-05', 'virgin', 'One', 'emergency'),
      lost(story, '2026-06-01', 'virgin', 'failed-to-mate'),
      {
        kind: 'inspection',
        day: rough('2026-06-10'),
        colony: story.colony('One'),
        severalEggsInCells: true,
        droneBroodOnly: true,
      },
      {
        kind: 'eggs-given',
        day: rough('2026-06-11'),
        from: story.colony('Two'),
        to: story.colony('One'),
        expected: story.queen('daughter'),
        parentage: story.of('Birch'),
      },
    );
    const { codes, head, dams, expected, state } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2026-06-12')).toBeUndefined();
    expect(state('virgin')).toBe('failed: failed-to-mate');
    expect(dams('virgin')).toEqual({ Alder: 1 });
    expect(dams('daughter')).toEqual({ Birch: 1 });
    expect(expected('One')).toEqual(['daughter']);
  });
});

describe('an old queen found in a part that was to raise its own', () => {
  it('heads it, and nothing came of the cells there', () => {
    const story = yard();
    story.write(
      {
        kind: 'colony-started',
        day: rough('2026-05-10'),
        colony: story.colony('Four'),
        yard: story.yard('Mill'),
        label: 'Four',
        how: 'split',
      },
      {
        kind: 'split',
        day: rough('2026-05-10'),
        source: story.colony('One'),
        parts: ['One', 'Four'].map((label) => ({
          colony: story.colony(label),
          queen: {
            how: 'raises-own' as const,
            expected: story.queen(label === 'One' ? 'virgin' : 'daughter'),
            parentage: story.of('Alder'),
            from: 'eggs' as const,
          },
        })),
        overruled: [{ rule: 'two-queens-in-colony', reason: 'nobody looked for her' }],
      },
      confirmed(story, '2026-05-17', 'Alder', 'One'),
    );
    const { codes, state, head, expected } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2026-05-18')).toBe('Alder');
    expect(state('virgin')).toBe('failed: another-came-first');
    expect(expected('Four')).toEqual(['daughter']);
  });
});

describe('supersedure cells whose virgin was put into another colony', () => {
  it('say nothing of the queen who is there', () => {
    const story = yard();
    story.write(
      cells(story, '2026-05-20', 'daughter', 'One', 'supersedure'),
      moved(story, '2026-06-01', 'daughter', 'Two'),
      confirmed(story, '2026-06-12', 'daughter', 'Two'),
    );
    const { codes, state } = reading(story, NAMES);
    expect(new Set(codes)).toEqual(new Set(['two-queens-in-colony']));
    expect(state('Birch')).toBe('laying');
    expect(state('Alder')).toBe('laying');
  });
});

describe('a loss told twice', () => {
  it('is one loss, and what was only taken to be may be told more exactly', () => {
    const story = yard();
    story.write(lost(story, '2026-05-01', 'Alder', 'killed'), lost(story, '2026-05-03', 'Alder', 'killed'));
    const { codes, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(queen('Alder').state).toMatchObject({ day: '2026-05-01' });
  });

  it('with another cause is a contradiction', () => {
    const story = yard();
    story.write(
      lost(story, '2026-05-01', 'Alder', 'killed'),
      lost(story, '2026-05-03', 'Alder', 'superseded'),
    );
    expect(reading(story, NAMES).codes).toEqual(['queen-already-lost']);
  });

  it('may say of one whom another came before what became of her', () => {
    const story = yard();
    story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Four', 'Alder');
    story.write(
      {
        kind: 'cells-given',
        day: rough('2026-05-17'),
        to: story.colony('One'),
        expected: story.queen('virgin'),
        parentage: story.of('Cedar'),
        age: 'capped',
      },
      confirmed(story, '2026-06-08', 'virgin', 'One'),
      lost(story, '2026-06-08', 'One 2026', 'failed-to-emerge'),
    );
    const { codes, state } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(state('One 2026')).toBe('failed: failed-to-emerge');
  });
});

describe('a queen not found, cells seen since, and then the queen', () => {
  it('is there again, and the cells may still come to something', () => {
    const story = yard();
    story.write(
      lost(story, '2026-05-01', 'Alder', 'not-found'),
      cells(story, '2026-05-08', 'virgin', 'One', 'emergency'),
      confirmed(story, '2026-05-15', 'Alder', 'One'),
    );
    const { codes, head, expected, queen } = reading(story, NAMES);
    expect(codes).toEqual([]);
    expect(head('One', '2026-05-16')).toBe('Alder');
    expect(queen('Alder').tenures).toHaveLength(1);
    expect(expected('One')).toEqual(['virgin']);
  });
});
