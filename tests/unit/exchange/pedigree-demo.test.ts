import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readJournalFile } from '../../../src/exchange/journal-file/index.ts';
import {
  pedigreeEntries,
  pedigreePage,
  pedigreeTables,
  withAncestors,
} from '../../../src/exchange/pedigree/index.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import { unite } from '../../../src/journal/journal.ts';
import { project } from '../../../src/registry/project.ts';
import { countingIds, unwrap } from '../../helpers/devices.ts';

const file = unwrap(
  readJournalFile(readFileSync(new URL('../../../samples/demo-yard.json', import.meta.url), 'utf8'), 'demo'),
);
const journal = unite(new Map(), file.entries).journal;
const registry = project(journal);
const LATER = 0x10_0000_0000;
const scribe = () => ({ keeper: file.by.id, now: () => new Date(2026, 5, 12), newId: countingIds(3, LATER) });

describe('the pedigree of every queen of the demo yard', () => {
  it('told to another keeper has the same ancestors with the same dams, and contradicts nothing', () => {
    for (const id of registry.queens.keys()) {
      const told = project(
        unite(new Map(), pedigreeEntries(registry, id, scribe(), { withTraits: true })).journal,
      );
      expect(told.contradictions).toEqual([]);
      const ancestors = withAncestors(registry, id);
      expect([...told.queens.keys()].sort()).toEqual(ancestors.map((queen) => queen.id).sort());
      for (const queen of ancestors) {
        expect(told.queens.get(queen.id)?.parentage).toEqual(queen.parentage);
        expect(told.queens.get(queen.id)?.name).toBe(queen.name);
      }
    }
  });

  it('coming home changes no queen', () => {
    const ids = [...registry.queens.keys()];
    const told = ids.flatMap((id, index) =>
      pedigreeEntries(registry, id, { ...scribe(), newId: countingIds(3 + index, LATER) }),
    );
    const home = project(unite(journal, told).journal);
    expect(home.contradictions).toEqual(registry.contradictions);
    for (const queen of registry.queens.values()) {
      const { name, parentage, state, tenures, born, daughters } = home.queens.get(queen.id)!;
      expect({ name, parentage, state, tenures, born }).toEqual({
        name: queen.name,
        parentage: queen.parentage,
        state: queen.state,
        tenures: queen.tenures,
        born: queen.born,
      });
      expect([...daughters].sort()).toEqual([...queen.daughters].sort());
    }
  });

  it('fits on a page and in tables', () => {
    for (const id of registry.queens.keys()) {
      const page = pedigreePage(registry, id, { on: '2026-06-12' as PlainDay, by: 'Ida' });
      expect(page.split('\n').length).toBeLessThan(60);
    }
    const rows = pedigreeTables(registry).pedigree.trimEnd().split('\n');
    expect(rows.length).toBeGreaterThan(registry.queens.size);
  });
});
