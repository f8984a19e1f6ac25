import { describe, expect, it } from 'vitest';
import { traitObservations } from '../../../src/registry/observations.ts';
import { project } from '../../../src/registry/project.ts';
import { rough, Story } from '../../helpers/story.ts';

function yard(): Story {
  const story = new Story();
  story.begin('Mill', '2024-05-01', { One: 'Alder', Two: 'Rowan' });
  return story;
}

function wash(story: Story, on: string, mites: number): void {
  story.write({
    kind: 'mite-count',
    day: rough(on),
    colony: story.colony('One'),
    sample: { method: 'wash', mites, bees: 300 },
  });
}

function observed(story: Story) {
  return traitObservations(project(story.journal()));
}

describe('a mite count', () => {
  it('carries the treatment that acts, or how long ago the last one stopped', () => {
    const story = yard();
    wash(story, '2025-07-01', 9);
    story.write({
      kind: 'treatment',
      day: rough('2025-08-01'),
      colonies: [story.colony('One')],
      active: 'formic acid',
      end: '2025-08-15' as never,
    });
    wash(story, '2025-08-10', 2);
    wash(story, '2025-09-04', 1);
    const states = observed(story).map((each) => (each.kind === 'mite-count' ? each.treatment : undefined));
    expect(states).toEqual([
      undefined,
      { acting: true, active: 'formic acid' },
      { acting: false, active: 'formic acid', daysSinceEnd: 20 },
    ]);
  });

  it('made on the day a treatment begins was made before it', () => {
    const story = yard();
    wash(story, '2025-08-01', 9);
    story.write({
      kind: 'treatment',
      day: rough('2025-08-01'),
      colonies: [story.colony('One')],
      active: 'formic acid',
    });
    wash(story, '2025-08-02', 9);
    const acting = observed(story).map((each) => each.kind === 'mite-count' && each.treatment?.acting);
    expect(acting).toEqual([undefined, true]);
  });

  it('is taken to be under treatment while nobody wrote down its end', () => {
    const story = yard();
    story.write({
      kind: 'treatment',
      day: rough('2025-08-01'),
      colonies: [story.colony('One')],
      active: 'amitraz',
    });
    wash(story, '2025-09-20', 1);
    const [count] = observed(story);
    expect(count?.kind === 'mite-count' && count.treatment?.acting).toBe(true);
  });
});

describe('a winter', () => {
  it('is told once, though the loss is entered twice, and belongs to the queen who went into it', () => {
    const story = yard();
    story.write({
      kind: 'winter-outcome',
      day: rough('2025-03-20'),
      colony: story.colony('One'),
      winter: 2025,
      alive: false,
      cause: 'starved',
    });
    story.write({
      kind: 'colony-ended',
      day: rough('2025-03-21'),
      colony: story.colony('One'),
      cause: 'starved',
    });
    const winters = observed(story).filter(({ kind }) => kind === 'winter');
    expect(winters).toHaveLength(1);
    expect(winters[0]).toMatchObject({
      alive: false,
      season: 2025,
      cause: 'starved',
      workers: { known: true, queen: story.queen('Alder') },
    });
  });

  it('takes its strength from the inspections around it where the outcome leaves it out', () => {
    const story = yard();
    const frames = (on: string, framesOfBees: number) =>
      story.write({ kind: 'inspection', day: rough(on), colony: story.colony('Two'), framesOfBees });
    frames('2024-07-10', 14);
    frames('2024-10-02', 10);
    frames('2025-04-06', 8);
    frames('2025-05-01', 12);
    story.write({
      kind: 'winter-outcome',
      day: rough('2025-04-01'),
      colony: story.colony('Two'),
      winter: 2025,
      alive: true,
    });
    const winter = observed(story).find(({ kind }) => kind === 'winter');
    expect(winter).toMatchObject({ autumnFramesOfBees: 10, springFramesOfBees: 8 });
  });

  it('is not lost by a colony that was sold in January', () => {
    const story = yard();
    story.write({
      kind: 'colony-ended',
      day: rough('2025-01-10'),
      colony: story.colony('One'),
      cause: 'sold',
    });
    expect(observed(story)).toEqual([]);
  });
});

describe('the strength of a colony', () => {
  it('counts before it is split, and no more in that season afterwards', () => {
    const story = yard();
    const frames = (on: string, framesOfBees: number) =>
      story.write({
        kind: 'inspection',
        day: rough(on),
        colony: story.colony('One'),
        framesOfBees,
        gentle: 4,
      });
    frames('2025-04-20', 8);
    story.threeWaySplit('2025-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
    frames('2025-06-10', 5);
    frames('2026-04-20', 7);
    const strengths = observed(story).map(
      (each) => each.kind === 'inspection' && [each.framesOfBees, each.gentle],
    );
    expect(strengths).toEqual([
      [8, 4],
      [undefined, 4],
      [7, 4],
    ]);
  });
});
