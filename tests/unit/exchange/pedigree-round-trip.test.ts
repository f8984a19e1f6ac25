import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compilePedigree, inbreedingOf, type Pedigree } from '../../../graph/kinship/index.ts';
import { readPedigree } from '../../../src/cli/pedigree-table.ts';
import { readJournalFile } from '../../../src/exchange/journal-file/index.ts';
import { pedigreeTables } from '../../../src/exchange/pedigree/index.ts';
import { unite } from '../../../src/journal/journal.ts';
import { pedigreeInput } from '../../../src/registry/pedigree.ts';
import { project } from '../../../src/registry/project.ts';
import { unwrap } from '../../helpers/devices.ts';

const file = unwrap(
  readJournalFile(readFileSync(new URL('../../../samples/demo-yard.json', import.meta.url), 'utf8'), 'demo'),
);
const registry = project(unite(new Map(), file.entries).journal);
const input = pedigreeInput(registry);

function fromTables(): { readonly pedigree: Pedigree; readonly names: readonly string[] } {
  const tables = pedigreeTables(registry);
  const texts: Record<string, string> = { 'pedigree.csv': tables.pedigree, 'pools.csv': tables.pools ?? '' };
  const background = input.backgrounds.map(({ id, kinship }) => `${id}=${kinship}`).join(',');
  const read = readPedigree(
    {
      readText: (path) => texts[path] ?? '',
      openOutput: () => {
        throw new Error('no output');
      },
      writeError: () => undefined,
    },
    'pedigree.csv',
    {
      positions: [],
      options: new Map([
        ['pools', 'pools.csv'],
        ['background', background],
      ]),
    },
  );
  if (!read.ok) throw new Error(read.problems.join('\n'));
  const names = tables.pedigree
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.split(',')[0]!);
  return { pedigree: read.pedigree, names };
}

describe('the pedigree tables of the demo yard read by the command line', () => {
  it('give every queen the inbreeding that the records give her', () => {
    const compiled = compilePedigree(input);
    if (!compiled.ok) throw new Error('The demo yard does not compile.');
    const { pedigree, names } = fromTables();
    expect(names).toHaveLength(input.queens.length);
    let inbred = 0;
    input.queens.forEach(({ id }, row) => {
      const own = inbreedingOf(compiled.pedigree, compiled.pedigree.queenIndex.get(id)!);
      const read = inbreedingOf(pedigree, pedigree.queenIndex.get(names[row]!)!);
      expect(read).toBeCloseTo(own, 9);
      if (own > 1e-6) inbred += 1;
    });
    expect(inbred).toBeGreaterThan(10);
  });
});
