import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoEntries as tellDemo } from '../../../samples/demo/demo.ts';
import { demoFile } from '../../../samples/make-demo.ts';
import { readJournalFile } from '../../../src/exchange/journal-file/index.ts';
import { isExactDay, lastDay } from '../../../src/journal/day.ts';
import { Entry } from '../../../src/journal/entry.ts';
import { DEMO_DAY, DEMO_FILE, demoEntries, demoRegistry } from '../../helpers/demo.ts';

describe('the demo file', () => {
  it('reads as a journal file without a problem, every entry by its schema', () => {
    const read = readJournalFile(readFileSync(DEMO_FILE, 'utf8'), 'demo-yard.json');
    expect(read.ok).toBe(true);
    for (const entry of demoEntries()) expect(Entry.safeParse(entry).success).toBe(true);
  });

  it('is what the story makes of its seed, byte for byte', () => {
    expect(readFileSync(DEMO_FILE, 'utf8')).toBe(demoFile(tellDemo()));
  });

  it('tells another story from another seed', () => {
    expect(demoFile(tellDemo(7))).not.toBe(demoFile(tellDemo()));
  });

  it('holds 900 to 1500 entries in less than 600 kB', () => {
    expect(demoEntries().length).toBeGreaterThanOrEqual(900);
    expect(demoEntries().length).toBeLessThanOrEqual(1500);
    expect(readFileSync(DEMO_FILE).length).toBeLessThan(600_000);
  });

  it('has ids that are unique, and in the order of writing for each keeper', () => {
    const written = [...demoEntries()].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(new Set(written.map(({ id }) => id)).size).toBe(written.length);
    const times = written.map(({ recordedAt }) => recordedAt);
    expect(times).toEqual([...times].sort());
  });

  it('writes nothing down before it happened', () => {
    const early = demoEntries().filter(
      ({ day, recordedAt }) => isExactDay(day) && day > recordedAt.slice(0, 10),
    );
    expect(early).toEqual([]);
  });

  it('spans six seasons and ends on 11 June 2026', () => {
    const days = demoEntries()
      .map(({ day }) => lastDay(day))
      .sort();
    expect(days.at(-1)).toBe(DEMO_DAY);
    const seasons = new Set(
      demoEntries()
        .filter(({ kind }) => kind === 'split')
        .map(({ day }) => day.slice(0, 4)),
    );
    expect([...seasons].sort()).toEqual(['2021', '2022', '2023', '2024', '2025', '2026']);
  });

  it('contradicts itself nowhere: a queen who swarmed and was met again in the swarm is no contradiction', () => {
    const { contradictions, queens } = demoRegistry();
    expect(contradictions).toEqual([]);
    const lode = [...queens.values()].find(({ name }) => name === 'Lode');
    expect(lode?.tenures.map(({ ended }) => ended).slice(-2)).toEqual(['swarmed', 'died-with-colony']);
  });

  it('knows some founders only by month or year', () => {
    const rough = demoEntries().filter(({ day }) => !isExactDay(day));
    expect(rough.some(({ day }) => day.length === 4)).toBe(true);
    expect(rough.some(({ day }) => day.length === 7)).toBe(true);
  });
});
