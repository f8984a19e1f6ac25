import { describe, expect, it } from 'vitest';
import { bigJournal } from '../../../samples/make-big.ts';
import { Entry } from '../../../src/journal/entry.ts';
import { orderOfEvents } from '../../../src/journal/order.ts';
import { project } from '../../../src/registry/project.ts';

const SIZE = 5000;
const entries = bigJournal(SIZE);

describe('the big invented journal', () => {
  it('has exactly as many entries as asked for, each valid', () => {
    expect(entries).toHaveLength(SIZE);
    for (const entry of entries) expect(Entry.safeParse(entry).success).toBe(true);
  });

  it('is in the order in which things happened, with unique ids', () => {
    expect(orderOfEvents(entries.toReversed(), new Map()).ordered).toEqual(entries);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(SIZE);
  });

  it('projects without a contradiction, whole or cut short', () => {
    for (const length of [SIZE, 1234]) {
      const registry = project(new Map(entries.slice(0, length).map((entry) => [entry.id, entry])));
      expect(registry.contradictions).toEqual([]);
    }
  });

  it('spans ten seasons and more, with losses and increase in each', () => {
    const splits = new Set(entries.filter(({ kind }) => kind === 'split').map(({ day }) => day.slice(0, 4)));
    expect(splits.size).toBeGreaterThanOrEqual(10);
    expect(entries.some((entry) => entry.kind === 'winter-outcome' && !entry.alive)).toBe(true);
  });

  it('is the same for the same seed and another for another', () => {
    expect(bigJournal(500, 1)).toEqual(bigJournal(500, 1));
    expect(bigJournal(500, 2)).not.toEqual(bigJournal(500, 1));
  });
});
