import { describe, expect, it } from 'vitest';
import type { PlainDay } from '../../../../src/journal/day.ts';
import { project } from '../../../../src/registry/project.ts';
import { nameOf } from '../../../../views/choose/use-choice.ts';
import { rough, Story } from '../../../helpers/story.ts';

describe('the name of a queen in the choice', () => {
  const story = new Story();
  story.begin('Home', '2023-04-01', { H1: 'Alder' });
  const registry = project(story.journal());

  it('is her own', () => {
    expect(nameOf(registry, '2024-05-01' as PlainDay, story.queen('Alder'))).toBe('Alder');
  });

  it('is that of her box where she has none, so that no two are called alike', () => {
    const queens = new Map([...registry.queens].map(([id, { name: _, ...queen }]) => [id, queen] as const));
    const unnamed = { ...registry, queens };
    expect(nameOf(unnamed, '2024-05-01' as PlainDay, story.queen('Alder'))).toBe('H1’s queen');
  });

  it('is said to be unknown for a queen of other records', () => {
    expect(nameOf(registry, rough('2024-05-01') as never, 'elsewhere' as never)).toBe(
      'a queen not in these records',
    );
  });
});
