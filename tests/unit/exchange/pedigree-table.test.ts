import { describe, expect, it } from 'vitest';
import { pedigreePage, pedigreeTables } from '../../../src/exchange/pedigree/index.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import { family } from '../../helpers/family.ts';

const rowsOf = (csv: string) =>
  csv
    .trimEnd()
    .split('\n')
    .map((line) => line.split(','));
const nameOf = (row: readonly string[]) => row[0];

describe('the pedigree tables', () => {
  it('have a row for every queen, founders with their background and no dam', () => {
    const { registry } = family();
    const [header, ...rows] = rowsOf(pedigreeTables(registry).pedigree);
    expect(header).toEqual(['queen', 'dam', 'drone_mothers', 'mates', 'background', 'mates_background']);
    expect(rows).toHaveLength(registry.queens.size);
    expect(rows.find((row) => nameOf(row) === 'Old Alder')).toEqual([
      'Old Alder',
      '',
      '',
      '12',
      'local',
      'local',
    ]);
    expect(rows.find((row) => nameOf(row) === 'Cedar')).toEqual(['Cedar', 'Birch', 'Dogwood:1', '8', '', '']);
    expect(new Set(rows.map(nameOf)).size).toBe(rows.length);
  });

  it('define each pool that a queen met once', () => {
    const { pedigree, pools } = pedigreeTables(family().registry);
    const named = new Set([...pedigree.matchAll(/pool:([^,\n]+)/g)].map((match) => match[1]));
    const defined = rowsOf(pools!).slice(1).map(nameOf);
    expect(named.size).toBeGreaterThan(0);
    expect(new Set(defined)).toEqual(named);
    expect(defined.length).toBe(named.size);
  });

  it('of one queen hold her ancestors by dams and drones, and name no queen without a row', () => {
    const { registry, queens } = family();
    const { pedigree, pools = '' } = pedigreeTables(registry, { queen: queens.elder });
    const rows = rowsOf(pedigree).slice(1);
    const names = new Set(rows.map(nameOf));
    expect(names.has('Old Alder')).toBe(true);
    expect(names.has('unnamed queen of 2025')).toBe(false);
    const mentioned = [
      ...rows.flatMap((row) => [row[1]!, row[2]!]),
      ...rowsOf(pools)
        .slice(1)
        .map((row) => row[1]!),
    ]
      .filter((cell) => cell !== '' && !cell.startsWith('pool:'))
      .flatMap((cell) => cell.split(';').map((part) => part.split(':')[0]));
    for (const name of mentioned) expect(names).toContain(name);
  });

  it('are the same bytes each time', () => {
    expect(pedigreeTables(family().registry)).toEqual(pedigreeTables(family().registry));
  });
});

describe('the pedigree page', () => {
  const on = '2026-06-01' as PlainDay;

  it('traces the queen to the founder on one page', () => {
    const { registry, queens } = family();
    const page = pedigreePage(registry, queens.elder, { on, by: 'Ida' });
    const lines = page.split('\n');
    expect(lines.length).toBeLessThan(60);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThan(120);
    expect(page).toContain('Told by Ida, 2026-06-01.');
    expect(page.indexOf('1. Cedar')).toBeGreaterThan(0);
    expect(page.indexOf('2. Birch')).toBeGreaterThan(page.indexOf('1. Cedar'));
    expect(page.indexOf('3. Old Alder')).toBeGreaterThan(page.indexOf('2. Birch'));
    expect(page).toContain('Old Alder is the founder of this line, out of local.');
    expect(page).not.toContain('Hill');
  });

  it('lists the records of her own workers and says when there are none', () => {
    const { registry, queens } = family();
    expect(pedigreePage(registry, queens.birch, { on })).toContain(
      '2022-09-10  gentle 3.5, 7 frames of bees',
    );
    expect(pedigreePage(registry, queens.fern, { on })).toContain('None yet.');
  });
});
