import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../../src/journal/entry.ts';
import { project } from '../../../../src/registry/project.ts';
import { manifestOf, sizeText } from '../../../../views/exchange/manifest.ts';
import { demoEntries, demoRegistry } from '../../../helpers/demo.ts';
import { countingIds, day, inspection, scribe, smallYard, written } from '../../../helpers/devices.ts';

const registryOf = (entries: readonly Entry[]) => project(new Map(entries.map((entry) => [entry.id, entry])));

describe('the list of what entries hold', () => {
  it('names queens, boxes, yards and days, and counts own words', () => {
    const newId = countingIds();
    const by = scribe(newId);
    const yard = smallYard(newId);
    const entries = written(
      [
        { kind: 'keeper-named', day: day('2026-06-01'), keeper: by.keeper, name: 'Ada' },
        ...yard.drafts,
        inspection(yard.colony, '2025-05-14', { note: 'They hang in front.', remark: 'Warm.' }),
        { kind: 'queen-lost', day: day('2025-08'), queen: yard.queen, cause: 'given-away', to: 'Tom' },
      ],
      by,
    );
    const facts = manifestOf(entries, registryOf(entries));
    expect(facts).toMatchObject({
      entries: 6,
      from: '2024-05-01',
      to: '2025-08',
      queens: ['Birch'],
      boxes: ['Box 1'],
      yards: [{ name: 'Hill' }],
      keepers: ['Ada'],
      others: ['Tom'],
      words: 2,
    });
  });

  it('counts only what the entries themselves speak of', () => {
    const all = demoEntries();
    const registry = demoRegistry();
    const whole = manifestOf(all, registry);
    expect(whole.queens).toHaveLength(registry.queens.size);
    expect(whole.boxes).toHaveLength(registry.colonies.size);
    expect(whole.yards).toHaveLength(registry.yards.size);
    const split = all.find(({ kind }) => kind === 'split');
    const one = manifestOf(split ? [split] : [], registry);
    expect(one.boxes).toHaveLength(split?.kind === 'split' ? split.parts.length : 0);
    expect(one.yards).toEqual([]);
  });

  it('says that nothing is in nothing', () => {
    expect(manifestOf([], demoRegistry())).toMatchObject({ entries: 0, queens: [], keepers: [], words: 0 });
  });
});

describe('the size of a file', () => {
  it('is told in thousands', () => {
    expect(sizeText(999)).toBe('999 bytes');
    expect(sizeText(1000)).toBe('1 kB');
    expect(sizeText(433_400)).toBe('433 kB');
    expect(sizeText(999_499)).toBe('999 kB');
    expect(sizeText(999_500)).toBe('1.0 MB');
    expect(sizeText(12_340_000)).toBe('12 MB');
  });
});
