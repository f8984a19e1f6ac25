import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeJournalFile } from '../../../src/exchange/journal-file/index.ts';
import type { KeeperId } from '../../../src/journal/ids.ts';
import { DEMO_FILE } from '../../helpers/demo.ts';
import { demoRanking } from '../../helpers/demo-choice.ts';
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
  const ranked = async () => {
    const { code, out } = await run('rank demo.json', { 'demo.json': readFileSync(DEMO_FILE, 'utf8') });
    expect(code).toBe(0);
    const [header = [], ...rows] = lines(out).map((line) => line.split(','));
    return (name: string) => rows.map((row) => row[header.indexOf(name)] ?? '');
  };

  it('lists the living laying queens of the demo yard, best index first, each with its doubt', async () => {
    const column = await ranked();
    const places = column('rank').filter((place) => place !== '');
    expect(places).toEqual(places.map((_, at) => String(at + 1)));
    const index = column('index').map(Number).slice(0, places.length);
    expect(index.length).toBeGreaterThan(8);
    expect(index).toEqual([...index].sort((a, b) => b - a));
    expect(column('standard_error').every((error) => Number(error) > 0)).toBe(true);
    expect(
      column('reliability')
        .map(Number)
        .every((known) => known >= 0 && known < 1),
    ).toBe(true);
  });

  it('gives no place to those compared with too few, says why, and stands them last by name', async () => {
    const column = await ranked();
    expect(column('rank').slice(-2)).toEqual(['', '']);
    expect(column('not_ranked').slice(-2)).toEqual(['compared with too few', 'compared with too few']);
    expect(column('not_ranked').slice(0, -2).join('')).toBe('');
  });

  it('agrees with the screen: the same queens in the same order, the same of them without a place', async () => {
    const column = await ranked();
    const { rows } = demoRanking();
    expect(column('queen')).toEqual(rows.map(({ id }) => id));
    expect(column('rank').map((place) => place === '')).toEqual(
      rows.map(({ standing }) => standing === 'unranked'),
    );
  });
});
