import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/journal/entry.ts';
import { labelOn } from '../../../../src/registry/queries.ts';
import { reading } from '../../../helpers/reading.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

/** Boxes outlive colonies, colonies change labels and places, and two colonies become one. */

const NAMES = ['Alder', 'Birch', 'Cedar', 'virgin'];

function yard(): Story {
  const story = new Story();
  story.begin('Mill', '2024-05-01', { One: 'Alder', Two: 'Birch' });
  return story;
}

describe('a colony dead over winter whose box is used again', () => {
  function reused(): Story {
    const story = yard();
    story.write(
      {
        kind: 'winter-outcome',
        day: rough('2025-03-20'),
        colony: story.colony('One'),
        winter: 2025,
        alive: false,
        cause: 'starved',
      },
      {
        kind: 'colony-started',
        day: rough('2025-06-01'),
        colony: story.colony('One again'),
        yard: story.yard('Mill'),
        label: 'One',
        how: 'swarm-taken',
      },
      {
        kind: 'queen-entered',
        day: rough('2025-06-01'),
        queen: story.queen('Cedar'),
        colony: story.colony('One again'),
      },
    );
    return story;
  }

  it('is another colony with the same label, and nothing of the first goes over to it', () => {
    const { codes, head, state, registry, workers } = reading(reused(), NAMES);
    expect(codes).toEqual([]);
    expect(head('One again', '2025-07-01')).toBe('Cedar');
    expect(state('Alder')).toBe('gone: died-with-colony');
    expect(workers('One again', '2025-08-01')).toBe('Cedar');
    const labels = [...registry.colonies.values()].map(({ label }) => label);
    expect(labels.filter((label) => label === 'One')).toHaveLength(2);
  });

  it('refuses what is entered for the dead one, names the day of its end, and offers ways out', () => {
    const story = reused();
    story.write({
      kind: 'queen-moved',
      day: rough('2025-06-10'),
      queen: story.queen('Birch'),
      to: story.colony('One'),
    });
    const [contradiction] = reading(story, NAMES).contradictions;
    expect(contradiction).toMatchObject({ code: 'colony-already-ended', found: 'One ended on 2025-03-20' });
    expect(contradiction?.remedies).toHaveLength(3);
  });
});

describe('a colony that ended in the morning', () => {
  it('takes no queen in the afternoon', () => {
    const story = yard();
    story.write(
      { kind: 'colony-ended', day: rough('2025-05-10'), colony: story.colony('One'), cause: 'queenless' },
      {
        kind: 'queen-moved',
        day: rough('2025-05-10'),
        queen: story.queen('Birch'),
        to: story.colony('One'),
      },
    );
    expect(reading(story, NAMES).codes).toEqual(['colony-already-ended']);
  });
});

describe('a box with a new label', () => {
  it('is the same colony with the same queen, and had its old label before', () => {
    const story = yard();
    story.write({
      kind: 'colony-relabelled',
      day: rough('2025-04-01'),
      colony: story.colony('One'),
      label: 'Seven',
    });
    const { head, registry } = reading(story, NAMES);
    const colony = registry.colonies.get(story.colony('One'))!;
    expect(colony.label).toBe('Seven');
    expect(labelOn(colony, day('2025-03-31'))).toBe('One');
    expect(labelOn(colony, day('2025-04-01'))).toBe('Seven');
    expect(head('One', '2025-04-02')).toBe('Alder');
  });
});

describe('two colonies joined', () => {
  function joined(queenKept: Extract<Draft, { kind: 'colonies-joined' }>['queenKept']): Story {
    const story = yard();
    story.write({
      kind: 'colonies-joined',
      day: rough('2025-09-01'),
      colony: story.colony('One'),
      into: story.colony('Two'),
      queenKept,
    });
    return story;
  }

  it('keep the queen who is said to be kept, and the other is killed', () => {
    const mine = reading(joined('of-the-receiving'), NAMES);
    expect([mine.codes, mine.head('Two', '2025-10-01'), mine.state('Alder')]).toEqual([
      [],
      'Birch',
      'gone: killed',
    ]);
    const theirs = reading(joined('of-the-joined'), NAMES);
    expect([theirs.codes, theirs.head('Two', '2025-10-01'), theirs.state('Birch')]).toEqual([
      [],
      'Alder',
      'gone: killed',
    ]);
  });

  it('are headed by nobody known where nobody looked, until she is seen', () => {
    const story = joined('unknown');
    expect(reading(story, NAMES).head('Two', '2025-10-01')).toBeUndefined();
    for (const queen of ['Alder', 'Birch']) {
      const seen = joined('unknown');
      seen.write({
        kind: 'queen-confirmed',
        day: rough('2025-09-20'),
        queen: seen.queen(queen),
        colony: seen.colony('Two'),
        seen: 'queen-laying',
      });
      const { codes, head } = reading(seen, NAMES);
      expect(codes).toEqual([]);
      expect(head('Two', '2025-10-01')).toBe(queen);
    }
  });

  it('do not leave the workers to be taken for hers at once', () => {
    const { workers } = reading(joined('of-the-joined'), NAMES);
    expect(workers('Two', '2025-09-30')).toBe('changing-over');
    expect(workers('Two', '2025-10-20')).toBe('Alder');
  });

  it('mix their workers for a while whoever’s queen is kept', () => {
    const { workers } = reading(joined('of-the-receiving'), NAMES);
    expect(workers('Two', '2025-08-31')).toBe('Birch');
    expect(workers('Two', '2025-09-30')).toBe('changing-over');
    expect(workers('Two', '2025-10-15')).toBe('Birch');
  });

  it('are two', () => {
    const story = yard();
    story.write({
      kind: 'colonies-joined',
      day: rough('2025-09-01'),
      colony: story.colony('One'),
      into: story.colony('One'),
      queenKept: 'unknown',
    });
    const { codes, head } = reading(story, NAMES);
    expect(codes).toEqual(['joined-with-itself']);
    expect(head('One', '2025-09-02')).toBe('Alder');
  });
});

describe('a winter before the colony began', () => {
  it('is refused for a split of that spring, and taken for a colony that was bought then', () => {
    const told = (how: 'split' | 'bought') => {
      const story = yard();
      story.write(
        {
          kind: 'colony-started',
          day: rough('2025-05-10'),
          colony: story.colony('Three'),
          yard: story.yard('Mill'),
          label: 'Three',
          how,
        },
        {
          kind: 'winter-outcome',
          day: rough('2026-04-01'),
          colony: story.colony('Three'),
          winter: 2025,
          alive: true,
        },
      );
      return reading(story, NAMES);
    };
    expect(told('split').codes).toEqual(['colony-not-started']);
    expect(told('split').contradictions[0]?.because).toBe('It was no colony yet in the winter 2024/25.');
    expect(told('bought').codes).toEqual([]);
  });
});

describe('days that run backwards', () => {
  it('are said of a treatment that ends before it begins, and of cells given before their eggs were laid', () => {
    const story = yard();
    story.write(
      {
        kind: 'treatment',
        day: rough('2025-08-10'),
        colonies: [story.colony('One')],
        active: 'formic acid',
        end: day('2025-08-01'),
      },
      {
        kind: 'cells-given',
        day: rough('2025-06-10'),
        to: story.colony('Two'),
        expected: story.queen('virgin'),
        parentage: story.of('Alder'),
        age: 'capped',
        eggsLaid: day('2025-06-20'),
        overruled: [{ rule: 'two-queens-in-colony', reason: 'to be replaced' }],
      },
    );
    expect(reading(story, NAMES).codes).toEqual(['day-in-future', 'treatment-unknown']);
  });
});
