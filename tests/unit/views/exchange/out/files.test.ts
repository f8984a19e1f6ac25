import { describe, expect, it } from 'vitest';
import { writeJournalFile } from '../../../../../src/exchange/journal-file/index.ts';
import type { KeeperId } from '../../../../../src/journal/ids.ts';
import { estimateBytes, tableFiles } from '../../../../../views/exchange/out/files.ts';
import { DEMO_DAY, demoEntries, demoQueen, demoRegistry } from '../../../../helpers/demo.ts';

const registry = demoRegistry();

describe('the table of the pedigree', () => {
  it('has a row a queen and names the yards that it tells of', () => {
    const files = tableFiles(registry, DEMO_DAY);
    expect(files.queens.name).toBe(`queens-${DEMO_DAY}.csv`);
    expect(files.count).toBeGreaterThanOrEqual(registry.queens.size);
    for (const name of files.yards) expect(files.queens.text).toContain(`pool:${name} `);
    const named = [...registry.yards.values()].filter(({ name }) => files.queens.text.includes(name));
    expect(files.yards).toEqual(named.map(({ name }) => name));
  });

  it('holds one queen with her ancestors under her name', () => {
    const queen = demoQueen('Sable');
    const files = tableFiles(registry, DEMO_DAY, { id: queen.id, title: 'Sable' });
    expect(files.queens.name).toBe(`queen-sable-${DEMO_DAY}.csv`);
    expect(files.queens.text).toContain('\nSable,Slate,');
    expect(files.count).toBeLessThan(registry.queens.size);
  });
});

describe('the size of a file before it is written', () => {
  it('is near what is written', () => {
    const entries = demoEntries();
    const text = writeJournalFile({
      exported: '2026-06-01T10:00:00.000Z',
      by: { id: entries[0]!.recordedBy as KeeperId, name: 'Ada' },
      scope: { of: 'all' },
      entries,
      photos: [],
    });
    expect(Math.abs(estimateBytes(entries) / text.length - 1)).toBeLessThan(0.1);
    expect(estimateBytes([])).toBe(0);
  });
});
