import { describe, expect, it } from 'vitest';
import { damCertainty } from '../../../src/registry/queries.ts';
import { reading } from '../../helpers/reading.ts';
import { rough, Story } from '../../helpers/story.ts';

const NAMES = ['Alder', 'Birch', 'cells'];

/** Birch is lost from Two on a day; on 20 June cells of Alder's eggs are given to Two. */
function cellsGiven(lost: string): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
  story.write(
    { kind: 'queen-lost', day: rough(lost), queen: story.queen('Birch'), cause: 'killed' },
    {
      kind: 'cells-given',
      day: rough('2026-06-20'),
      from: story.colony('One'),
      to: story.colony('Two'),
      expected: story.queen('cells'),
      parentage: story.of('Alder'),
      age: 'capped',
    },
  );
  return story;
}

const confirm = (story: Story) =>
  story.write({
    kind: 'queen-confirmed',
    day: rough('2026-07-10'),
    queen: story.queen('cells'),
    colony: story.colony('Two'),
    seen: 'eggs',
  });

/*
 * Bees made queenless raise queens of larvae up to about 3 days old, and cap a cell on about the 8th day from the egg
 * (Winston 1987, The Biology of the Honey Bee, chapters 4 and 11; from memory).
 */
describe('cells given to a box whose own queen was there a few days before', () => {
  it('leave it open whether a daughter of that queen came first', () => {
    const { codes, dams, queen } = reading(cellsGiven('2026-06-14'), NAMES);
    expect(codes).toEqual([]);
    expect(dams('cells')).toEqual({ Alder: 1 });
    expect(queen('cells').orDaughterOf).toBe(queen('Birch').id);
    expect(damCertainty(queen('cells'))).toBe('probable');
  });

  it('are beyond doubt once her brood was capped: after 8 days, but not before', () => {
    expect(damCertainty(reading(cellsGiven('2026-06-12'), NAMES).queen('cells'))).toBe('probable');
    expect(damCertainty(reading(cellsGiven('2026-06-11'), NAMES).queen('cells'))).toBe('firm');
  });

  it('keep the dam that was stated when the queen is confirmed, with the doubt', () => {
    const story = cellsGiven('2026-06-14');
    confirm(story);
    const { dams, queen } = reading(story, NAMES);
    expect(dams('cells')).toEqual({ Alder: 1 });
    expect(damCertainty(queen('cells'))).toBe('probable');
  });

  it('are as certain as the keeper says who states her dam afterwards', () => {
    const story = cellsGiven('2026-06-14');
    confirm(story);
    story.write({
      kind: 'parentage-stated',
      day: rough('2026-07-12'),
      queen: story.queen('cells'),
      parentage: story.of('Alder'),
    });
    expect(damCertainty(reading(story, NAMES).queen('cells'))).toBe('firm');
  });
});
