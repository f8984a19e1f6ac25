import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeJournalFile } from '../../../src/exchange/journal-file/index.ts';
import type { KeeperId } from '../../../src/journal/ids.ts';
import { DEMO_FILE } from '../../helpers/demo.ts';
import { rough, Story, testId } from '../../helpers/story.ts';
import { run } from '../../helpers/table-world.ts';

function fileOf(story: Story): string {
  return writeJournalFile({
    exported: '2026-06-01T12:00:00.000Z',
    by: { id: testId(0xfff) as KeeperId, name: 'Tester' },
    scope: { of: 'all' },
    entries: story.entries,
    photos: [],
  });
}

function splitFile(): string {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder', Two: 'Rowan' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  story.write(
    {
      kind: 'queen-confirmed',
      day: rough('2026-06-08'),
      queen: story.queen('Three 2026'),
      colony: story.colony('Three'),
      seen: 'eggs',
    },
    { kind: 'queen-named', day: rough('2026-06-08'), queen: story.queen('Three 2026'), name: 'Aspen' },
  );
  return fileOf(story);
}

const lines = (text: string) => text.trimEnd().split('\n');

describe('check', () => {
  it('prints nothing but the header for a journal without contradictions', async () => {
    const { code, out } = await run('check j.json', { 'j.json': splitFile() });
    expect([code, lines(out).length]).toEqual([0, 1]);
  });

  it('prints each contradiction with its rule and what to do', async () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write({ kind: 'inspection', day: rough('2024-05-01'), colony: story.colony('One'), eggs: true });
    const { out } = await run('check j.json', { 'j.json': fileOf(story) });
    expect(lines(out)[1]).toMatch(/^2024-05-01,.*,Inspection,colony-not-started,/);
  });

  it('refuses a file that is no journal, by file and with nothing on standard output', async () => {
    const { code, out, error } = await run('check j.json', { 'j.json': '{"format":"something else"}' });
    expect([code, out]).toEqual([2, '']);
    expect(error).toContain('j.json');
  });
});

describe('trace', () => {
  it('prints the queen, then her dam, to the founder', async () => {
    const { code, out } = await run('trace j.json aspen', { 'j.json': splitFile() });
    expect(code).toBe(0);
    expect(
      lines(out)
        .slice(1)
        .map((line) => line.split(',')[2]),
    ).toEqual(['Aspen', 'Alder']);
  });

  it('speaks of the day asked for, and refuses one that is none', async () => {
    const files = { 'j.json': splitFile() };
    expect((await run('trace j.json Aspen --on 2026-05-20', files)).error).toContain("'Aspen'");
    expect((await run('trace j.json Aspen --on 2026-02-30', files)).error).toContain(
      'no day of the calendar',
    );
  });

  it('asks which, when two queens bear the name', async () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { One: 'Alder' });
    story.write({ kind: 'queen-entered', day: rough('2025'), queen: story.queen('other'), name: 'Alder' });
    const { code, error } = await run('trace j.json Alder', { 'j.json': fileOf(story) });
    expect(code).toBe(2);
    expect(error).toContain(story.queen('Alder'));
    expect(error).toContain(story.queen('other'));
  });
});

describe('rank', () => {
  it('lists the living laying queens of the demo yard, best index first, each with its doubt', async () => {
    const { code, out } = await run('rank demo.json', { 'demo.json': readFileSync(DEMO_FILE, 'utf8') });
    expect(code).toBe(0);
    const [header = '', ...rows] = lines(out).map((line) => line.split(','));
    expect(rows.length).toBeGreaterThan(8);
    const column = (name: string) => rows.map((row) => Number(row[header.indexOf(name)]));
    const index = column('index');
    expect(index).toEqual([...index].sort((a, b) => b - a));
    expect(column('standard_error').every((error) => error > 0)).toBe(true);
    expect(column('reliability').every((reliability) => reliability >= 0 && reliability < 1)).toBe(true);
  });
});
