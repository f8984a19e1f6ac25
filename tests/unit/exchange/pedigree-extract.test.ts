import { describe, expect, it } from 'vitest';
import { pedigreeEntries } from '../../../src/exchange/pedigree/extract.ts';
import { unite } from '../../../src/journal/journal.ts';
import { project } from '../../../src/registry/project.ts';
import type { Registry } from '../../../src/registry/state.ts';
import { family } from '../../helpers/family.ts';

const now = () => new Date(2026, 5, 1);

function told(options = {}) {
  const yard = family();
  const entries = pedigreeEntries(yard.registry, yard.queens.elder, { ...yard.by, now }, options);
  return { ...yard, told: entries, received: project(unite(new Map(), entries).journal) };
}

/** Who a queen is, without when and by which entry it was said. */
function facts(registry: Registry, id: never) {
  const { name, parentage, background, mark } = registry.queens.get(id)!;
  return { name, parentage, background, colour: mark?.colour, number: mark?.number };
}

describe('the pedigree of one queen', () => {
  it('shows another keeper the queen, her ancestors by dams and named drones, and nobody else', () => {
    const { queens, received } = told();
    const { alder, birch, cedar, dogwood, elder } = queens;
    expect(new Set(received.queens.keys())).toEqual(new Set([alder, birch, cedar, dogwood, elder]));
    expect(received.colonies.size).toBe(0);
    expect(received.yards.size).toBe(0);
    expect(received.contradictions).toEqual([]);
  });

  it('tells each of them as she is known at home: name, dams, background, mark, mating', () => {
    const { queens, received, registry } = told();
    for (const id of received.queens.keys()) {
      expect(facts(received, id as never)).toEqual(facts(registry, id as never));
    }
    expect(received.queens.get(queens.cedar)?.mating?.way).toEqual(
      registry.queens.get(queens.cedar)?.mating?.way,
    );
    expect(received.queens.get(queens.elder)?.from).toBe('Ida');
    expect(received.queens.get(queens.elder)?.born?.first.slice(0, 4)).toBe('2025');
  });

  it('names no yard unless wanted', () => {
    expect(JSON.stringify(told().told)).not.toContain('Hill');
    expect(JSON.stringify(told({ hideYards: false }).told)).toContain('Mated in the open at Hill, 2022.');
    expect(JSON.stringify(told().told)).toContain('Made by a split on 10 May 2025.');
  });

  it('tells the winters that her ancestors crossed, which her own entries would have shown', () => {
    expect(JSON.stringify(told().told)).toMatch(/Crossed the winters? 20\d\d\/\d\d/);
  });

  it('tells that a queen was given away, and not to whom', () => {
    const text = JSON.stringify(told().told);
    expect(text).toContain('Given away on 1 August 2025.');
    expect(text).not.toContain('Jon');
  });

  it('carries trait records only when wanted, each with the queen whose workers made it', () => {
    expect(told().received.entries.filter(({ kind }) => kind === 'note')).toEqual([]);
    const { queens, received } = told({ withTraits: true });
    const notes = received.entries.filter((entry) => entry.kind === 'note');
    expect(notes.map(({ about }) => about)).toEqual([
      { of: 'queen', queen: queens.alder },
      { of: 'queen', queen: queens.birch },
    ]);
    expect(notes[1]?.text).toContain('2022-09-10: gentle 3.5, 7 frames of bees');
  });

  it('coming home changes nothing that is on record and contradicts nothing', () => {
    const { journal, told: entries, registry } = told({ withTraits: true });
    const home = project(unite(journal, entries).journal);
    expect(home.contradictions).toEqual(registry.contradictions);
    for (const [id, queen] of registry.queens) {
      const { entries: _, ...after } = home.queens.get(id)!;
      const { entries: __, mating, ...before } = queen;
      expect({ ...after, mating: after.mating?.way }).toEqual({ ...before, mating: mating?.way });
    }
  });

  it('told twice, or before the whole journal comes, still gives one record of each queen', () => {
    const { journal, told: entries, registry, queens } = told();
    const first = unite(new Map(), entries).journal;
    const again = pedigreeEntries(registry, queens.cedar, { ...family().by, now, newId: told().newId });
    const whole = project(unite(unite(first, again).journal, journal.values()).journal);
    expect(whole.contradictions).toEqual(registry.contradictions);
    expect(whole.queens.size).toBe(registry.queens.size);
    expect(whole.queens.get(queens.elder)?.parentage).toEqual(registry.queens.get(queens.elder)?.parentage);
  });
});
