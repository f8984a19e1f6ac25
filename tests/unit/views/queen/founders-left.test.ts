import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { percents } from '../../../../views/parts/percents.ts';
import { foundersLeft } from '../../../../views/queen/founders-left.ts';
import { demoRegistry } from '../../../helpers/demo.ts';
import { Story } from '../../../helpers/story.ts';

describe('what is left of each founder in a queen', () => {
  it('is half of her dam, and the rest drones nobody recorded, in the daughter of a founder', () => {
    const story = new Story();
    story.begin('Home', '2023-04-01', { H1: 'Alder' });
    story.threeWaySplit('2024-05-05', 'Home', 'H1', 'N1', 'N2', 'Alder');
    const left = foundersLeft(project(story.journal()), story.queen('H1 2024'));
    expect(left?.founders).toEqual([{ queen: story.queen('Alder'), share: 0.5 }]);
    expect(left?.unrecorded).toBeCloseTo(0.5, 12);
  });

  it('sums to the whole of every queen of the demo, largest share first', () => {
    const registry = demoRegistry();
    for (const id of registry.queens.keys()) {
      const left = foundersLeft(registry, id);
      const shares = left?.founders.map(({ share }) => share) ?? [];
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      expect(shares.reduce((sum, share) => sum + share, left?.unrecorded ?? 0)).toBeCloseTo(1, 9);
    }
  });

  it('is said in whole percents, and a little that is there never as none', () => {
    expect([0, 0.002, 0.5].map(percents)).toEqual(['0\u00a0%', 'under 1\u00a0%', '50\u00a0%']);
  });
});
