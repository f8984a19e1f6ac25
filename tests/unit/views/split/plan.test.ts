import { describe, expect, it } from 'vitest';
import { writeEntries } from '../../../../src/journal/write.ts';
import { extendProjection, project, startProjection } from '../../../../src/registry/project.ts';
import { headOn } from '../../../../src/registry/queries.ts';
import { missingInPlan, splitDrafts, splitPart } from '../../../../views/split/drafts.ts';
import {
  addFrames,
  addPart,
  changePart,
  nextLabel,
  queenOf,
  removePart,
  SOURCE,
  setDown,
  startPlan,
  takenUp,
} from '../../../../views/split/plan.ts';
import { partStory } from '../../../../views/split/sentences.ts';
import { day, rough, Story, testId, testScribe } from '../../../helpers/story.ts';

function bench() {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { '1': 'Alder', '2': 'Rowan' });
  const registry = project(story.journal());
  const source = registry.colonies.get(story.colony('1'));
  if (!source) throw new Error('The story has a colony 1.');
  let next = 0x5000;
  const newId = () => testId(next++);
  const plan = startPlan(registry, source, day('2026-05-10'), newId);
  return { story, registry, source, newId, plan };
}

describe('a split on the bench', () => {
  it('begins with the source, the queen in it, and one new box with the next free number', () => {
    const { plan } = bench();
    expect(plan.oldQueenIn).toBe(SOURCE);
    expect(plan.parts).toHaveLength(2);
    expect(plan.parts[1]?.box).toMatchObject({ is: 'new', label: '3' });
  });

  it('laid out the evening before holds for the day on which it is taken up, unless the keeper said another', () => {
    const { plan } = bench();
    expect(takenUp(plan, day('2026-05-10'), day('2026-05-11')).day).toBe('2026-05-11');
    expect(takenUp(plan, day('2026-05-10'), day('2026-05-10'))).toBe(plan);
    const done = { ...plan, day: day('2026-05-08') };
    expect(takenUp(done, day('2026-05-10'), day('2026-05-11')).day).toBe('2026-05-08');
  });

  it('gives no label of its own where boxes are not numbered', () => {
    const story = new Story();
    story.begin('Mill', '2025-05-01', { Red: 'Alder', Blue: 'Rowan' });
    expect(nextLabel(project(story.journal()), day('2026-05-10'), [])).toBe('');
  });

  it('makes the source raise its own from her eggs once the old queen is lifted out', () => {
    const { plan } = bench();
    const key = plan.parts[1]?.key ?? '';
    const moved = setDown(plan, { holds: 'queen' }, key);
    expect(moved.parts.map((part) => queenOf(moved, part).how)).toEqual(['raises-own', 'old-queen']);
  });

  it('takes the cells seen that day for what the source raises its queen from, and older sights for nothing', () => {
    for (const [seen, from] of [
      ['2026-05-10', 'capped-cells'],
      ['2026-05-02', 'eggs'],
    ] as const) {
      const { story, newId } = bench();
      story.write({ kind: 'inspection', day: rough(seen), colony: story.colony('1'), cappedCells: 3 });
      const registry = project(story.journal());
      const plan = startPlan(registry, registry.colonies.get(story.colony('1'))!, day('2026-05-10'), newId);
      const moved = setDown(plan, { holds: 'queen' }, plan.parts[1]?.key ?? '');
      expect(queenOf(moved, moved.parts[0]!)).toEqual({ how: 'raises-own', from });
    }
  });

  it('takes a frame of cells for the first to give a queen, of an age that the keeper has to say', () => {
    const { plan, registry, story } = bench();
    const key = plan.parts[1]?.key ?? '';
    const both = (['eggs', 'cells'] as const).reduce(
      (now, kind) => setDown(now, { holds: 'frame', kind }, key),
      plan,
    );
    expect(splitPart(both, both.parts[1]!, registry).queen).toMatchObject({
      how: 'given-cells',
      age: 'unknown',
      parentage: { dams: [{ queen: story.queen('Alder') }] },
    });
    const { sentence } = partStory(registry, splitPart(both, both.parts[1]!, registry), both.day);
    // A virgin may be out tomorrow: there is no day before from which to leave it shut.
    expect(sentence).toBe(
      'Given cells of unknown age: a daughter of Alder. Leave it shut until eggs are due.',
    );
  });

  it('changes what a queenless part will do as frames are moved', () => {
    const { plan, registry } = bench();
    const key = plan.parts[1]?.key ?? '';
    const how = (now: typeof plan) => {
      const part = now.parts[1];
      if (!part) throw new Error('There is a second part.');
      return partStory(registry, splitPart(now, part, registry), now.day);
    };
    expect(how(plan).hopeless).toBe(true);
    const withEggs = setDown(plan, { holds: 'frame', kind: 'eggs' }, key);
    expect(how(withEggs).hopeless).toBe(false);
    expect(how(withEggs).sentence).toMatch(/daughter of Alder.*Leave it shut/);
    expect(how(withEggs).windows.map(({ label }) => label)).toEqual([
      'Cells capped',
      'Virgin emerges',
      'Eggs of hers',
    ]);
    const lifted = setDown(withEggs, { holds: 'frame', kind: 'eggs', from: key }, SOURCE);
    expect(lifted.parts[1]?.frames).toEqual({});
  });

  it('never holds less than no frame, and the old queen comes back when her part is left out', () => {
    const { plan } = bench();
    const key = plan.parts[1]?.key ?? '';
    expect(addFrames(plan, key, 'stores', -1).parts[1]?.frames).toEqual({});
    expect(removePart(setDown(plan, { holds: 'queen' }, key), key).oldQueenIn).toBe(SOURCE);
  });

  it('asks for labels before it can be written', () => {
    const { plan, registry } = bench();
    const key = plan.parts[1]?.key ?? '';
    const blank = changePart(plan, key, (part) => ({
      ...part,
      box: { ...part.box, label: ' ' } as typeof part.box,
    }));
    expect(missingInPlan(blank, registry)).toEqual(['Give every new box a label.']);
    expect(missingInPlan(plan, registry)).toEqual([]);
  });

  it('is written as one action that the registry accepts: queen moved, daughters expected', () => {
    const { story, registry, newId, plan } = bench();
    const second = plan.parts[1]?.key ?? '';
    let table = addPart(plan, registry, newId);
    const third = table.parts[2]?.key ?? '';
    table = setDown(table, { holds: 'queen' }, second);
    table = setDown(table, { holds: 'frame', kind: 'eggs' }, third);
    const written = writeEntries(splitDrafts(table, registry), testScribe(0x7000));
    if (!written.ok) throw new Error(JSON.stringify(written.problems));
    expect(new Set(written.value.map(({ action }) => action)).size).toBe(1);
    const after = extendProjection(startProjection(story.journal()), written.value).registry;
    expect(after.contradictions).toEqual([]);
    const box = table.parts[1]?.box.colony;
    const colony = box && after.colonies.get(box);
    expect(colony && headOn(after, colony, day('2026-05-11'))?.name).toBe('Alder');
    const expected = [...after.queens.values()].filter(({ state }) => state.is === 'expected');
    expect(expected.map(({ parentage }) => parentage?.dams[0]?.queen)).toEqual([
      story.queen('Alder'),
      story.queen('Alder'),
    ]);
  });

  it('names the queen who laid for cells that hung in a box she has left', () => {
    const { story } = bench();
    story.threeWaySplit('2026-05-03', 'Mill', '1', '5', '6', 'Alder');
    story.write({
      kind: 'queen-lost',
      day: rough('2026-05-08'),
      queen: story.queen('Rowan'),
      cause: 'not-found',
    });
    const registry = project(story.journal());
    const source = registry.colonies.get(story.colony('2'));
    if (!source) throw new Error('The story has a colony 2.');
    let next = 0x6000;
    const plan = startPlan(registry, source, day('2026-05-10'), () => testId(next++));
    const cells = changePart(plan, SOURCE, (part) => ({
      ...part,
      queen: { how: 'given-cells', cellsFrom: story.colony('1'), age: 'capped' },
    }));
    const part = cells.parts[0];
    const queen = part && splitPart(cells, part, registry).queen;
    expect(queen).toMatchObject({
      how: 'given-cells',
      parentage: { dams: [{ queen: story.queen('Alder') }] },
    });
  });
});
