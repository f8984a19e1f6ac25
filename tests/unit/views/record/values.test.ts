import { describe, expect, it } from 'vitest';
import { ENTRY_KINDS, fieldsOf } from '../../../../src/journal/fields.ts';
import { writeEntries } from '../../../../src/journal/write.ts';
import { project } from '../../../../src/registry/project.ts';
import { anyMissing, labelAt } from '../../../../views/record/any/missing.ts';
import { draftOf, firstValues, valuesOf } from '../../../../views/record/any/values.ts';
import { demoColony, demoEntries, demoRegistry } from '../../../helpers/demo.ts';
import { day, Story, testId, testScribe } from '../../../helpers/story.ts';

const about = {
  on: day('2026-06-11'),
  registry: demoRegistry(),
  keeper: testId(1) as never,
  colony: demoColony('S9').id,
};

describe('the form made from a schema', () => {
  it('writes every entry of the demo yard again as it stands', () => {
    for (const entry of demoEntries()) {
      const written = writeEntries([draftOf(entry.kind, valuesOf(entry))], testScribe());
      expect(written).toMatchObject({ ok: true });
      if (!written.ok) continue;
      const { id: _i, action: _a, recordedAt: _t, recordedBy: _b, ...again } = written.value[0]!;
      const { id, action, recordedAt, recordedBy, supersedes, overruled, ...before } = entry;
      expect(again).toEqual(before);
    }
  });

  it('begins with the day shown and the colony that the keeper came from', () => {
    expect(firstValues('harvest', about)).toMatchObject({ day: '2026-06-11', colony: about.colony });
    expect(firstValues('treatment', about)).toMatchObject({ colonies: [about.colony] });
  });

  it('makes a new id where the entry itself makes what it names', () => {
    const first = firstValues('queen-found', about).queen;
    expect(first).toBeTypeOf('string');
    expect(demoRegistry().queens.has(first as never)).toBe(false);
  });

  it('offers the queen who heads the colony where an entry speaks of a queen', () => {
    const head = demoColony('S9').tenures.at(-1)?.queen;
    expect(firstValues('queen-marked', about).queen).toBe(head);
  });

  it('says of every kind, begun empty, that something is missing or that it can be written', () => {
    for (const kind of ENTRY_KINDS) {
      const values = firstValues(kind, about);
      const missing = anyMissing(fieldsOf(kind), values);
      const written = writeEntries([draftOf(kind, values)], testScribe());
      expect(written.ok, kind).toBe(!missing);
    }
  });

  it('finds what is missing inside a way that was chosen', () => {
    const fields = fieldsOf('mating');
    const values = { day: '2026-06-11', queen: testId(2), way: { manner: 'open' } };
    expect(anyMissing(fields, values)).toBe(true);
    expect(anyMissing(fields, { ...values, way: { manner: 'open', yard: testId(3) } })).toBe(false);
  });

  it('leaves out an optional group in which nothing was said', () => {
    const draft = draftOf('colony-moved', { day: '2026-06-11', place: { stand: '' } });
    expect(draft).not.toHaveProperty('place');
  });

  it('names the field at a path by its words', () => {
    expect(labelAt(fieldsOf('mating'), 'way.droneMothers.0.share')).toBe(
      'Way, Mothers of the drones, Share of the drones',
    );
  });
});

describe('an entry corrected by the form', () => {
  it('counts in the place of the one it corrects', () => {
    const story = new Story();
    const yard = story.yard('Home');
    const colony = story.colony('1');
    const start = { yard, colony, label: '1', how: 'already-here' } as const;
    story.write({ kind: 'yard-opened', day: '2026-01-01' as never, yard, name: 'Home' });
    story.write({ kind: 'colony-started', day: '2026-01-01' as never, ...start });
    const [harvest] = story.write({ kind: 'harvest', day: '2026-07-01' as never, colony, kilograms: 40 });
    const corrected = draftOf('harvest', { ...valuesOf(harvest!), kilograms: 4 });
    story.write({ ...corrected, supersedes: harvest!.id } as never);
    const entries = project(story.journal()).colonies.get(colony)!.entries;
    expect(entries.filter(({ kind }) => kind === 'harvest')).toMatchObject([{ kilograms: 4 }]);
  });
});
