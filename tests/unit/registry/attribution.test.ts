import { describe, expect, it } from 'vitest';
import { workersOf } from '../../../src/registry/attribution.ts';
import { project } from '../../../src/registry/project.ts';
import { rough, Story } from '../../helpers/story.ts';

function requeened(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Rowan' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  story.write({
    kind: 'queen-confirmed',
    day: rough('2026-06-08'),
    queen: story.queen('One 2026'),
    colony: story.colony('One'),
    seen: 'eggs',
  });
  return story;
}

function workers(story: Story, label: string, on: string): string {
  const answer = workersOf(project(story.journal()), story.colony(label), rough(on));
  if (!answer.known) return answer.because;
  return ['Alder', 'Rowan', 'One 2026'].find((name) => story.queen(name) === answer.queen) ?? 'another';
}

describe('the workers of a colony', () => {
  it('are the old queen’s while nobody of the new queen’s has emerged', () => {
    const story = requeened();
    expect(workers(story, 'One', '2026-05-01')).toBe('Alder');
    expect(workers(story, 'One', '2026-06-20')).toBe('Alder');
  });

  it('are all the new queen’s forty days after she began to lay', () => {
    expect(workers(requeened(), 'One', '2026-07-25')).toBe('One 2026');
  });

  it('in a nucleus with the old queen are hers from the first day', () => {
    const story = requeened();
    expect(workers(story, 'Nucleus', '2026-05-11')).toBe('Alder');
    expect(workers(story, 'Nucleus', '2026-06-10')).toBe('Alder');
  });

  it('in a queenless part are the daughters of the queen of the colony it came from', () => {
    expect(workers(requeened(), 'Three', '2026-05-25')).toBe('Alder');
  });

  it('cannot be told apart while a queen put into a colony takes over from another', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Rowan' });
    story.write(
      { kind: 'queen-lost', day: rough('2026-05-01'), queen: story.queen('Alder'), cause: 'killed' },
      {
        kind: 'queen-moved',
        day: rough('2026-05-01'),
        queen: story.queen('Rowan'),
        to: story.colony('One'),
        how: 'caged',
      },
    );
    expect(workers(story, 'One', '2026-05-20')).toBe('Alder');
    expect(workers(story, 'One', '2026-05-30')).toBe('changing-over');
    expect(workers(story, 'One', '2026-06-15')).toBe('Rowan');
  });

  it('are not guessed for a month in which the queen changed', () => {
    expect(workers(requeened(), 'One', '2026-07')).toBe('day-not-exact');
  });
});
