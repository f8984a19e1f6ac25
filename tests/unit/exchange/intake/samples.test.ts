import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { guessColumns, planIntake, readTable } from '../../../../src/exchange/intake/index.ts';
import type { PlainDay } from '../../../../src/journal/day.ts';
import { startProjection } from '../../../../src/registry/project.ts';
import { likelyDam } from '../../../../src/registry/queries.ts';
import { device, unwrap } from '../../../helpers/devices.ts';

const today = '2026-06-01' as PlainDay;

function sample(name: string): string {
  return readFileSync(new URL(`../../../../samples/spreadsheets/${name}.csv`, import.meta.url), 'utf8');
}

/** Reads, plans with the guesses, writes through the store. */
async function taken(name: string, answers: Record<string, string> = {}) {
  const laptop = device();
  const store = await laptop.open();
  const table = readTable(sample(name));
  const plan = planIntake(table, guessColumns(table, today), startProjection(store.journal.value), {
    today,
    newId: laptop.newId,
    answers,
    leaveOut: new Set(),
  });
  unwrap(await store.write(plan.drafts, `Table ${name}`));
  const registry = store.registry.value;
  const dams = Object.fromEntries(
    [...registry.queens.values()].map((queen) => {
      const dam = likelyDam(queen);
      return [`${queen.name} ${queen.born?.first.slice(0, 4)}`, dam && registry.queens.get(dam.queen)?.name];
    }),
  );
  return { table, plan, store, registry, dams };
}

describe('the messy samples', () => {
  it('have three delimiters', () => {
    const delimiters = ['queen-list', 'winters-and-scores', 'yard-walks'].map(
      (name) => readTable(sample(name)).delimiter,
    );
    expect(delimiters).toEqual([',', ';', '\t']);
  });

  it('give the lineage of the list of queens, with the duplicate name told apart', async () => {
    const { dams, registry, plan } = await taken('queen-list');
    expect(dams).toEqual({
      'Old Willow 2020': undefined,
      'Willow 2021': 'Old Willow',
      'Rowan 2021': undefined,
      'Hazel 2022': 'Rowan',
      'Willow 2024': 'Willow',
      'Maple 2022': 'Rowan',
      'Thorn 2023': 'Hazel',
      'Sorrel 2025': 'Willow',
      'Sedge 2025': 'Hazel',
      'Reed 2025': 'Sedge',
    });
    expect(registry.contradictions).toEqual([]);
    expect([...registry.yards.values()].map(({ name }) => name).sort()).toEqual(['Brook', 'Orchard']);
    expect(plan.rows.map(({ status }) => status)).toContain('skipped');
  });

  it('give winters, scores and counts of the second, with the row of a bad date left out', async () => {
    const { plan, registry, dams } = await taken('winters-and-scores');
    expect(plan.rows.filter(({ status }) => status === 'problem').map(({ line }) => line)).toEqual([7]);
    expect(dams['Amsel 2025']).toBe('Amsel');
    expect(dams['undefined 2025']).toBe('Star');
    const kinds = registry.entries.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'winter-outcome')).toHaveLength(9);
    expect(kinds.filter((kind) => kind === 'mite-count')).toHaveLength(3);
    expect(registry.contradictions).toEqual([]);
  });

  it('give the visits of the third, and every problem with its row and column', async () => {
    const { plan, registry } = await taken('yard-walks');
    expect(plan.rows.filter(({ status }) => status === 'problem').map(({ line }) => line)).toEqual([12, 13]);
    expect(registry.entries.filter(({ kind }) => kind === 'inspection')).toHaveLength(8);
    expect(registry.contradictions).toEqual([]);
  });

  it('are taken back whole by one undo', async () => {
    const { store } = await taken('queen-list');
    unwrap(await store.undo());
    expect(store.registry.value.queens.size).toBe(0);
    expect(store.registry.value.yards.size).toBe(0);
  });

  it('give the walks of a sheet with merged cells, each on its day and at its yard', async () => {
    const { dams, registry, plan } = await taken('merged-walks');
    expect(dams).toEqual({
      'Lípa 2021': undefined,
      'Olše 2022': 'Lípa',
      'Jíva 2023': 'Olše',
      'Habr 2024': 'Jíva',
    });
    expect(plan.questions.map(({ id }) => id)).toEqual(['fill-down:0', 'fill-down:1']);
    expect([...registry.yards.values()].map(({ name }) => name).sort()).toEqual(['Louka', 'Zahrada']);
    const days = registry.entries.flatMap((entry) => (entry.kind === 'inspection' ? [entry.day] : []));
    expect(days).toEqual([
      ...Array<string>(3).fill('2024-05-03'),
      ...Array<string>(3).fill('2024-05-17'),
      '2025-05-03',
    ]);
    expect(plan.rows.filter(({ status }) => status === 'skipped').map(({ summary }) => summary)).toEqual([
      'Row 8 once more, word for word.',
      'A row of totals.',
    ]);
  });
});
