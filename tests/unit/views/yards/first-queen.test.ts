import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { damProblem, NO_QUEEN, queenDrafts, queenProblem } from '../../../../views/yards/first-queen.ts';
import { rough, Story } from '../../../helpers/story.ts';

describe('the queen of a colony that is added', () => {
  it('has no dam where none is named', () => {
    const story = new Story();
    const [draft] = queenDrafts({ ...NO_QUEEN, there: 'laying' }, story.colony('One'), rough('2026-05-01'));
    expect(draft && 'parentage' in draft).toBe(false);
    expect(queenProblem({ ...NO_QUEEN, there: 'laying' })).toBeUndefined();
  });

  it('is on record as the daughter of the dam named, as sure as the keeper says', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Birch' });
    const dam = story.queen('Alder');
    const facts = {
      ...NO_QUEEN,
      there: 'laying',
      name: 'Cedar',
      dam,
      damSure: 'very-likely',
      damKnown: 'told',
    } as const;
    story.write(
      {
        kind: 'colony-started',
        day: rough('2026-05-01'),
        colony: story.colony('Three'),
        yard: story.yard('Mill'),
        label: 'Three',
        how: 'bought',
      },
      ...queenDrafts(facts, story.colony('Three'), rough('2026-05-01')),
    );
    const registry = project(story.journal());
    const cedar = [...registry.queens.values()].find(({ name }) => name === 'Cedar');
    expect(cedar?.parentage).toEqual({ dams: [{ queen: dam, probability: 0.9 }], evidence: 'told' });
    expect(registry.queens.get(dam)?.daughters).toEqual([cedar?.id]);
    expect(registry.contradictions).toEqual([]);
  });

  it('is not written down while a dam is named without a word on how sure and how known', () => {
    const dam = new Story().queen('Alder');
    const named = { ...NO_QUEEN, there: 'laying', dam } as const;
    expect(queenProblem(named)).toMatch(/how sure/);
    expect(damProblem({ ...named, damSure: 'certain' })).toMatch(/how it is known/);
    expect(queenProblem({ ...named, damSure: 'certain', damKnown: 'old-record' })).toBeUndefined();
    expect(queenProblem({ ...named, there: 'not-known' })).toBeUndefined();
  });
});
